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
import { NumberField } from '@/components/form/number-field';
import { ListField } from '@/components/form/pick-field';
import { Stepper } from '@/components/form/stepper';
import { t, tCode } from '@/components/words/words';
import { freeId } from './readings-part';

/** Years until the new unit when the choice is first made; ours, meant to be changed. */
const FIRST_YEARS = '3';

/** When the repaired unit is replaced, and by which. */
export function LaterFields(props: { readonly path: string; readonly steps?: boolean }) {
  const { path } = props;
  const choices = useDraftState((s) => listAt(s.draft, 'choices'));
  const options = choices.flatMap((choice) => {
    if (textAt(choice, 'kind') !== 'replace') return [];
    const name = textAt(choice, 'name').trim();
    return [{ value: textAt(choice, 'id'), words: name === '' ? tCode('option.choiceKind.replace') : name }];
  });
  const years = `${path}.replaceAfterYears`;
  return (
    <>
      {props.steps === true ? <Stepper path={years} step={1} start={3} /> : <NumberField path={years} />}
      {options.length === 0 ? (
        <p className="py-2 text-soft">{t('money.laterNeedsNew')}</p>
      ) : (
        <ListField
          path={`${path}.replaceWith`}
          label={t('money.replaceWith')}
          options={options}
          empty={t('money.replaceWithCheapest')}
        />
      )}
    </>
  );
}

/** Sets the same repair, followed by a new unit some years later, beside this one. */
export function LaterButton(props: { readonly path: string; readonly name: string }) {
  const store = useDraftStore();
  const isRepair = useDraftState((s) => textAt(s.draft, `${props.path}.kind`) === 'repair');
  if (!isRepair) return null;
  return (
    <button
      type="button"
      className="press mt-3"
      onClick={() => store.change(t('money.addLater'), (draft) => withLater(draft, props.path, props.name))}
    >
      {t('money.addLater')}
    </button>
  );
}

function withLater(draft: Draft, path: string, name: string): Draft {
  const repair = valueAt(draft, path);
  if (typeof repair !== 'object' || repair === null || Array.isArray(repair)) return draft;
  const kept = listAt(draft, 'choices');
  const later: DraftValue = {
    ...repair,
    kind: 'repairThenReplace',
    id: freeId('repair-then-replace', kept),
    name: t('money.laterName', { name }).slice(0, NAME_LETTERS),
    replaceAfterYears: FIRST_YEARS,
  };
  return withValue(draft, 'choices', [...kept, later]);
}

/** As many letters as the name of a choice may have (lib/visit/choice.ts). */
const NAME_LETTERS = 80;
