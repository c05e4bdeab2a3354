import { Line, Rect, Svg, Text } from '@react-pdf/renderer';
import type { RunningCostBar as Bar } from '@/lib/sheet/sheet';
import { Hatching } from './hatching';
import { ink, type Look } from './look';

const barTop = 16;
const barHeight = 15;
const axisAt = barTop + barHeight + 5;
export const runningCostBarHeight = axisAt + 14;

type Props = { readonly bar: Bar; readonly width: number; readonly look: Look };

/** One bar from zero: the healthy part plain, the part due to the loss hatched, the range a lighter end and a line. */
export function RunningCostBar({ bar, width, look }: Props) {
  const left = 4;
  const at = (usd: number) => left + (Math.max(0, usd) / bar.axis.max) * (width - left - 34);
  const { low, likely, high } = bar.total;
  const faultFrom = at(bar.faultUsd === undefined ? likely : likely - bar.faultUsd);
  const end = at(likely);
  const middle = barTop + barHeight / 2;
  return (
    <Svg width={width} height={runningCostBarHeight} viewBox={`0 0 ${width} ${runningCostBarHeight}`}>
      <Rect
        x={end}
        y={barTop}
        width={at(high) - end}
        height={barHeight}
        fill={ink.light}
        stroke={ink.rule}
        strokeWidth={0.5}
      />
      <Rect
        x={left}
        y={barTop}
        width={faultFrom - left}
        height={barHeight}
        fill={ink.fill}
        stroke={ink.text}
        strokeWidth={0.7}
      />
      {bar.faultUsd === undefined ? null : (
        <>
          <Rect
            x={faultFrom}
            y={barTop}
            width={end - faultFrom}
            height={barHeight}
            fill={ink.paper}
            stroke={ink.text}
            strokeWidth={0.7}
          />
          <Hatching x={faultFrom} y={barTop} width={end - faultFrom} height={barHeight} spacing={4} />
        </>
      )}
      <Line x1={at(low)} y1={middle} x2={at(high)} y2={middle} stroke={ink.text} strokeWidth={1.4} />
      <Line x1={at(low)} y1={middle - 4} x2={at(low)} y2={middle + 4} stroke={ink.text} strokeWidth={1.4} />
      <Line x1={at(high)} y1={middle - 4} x2={at(high)} y2={middle + 4} stroke={ink.text} strokeWidth={1.4} />
      <Text x={left + 1} y={barTop - 4} style={look.chart}>
        {bar.restWords}
      </Text>
      {bar.faultUsd === undefined ? null : (
        <Text x={(faultFrom + end) / 2} y={barTop - 4} style={look.chart} textAnchor="middle">
          {bar.faultWords}
        </Text>
      )}
      <Text x={at(high) + 4} y={middle + 3.5} style={look.chart}>
        {bar.rangeWords}
      </Text>
      <Line x1={left} y1={axisAt} x2={at(bar.axis.max)} y2={axisAt} stroke={ink.text} strokeWidth={0.7} />
      {bar.axis.ticks.map((tick) => (
        <Line
          key={tick.at}
          x1={at(tick.at)}
          y1={axisAt}
          x2={at(tick.at)}
          y2={axisAt + 3}
          stroke={ink.text}
          strokeWidth={0.7}
        />
      ))}
      {bar.axis.ticks.map((tick, i) => (
        <Text
          key={tick.at}
          x={i === 0 ? left : at(tick.at)}
          y={axisAt + 12}
          style={look.chart}
          textAnchor={i === 0 ? 'start' : 'middle'}
        >
          {tick.label}
        </Text>
      ))}
    </Svg>
  );
}
