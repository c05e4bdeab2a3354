import { Text, View } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { BasisMark } from './basis-mark';
import type { PageTwoFit } from './fit';
import type { Look } from './look';
import { numbered } from './numbered';

type Props = {
  readonly assumptions: Sheet['pageTwo']['assumptions'];
  readonly fit: PageTwoFit;
  readonly look: Look;
};

/** Assumed values with their ranges; what does not fit is counted, never dropped in silence. */
export function AssumptionList({ assumptions, fit, look }: Props) {
  const shown = assumptions.rows.slice(0, fit.assumptionRows);
  // While measuring everything is shown, yet the line that counts what is left out must have its room.
  const left = fit.measuring ? assumptions.rows.length : assumptions.rows.length - shown.length;
  const omitted = assumptions.omitted[left] ?? '';
  return (
    <View>
      <View id="two-left-assumptions" style={{ marginTop: fit.gap }}>
        <Text style={look.section}>{assumptions.title}</Text>
        <Text style={look.evidence}>{`${assumptions.introduction} ${omitted}`.trim()}</Text>
      </View>
      {numbered(shown).map(({ key, item: row }) => (
        <View key={key}>
          <View id={`two-assumption-${key}`} style={{ flexDirection: 'row' }}>
            <BasisMark basis={row.basis} />
            <Text style={{ ...look.evidence, flex: 1 }}>
              {row.name}: <Text style={look.evidenceStrong}>{row.value}</Text> ({row.range})
              {row.effect === undefined ? '' : `, ${row.effect}`}
            </Text>
          </View>
          {Number(key) < fit.sources ? (
            <View id={`two-source-${key}`} style={{ paddingLeft: 11 }}>
              <Text style={look.evidence}>
                {assumptions.columns[3]}: {row.source}
              </Text>
            </View>
          ) : null}
        </View>
      ))}
    </View>
  );
}
