import { Text, View } from '@react-pdf/renderer';
import type { ReadingRow, ReadingTable, Sheet } from '@/lib/sheet/sheet';
import { BasisMark } from './basis-mark';
import type { PageTwoFit, ReadingsForm } from './fit';
import { ink, type Look } from './look';
import { numbered } from './numbered';

type Props = {
  readonly readings: Sheet['pageTwo']['readings'];
  readonly width: number;
  readonly fit: PageTwoFit;
  readonly look: Look;
};

const shares = { name: 0.43, found: 0.185, target: 0.225, verdict: 0.16 } as const;

/** Readings with what a healthy unit would show and a verdict in words. */
export function ReadingsTable({ readings, width, fit, look }: Props) {
  return (
    <View>
      <View id="two-left-readings" style={{ marginTop: fit.gap }}>
        <Text style={look.section}>{readings.title}</Text>
        {readings.none === undefined ? null : <Text style={look.evidence}>{readings.none}</Text>}
        {readings.seen === undefined ? null : <Text style={look.evidence}>{readings.seen}</Text>}
      </View>
      {fit.readings.map((form) => (
        <View key={form} id={`two-readings-${form}`}>
          {numbered(readings.tables).map(({ key, item }) => (
            <RunTable
              key={key}
              table={item}
              columns={readings.columns}
              form={form}
              width={width}
              look={look}
            />
          ))}
        </View>
      ))}
      {fit.alsoRead
        ? numbered(readings.tables).map(({ key, item: table }) =>
            table.also === undefined || isBare(table) ? null : (
              <View key={key} id={`two-also-${key}`}>
                <Text style={look.evidence}>
                  {readings.tables.length > 1 ? `${table.title}: ` : ''}
                  {table.also}
                </Text>
              </View>
            ),
          )
        : null}
    </View>
  );
}

/** True when no reading of the run has a target: then the others stand in its place. */
function isBare(table: ReadingTable): boolean {
  return table.rows.length === 0;
}

type RunProps = {
  readonly table: ReadingTable;
  readonly columns: Sheet['pageTwo']['readings']['columns'];
  /** A row for every reading, or rows for what is off and a sentence for the rest. */
  readonly form: ReadingsForm;
  readonly width: number;
  readonly look: Look;
};

function RunTable({ table, columns, form, width, look }: RunProps) {
  const short = form === 'short' && table.normal !== undefined;
  const rows = short ? table.rows.filter((row) => !row.normal) : table.rows;
  const at = columnStyles(width);
  const [, found, target, verdict] = columns;
  const head = rows.length === 0 ? ['', '', ''] : [found, target, verdict];
  return (
    <View>
      <View style={{ flexDirection: 'row', borderBottomWidth: 1, borderColor: ink.text }}>
        <Text style={{ ...look.evidenceStrong, ...at.name }}>{table.title}</Text>
        <Text style={{ ...look.evidenceStrong, ...at.found }}>{head[0]}</Text>
        <Text style={{ ...look.evidenceStrong, ...at.target }}>{head[1]}</Text>
        <Text style={{ ...look.evidenceStrong, ...at.verdict }}>{head[2]}</Text>
      </View>
      {numbered(rows).map(({ key, item }) => (
        <Row key={key} row={item} at={at} look={look} />
      ))}
      {short ? <Text style={look.evidence}>{table.normal}</Text> : null}
      {isBare(table) && table.also !== undefined ? <Text style={look.evidence}>{table.also}</Text> : null}
      {table.rest === undefined ? null : <Text style={look.evidence}>{table.rest}</Text>}
    </View>
  );
}

function columnStyles(width: number) {
  return {
    name: { width: width * shares.name },
    found: { width: width * shares.found, textAlign: 'right' },
    target: { width: width * shares.target, textAlign: 'right', paddingLeft: 4 },
    verdict: { width: width * shares.verdict, paddingLeft: 6 },
  } as const;
}

type RowProps = {
  readonly row: ReadingRow;
  readonly at: ReturnType<typeof columnStyles>;
  readonly look: Look;
};

function Row({ row, at, look }: RowProps) {
  const figures = { ...look.evidence, fontFeatureSettings: look.figures.fontFeatureSettings ?? [] };
  return (
    <View style={{ flexDirection: 'row', borderBottomWidth: 0.3, borderColor: ink.rule }}>
      <View style={{ flexDirection: 'row', ...at.name }}>
        <BasisMark basis={row.basis} />
        <Text style={{ ...look.evidence, flex: 1 }}>{row.name}</Text>
      </View>
      <Text style={{ ...figures, ...at.found }}>{row.found}</Text>
      <Text style={{ ...figures, ...at.target }}>{row.target}</Text>
      <Text style={{ ...(row.off ? look.evidenceStrong : look.evidence), ...at.verdict }}>{row.verdict}</Text>
    </View>
  );
}
