import { Text, View } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { AssumptionList } from './assumption-list';
import { BasisMark } from './basis-mark';
import { ChoiceGrid } from './choice-grid';
import { FinancingBox } from './financing-box';
import type { Column, PageTwoFit } from './fit';
import type { Look } from './look';
import { numbered } from './numbered';
import { ReadingsTable } from './readings-table';
import { SignatureLines } from './signature-lines';

type Props = { readonly sheet: Sheet; readonly fit: PageTwoFit; readonly width: number; readonly look: Look };

const columnGap = 14;
const evidenceShare = 0.55;

/** What stands behind page one: evidence on the left, what to know before signing on the right. */
export function PageTwo({ sheet, fit, width, look }: Props) {
  const page = sheet.pageTwo;
  const gap = { marginTop: fit.gap };
  const left = (width - columnGap) * evidenceShare;
  const right = width - columnGap - left;
  const wideFinancing = page.financing.plans.length > 1;
  return (
    <View>
      <Text id="two-full-head" style={look.pageTwoTitle}>
        {page.heading}
      </Text>
      {page.moreChoices === undefined ? null : (
        <View id="two-full-more" style={gap}>
          <ChoiceGrid table={page.moreChoices} width={width} look={look} />
        </View>
      )}
      {wideFinancing ? (
        <View id="two-full-financing" style={gap}>
          <FinancingBox financing={page.financing} width={width} look={look} />
        </View>
      ) : null}
      <View style={{ flexDirection: 'row' }}>
        <View style={{ width: left, marginRight: columnGap }}>
          <ReadingsTable readings={page.readings} width={left} fit={fit} look={look} />
          <Counts counts={page.counts} gap={fit.gap} look={look} />
          <AssumptionList assumptions={page.assumptions} fit={fit} look={look} />
          <Doubts doubts={page.doubts} column="left" fit={fit} look={look} />
          <Movable page={page} column="left" fit={fit} look={look} />
        </View>
        <View style={{ width: right }}>
          {wideFinancing ? null : (
            <View id="two-right-financing" style={gap}>
              <FinancingBox financing={page.financing} width={right} look={look} />
            </View>
          )}
          <Section
            id="two-right-cautions"
            section={page.cautions}
            gap={fit.gap}
            look={look}
            style={look.text}
          />
          {page.rebates.sentences.length === 0 ? null : (
            <Section
              id="two-right-rebates"
              section={page.rebates}
              gap={fit.gap}
              look={look}
              style={look.text}
            />
          )}
          <Movable page={page} column="right" fit={fit} look={look} />
          <Doubts doubts={page.doubts} column="right" fit={fit} look={look} />
        </View>
      </View>
      <View id="two-full-signature" style={gap}>
        <SignatureLines signature={page.signature} validity={page.validity} look={look} />
      </View>
    </View>
  );
}

type SectionProps = {
  readonly id: string;
  readonly section: { readonly title: string; readonly sentences: readonly string[] };
  readonly gap: number;
  readonly look: Look;
  readonly style: Look['text'];
};

function Section({ id, section, gap, look, style }: SectionProps) {
  return (
    <View id={id} style={{ marginTop: gap }}>
      <Text style={look.section}>{section.title}</Text>
      {numbered(section.sentences).map(({ key, item }) => (
        <Text key={key} style={{ ...style, marginBottom: 1 }}>
          {item}
        </Text>
      ))}
    </View>
  );
}

type MovableProps = {
  readonly page: Sheet['pageTwo'];
  readonly column: Column;
  readonly fit: PageTwoFit;
  readonly look: Look;
};

/** Sections that stand in whichever column has room for them. */
function Movable({ page, column, fit, look }: MovableProps) {
  return (['excluded', 'surer'] as const)
    .filter((name) => fit[name].includes(column) && page[name].sentences.length > 0)
    .map((name) => (
      <Section
        key={name}
        id={`two-move-${column}-${name}`}
        section={page[name]}
        gap={fit.gap}
        look={look}
        style={look.evidence}
      />
    ));
}

type DoubtsProps = {
  readonly doubts: Sheet['pageTwo']['doubts'];
  readonly column: Column;
  readonly fit: PageTwoFit;
  readonly look: Look;
};

/** What is doubtful; what does not fit is counted, never dropped in silence. */
function Doubts({ doubts, column, fit, look }: DoubtsProps) {
  const shown = doubts.sentences.slice(0, fit.doubts);
  // While measuring everything is shown, yet the line that counts what is left out must have its room.
  const left = fit.measuring ? doubts.sentences.length : doubts.sentences.length - shown.length;
  if (doubts.sentences.length === 0 || !fit.doubtsIn.includes(column)) return null;
  return (
    <View style={{ marginTop: fit.gap }}>
      <Text id={`two-head-${column}-doubts`} style={look.section}>
        {doubts.title}
      </Text>
      {numbered(shown).map(({ key, item }) => (
        <View key={key} id={`two-doubt-${column}-${key}`}>
          <Text style={look.evidence}>{item}</Text>
        </View>
      ))}
      {left === 0 ? null : (
        <Text id={`two-head-${column}-doubts`} style={look.evidence}>
          {doubts.omitted[left]}
        </Text>
      )}
    </View>
  );
}

type CountsProps = { readonly counts: Sheet['pageTwo']['counts']; readonly gap: number; readonly look: Look };

/** The four marks with their words and how many numbers carry each. */
function Counts({ counts, gap, look }: CountsProps) {
  return (
    <View id="two-left-counts" style={{ marginTop: gap }}>
      <Text style={look.evidenceStrong}>{counts.title}</Text>
      <View style={{ flexDirection: 'row', flexWrap: 'wrap' }}>
        {counts.items.map((item) => (
          <View key={item.basis} style={{ flexDirection: 'row', marginRight: 8 }}>
            <BasisMark basis={item.basis} />
            <Text style={look.evidence}>{item.words}</Text>
          </View>
        ))}
      </View>
    </View>
  );
}
