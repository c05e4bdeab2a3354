import type { DerivedView, InputView, TargetView } from '@/components/appraisal/view';
import { t } from '@/components/words/words';
import { Item, Opening } from './opening';

/** A number of the findings; it opens to what it was made from. */
export function DerivedRow(props: { readonly derived: DerivedView }) {
  const { derived } = props;
  const { target, noTarget } = derived;
  return (
    <Opening
      name={derived.name}
      value={derived.value}
      below={target === undefined ? undefined : <Verdict target={target} />}
    >
      {target === undefined ? null : <TargetItems target={target} />}
      {noTarget === undefined ? null : (
        <Item term={t('derived.healthy')}>{t('derived.noRule', { why: noTarget })}</Item>
      )}
      <Item term={t('derived.inputs')}>
        <Inputs list={derived.inputs} />
      </Item>
      <Item term={t('derived.formula')}>{derived.formula}</Item>
      <Item term={t('derived.source')}>
        {derived.source} ({derived.basis})
      </Item>
      <Item term={t('derived.doubtTerm')}>{derived.doubt}</Item>
    </Opening>
  );
}

/** A plain reading with what a healthy unit would show. */
export function TargetRow(props: { readonly target: TargetView }) {
  const { target } = props;
  return (
    <Opening
      name={target.name}
      value={target.reading ?? t('derived.notRead')}
      below={<Verdict target={target} />}
    >
      <TargetItems target={target} />
    </Opening>
  );
}

/** What a healthy unit would read: range, rule, the conditions it was asked at, and where the rule is from. */
function TargetItems(props: { readonly target: TargetView }) {
  const { plain, range, note, formula, conditions, source } = props.target;
  return (
    <>
      {plain === undefined ? null : <Item term={t('derived.homeowner')}>{plain}</Item>}
      <Item term={t('derived.healthy')}>
        {range}
        {note === undefined ? null : <span className="block">{note}</span>}
      </Item>
      {formula === undefined ? null : (
        <Item term={t('derived.rule')}>
          {formula}
          <span className="block text-soft">{source}</span>
        </Item>
      )}
      {conditions.length === 0 ? null : (
        <Item term={t('derived.conditions')}>
          <Inputs list={conditions} />
        </Item>
      )}
    </>
  );
}

function Inputs(props: { readonly list: readonly InputView[] }) {
  return (
    <ul>
      {props.list.map((input) => (
        <li key={input.name}>
          {t('derived.input', { name: input.name, value: input.value, basis: input.basis })}
          {input.source === undefined ? null : <span className="block text-soft">{input.source}</span>}
        </li>
      ))}
    </ul>
  );
}

/** The verdict in words with its own mark; off-target ones stand out by weight and mark, not by colour. */
function Verdict(props: { readonly target: TargetView }) {
  const { verdict, verdictWords } = props.target;
  const mark = { above: '▲', below: '▼', within: '•', none: '' }[verdict];
  const off = verdict === 'above' || verdict === 'below';
  return (
    <span className={off ? 'font-semibold text-doubt' : 'text-soft'}>
      {mark === '' ? null : <span aria-hidden="true">{mark} </span>}
      {verdictWords}
      <span className="font-normal text-soft">
        {', '}
        {t('derived.healthyShort', { range: props.target.range })}
      </span>
    </span>
  );
}
