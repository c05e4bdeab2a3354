import { G, Line, Rect, Svg, Text } from '@react-pdf/renderer';
import type { TotalsChart } from '@/lib/sheet/sheet';
import { Hatching } from './hatching';
import { ink, type Look } from './look';

type Props = {
  readonly chart: TotalsChart;
  readonly width: number;
  readonly height: number;
  /** Width of the table's first column, where the axis stands. [pt] */
  readonly labelWidth: number;
  readonly look: Look;
};

/** Totals as upright bars, each under its own column of the table, all on one scale from zero. */
export function TotalsBars({ chart, width, height, labelWidth, look }: Props) {
  const top = 6;
  const floor = height - 4;
  const y = (usd: number) => floor - (Math.max(0, usd) / chart.axis.max) * (floor - top);
  const column = (width - labelWidth) / chart.bars.length;
  const barWidth = Math.min(34, column * 0.4);
  const ticks = height < 60 ? chart.axis.ticks.filter((_, i) => i % 2 === 0) : chart.axis.ticks;
  return (
    <Svg width={width} height={height} viewBox={`0 0 ${width} ${height}`}>
      {ticks.map((tick) => (
        <G key={tick.at}>
          <Line
            x1={labelWidth}
            y1={y(tick.at)}
            x2={width}
            y2={y(tick.at)}
            stroke={ink.rule}
            strokeWidth={0.35}
          />
          <Text x={labelWidth - 4} y={y(tick.at) + 3} style={look.chart} textAnchor="end">
            {tick.label}
          </Text>
        </G>
      ))}
      {chart.bars.map(({ total, ...bar }, i) => {
        if (total === undefined) return null;
        const middle = labelWidth + column * (i + 0.5);
        const box = {
          x: middle - barWidth / 2,
          y: y(total.likely),
          width: barWidth,
          height: floor - y(total.likely),
        };
        return (
          <G key={bar.id}>
            <Rect {...box} fill={fills[bar.kind]} stroke={ink.text} strokeWidth={0.9} />
            {bar.kind === 'repair' || bar.kind === 'repairThenReplace' ? (
              <Hatching {...box} spacing={5} />
            ) : null}
            <Line
              x1={middle}
              y1={y(total.low)}
              x2={middle}
              y2={y(total.high)}
              stroke={ink.paper}
              strokeWidth={4}
            />
            <Line
              x1={middle}
              y1={y(total.low)}
              x2={middle}
              y2={y(total.high)}
              stroke={ink.text}
              strokeWidth={1.6}
            />
            {[total.low, total.high].map((end) => (
              <Line
                key={end}
                x1={middle - 6}
                y1={y(end)}
                x2={middle + 6}
                y2={y(end)}
                stroke={ink.text}
                strokeWidth={1.6}
              />
            ))}
          </G>
        );
      })}
      <Line x1={labelWidth} y1={floor} x2={width} y2={floor} stroke={ink.text} strokeWidth={0.9} />
    </Svg>
  );
}

/** Told apart without colour: white, hatched, grey. */
const fills = {
  leave: ink.paper,
  repair: ink.paper,
  repairThenReplace: ink.paper,
  replace: ink.fill,
} as const;
