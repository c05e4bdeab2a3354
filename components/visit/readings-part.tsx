'use client';

import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { type DraftValue, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { ChargingTables } from '@/components/measure/charging-tables';
import { CompareRuns } from '@/components/measure/compare-runs';
import { t, tn } from '@/components/words/words';
import { readingCount } from './parts';
import { RunFields } from './run-fields';
import { goTo } from './use-place';

/** Runs of readings: one in sight, the others one tap away. */
export function ReadingsPart(props: { readonly entry: number | undefined }) {
  const store = useDraftStore();
  const runs = useDraftState((s) => listAt(s.draft, 'runs'));
  const at = Math.min(props.entry ?? 0, runs.length - 1);
  const add = () => {
    store.change(t('run.added'), (draft) => {
      const kept = listAt(draft, 'runs');
      const run = { id: freeId('run', kept), mode: lastMode(kept) };
      return withValue(draft, 'runs', [...kept, run]);
    });
    goTo(`#readings-${runs.length + 1}`);
  };
  const copy = () => {
    store.change(t('run.copied'), (draft) => {
      const kept = listAt(draft, 'runs');
      const from = kept[at];
      if (typeof from !== 'object' || from === null || Array.isArray(from)) return draft;
      return withValue(draft, 'runs', [...kept, { ...from, id: freeId('run', kept) }]);
    });
    goTo(`#readings-${runs.length + 1}`);
  };
  const remove = () => {
    store.change(t('run.deleted', { name: runName(runs[at], at) }), (draft) =>
      withValue(draft, `runs.${at}`, undefined),
    );
    goTo(`#readings-${Math.max(1, at)}`);
  };
  return (
    <>
      <p className="mt-2 text-soft">{t('run.what')}</p>
      {runs.length === 0 ? (
        <p className="mt-4">{t('run.none')}</p>
      ) : (
        <nav aria-label={t('run.list')} className="mt-3 flex flex-wrap gap-2">
          {runs.map((run, i) => (
            <a
              key={textAt(run, 'id')}
              href={`#readings-${i + 1}`}
              aria-current={i === at ? 'true' : undefined}
              className={`press ${i === at ? 'bg-plum-wash underline decoration-2' : 'border-edge font-normal'}`}
            >
              <span>{runName(run, i)}</span>
              <span className="font-normal text-soft">{tn('run.readings', readingCount(run))}</span>
            </a>
          ))}
        </nav>
      )}
      {runs[at] === undefined ? null : (
        <div className="mt-3">
          <CompareRuns runId={textAt(runs[at], 'id')} />
        </div>
      )}
      {runs[at] === undefined ? null : <RunFields key={textAt(runs[at], 'id')} at={at} />}
      <ChargingTables />
      <div className="mt-6 flex flex-wrap gap-2">
        <button
          type="button"
          className={`press ${runs.length === 0 ? 'press-main w-full' : ''}`}
          onClick={add}
        >
          {runs.length === 0 ? t('run.addFirst') : t('run.add')}
        </button>
        {runs[at] === undefined ? null : (
          <>
            <button type="button" className="press" onClick={copy}>
              {t('run.copy', { name: runName(runs[at], at) })}
            </button>
            <button type="button" className="press press-plain" onClick={remove}>
              {t('run.delete', { name: runName(runs[at], at) })}
            </button>
          </>
        )}
      </div>
    </>
  );
}

/** A run as its technician calls it, else by its place. */
export function runName(run: DraftValue | undefined, at: number): string {
  const label = textAt(run, 'label').trim();
  return label === '' ? t('run.name', { n: at + 1 }) : label;
}

/** An id that no entry of the list has. */
export function freeId(stem: string, list: readonly DraftValue[]): string {
  const taken = new Set(list.map((entry) => textAt(entry, 'id')));
  let n = list.length + 1;
  while (taken.has(`${stem}-${n}`)) n += 1;
  return `${stem}-${n}`;
}

function lastMode(runs: readonly DraftValue[]): string {
  const mode = textAt(runs.at(-1), 'mode');
  return mode === '' ? 'cooling' : mode;
}
