'use client';

import { useId } from 'react';
import { Bar, BarChart, CartesianGrid, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import type { YearPanel, YearView } from '@/components/appraisal/year-view';
import { KindMark } from '@/components/compare/choice-table';
import { monthName } from '@/components/format/entry-words';
import { PLOT_TEXT } from './plot-text';
import { colourOf, patternId, UsePatterns, UseSwatch } from './use-looks';

/** The year of every unit by month, uses stacked, on one scale. */
export function YearMonths(props: { readonly view: YearView }) {
  const { panels, uses, axis } = props.view;
  const id = useId().replace(/[^a-zA-Z0-9]/g, '');
  return (
    <figure className="mt-2">
      <figcaption>
        <ul className="flex flex-wrap gap-x-6 gap-y-1">
          {uses.map(({ use, name }) => (
            <li key={use} className="flex items-center gap-2">
              <UseSwatch id={id} use={use} /> {name}
            </li>
          ))}
        </ul>
        <p className="mt-1 text-soft">{axis.unit}</p>
      </figcaption>
      <ul className="mt-2 grid gap-6 sm:grid-cols-2">
        {panels.map((panel, i) => (
          <li key={panel.id} className="min-w-0 break-inside-avoid">
            <PanelTitle panel={panel} />
            <MonthBars panel={panel} view={props.view} id={`${id}-${i}`} />
          </li>
        ))}
      </ul>
    </figure>
  );
}

function PanelTitle(props: { readonly panel: YearPanel }) {
  const { name, look, total } = props.panel;
  const mark = look === 'load' || look === 'healthy' ? undefined : look;
  return (
    <p>
      <strong>
        {mark === undefined ? null : <KindMark kind={mark} />} {name}
      </strong>
      <span className="block">{total}</span>
    </p>
  );
}

function MonthBars(props: { readonly panel: YearPanel; readonly view: YearView; readonly id: string }) {
  const { axis, uses } = props.view;
  const texts = new Map(axis.ticks.map((tick) => [tick.at, tick.label]));
  return (
    <div aria-hidden="true" className="plot h-44">
      <ResponsiveContainer width="100%" height="100%">
        <BarChart
          data={[...props.panel.months]}
          margin={{ top: 8, right: 4, bottom: 0, left: 0 }}
          barCategoryGap="18%"
          accessibilityLayer={false}
        >
          <UsePatterns id={props.id} uses={uses.map(({ use }) => use)} />
          <CartesianGrid stroke="var(--hair)" vertical={false} />
          <XAxis
            dataKey="month"
            tickFormatter={(month: number) => monthName(month, 'narrow')}
            interval={0}
            stroke="var(--edge)"
            tick={PLOT_TEXT}
          />
          <YAxis
            domain={[0, axis.max]}
            ticks={axis.ticks.map((tick) => tick.at)}
            tickFormatter={(usd: number) => texts.get(usd) ?? ''}
            width={52}
            stroke="var(--edge)"
            tick={PLOT_TEXT}
          />
          {uses.map(({ use }) => (
            <Bar
              key={use}
              dataKey={use}
              stackId="month"
              fill={`url(#${patternId(props.id, use)})`}
              stroke={colourOf(use)}
              isAnimationActive={false}
            />
          ))}
        </BarChart>
      </ResponsiveContainer>
    </div>
  );
}
