import type { CausesView, NextView } from '@/components/appraisal/view';
import { t } from '@/components/words/words';
import { More } from './more';

/** The reading worth taking next with what each outcome would mean; further ones a tap away. */
export function NextReadingBlock(props: { readonly causes: CausesView }) {
  const { next, idle, verdict } = props.causes;
  const [first, ...others] = next;
  return (
    <div className="mt-4 border-t-2 border-ink pt-2">
      <h4 className="font-semibold">{t('causes.next')}</h4>
      {first === undefined ? (
        <p className="mt-1">{props.causes.nothingNext}</p>
      ) : (
        <>
          <p className="mt-1">{first.title}</p>
          <Outcomes next={first} />
        </>
      )}
      {others.length === 0 ? null : (
        <More title={t('causes.nextOther')}>
          {others.map((other) => (
            <More key={other.title} title={other.title}>
              <Outcomes next={other} />
            </More>
          ))}
        </More>
      )}
      {idle.length === 0 || verdict !== 'found' ? null : (
        <More title={t('causes.idle')}>
          <ul className="list-disc pl-6">
            {idle.map((title) => (
              <li key={title}>{title}</li>
            ))}
          </ul>
        </More>
      )}
    </div>
  );
}

function Outcomes(props: { readonly next: NextView }) {
  return (
    <ul className="rows">
      {props.next.outcomes.map(({ outcome, chance, meaning }) => (
        <li key={outcome} className="py-2">
          <span className="font-semibold">{outcome}</span>{' '}
          <span className="text-soft">{t('causes.outcomeChance', { chance })}</span>
          <span className="block">{meaning}</span>
        </li>
      ))}
    </ul>
  );
}
