import type { CausesView, NextView } from '@/components/appraisal/view';
import { t } from '@/components/words/words';

/** The reading worth taking next with what each outcome would mean; further ones a tap away. */
export function NextReadingBlock(props: { readonly causes: CausesView }) {
  const { next, idle, verdict } = props.causes;
  const [first, ...others] = next;
  return (
    <div className="mt-4 border-t-2 border-ink pt-2">
      <h4 className="font-semibold">{t('causes.next')}</h4>
      {first === undefined ? (
        <p className="mt-1">{t('causes.nothingNext')}</p>
      ) : (
        <>
          <p className="mt-1">{first.title}</p>
          <Outcomes next={first} />
        </>
      )}
      {others.length === 0 ? null : (
        <details className="border-t border-hair">
          <summary className="min-h-12 py-3">{t('causes.nextOther')}</summary>
          {others.map((other) => (
            <details key={other.title} className="border-t border-hair pl-3">
              <summary className="min-h-12 py-3">{other.title}</summary>
              <Outcomes next={other} />
            </details>
          ))}
        </details>
      )}
      {idle.length === 0 || verdict !== 'found' ? null : (
        <details className="border-t border-hair">
          <summary className="min-h-12 py-3">{t('causes.idle')}</summary>
          <ul className="list-disc pl-6">
            {idle.map((title) => (
              <li key={title}>{title}</li>
            ))}
          </ul>
        </details>
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
