import type { DerivedView, TargetView } from '@/components/appraisal/view';
import { t } from '@/components/words/words';
import { Item, Opening } from './opening';

/** A number of the findings; it opens to what it was made from. */
export function DerivedRow(props: { readonly derived: DerivedView }) {
  const { derived } = props;
  return (
    <Opening
      name={derived.name}
      value={derived.value}
      below={derived.target === undefined ? undefined : <Verdict target={derived.target} />}
    >
      <Item term={t('derived.doubtTerm')}>{derived.doubt}</Item>
      {derived.target === undefined ? null : (
        <Item term={t('derived.healthy')}>
          {derived.target.range}
          {derived.target.note === undefined ? null : <span className="block">{derived.target.note}</span>}
          <span className="block text-soft">{derived.target.source}</span>
        </Item>
      )}
      <Item term={t('derived.inputs')}>
        <ul>
          {derived.inputs.map((input) => (
            <li key={input.name}>
              {t('derived.input', { name: input.name, value: input.value, basis: input.basis })}
              {input.source === undefined ? null : <span className="block text-soft">{input.source}</span>}
            </li>
          ))}
        </ul>
      </Item>
      <Item term={t('derived.formula')}>{derived.formula}</Item>
      <Item term={t('derived.source')}>
        {derived.source} ({derived.basis})
      </Item>
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
      <Item term={t('derived.healthy')}>{target.range}</Item>
      {target.note === undefined ? null : <Item term={t('derived.note')}>{target.note}</Item>}
      <Item term={t('derived.source')}>{target.source}</Item>
    </Opening>
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
