'use client';

import {
  CartesianGrid,
  ComposedChart,
  Label,
  Line,
  ResponsiveContainer,
  Scatter,
  XAxis,
  YAxis,
} from 'recharts';
import type { BillPlotView } from '@/components/appraisal/energy-inputs-view';
import { t } from '@/components/words/words';
import { NumberTable } from './number-table';
import { PLOT_TEXT } from './plot-text';

/** In pixels, since a share of a folded box is nothing, which recharts complains of. */
const HEIGHT_PX = 288;

/** Bills against the weather: a dot a bill, and the line fitted to them. */
export function BillPlot(props: { readonly plot: BillPlotView }) {
  const { points, line, axis, meanTicks, table } = props.plot;
  const texts = new Map(axis.ticks.map((tick) => [tick.at, tick.label]));
  const ends = [meanTicks[0] ?? 0, meanTicks.at(-1) ?? 100];
  return (
    <figure className="mt-3">
      <figcaption className="font-medium">{t('bills.plotTitle')}</figcaption>
      <p aria-hidden="true" className="text-soft">
        {axis.unit}
      </p>
      <div aria-hidden="true" className="plot">
        <ResponsiveContainer width="100%" height={HEIGHT_PX}>
          <ComposedChart margin={{ top: 8, right: 12, bottom: 28, left: 4 }} accessibilityLayer={false}>
            <CartesianGrid stroke="var(--hair)" vertical={false} />
            <XAxis
              dataKey="meanF"
              type="number"
              domain={ends}
              ticks={[...meanTicks]}
              stroke="var(--edge)"
              tick={PLOT_TEXT}
            >
              <Label value={t('bills.plotX')} position="bottom" offset={6} {...PLOT_TEXT} />
            </XAxis>
            <YAxis
              domain={[0, axis.max]}
              ticks={axis.ticks.map((tick) => tick.at)}
              tickFormatter={(kwh: number) => texts.get(kwh) ?? ''}
              width={48}
              stroke="var(--edge)"
              tick={PLOT_TEXT}
            />
            <Line
              data={[...line]}
              dataKey="kwhPerDay"
              stroke="var(--plum)"
              strokeWidth={3}
              dot={false}
              activeDot={false}
              isAnimationActive={false}
            />
            <Scatter
              data={[...points]}
              dataKey="kwhPerDay"
              fill="var(--ink)"
              shape="circle"
              isAnimationActive={false}
            />
          </ComposedChart>
        </ResponsiveContainer>
      </div>
      <p className="text-soft">{t('bills.plotNote')}</p>
      <NumberTable caption={t('bills.plotTitle')} {...table} />
    </figure>
  );
}
