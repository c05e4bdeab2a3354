'use client';

import type { CostChart } from '@/components/appraisal/chart-view';
import { Titled } from '@/components/results/titled';
import { t } from '@/components/words/words';
import { LinePlot } from './line-plot';
import { NumberTable } from './number-table';

/** How the cost of each choice adds up over the stay. */
export function CostLines(props: { readonly chart: CostChart }) {
  const { lines, points, axis, sentences, table } = props.chart;
  const texts = new Map(axis.ticks.map((tick) => [tick.at, tick.label]));
  return (
    <Titled title={t('chart.costTitle')} level={2} className="panel min-w-0">
      <ul className="mt-1 list-disc pl-6">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p className="mt-1 text-soft">{t('chart.costNote')}</p>
      <LinePlot
        lines={lines}
        points={points.map(({ year, at }) => ({ x: year, at }))}
        xWords={t('chart.year')}
        yWords={axis.unit}
        xTicks={points.map((point) => point.year)}
        yTicks={axis.ticks.map((tick) => tick.at)}
        yText={(usd) => texts.get(usd) ?? ''}
      />
      <NumberTable caption={t('chart.costTitle')} {...table} />
    </Titled>
  );
}
