import { Document, type DocumentProps, Page, Text, View } from '@react-pdf/renderer';
import type { PlainDocument, PlainSection, PlainTable } from '@/lib/sheet/plain-document';
import { CompanyLogo } from './company-logo';
import { ink, type Look, margin } from './look';
import { numbered } from './numbered';
import { PageFoot } from './page-foot';

type Props = {
  readonly content: PlainDocument;
  readonly size: readonly [number, number];
  readonly look: Look;
  readonly onRender?: NonNullable<DocumentProps['onRender']>;
};

const sectionGap = 10;

/** A document of sections over as many pages as it needs; its only date is the visit's. */
export function PlainPages({ content, size, look, onRender }: Props) {
  const date = new Date(`${content.visitDate}T00:00:00Z`);
  const accent = content.look?.accent ?? ink.text;
  return (
    <Document
      title={content.documentTitle}
      author={content.author}
      subject={content.subject}
      language={content.languageTag}
      creator="Keepworth"
      producer="Keepworth"
      creationDate={date}
      modificationDate={date}
      {...(onRender === undefined ? {} : { onRender })}
    >
      <Page
        size={[size[0], size[1]]}
        bookmark={content.heading}
        style={{
          fontSize: look.chart.fontSize,
          fontFamily: look.chart.fontFamily,
          color: ink.text,
          backgroundColor: ink.paper,
          paddingHorizontal: margin.sides,
          paddingTop: margin.top,
          paddingBottom: margin.bottom + margin.footer,
        }}
      >
        <View style={{ flexDirection: 'row', justifyContent: 'space-between' }}>
          <View style={{ flex: 1 }}>
            <Text style={{ ...look.title, color: accent }}>{content.heading}</Text>
            {content.invented === undefined ? null : (
              <Text style={look.evidenceStrong}>{content.invented}</Text>
            )}
          </View>
          {content.look?.logo === undefined ? null : <CompanyLogo source={content.look.logo} />}
        </View>
        <Text style={look.evidence}>
          {content.facts.map((fact, i) => (
            <Text key={fact.label}>
              {i === 0 ? '' : '\u00a0\u00b7 '}
              <Text style={look.evidenceStrong}>{fact.label}:</Text> {fact.text}
            </Text>
          ))}
        </Text>
        {content.sections.map((section) => (
          <Section key={section.id} section={section} look={look} accent={accent} />
        ))}
        <PageFoot>
          <Text style={look.chart}>{content.footer}</Text>
          <Text
            style={look.chart}
            render={({ pageNumber, totalPages }) =>
              content.pageOf
                .replace('{page}', String(pageNumber))
                .replace('{pages}', String(totalPages ?? ''))
            }
          />
        </PageFoot>
      </Page>
    </Document>
  );
}

type SectionProps = { readonly section: PlainSection; readonly look: Look; readonly accent: string };

function Section({ section, look, accent }: SectionProps) {
  const text = section.weight === 'decides' ? look.text : look.evidence;
  const strong = section.weight === 'decides' ? look.strong : look.evidenceStrong;
  return (
    <View {...bookmarked(section.title)} style={{ marginTop: sectionGap }}>
      <Text style={{ ...look.section, color: accent }} minPresenceAhead={40}>
        {section.title}
      </Text>
      {numbered(section.warnings ?? []).map(({ key, item }) => (
        <Text
          key={key}
          style={{ ...strong, borderLeftWidth: 3, borderColor: ink.text, paddingLeft: 6, marginTop: 2 }}
        >
          {item}
        </Text>
      ))}
      {numbered(section.facts ?? []).map(({ key, item }) => (
        <Text key={key} style={{ ...text, marginBottom: 1 }}>
          <Text style={strong}>{item.label}:</Text> {item.text}
        </Text>
      ))}
      {numbered(section.sentences ?? []).map(({ key, item }) => (
        <Text key={key} style={{ ...text, marginBottom: 1 }}>
          {item}
        </Text>
      ))}
      {numbered(section.tables ?? []).map(({ key, item }) => (
        <Table key={key} table={item} look={look} weight={section.weight} />
      ))}
    </View>
  );
}

/** The library takes bookmarks of any part; its types only know those of pages. */
function bookmarked(bookmark: string): object {
  return { bookmark };
}

type TableProps = {
  readonly table: PlainTable;
  readonly look: Look;
  readonly weight: PlainSection['weight'];
};

function Table({ table, look, weight }: TableProps) {
  const decides = weight === 'decides';
  const plain = decides ? look.text : look.evidence;
  const strong = decides ? look.strong : look.evidenceStrong;
  const cell = (i: number) => {
    const column = table.columns[i];
    return {
      width: `${(column?.share ?? 0) * 100}%`,
      textAlign: column?.align ?? 'left',
      paddingHorizontal: 4,
    } as const;
  };
  const row = ({ item, key }: ReturnType<typeof numbered<PlainTable['rows'][number]>>[number]) => (
    <View
      key={key}
      wrap={false}
      style={{ flexDirection: 'row', borderBottomWidth: 0.3, borderColor: ink.rule }}
    >
      {numbered(item.cells).map(({ key: at, item: text }) => (
        <Text key={at} style={{ ...(item.strong === true ? strong : plain), ...cell(Number(at)) }}>
          {text}
        </Text>
      ))}
    </View>
  );
  const [first, ...rest] = numbered(table.rows);
  return (
    <View style={{ marginTop: 2 }}>
      {/* The heading never stands alone at the foot of a page. */}
      <View wrap={false}>
        <View
          style={{
            flexDirection: 'row',
            borderBottomWidth: 1,
            borderColor: ink.text,
            alignItems: 'flex-end',
          }}
        >
          {numbered(table.columns).map(({ key, item }) => (
            <Text key={key} style={{ ...strong, ...cell(Number(key)) }}>
              {item.label}
            </Text>
          ))}
        </View>
        {first === undefined ? null : row(first)}
      </View>
      {rest.map(row)}
    </View>
  );
}
