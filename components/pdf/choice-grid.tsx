import { Text, View } from '@react-pdf/renderer';
import type { ChoiceRow, ChoiceTable, TotalsChart } from '@/lib/sheet/sheet';
import { ink, type Look } from './look';
import { numbered } from './numbered';
import { TotalsBars } from './totals-bars';

const labelWidth = 100;

type Props = {
  readonly table: ChoiceTable;
  readonly width: number;
  readonly look: Look;
  /** Drawn under the row of totals, each bar below its figure. */
  readonly chart?: { readonly data: TotalsChart; readonly height: number };
};

/** Choices side by side: leaving it first, the same rows for all, the recommended one marked where it stands. */
export function ChoiceGrid({ table, width, look, chart }: Props) {
  const cellWidth = (width - labelWidth) / table.columns.length;
  return (
    <View>
      <View style={{ flexDirection: 'row', borderBottomWidth: 1.2, borderColor: ink.text, paddingBottom: 2 }}>
        <View style={{ width: labelWidth, justifyContent: 'flex-end' }}>
          <Text style={look.section}>{table.title}</Text>
        </View>
        {table.columns.map((column) => (
          <View
            key={column.id}
            style={{ width: cellWidth, paddingHorizontal: 3, justifyContent: 'flex-end' }}
          >
            {column.mark === undefined ? null : (
              <Text
                style={{
                  ...look.evidence,
                  borderWidth: 1,
                  borderColor: ink.text,
                  textAlign: 'center',
                  paddingVertical: 1,
                }}
              >
                {column.mark}
              </Text>
            )}
            <Text style={{ ...look.strong, textAlign: 'center' }}>{column.name}</Text>
          </View>
        ))}
      </View>
      {table.rows.map((row) => (
        <View key={row.id} style={{ borderBottomWidth: 0.5, borderColor: ink.rule, paddingVertical: 1.5 }}>
          <View style={{ flexDirection: 'row' }}>
            <Text style={{ ...look.text, width: labelWidth, paddingRight: 4 }}>{row.label}</Text>
            {row.cells.map((cell, i) => (
              <View key={table.columns[i]?.id ?? i} style={{ width: cellWidth, paddingHorizontal: 2 }}>
                <Cell row={row} lines={[cell.main, ...cell.details]} look={look} />
              </View>
            ))}
          </View>
          {row.id === 'total' && chart !== undefined ? (
            <TotalsBars
              chart={chart.data}
              width={width}
              height={chart.height}
              labelWidth={labelWidth}
              look={look}
            />
          ) : null}
        </View>
      ))}
    </View>
  );
}

type CellProps = { readonly row: ChoiceRow; readonly lines: readonly string[]; readonly look: Look };

/** The first line counts; estimates are bold and say "about", quoted prices are plain and to the cent. */
function Cell({ row, lines, look }: CellProps) {
  const small = row.id === 'notFixed';
  const style = small ? look.evidence : look.figures;
  return numbered(lines).map(({ key, item: line }) => (
    <Text
      key={key}
      style={{ ...style, textAlign: 'center', fontWeight: key === '0' && !small && !row.quoted ? 700 : 400 }}
    >
      {line}
    </Text>
  ));
}
