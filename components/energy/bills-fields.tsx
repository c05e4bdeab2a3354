'use client';

import dynamic from 'next/dynamic';
import { useState } from 'react';
import { useAppraisal } from '@/components/appraisal/appraisal-context';
import type { BillNote, BillsView } from '@/components/appraisal/energy-inputs-view';
import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { type DraftValue, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { TickField } from '@/components/form/pick-field';
import { TextField } from '@/components/form/text-field';
import { useIssues } from '@/components/form/use-field-issues';
import { typedWords } from '@/components/format/entry-words';
import { dateWords } from '@/components/format/time-words';
import { Fold } from '@/components/visit/fold';
import { t } from '@/components/words/words';
import { PasteTable } from './paste-table';

const BillPlot = dynamic(() => import('@/components/charts/bill-plot').then((m) => m.BillPlot), {
  ssr: false,
  loading: () => <p>{t('chart.loading')}</p>,
});

const NO_NOTES: readonly BillNote[] = [];

/** Electricity bills: pasted, uploaded or typed; every doubt stands beside its bill, the verdict below. */
export function BillsFields() {
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, 'bills').length);
  const [opened, setOpened] = useState<number | undefined>(undefined);
  const view = useAppraisal().answer?.energyInputs.bills;
  const notes = view?.notes ?? NO_NOTES;
  return (
    <>
      <p className="text-soft">{t('bills.why')}</p>
      <PasteTable
        label={t('bills.paste')}
        hint={t('bills.pasteHint')}
        example={t('bills.pasteExample')}
        read={async (text) => {
          const { takenBills } = await import('./taken-bills');
          return takenBills(store, text);
        }}
      />
      <FieldError path="bills" />
      {count === 0 || view === undefined ? null : <Verdict view={view} />}
      {Array.from({ length: count }, (_, i) => `bills.${i}`).map((path, i) => (
        <BillFold key={path} path={path} n={i + 1} open={opened === i} notes={notes} />
      ))}
      <div className="mt-2 flex flex-wrap gap-2">
        <button
          type="button"
          className="press"
          onClick={() => {
            setOpened(count);
            store.change(t('bills.added'), (draft) =>
              withValue(draft, 'bills', [...listAt(draft, 'bills'), nextBill(draft)]),
            );
          }}
        >
          {t('bills.add')}
        </button>
        {count === 0 ? null : (
          <button
            type="button"
            className="press press-plain"
            onClick={() => store.change(t('bills.cleared'), (draft) => withValue(draft, 'bills', undefined))}
          >
            {t('bills.clear')}
          </button>
        )}
      </div>
    </>
  );
}

/** A bill begins where the last one ended. */
function nextBill(draft: Parameters<typeof withValue>[0]): DraftValue {
  const end = textAt(listAt(draft, 'bills').at(-1), 'toDate');
  return end === '' ? {} : { fromDate: end };
}

function BillFold(props: {
  readonly path: string;
  readonly n: number;
  readonly open: boolean;
  readonly notes: readonly BillNote[];
}) {
  const { path, n } = props;
  const store = useDraftStore();
  const from = useDraftState((s) => textAt(s.draft, `${path}.fromDate`));
  const to = useDraftState((s) => textAt(s.draft, `${path}.toDate`));
  const kwh = useDraftState((s) => textAt(s.draft, `${path}.kwh`));
  const usd = useDraftState((s) => textAt(s.draft, `${path}.costUsd`));
  const { issues } = useIssues();
  const doubts = props.notes.filter((note) => from !== '' && note.fromDate === from);
  const wrong = issues.some((issue) => issue.path.startsWith(`${path}.`));
  const name = from === '' && to === '' ? t('bills.row', { n }) : periodWords(from, to);
  return (
    <Fold
      open={props.open}
      title={
        <>
          <span className="block">{name}</span>
          {wrong ? <span className="block text-danger">{t('bills.rowWrong')}</span> : null}
          {doubts.map((note) => (
            <span key={note.words} className="block font-normal text-doubt">
              {note.words}
            </span>
          ))}
        </>
      }
      aside={
        <span className="block text-right">
          {kwh === '' ? '' : t('energy.kwh', { n: typedWords(kwh, false) })}
          {usd === '' ? null : <span className="block">{typedWords(usd, true)}</span>}
        </span>
      }
    >
      <div className="grid grid-cols-1 gap-x-4 sm:grid-cols-2">
        <TextField path={`${path}.fromDate`} date />
        <TextField path={`${path}.toDate`} date />
      </div>
      <div className="rows">
        <NumberField path={`${path}.kwh`} />
        <NumberField path={`${path}.costUsd`} />
        <NumberField path={`${path}.meanOutdoorF`} hint={t('bills.meanHint')} />
        <TickField path={`${path}.estimated`} />
      </div>
      <button
        type="button"
        className="press press-plain"
        onClick={() => store.change(t('bills.removed'), (draft) => withValue(draft, path, undefined))}
      >
        {t('bills.remove', { name })}
      </button>
    </Fold>
  );
}

function periodWords(from: string, to: string): string {
  const day = (date: string) => (date === '' ? '?' : dateWords(date));
  return t('bills.fromTo', { from: day(from), to: day(to) });
}

const VERDICT_LOOK = { accept: 'note-plain', doubtful: 'note-doubt', unusable: 'note-danger' } as const;

function Verdict(props: { readonly view: BillsView }) {
  const { view } = props;
  const general = view.notes.filter((note) => note.fromDate === undefined);
  const inRows = view.notes.some((note) => note.fromDate !== undefined);
  return (
    <div className="py-2">
      <div role="status" className={VERDICT_LOOK[view.verdict]}>
        <p className="font-semibold">{view.verdictWords}</p>
        {view.split === undefined ? null : <p>{view.split}</p>}
        <ul>
          {general.map((note) => (
            <li key={note.words}>{note.words}</li>
          ))}
        </ul>
        {inRows ? <p>{t('bills.seeRows')}</p> : null}
      </div>
      {view.measures.length === 0 ? null : (
        <dl className="mt-2 grid gap-2">
          {view.measures.map((measure) => (
            <div key={measure.name}>
              <dt>
                {measure.name}: <strong>{measure.value}</strong>
              </dt>
              <dd className="text-soft">{measure.meaning}</dd>
            </div>
          ))}
        </dl>
      )}
      {view.plot === undefined ? null : <BillPlot plot={view.plot} />}
    </div>
  );
}
