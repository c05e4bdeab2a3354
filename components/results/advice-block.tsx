import type { AnswerView } from '@/components/appraisal/view';
import { Titled } from './titled';

/** What it costs now, word for word as on the sheet. */
export function CostNow(props: { readonly answer: AnswerView; readonly level?: 2 | 3 }) {
  const { runningCost } = props.answer.sheet.pageOne;
  return (
    <Titled title={runningCost.title} level={props.level ?? 3}>
      {runningCost.sentences.map((sentence) => (
        <p key={sentence} className="mt-1">
          {sentence}
        </p>
      ))}
      <p className="mt-1 text-soft">{runningCost.basis}</p>
    </Titled>
  );
}

/** The advice with its reason and what would change it, word for word as on the sheet. */
export function Advice(props: { readonly answer: AnswerView; readonly level?: 2 | 3 }) {
  const { advice } = props.answer.sheet.pageOne;
  return (
    <Titled title={advice.title} level={props.level ?? 3} className="border-2 border-ink bg-leaf p-4">
      {advice.sentences.map((sentence) => (
        <p key={sentence} className="mt-1">
          {sentence}
        </p>
      ))}
      {advice.wouldChange.length === 0 ? null : (
        <>
          <p className="mt-3 font-semibold">{advice.changeTitle}</p>
          <ul className="list-disc pl-6">
            {advice.wouldChange.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </Titled>
  );
}
