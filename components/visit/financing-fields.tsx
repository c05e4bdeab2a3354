'use client';

import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import {
  type Draft,
  type DraftValue,
  listAt,
  textAt,
  valueAt,
  withValue,
} from '@/components/draft/draft-tree';
import { isFinishedPlan } from '@/components/draft/financing-data';
import { fieldId } from '@/components/form/field-id';
import { FieldError } from '@/components/form/field-message';
import { PressRow } from '@/components/form/pick-field';
import { t, tCode } from '@/components/words/words';
import { PlanFields } from './plan-fields';

const KINDS = ['cash', 'levelLoan', 'promotional'];

/** How a choice is paid: the way that counts, and others to set beside it. */
export function FinancingFields(props: { readonly path: string; readonly steps?: boolean }) {
  const list = `${props.path}.financingOffers`;
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, list).length);
  return (
    <fieldset className="mt-4 min-w-0">
      <legend className="font-serif text-lg font-bold">{t('money.financing')}</legend>
      <Plan path={`${props.path}.financing`} steps={props.steps === true} />
      {Array.from({ length: count }, (_, i) => `${list}.${i}`).map((path, i) => (
        <fieldset key={path} className="mt-3 min-w-0 border-l-4 border-hair pl-3">
          <legend className="font-semibold">{t('money.otherWay', { n: i + 1 })}</legend>
          <Plan path={path} steps={props.steps === true} />
          <div className="flex flex-wrap gap-2">
            <button
              type="button"
              className="press press-plain"
              onClick={() =>
                store.change(t('money.countThisWay'), (draft) => withCounted(draft, props.path, i))
              }
            >
              {t('money.countThisWay')}
            </button>
            <button
              type="button"
              className="press press-plain"
              onClick={() =>
                store.change(t('money.wayRemoved'), (draft) => withValue(draft, path, undefined))
              }
            >
              {t('money.removeWay')}
            </button>
          </div>
        </fieldset>
      ))}
      {count >= MOST_OTHER_WAYS ? null : (
        <button
          type="button"
          className="press mt-2"
          onClick={() =>
            store.change(t('money.wayAdded'), (draft) =>
              withValue(draft, list, [...listAt(draft, list), { kind: 'levelLoan' }]),
            )
          }
        >
          {t('money.addWay')}
        </button>
      )}
    </fieldset>
  );
}

/** As many as the visit keeps (lib/visit/choice.ts). */
const MOST_OTHER_WAYS = 6;

/** The draft with another way to pay as the one that counts; the one that counted takes its place. */
function withCounted(draft: Draft, choice: string, at: number): Draft {
  const counted: DraftValue = valueAt(draft, `${choice}.financing`) ?? { kind: 'cash' };
  const other = valueAt(draft, `${choice}.financingOffers.${at}`);
  return withValue(
    withValue(draft, `${choice}.financing`, other),
    `${choice}.financingOffers.${at}`,
    counted,
  );
}

/** One way to pay. What was typed under one kind stays while another is looked at. */
function Plan(props: { readonly path: string; readonly steps: boolean }) {
  const { path } = props;
  const store = useDraftStore();
  const kind = useDraftState((s) => textAt(s.draft, `${path}.kind`));
  const open = useDraftState((s) => !isFinishedPlan(valueAt(s.draft, path)));
  const current = kind === '' ? 'cash' : kind;
  return (
    <>
      <FieldError path={path} />
      <PressRow
        name={fieldId(`${path}.kind`)}
        options={KINDS.map((value) => ({ value, words: tCode(`option.financing.${value}`) }))}
        current={current}
        onPick={(value) => store.set(`${path}.kind`, value, t('money.financing'))}
      />
      {current === 'cash' ? null : (
        <div className="rows mt-2">
          <PlanFields path={path} kind={current} steps={props.steps} />
          {open ? (
            <p className="py-2 text-soft">
              {t(current === 'promotional' ? 'money.promotionOpen' : 'money.loanOpen')}
            </p>
          ) : null}
        </div>
      )}
    </>
  );
}
