import type { DerivedView, TargetView } from '@/components/appraisal/view';
import { t } from '@/components/words/words';

/** A number of the findings; it opens to what it was made from. */
export function DerivedRow(props: { readonly derived: DerivedView }) {
  const { derived } = props;
  return (
    <details className="border-t border-hair">
      <summary className="flex min-h-12 list-none flex-wrap items-baseline gap-x-3 py-2 [&::-webkit-details-marker]:hidden">
        <span aria-hidden="true" className="fold-mark">
          ▸
        </span>
        <span className="min-w-0 flex-1">{derived.name}</span>
        <span className="text-lg font-semibold">{derived.value}</span>
        {derived.target === undefined ? null : <Verdict target={derived.target} />}
      </summary>
      <dl className="grid gap-2 border-l-2 border-hair pb-3 pl-4 sm:ml-1">
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
      </dl>
    </details>
  );
}

/** A plain reading with what a healthy unit would show. */
export function TargetRow(props: { readonly target: TargetView }) {
  const { target } = props;
  return (
    <details className="border-t border-hair">
      <summary className="flex min-h-12 list-none flex-wrap items-baseline gap-x-3 py-2 [&::-webkit-details-marker]:hidden">
        <span aria-hidden="true" className="fold-mark">
          ▸
        </span>
        <span className="min-w-0 flex-1">{target.name}</span>
        <span className="text-lg font-semibold">{target.reading ?? t('derived.notRead')}</span>
        <Verdict target={target} />
      </summary>
      <dl className="grid gap-2 border-l-2 border-hair pb-3 pl-4 sm:ml-1">
        <Item term={t('derived.healthy')}>{target.range}</Item>
        {target.note === undefined ? null : <Item term={t('derived.note')}>{target.note}</Item>}
        <Item term={t('derived.source')}>{target.source}</Item>
      </dl>
    </details>
  );
}

/** The verdict in words with its own mark; off-target ones stand out by weight and mark, not by colour. */
function Verdict(props: { readonly target: TargetView }) {
  const { verdict, verdictWords } = props.target;
  const mark = { above: '▲', below: '▼', within: '•', none: '' }[verdict];
  const off = verdict === 'above' || verdict === 'below';
  return (
    <span className={`w-full pl-6 ${off ? 'font-semibold text-doubt' : 'text-soft'}`}>
      {mark === '' ? null : <span aria-hidden="true">{mark} </span>}
      {verdictWords}
      <span className="font-normal text-soft">
        {', '}
        {t('derived.healthyShort', { range: props.target.range })}
      </span>
    </span>
  );
}

function Item(props: { readonly term: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt className="font-semibold">{props.term}</dt>
      <dd className="break-words">{props.children}</dd>
    </div>
  );
}
