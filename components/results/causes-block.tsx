import type { CausesView, CauseView } from '@/components/appraisal/view';
import { t, tn } from '@/components/words/words';
import { CauseRow } from './cause-row';
import { More } from './more';
import { NextReadingBlock } from './next-reading-block';
import { Titled } from './titled';

/** What is wrong, how sure that is, and what to read next. */
export function CausesBlock(props: { readonly causes: CausesView }) {
  const { causes } = props;
  const { main, besides, slight } = causes;
  return (
    <Titled title={t('causes.title')}>
      {causes.verdict === 'found' ? null : <p className="mt-1 font-semibold">{causes.verdictWords}</p>}
      {[...causes.resolved, ...causes.notes].map((sentence) => (
        <p key={sentence} className="mt-1">
          {sentence}
        </p>
      ))}
      <CauseList title={t(causes.mainIsGone ? 'causes.foundBefore' : 'causes.found')} causes={main} />
      <CauseList title={t(main.length > 0 ? 'causes.besides' : 'causes.instead')} causes={besides} />
      {slight.length === 0 ? null : (
        <More title={tn('causes.slight', slight.length)}>
          {slight.map((cause) => (
            <CauseRow key={cause.id} cause={cause} />
          ))}
        </More>
      )}
      <NextReadingBlock causes={causes} />
    </Titled>
  );
}

function CauseList(props: { readonly title: string; readonly causes: readonly CauseView[] }) {
  if (props.causes.length === 0) return null;
  return (
    <div className="mt-3">
      <p className="text-soft">{props.title}</p>
      {props.causes.map((cause) => (
        <CauseRow key={cause.id} cause={cause} />
      ))}
    </div>
  );
}
