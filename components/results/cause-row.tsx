import type { CauseView, EvidenceView } from '@/components/appraisal/view';
import { t, tn } from '@/components/words/words';
import { More } from './more';
import { Item, Opening } from './opening';

/** So much evidence is in sight at once; the rest is a tap away. */
const IN_SIGHT = 4;

/** A cause with its chance and severity; it opens to the evidence and to how the chance came about. */
export function CauseRow(props: { readonly cause: CauseView }) {
  const { cause } = props;
  return (
    <Opening
      name={<span className="font-semibold">{cause.name}</span>}
      below={[cause.chance, cause.severity].filter((words) => words !== undefined).join(', ')}
      after={<How cause={cause} />}
    >
      {cause.plain === undefined ? null : <Item term={t('causes.homeowner')}>{cause.plain}</Item>}
      <Item term={t('causes.for')}>
        {cause.speaksFor.length === 0 ? t('causes.nothingFor') : <Evidence list={cause.speaksFor} />}
      </Item>
      {cause.speaksAgainst.length === 0 ? null : (
        <Item term={t('causes.against')}>
          <Evidence list={cause.speaksAgainst} />
        </Item>
      )}
      {cause.confusedWith.map((other) => (
        <Item key={other.name} term={t('causes.confused', { name: other.name })}>
          {other.separate}
        </Item>
      ))}
      {cause.hints.map((hint) => (
        <Item key={hint} term={t('derived.note')}>
          {hint}
        </Item>
      ))}
      <Item term={t('causes.severity')}>{cause.severityMeaning}</Item>
      <Item term={t('causes.loss')}>
        {cause.loss.length === 0 ? t('causes.noLoss') : cause.loss.join(' ')}
      </Item>
    </Opening>
  );
}

/** How the chance came about: prior, printed patterns, and the rule that joined them. */
function How(props: { readonly cause: CauseView }) {
  const { prior, priorSource, patterns } = props.cause;
  return (
    <More title={t('causes.how')} strong>
      <dl className="grid gap-2">
        <Item term={prior}>
          <span className="text-soft">{priorSource}</span>
        </Item>
        {patterns.map((pattern) => (
          <Item
            key={`${pattern.mode} ${pattern.source} ${pattern.note ?? ''}`}
            term={t('causes.pattern', { mode: pattern.mode.toLowerCase() })}
          >
            {pattern.note === undefined ? null : <span className="block">{pattern.note}</span>}
            <span className="text-soft">{pattern.source}</span>
          </Item>
        ))}
      </dl>
      <p className="mt-2">{t('causes.bayes')}</p>
    </More>
  );
}

function Evidence(props: { readonly list: readonly EvidenceView[] }) {
  const rest = props.list.slice(IN_SIGHT);
  return (
    <>
      <EvidenceList list={props.list.slice(0, IN_SIGHT)} />
      {rest.length === 0 ? null : (
        <More title={tn('causes.more', rest.length)}>
          <EvidenceList list={rest} />
        </More>
      )}
    </>
  );
}

function EvidenceList(props: { readonly list: readonly EvidenceView[] }) {
  return (
    <ul className="rows">
      {props.list.map((evidence) => (
        <li key={evidence.key} className="py-2">
          <span className="flex items-baseline justify-between gap-3">
            <span>
              {evidence.name}
              {evidence.run === undefined ? null : <span className="text-soft"> ({evidence.run})</span>}
            </span>
            {evidence.value === undefined ? null : (
              <span className="shrink-0 font-semibold">{evidence.value}</span>
            )}
          </span>
          {evidence.detail === undefined ? null : <span className="block">{evidence.detail}</span>}
          <span className="block text-soft">{evidence.strength}</span>
        </li>
      ))}
    </ul>
  );
}
