'use client';

import dynamic from 'next/dynamic';
import Link from 'next/link';
import { useAppraisal } from '@/components/appraisal/appraisal-context';
import type { AnswerView } from '@/components/appraisal/view';
import { useDraftState, useVisitId } from '@/components/draft/draft-context';
import { YearOfMoney } from '@/components/energy/year-of-money';
import { ErrorSummary } from '@/components/form/error-summary';
import { ChancePanel } from '@/components/odds/chance-panel';
import { WaysBox } from '@/components/odds/ways-box';
import { Advice, CostNow } from '@/components/results/advice-block';
import { FlagNote } from '@/components/results/flag-note';
import { MissingNote } from '@/components/results/missing-note';
import { Titled } from '@/components/results/titled';
import { DraftNotices } from '@/components/shell/draft-notices';
import { SaveWords } from '@/components/shell/save-words';
import { UndoButton } from '@/components/shell/undo-button';
import { isInvented, visitName } from '@/components/visit/parts';
import { t } from '@/components/words/words';
import { Behind } from './behind';
import { ChoiceCards, ChoiceTable } from './choice-table';
import { ChosenPick } from './chosen-pick';
import { PrintAndSend } from './send-sheet';
import { RecordLinks, SheetLink, SpanishLinks } from './sheet-link';
import { TotalBars } from './total-bars';
import { TryValues } from './try-values';
import { useCustomerMode } from './use-customer-mode';
import { WhenNear } from './when-near';

const CostLines = dynamic(() => import('@/components/charts/cost-lines').then((m) => m.CostLines), {
  ssr: false,
  loading: () => <p>{t('chart.loading')}</p>,
});
const BalanceLines = dynamic(() => import('@/components/charts/balance-lines').then((m) => m.BalanceLines), {
  ssr: false,
  loading: () => <p>{t('chart.loading')}</p>,
});

const DecidePanels = dynamic(() => import('@/components/odds/decide-panels').then((m) => m.DecidePanels), {
  ssr: false,
  loading: () => <p>{t('chart.loading')}</p>,
});

/** All choices side by side, with everything one may try at the table. */
export function CompareScreen(props: {
  /** The address asked for the customer's view. */
  readonly forCustomer?: boolean;
}) {
  const mode = useCustomerMode(props.forCustomer === true);
  const id = useVisitId();
  const { view, answer, working } = useAppraisal();
  const name = useDraftState((s) => visitName(s.draft));
  const invented = useDraftState((s) => isInvented(s.draft));
  return (
    <div className="mx-auto flex min-h-dvh max-w-7xl flex-col px-4">
      <header className="py-4">
        {mode.on ? (
          <p className="note-plain no-print mb-2 flex flex-wrap items-center justify-between gap-2">
            {t('compare.customerNote')}
            <button type="button" className="press" onClick={() => mode.turn(false)}>
              {t('compare.customerOff')}
            </button>
          </p>
        ) : (
          <div className="no-print flex flex-wrap items-center justify-between gap-x-4">
            <Link href={`/visits/${id}#results`} className="inline-flex min-h-12 items-center">
              {t('compare.back')}
            </Link>
            <button type="button" className="press" onClick={() => mode.turn(true)}>
              {t('compare.customerOn')}
            </button>
          </div>
        )}
        <h1 className="text-2xl md:text-3xl">{t('compare.title')}</h1>
        <p className="text-lg">{name === '' ? t('visit.unnamed') : name}</p>
        {invented ? <p className="text-soft">{t('list.invented')}</p> : null}
      </header>
      <DraftNotices />
      {mode.on ? null : <ErrorSummary />}
      {view.failure === undefined ? null : (
        <p role="alert" className="note-danger mb-3">
          {view.failure}
        </p>
      )}
      {answer === undefined ? (
        <MissingNote />
      ) : (
        <Answered answer={answer} working={working} forCustomer={mode.on} />
      )}
      <div className="no-print sticky bottom-0 z-10 -mx-4 mt-auto border-t-2 border-ink bg-paper px-4 py-2">
        <div className="flex flex-wrap items-center gap-x-3 gap-y-1">
          <div className="min-w-0 flex-1">
            <SaveWords />
          </div>
          {mode.on ? null : <UndoButton />}
          <SheetLink />
        </div>
      </div>
    </div>
  );
}

function Answered(props: {
  readonly answer: AnswerView;
  readonly working: boolean;
  readonly forCustomer: boolean;
}) {
  const { answer } = props;
  const { pageOne, pageTwo } = answer.sheet;
  const dangers = answer.flags.filter((flag) => flag.severity === 'danger');
  return (
    <div
      className="grid gap-8 pb-8 xl:grid-cols-[minmax(0,1fr)_23rem] xl:grid-rows-[auto_1fr]"
      aria-busy={props.working}
    >
      <div className="grid min-w-0 content-start gap-8">
        {dangers.length === 0 ? null : (
          <section aria-label={t('results.dangers')} className="grid gap-2">
            {dangers.map((flag) => (
              <FlagNote key={flag.words} flag={flag} />
            ))}
          </section>
        )}
        <div className="grid gap-6 lg:grid-cols-2">
          <Titled title={pageOne.finding.title} level={2}>
            {pageOne.finding.sentences.map((sentence) => (
              <p key={sentence} className="mt-1">
                {sentence}
              </p>
            ))}
            {pageOne.finding.conflict === undefined ? null : (
              <p className="note-doubt mt-2">{pageOne.finding.conflict}</p>
            )}
          </Titled>
          <CostNow answer={answer} level={2} />
        </div>
        <Titled title={pageOne.choices.title} level={2} className="panel min-w-0">
          <p role="status" className="min-h-6 text-soft">
            {props.working ? t('compare.stale') : ''}
          </p>
          {pageOne.leftOut === undefined ? null : <p className="note-doubt mt-2">{pageOne.leftOut}</p>}
          <ChoiceTable table={answer.table} caption={pageOne.choices.title} />
          <ChoiceCards table={answer.table} />
        </Titled>
      </div>
      <TryValues rates={answer.triedRates} forCustomer={props.forCustomer} />
      <div className="grid min-w-0 content-start gap-8">
        <Advice answer={answer} level={2} />
        <Titled title={pageOne.waiting.title} level={2}>
          {pageOne.waiting.sentences.map((sentence) => (
            <p key={sentence} className="mt-1">
              {sentence}
            </p>
          ))}
        </Titled>
        {answer.drivers === undefined ? null : <ChancePanel />}
        <Titled title={pageOne.totals.title} level={2} className="panel">
          <TotalBars chart={pageOne.totals} />
        </Titled>
        <WhenNear>
          <CostLines chart={answer.cost} />
        </WhenNear>
        <WhenNear>
          <DecidePanels answer={answer} />
        </WhenNear>
        <YearOfMoney view={answer.year} />
        {answer.balance === undefined ? null : (
          <WhenNear>
            <BalanceLines chart={answer.balance} />
          </WhenNear>
        )}
        <ChosenPick />
        <WaysBox
          title={pageTwo.financing.title}
          choices={answer.ways}
          none={pageTwo.financing.none ?? ''}
          terms={pageTwo.financing.terms}
        />
        <Behind pageTwo={pageTwo} />
        <PrintAndSend />
        {props.forCustomer ? null : <RecordLinks />}
        <SpanishLinks />
        <Titled title={t('compare.how')} level={2}>
          {pageOne.explanations.map((sentence) => (
            <p key={sentence} className="mt-1">
              {sentence}
            </p>
          ))}
        </Titled>
      </div>
    </div>
  );
}
