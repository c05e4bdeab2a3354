'use client';

import type { BalanceChart } from '@/components/appraisal/chart-view';
import { Titled } from '@/components/results/titled';
import { t } from '@/components/words/words';
import { LinePlot } from './line-plot';
import { NumberTable } from './number-table';

/** Heat the house asks for against heat each unit gives; what the unit as found leaves open is shaded. */
export function BalanceLines(props: { readonly chart: BalanceChart }) {
  const { lines, points, message, sentences, table, axis } = props.chart;
  const texts = new Map(axis.ticks.map((tick) => [tick.at, tick.label]));
  return (
    <Titled title={t('chart.balanceTitle')} level={2} className="panel min-w-0">
      <p className="mt-1 text-lg font-semibold">{message}</p>
      <p>{t('chart.balanceNote')}</p>
      <LinePlot
        lines={lines}
        points={points.map(({ outdoorF, at }) => ({ x: outdoorF, at }))}
        xWords={t('chart.outdoor')}
        yWords={axis.unit}
        xTicks={props.chart.outdoorTicks}
        yTicks={axis.ticks.map((tick) => tick.at)}
        yText={(btuh) => texts.get(btuh) ?? ''}
        shade={props.chart.shade}
      />
      <ul className="mt-2 list-disc pl-6">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <NumberTable caption={t('chart.balanceTitle')} {...table} />
    </Titled>
  );
}
