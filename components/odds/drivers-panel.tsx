'use client';

import { useState } from 'react';
import type { DriversView } from '@/components/appraisal/decide-view';
import { NumberTable } from '@/components/charts/number-table';
import { ScaleTicks } from '@/components/charts/scale-parts';
import { PressRow } from '@/components/form/pick-field';
import { Titled } from '@/components/results/titled';
import { td } from '@/components/words/decide-words';

/** What moves the saving of a choice most: a bar for each thing that is not known, all on one axis. */
export function DriversPanel(props: { readonly view: DriversView }) {
  const { choices, ticks, zero, firstId } = props.view;
  const [picked, setPicked] = useState('');
  const shown = choices.find(({ id }) => id === picked) ?? choices.find(({ id }) => id === firstId);
  if (shown === undefined) return null;
  return (
    <Titled title={td('moves.title')} level={2} className="panel min-w-0">
      {choices.length < 2 ? null : (
        <fieldset className="mt-2 min-w-0 no-print">
          <legend className="font-medium">{td('moves.which')}</legend>
          <PressRow
            name="moves-choice"
            options={choices.map(({ id, name }) => ({ value: id, words: name }))}
            current={shown.id}
            onPick={setPicked}
          />
        </fieldset>
      )}
      <p className="mt-2 font-semibold">{shown.sentence}</p>
      <p className="text-soft">{td('moves.note')}</p>
      <ul className="mt-3 grid gap-3">
        {shown.rows.map((row) => (
          <li key={row.name}>
            <div className="flex flex-wrap justify-between gap-x-4">
              <span>{row.name}</span>
              <span className="font-semibold">{td('moves.span', { low: row.low, high: row.high })}</span>
            </div>
            <div aria-hidden="true" className="relative mt-1 h-6 bg-plum-wash">
              <div className="absolute inset-y-0 w-0.5 bg-edge" style={{ left: percent(zero) }} />
              <div
                className="print-ink absolute inset-y-1 min-w-1 bg-plum"
                style={{ left: percent(row.from), right: percent(1 - row.to) }}
              />
              <div
                className="absolute inset-y-0 w-1 border-x border-paper bg-ink"
                style={{ left: percent(shown.likely) }}
              />
            </div>
          </li>
        ))}
      </ul>
      <ScaleTicks className="mt-1" ticks={ticks.map(({ frac, label }) => ({ left: percent(frac), label }))} />
      <p className="text-soft">{td('moves.axis')}</p>
      <NumberTable
        caption={td('moves.title')}
        header={[td('moves.thing'), td('moves.low'), td('moves.high')]}
        rows={shown.rows.map((row) => [row.name, row.low, row.high])}
      />
    </Titled>
  );
}

function percent(frac: number): string {
  return `${100 * frac}%`;
}
