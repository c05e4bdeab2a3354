import { Text, View } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { BasisMark } from './basis-mark';
import { ink, type Look } from './look';

type Props = {
  readonly readings: Sheet['pageTwo']['readings'];
  readonly width: number;
  readonly gap: number;
  readonly showAlso: boolean;
  readonly look: Look;
};

const shares = { name: 0.42, found: 0.2, target: 0.22, verdict: 0.16 } as const;

/** Readings with what a healthy unit would show and a verdict in words. */
export function ReadingsTable({ readings, width, gap, showAlso, look }: Props) {
  const figures = { ...look.evidence, fontFeatureSettings: look.figures.fontFeatureSettings ?? [] };
  const at = {
    name: { width: width * shares.name },
    found: { width: width * shares.found, textAlign: 'right' },
    target: { width: width * shares.target, textAlign: 'right', paddingLeft: 4 },
    verdict: { width: width * shares.verdict, paddingLeft: 6 },
  } as const;
  const [, found, target, verdict] = readings.columns;
  return (
    <View>
      <View id="two-left-readings" style={{ marginTop: gap }}>
        <Text style={look.section}>{readings.title}</Text>
        {readings.none === undefined ? null : <Text style={look.evidence}>{readings.none}</Text>}
        {readings.tables.map((table) => (
          <View key={table.title}>
            <View style={{ flexDirection: 'row', borderBottomWidth: 1, borderColor: ink.text }}>
              <Text style={{ ...look.evidenceStrong, ...at.name }}>{table.title}</Text>
              <Text style={{ ...look.evidenceStrong, ...at.found }}>
                {table.rows.length === 0 ? '' : found}
              </Text>
              <Text style={{ ...look.evidenceStrong, ...at.target }}>
                {table.rows.length === 0 ? '' : target}
              </Text>
              <Text style={{ ...look.evidenceStrong, ...at.verdict }}>
                {table.rows.length === 0 ? '' : verdict}
              </Text>
            </View>
            {table.rows.map((row) => (
              <View
                key={row.name}
                style={{ flexDirection: 'row', borderBottomWidth: 0.3, borderColor: ink.rule }}
              >
                <View style={{ flexDirection: 'row', ...at.name }}>
                  <BasisMark basis={row.basis} />
                  <Text style={{ ...look.evidence, flex: 1 }}>{row.name}</Text>
                </View>
                <Text style={{ ...figures, ...at.found }}>{row.found}</Text>
                <Text style={{ ...figures, ...at.target }}>{row.target}</Text>
                <Text style={{ ...(row.off ? look.evidenceStrong : look.evidence), ...at.verdict }}>
                  {row.verdict}
                </Text>
              </View>
            ))}
            {table.rest === undefined ? null : <Text style={look.evidence}>{table.rest}</Text>}
          </View>
        ))}
        {readings.seen === undefined ? null : <Text style={look.evidence}>{readings.seen}</Text>}
      </View>
      {showAlso
        ? readings.tables.map((table, i) =>
            table.also === undefined ? null : (
              <View key={table.title} id={`two-also-${i}`}>
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
