'use client';

import { useDraftState, useDraftStore, useDraftValue, useFieldEntry } from '@/components/draft/draft-context';
import { listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { TickField } from '@/components/form/pick-field';
import { Stepper } from '@/components/form/stepper';
import { TextField } from '@/components/form/text-field';
import { t, tCode, type WordCode } from '@/components/words/words';
import { blankLine } from './blank-line';

/** The price of a choice, line by line as it will be quoted. */
export function PriceLines(props: { readonly path: string; readonly steps?: boolean }) {
  const list = `${props.path}.priceLines`;
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, list).length);
  return (
    <fieldset className="mt-4 min-w-0">
      <legend className="font-serif text-lg font-bold">{t('money.price')}</legend>
      <FieldError path={list} />
      {Array.from({ length: count }, (_, i) => `${list}.${i}`).map((row, i) => (
        <PriceLine key={row} path={row} n={i + 1} steps={props.steps === true} />
      ))}
      <button
        type="button"
        className="press mt-2"
        onClick={() =>
          store.change(t('money.lineAdded'), (draft) =>
            withValue(draft, list, [...listAt(draft, list), blankLine('part')]),
          )
        }
      >
        {t('money.addLine')}
      </button>
    </fieldset>
  );
}

const AMOUNT_WORDS: Readonly<Record<string, WordCode>> = {
  labour: 'money.amountLabour',
  refrigerant: 'money.amountRefrigerant',
};

function PriceLine(props: { readonly path: string; readonly n: number; readonly steps: boolean }) {
  const { path } = props;
  const store = useDraftStore();
  const kind = useDraftState((s) => textAt(s.draft, `${path}.kind`));
  const label = useDraftValue(`${path}.label`);
  const kinds = [...(useFieldEntry('choices.*.priceLines.*.kind').options ?? []), 'tax'];
  const name = typeof label === 'string' && label.trim() !== '' ? label : tCode(`option.lineKind.${kind}`);
  const line = t('money.line', { n: props.n });
  return (
    <div className="border-t border-hair py-2">
      <div className="flex flex-wrap items-end gap-2">
        <div className="w-36">
          <label htmlFor={fieldId(`${path}.kind`)} className="block font-medium">
            <span className="sr-only">{line}, </span>
            {t('money.lineKind')}
          </label>
          <select
            id={fieldId(`${path}.kind`)}
            className="box mt-1 w-full"
            value={kind}
            onChange={(event) => {
              const next = event.target.value;
              store.change(t('money.lineKind'), (draft) => withLineKind(draft, path, next));
            }}
          >
            {kinds.map((option) => (
              <option key={option} value={option}>
                {tCode(`option.lineKind.${option}`)}
              </option>
            ))}
          </select>
        </div>
        <div className="min-w-36 flex-1 [&>div]:py-0">
          <TextField path={`${path}.label`} label={t('money.lineName')} />
        </div>
      </div>
      <div className="flex flex-wrap items-start gap-x-2">
        {kind === 'tax' ? (
          <NumberField path={`${path}.taxFrac`} stacked />
        ) : (
          <>
            <NumberField
              path={`${path}.amount`}
              label={t(AMOUNT_WORDS[kind] ?? 'money.amountPieces')}
              stacked
            />
            {props.steps ? null : <NumberField path={`${path}.unitPriceUsd`} stacked />}
          </>
        )}
        <button
          type="button"
          className="press press-plain mb-2 ml-auto self-end px-1"
          aria-label={t('money.deleteLine', { name })}
          onClick={() =>
            store.change(t('money.deleted', { name }), (draft) => withValue(draft, path, undefined))
          }
        >
          {t('money.remove')}
        </button>
      </div>
      {props.steps && kind !== 'tax' ? (
        <Stepper path={`${path}.unitPriceUsd`} step={kind === 'equipment' ? 50 : 5} />
      ) : null}
    </div>
  );
}

type Tree = Parameters<typeof withValue>[0];

/** A tax line has a rate instead of amount and price; what was typed under the other kind is put away. */
function withLineKind(draft: Tree, path: string, kind: string): Tree {
  const label = textAt(draft, `${path}.label`);
  const kept = label === '' ? { kind } : { kind, label };
  if (kind === 'tax') return withValue(draft, path, kept);
  const amount = textAt(draft, `${path}.amount`);
  const price = textAt(draft, `${path}.unitPriceUsd`);
  return withValue(draft, path, {
    ...kept,
    amount: amount === '' ? '1' : amount,
    ...(price === '' ? {} : { unitPriceUsd: price }),
  });
}

/** Money back, with its condition and its dates. */
export function RebateLines(props: { readonly path: string; readonly steps?: boolean }) {
  const list = `${props.path}.rebates`;
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, list).length);
  return (
    <fieldset className="mt-4 min-w-0">
      <legend className="font-serif text-lg font-bold">{t('money.rebates')}</legend>
      {Array.from({ length: count }, (_, i) => `${list}.${i}`).map((row) => (
        <div key={row} className="border-t border-hair py-2">
          <TextField path={`${row}.label`} />
          {props.steps === true ? (
            <Stepper path={`${row}.amountUsd`} step={50} />
          ) : (
            <NumberField path={`${row}.amountUsd`} stacked />
          )}
          <TextField path={`${row}.condition`} />
          <TextField path={`${row}.firstDate`} date />
          <TextField path={`${row}.lastDate`} date />
          <NumberField path={`${row}.paidAfterMonths`} />
          <TickField path={`${row}.toPrincipal`} />
          <button
            type="button"
            className="press press-plain"
            onClick={() =>
              store.change(t('money.rebateDeleted'), (draft) => withValue(draft, row, undefined))
            }
          >
            {t('money.removeRebate')}
          </button>
        </div>
      ))}
      <button
        type="button"
        className="press mt-2"
        onClick={() =>
          store.change(t('money.rebateAdded'), (draft) =>
            withValue(draft, list, [...listAt(draft, list), {}]),
          )
        }
      >
        {t('money.addRebate')}
      </button>
    </fieldset>
  );
}
