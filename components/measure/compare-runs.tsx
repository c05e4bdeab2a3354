'use client';

import { useState } from 'react';
import { useAppraisal } from '@/components/appraisal/appraisal-context';
import type { RunView } from '@/components/appraisal/view';
import { Fold } from '@/components/visit/fold';
import { t, tn } from '@/components/words/words';
import { Notes } from './measure-result';
import type { PairRow, PairView } from './view';

/** Two runs of one mode side by side: before and after a step; with one of each mode, why there is nothing to compare. */
export function CompareRuns(props: { readonly runId: string }) {
  const { answer } = useAppraisal();
  const [picked, setPicked] = useState<{ readonly from?: string; readonly to?: string }>({});
  const pairs = answer?.pairs ?? [];
  const runs = answer?.runs ?? [];
  const pair = chosen(pairs, runs, picked, props.runId);
  if (pair === undefined) {
    const alone = runs.length > 1 && new Set(runs.map((run) => run.mode)).size === runs.length;
    return alone ? <p className="text-soft">{t('measure.pair.alone')}</p> : null;
  }
  const real = pair.rows.filter((row) => row.real);
  const others = pair.rows.filter((row) => !row.real);
  const befores = runs.filter((run) => pairs.some((p) => p.fromId === run.id));
  const afters = runs.filter((run) => pairs.some((p) => p.fromId === pair.fromId && p.toId === run.id));
  return (
    <Fold title={t('measure.pair.title')} aside={pair.summary}>
      <p className="text-soft">{t('measure.pair.why')}</p>
      <div className="mt-1 grid gap-2 sm:grid-cols-2">
        <RunPick
          label={t('measure.pair.before')}
          runs={befores}
          value={pair.fromId}
          pick={(from) => setPicked({ from })}
        />
        <RunPick
          label={t('measure.pair.after')}
          runs={afters}
          value={pair.toId}
          pick={(to) => setPicked({ from: pair.fromId, to })}
        />
      </div>
      <p className="mt-2 font-semibold" role="status">
        {pair.summary}
      </p>
      <Notes notes={pair.warnings} />
      {real.length === 0 ? null : <PairTable title={t('measure.pair.readings')} rows={real} />}
      {pair.conditions.length === 0 ? null : (
        <PairTable title={t('measure.pair.conditions')} rows={pair.conditions} />
      )}
      {others.length === 0 ? null : (
        <Fold title={tn('measure.pair.others', others.length)}>
          <PairTable title={t('measure.pair.othersTitle')} rows={others} />
        </Fold>
      )}
    </Fold>
  );
}

/** As picked, else the first and the last run of the mode of the run in sight, else of any mode. */
function chosen(
  pairs: readonly PairView[],
  runs: readonly RunView[],
  picked: { readonly from?: string; readonly to?: string },
  runId: string,
): PairView | undefined {
  const own = pairs.filter((p) => p.fromId === picked.from);
  const asked = own.find((p) => p.toId === picked.to) ?? own.at(-1);
  if (asked !== undefined) return asked;
  const mode = runs.find((run) => run.id === runId)?.mode;
  const first = runs.find((run) => run.mode === mode && pairs.some((p) => p.fromId === run.id));
  const start = first?.id ?? pairs[0]?.fromId;
  return pairs.findLast((p) => p.fromId === start);
}

function RunPick(props: {
  readonly label: string;
  readonly runs: readonly RunView[];
  readonly value: string;
  readonly pick: (id: string) => void;
}) {
  return (
    <label className="block">
      <span className="block font-medium">{props.label}</span>
      <select
        className="box mt-1 w-full"
        value={props.value}
        onChange={(event) => props.pick(event.target.value)}
      >
        {props.runs.map((run) => (
          <option key={run.id} value={run.id}>
            {t('measure.pair.run', { name: run.name, mode: run.mode })}
          </option>
        ))}
      </select>
    </label>
  );
}

function PairTable(props: { readonly title: string; readonly rows: readonly PairRow[] }) {
  return (
    <table className="mt-3 w-full">
      <caption className="text-left font-semibold">{props.title}</caption>
      <thead>
        <tr className="border-b-2 border-ink text-right align-bottom">
          <th scope="col" className="py-1 text-left font-medium">
            {t('measure.pair.columnName')}
          </th>
          <th scope="col" className="py-1 pl-2 font-medium">
            {t('measure.pair.before')}
          </th>
          <th scope="col" className="py-1 pl-2 font-medium">
            {t('measure.pair.after')}
          </th>
          <th scope="col" className="py-1 pl-2 font-medium">
            {t('measure.pair.columnChange')}
          </th>
        </tr>
      </thead>
      <tbody>
        {props.rows.map((row) => (
          <tr key={row.id} className="border-t border-hair text-right align-top">
            <th scope="row" className="py-1 text-left font-normal">
              <span className={row.real ? 'font-semibold' : ''}>{row.name}</span>
              <span className="block text-sm font-normal text-soft">{row.says}</span>
            </th>
            <td className="py-1 pl-2">{row.before}</td>
            <td className="py-1 pl-2">{row.after}</td>
            <td className={`py-1 pl-2 whitespace-nowrap ${row.real ? 'font-semibold' : 'text-soft'}`}>
              {row.change}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
