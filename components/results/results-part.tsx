'use client';

import { useAppraisal } from '@/components/appraisal/appraisal-context';
import type { AnswerView, RunView } from '@/components/appraisal/view';
import { t, tn } from '@/components/words/words';
import { Advice, CostNow } from './advice-block';
import { CausesBlock } from './causes-block';
import { DerivedRow, TargetRow } from './derived-row';
import { FlagNote } from './flag-note';
import { LossBlock } from './loss-block';
import { MissingNote } from './missing-note';
import { More } from './more';
import { Item } from './opening';
import { Titled } from './titled';

/** What is known so far: dangers first, then what the readings say, what was lost, and what it costs. */
export function ResultsPart() {
  const { view, answer, working } = useAppraisal();
  return (
    <div aria-busy={working}>
      {view.failure === undefined ? null : (
        <p role="alert" className="note-danger mb-3">
          {view.failure}
        </p>
      )}
      {answer === undefined ? <MissingNote /> : <Answer answer={answer} />}
    </div>
  );
}

function Answer(props: { readonly answer: AnswerView }) {
  const { answer } = props;
  const dangers = answer.flags.filter((flag) => flag.severity === 'danger');
  const doubts = answer.flags.filter((flag) => flag.severity === 'conflict' || flag.severity === 'doubt');
  const unknown = answer.flags.filter((flag) => flag.severity === 'unknown');
  return (
    <div className="grid gap-6">
      {dangers.length === 0 ? null : (
        <section aria-label={t('results.dangers')} className="grid gap-2">
          {dangers.map((flag) => (
            <FlagNote key={flag.words} flag={flag} />
          ))}
        </section>
      )}
      <Titled title={answer.sheet.pageOne.finding.title}>
        {answer.sheet.pageOne.finding.sentences.map((sentence) => (
          <p key={sentence} className="mt-1">
            {sentence}
          </p>
        ))}
      </Titled>
      {answer.causes === undefined ? null : <CausesBlock causes={answer.causes} />}
      <CostNow answer={answer} />
      <Advice answer={answer} />
      {doubts.length === 0 ? null : (
        <Titled title={t('results.doubts')}>
          {doubts.map((flag) => (
            <FlagNote key={flag.words} flag={flag} />
          ))}
        </Titled>
      )}
      {answer.runs.map((run) => (
        <RunBlock key={run.id} run={run} />
      ))}
      {answer.losses.map((loss) => (
        <LossBlock key={loss.mode} loss={loss} />
      ))}
      <Narrow sentences={answer.wouldNarrow} unknown={unknown.map((flag) => flag.words)} />
    </div>
  );
}

function RunBlock(props: { readonly run: RunView }) {
  const { run } = props;
  return (
    <Titled title={t('results.run', { name: run.name, mode: run.mode.toLowerCase() })}>
      <p className="text-soft">{t('results.opens')}</p>
      <div className="mt-1">
        {run.derived.map((derived) => (
          <DerivedRow key={derived.id} derived={derived} />
        ))}
        {run.targets.map((target) => (
          <TargetRow key={target.id} target={target} />
        ))}
        {run.noTargets.length === 0 ? null : (
          <More title={tn('derived.noRules', run.noTargets.length)}>
            <dl className="grid gap-2">
              {run.noTargets.map(({ name, why }) => (
                <Item key={name} term={name}>
                  {why}
                </Item>
              ))}
            </dl>
          </More>
        )}
        {run.derived.length + run.targets.length === 0 ? <p>{t('results.noDerived')}</p> : null}
      </div>
    </Titled>
  );
}

function Narrow(props: { readonly sentences: readonly string[]; readonly unknown: readonly string[] }) {
  if (props.sentences.length + props.unknown.length === 0) return null;
  return (
    <Titled title={t('results.narrow')}>
      <ol className="mt-1 list-decimal pl-6">
        {props.sentences.map((sentence) => (
          <li key={sentence} className="py-1">
            {sentence}
          </li>
        ))}
      </ol>
      <ul className="mt-1 list-disc pl-6">
        {props.unknown.map((sentence) => (
          <li key={sentence} className="py-1">
            {sentence}
          </li>
        ))}
      </ul>
    </Titled>
  );
}
