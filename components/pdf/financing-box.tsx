import { Text, View } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { ink, type Look } from './look';
import { numbered } from './numbered';

type Props = {
  readonly financing: Sheet['pageTwo']['financing'];
  readonly width: number;
  readonly look: Look;
};

const frame = 14;
const labelShare = { one: 0.53, several: 0.3 } as const;

/** Credit terms, set apart by a double rule; the yearly rate and the finance charge stand out most. */
export function FinancingBox({ financing, width, look }: Props) {
  if (financing.none !== undefined) return <Text style={look.evidence}>{financing.none}</Text>;
  const several = financing.plans.length > 1;
  const inner = width - frame;
  const label = { width: inner * (several ? labelShare.several : labelShare.one) };
  const cell = {
    width: (inner - label.width) / financing.plans.length,
    textAlign: 'right',
    paddingLeft: 4,
  } as const;
  const labels = financing.plans[0]?.rows.map((row) => row.label) ?? [];
  return (
    <View style={{ borderWidth: 1, borderColor: ink.text, padding: 1.5 }}>
      <View style={{ borderWidth: 1, borderColor: ink.text, padding: 4 }}>
        <Text style={look.section}>{financing.title}</Text>
        {several ? (
          <View style={{ flexDirection: 'row' }}>
            <Text style={{ ...look.text, ...label }}> </Text>
            {numbered(financing.plans).map(({ key, item: plan }) => (
              <Text key={key} style={{ ...look.strong, ...cell }}>
                {plan.name}
              </Text>
            ))}
          </View>
        ) : (
          <Text style={look.strong}>{financing.plans[0]?.name}</Text>
        )}
        <View style={{ flexDirection: 'row', alignItems: 'flex-end' }}>
          <Text style={{ ...look.strong, ...label }}>{financing.aprLabel}</Text>
          {numbered(financing.plans).map(({ key, item: plan }) => (
            <Text key={key} style={{ ...look.apr, ...cell }}>
              {plan.apr}
            </Text>
          ))}
        </View>
        {numbered(labels).map(({ key: row, item: text }) => (
          <View key={row} style={{ flexDirection: 'row', borderTopWidth: 0.4, borderColor: ink.rule }}>
            <Text style={{ ...(row === '0' ? look.strong : look.text), ...label }}>{text}</Text>
            {numbered(financing.plans).map(({ key, item: plan }) => (
              <Text key={key} style={{ ...look.figures, fontWeight: row === '0' ? 700 : 400, ...cell }}>
                {plan.rows[Number(row)]?.text}
              </Text>
            ))}
          </View>
        ))}
        <Text style={{ ...look.text, marginTop: 2 }}>{financing.terms}</Text>
      </View>
    </View>
  );
}
