'use client';

import dynamic from 'next/dynamic';
import { useDraftState, useDraftStore, useFieldEntry } from '@/components/draft/draft-context';
import { type DraftValue, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { FuelFields } from '@/components/energy/fuel-fields';
import { TariffFields } from '@/components/energy/tariff-fields';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { PickField } from '@/components/form/pick-field';
import { t, tCode } from '@/components/words/words';
import { blankLine } from './blank-line';
import { Fold, Group } from './fold';
import { freeId } from './readings-part';
import { goTo } from './use-place';

const ChoiceFields = dynamic(() => import('./choice-fields').then((m) => m.ChoiceFields));

/** What things cost and what the customer may choose. */
export function MoneyPart(props: { readonly entry: number | undefined }) {
  return (
    <>
      <Group title={t('money.power')}>
        <TariffFields />
        <FuelFields />
      </Group>
      <Group title={t('money.stay')}>
        <NumberField path="site.stayYears" hint={t('money.stayHint')} />
      </Group>
      <Choices entry={props.entry} />
      <div className="mt-6">
        <Fold title={t('money.counting')} aside={t('house.optional')}>
          <PickField path="convention.timing" words="timing" unknown />
          <PickField path="convention.residual" words="residual" unknown />
        </Fold>
      </div>
    </>
  );
}

function Choices(props: { readonly entry: number | undefined }) {
  const store = useDraftStore();
  const choices = useDraftState((s) => listAt(s.draft, 'choices'));
  const actions = useFieldEntry('choices.*.actions.*').options ?? [];
  const append = (what: string, make: (taken: readonly DraftValue[], draft: DraftValue) => DraftValue) => {
    store.change(what, (draft) => {
      const kept = listAt(draft, 'choices');
      return withValue(draft, 'choices', [...kept, make(kept, draft)]);
    });
    goTo(`#money-${choices.length + 1}`);
  };
  return (
    <>
      <Group title={t('money.choices')} note={t('money.choicesNote')}>
        {choices.map((choice, i) => (
          <ChoiceFold key={textAt(choice, 'id')} at={i} choice={choice} open={props.entry === i} />
        ))}
      </Group>
      <div className="mt-4">
        <label htmlFor="add-repair" className="block font-medium">
          {t('money.addRepair')}
        </label>
        <select
          id="add-repair"
          className="box mt-1 w-full"
          value=""
          onChange={(event) => {
            const action = event.target.value;
            if (action === '') return;
            const name = tCode(`option.repair.${action}`);
            append(name, (kept) => ({
              kind: 'repair',
              id: freeId('repair', kept),
              name,
              actions: [action],
              priceLines: [blankLine('labour'), blankLine('part')],
            }));
          }}
        >
          <option value="">{t('money.pickRepair')}</option>
          {actions.map((action) => (
            <option key={action} value={action}>
              {tCode(`option.repair.${action}`)}
            </option>
          ))}
        </select>
      </div>
      <button
        type="button"
        className="press mt-3 w-full"
        onClick={() =>
          append(t('money.addReplacement'), (kept, draft) => {
            const kind = textAt(draft, 'unit.kind') === 'airConditioner' ? 'airConditioner' : 'heatPump';
            const tons = textAt(draft, 'unit.nominalTons');
            return {
              kind: 'replace',
              id: freeId('replace', kept),
              name: tCode(`option.newUnit.${kind}`),
              unitKind: kind,
              tier: 'singleSpeed',
              ...(tons === '' ? {} : { nominalTons: tons }),
              ratings: {},
              priceLines: [blankLine('equipment'), blankLine('labour')],
            };
          })
        }
      >
        {t('money.addReplacement')}
      </button>
    </>
  );
}

function ChoiceFold(props: { readonly at: number; readonly choice: DraftValue; readonly open: boolean }) {
  const { at, choice } = props;
  const store = useDraftStore();
  const kind = textAt(choice, 'kind');
  const name = textAt(choice, 'name').trim();
  const shown = name === '' ? tCode(`option.choiceKind.${kind}`) : name;
  return (
    <Fold title={shown} aside={kind === 'leave' ? '' : tCode(`option.choiceKind.${kind}`)} open={props.open}>
      <FieldError path={`choices.${at}`} />
      <ChoiceFields at={at} kind={kind} name={shown} />
      {kind === 'leave' ? null : (
        <button
          type="button"
          className="press press-plain mt-3"
          onClick={() =>
            store.change(t('money.deleted', { name: shown }), (draft) =>
              withValue(draft, `choices.${at}`, undefined),
            )
          }
        >
          {t('money.delete', { name: shown })}
        </button>
      )}
    </Fold>
  );
}
