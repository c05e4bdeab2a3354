'use client';

import Link from 'next/link';
import { useAppraisal } from '@/components/appraisal/appraisal-context';
import { useDraftState, useVisitId } from '@/components/draft/draft-context';
import { listAt } from '@/components/draft/draft-tree';
import { ErrorSummary } from '@/components/form/error-summary';
import { useIssues } from '@/components/form/use-field-issues';
import { FlagNote } from '@/components/results/flag-note';
import { MissingNote } from '@/components/results/missing-note';
import { ResultsPart } from '@/components/results/results-part';
import { DraftNotices } from '@/components/shell/draft-notices';
import { SaveWords } from '@/components/shell/save-words';
import { UndoButton } from '@/components/shell/undo-button';
import { t, tCode, tn } from '@/components/words/words';
import type { ClimateOption } from './climate-field';
import { HousePart } from './house-part';
import { MoneyPart } from './money-part';
import { isDone, isInvented, PARTS, type Part, visitName } from './parts';
import { ReadingsPart } from './readings-part';
import { SeenPart } from './seen-part';
import { goTo, usePlace } from './use-place';

/** One visit: on a phone a list of parts and one part at a time, on wider screens parts and results side by side. */
export function VisitScreen(props: { readonly climates: readonly ClimateOption[] }) {
  const place = usePlace();
  const name = useDraftState((s) => visitName(s.draft));
  const invented = useDraftState((s) => isInvented(s.draft));
  const part = place.part ?? 'house';
  const wideOnly = place.part === undefined ? 'hidden md:block' : '';
  return (
    <div className="mx-auto flex min-h-dvh max-w-7xl flex-col px-4">
      <header className={`md:py-4 ${place.part === undefined ? 'py-4' : 'pt-2'}`}>
        <Link
          href="/"
          className={`no-print min-h-12 items-center md:inline-flex ${place.part === undefined ? 'inline-flex' : 'hidden'}`}
        >
          {t('visit.all')}
        </Link>
        <h1 className={`md:text-3xl ${place.part === undefined ? 'text-2xl' : 'text-lg'}`}>
          {name === '' ? t('visit.unnamed') : name}
        </h1>
        {invented ? <p className="text-soft">{t('list.invented')}</p> : null}
      </header>
      <DraftNotices />
      <ErrorSummary />
      <div className="grid gap-x-8 md:grid-cols-[minmax(0,1fr)_minmax(18rem,22rem)] lg:grid-cols-[13rem_minmax(0,1fr)_minmax(22rem,28rem)]">
        <PartList current={place.part} />
        {place.part === undefined ? <SoFar /> : null}
        <div className={`min-w-0 ${wideOnly}`}>
          <PartHead part={part} />
          {part === 'house' ? <HousePart climates={props.climates} /> : null}
          {part === 'readings' ? <ReadingsPart entry={place.entry} /> : null}
          {part === 'seen' ? <SeenPart /> : null}
          {part === 'money' ? <MoneyPart entry={place.entry} /> : null}
          {part === 'results' ? (
            <>
              <div className="md:hidden">
                <ResultsPart />
              </div>
              <ResultActions />
            </>
          ) : null}
          <NextPart part={part} />
        </div>
        <aside
          aria-label={t('part.results')}
          className="hidden md:sticky md:top-0 md:block md:max-h-[calc(100dvh-5.5rem)] md:self-start md:overflow-y-auto md:pb-8"
        >
          <h2 className="panel pb-2 text-2xl">{t('part.results')}</h2>
          <ResultsPart />
        </aside>
      </div>
      <VisitBar part={place.part} />
    </div>
  );
}

function PartHead(props: { readonly part: Part }) {
  return (
    <div className="panel">
      <a href="#parts" className="inline-flex min-h-12 items-center md:hidden">
        {t('visit.parts')}
      </a>
      <h2 className="text-2xl">{tCode(`part.${props.part}`)}</h2>
    </div>
  );
}

/** The parts as a list of tasks: what is done is quiet, what is left stands out. */
function PartList(props: { readonly current: Part | undefined }) {
  const hidden = props.current === undefined ? '' : 'hidden md:block';
  return (
    <nav aria-label={t('visit.partList')} className={`md:col-span-2 lg:col-span-1 ${hidden}`}>
      <ol className="rows md:flex md:border-b md:border-hair lg:sticky lg:top-0 lg:block lg:border-b-0 [&>li]:md:flex-1">
        {PARTS.map((part) => (
          <PartRow key={part} part={part} current={props.current} />
        ))}
      </ol>
    </nav>
  );
}

function PartRow(props: { readonly part: Part; readonly current: Part | undefined }) {
  const { part } = props;
  const done = useDraftState((s) => isDone(part, s.draft));
  const runs = useDraftState((s) => listAt(s.draft, 'runs').length);
  const choices = useDraftState((s) => listAt(s.draft, 'choices').length);
  const isHere = props.current === part || (props.current === undefined && part === 'house');
  const detail =
    part === 'readings' && runs > 0
      ? tn('part.runs', runs)
      : part === 'money' && choices > 1
        ? tn('part.choices', choices)
        : t(done ? 'part.done' : part === 'seen' ? 'part.optional' : 'part.notYet');
  return (
    <li className="md:border-t-0!">
      <a
        href={`#${part}`}
        aria-current={isHere ? 'step' : undefined}
        className={`flex min-h-14 items-center gap-3 py-2 text-ink no-underline md:block md:px-2 ${
          isHere
            ? 'md:bg-plum-wash md:shadow-[inset_0_-4px_0_var(--plum)] lg:shadow-[inset_4px_0_0_var(--plum)] lg:pl-4'
            : 'lg:pl-4'
        }`}
      >
        <span className="flex-1 font-serif text-lg font-bold underline decoration-1 underline-offset-4">
          {tCode(`part.${part}`)}
        </span>
        {part === 'results' ? (
          <span className="md:hidden" aria-hidden="true">
            ▸
          </span>
        ) : (
          <span className={`md:block ${done ? 'text-soft' : 'font-semibold text-plum'}`}>{detail}</span>
        )}
      </a>
    </li>
  );
}

function NextPart(props: { readonly part: Part }) {
  const next = PARTS[PARTS.indexOf(props.part) + 1];
  if (next === undefined) return null;
  return (
    <p className="mt-8">
      <a href={`#${next}`} className="press w-full sm:w-auto">
        {t('visit.next', { part: tCode(`part.${next}`) })}
      </a>
    </p>
  );
}

/** On the phone's list of parts: what is known so far, dangers first. */
function SoFar() {
  const { answer } = useAppraisal();
  const dangers = (answer?.flags ?? []).filter((flag) => flag.severity === 'danger');
  return (
    <div role="status" className="grid gap-2 py-6 md:hidden">
      {dangers.map((flag) => (
        <FlagNote key={flag.words} flag={flag} />
      ))}
      {answer === undefined ? (
        <MissingNote />
      ) : (
        <p className="panel text-lg font-semibold">{answer.headline}</p>
      )}
    </div>
  );
}

function ResultActions() {
  const id = useVisitId();
  return (
    <div className="mt-6 grid gap-2 sm:flex sm:flex-wrap">
      <Link href={`/visits/${id}/compare`} className="press press-main">
        {t('visit.compare')}
      </Link>
    </div>
  );
}

/** Always in reach of a thumb: what is saved, undo, and the way on. */
function VisitBar(props: { readonly part: Part | undefined }) {
  const id = useVisitId();
  const { answer } = useAppraisal();
  const { attempt } = useIssues();
  const atResults = props.part === 'results';
  return (
    <div className="no-print sticky bottom-0 z-10 -mx-4 mt-auto border-t-2 border-ink bg-paper px-4 py-2">
      <div className="flex flex-wrap items-center gap-x-3 gap-y-1">
        <div className="min-w-0 flex-1">
          {answer === undefined || props.part === undefined || atResults ? null : (
            <p className="line-clamp-2 leading-tight font-semibold md:hidden">{answer.headline}</p>
          )}
          <SaveWords />
        </div>
        <UndoButton />
        {atResults ? null : (
          <button
            type="button"
            className="press press-main md:hidden"
            onClick={() => {
              attempt();
              goTo('#results');
            }}
          >
            {t('visit.results')}
          </button>
        )}
        <Link
          href={`/visits/${id}/compare`}
          onClick={attempt}
          className={`press press-main ${atResults ? '' : 'hidden md:inline-flex'}`}
        >
          {t('visit.compare')}
        </Link>
      </div>
    </div>
  );
}
