'use client';

import { useDraftState, useDraftStore, useFieldEntry } from '@/components/draft/draft-context';
import { listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { ListField, PickField } from '@/components/form/pick-field';
import { TextField } from '@/components/form/text-field';
import { t, tCode } from '@/components/words/words';
import { FillButton } from './fill-button';
import { FinancingFields } from './financing-fields';
import { Fold } from './fold';
import { FurnaceFields } from './furnace-fields';
import { RatingFields } from './house-part';
import { LaterButton, LaterFields } from './later-fields';
import { PriceLines, RebateLines } from './price-lines';

/** Everything about one choice; leaving it has a name and nothing to buy. */
export function ChoiceFields(props: { readonly at: number; readonly kind: string; readonly name: string }) {
  const path = `choices.${props.at}`;
  if (props.kind === 'leave') {
    return (
      <>
        <p className="text-soft">{t('money.leaveNote')}</p>
        <TextField path={`${path}.name`} />
        <TextField path={`${path}.note`} long />
      </>
    );
  }
  return (
    <>
      <TextField path={`${path}.name`} />
      {props.kind === 'replace' ? <ReplaceFields path={path} /> : <RepairFields path={path} />}
      {props.kind === 'repairThenReplace' ? <LaterFields path={path} /> : null}
      <PriceLines path={path} />
      <FillButton path={path} />
      <RebateLines path={path} />
      <FinancingFields path={path} />
      <Fold title={t('money.choiceNote')} aside={t('house.optional')}>
        <TextField path={`${path}.note`} long />
      </Fold>
      <LaterButton path={path} name={props.name} />
    </>
  );
}

function RepairFields(props: { readonly path: string }) {
  const store = useDraftStore();
  const options = useFieldEntry('choices.*.actions.*').options ?? [];
  const actions = useDraftState((s) => listAt(s.draft, `${props.path}.actions`));
  return (
    <>
      <Fold
        title={t('money.actions')}
        aside={actions.map((action) => tCode(`option.repair.${String(action)}`)).join(', ')}
      >
        <FieldError path={`${props.path}.actions`} />
        {options.map((action) => (
          <label key={action} className="flex min-h-12 cursor-pointer items-center gap-3">
            <input
              type="checkbox"
              className="size-7 accent-plum"
              checked={actions.includes(action)}
              onChange={(event) => {
                const on = event.target.checked;
                store.change(t('money.actions'), (draft) => {
                  const others = listAt(draft, `${props.path}.actions`).filter((a) => a !== action);
                  return withValue(draft, `${props.path}.actions`, on ? [...others, action] : others);
                });
              }}
            />
            <span>{tCode(`option.repair.${action}`)}</span>
          </label>
        ))}
      </Fold>
      <ListField path={`${props.path}.addresses`} label={t('money.addresses')} words="cause" unknown />
    </>
  );
}

function ReplaceFields(props: { readonly path: string }) {
  const heats = useDraftState((s) => textAt(s.draft, `${props.path}.unitKind`) !== 'airConditioner');
  return (
    <>
      <PickField path={`${props.path}.unitKind`} words="unitKind" />
      <PickField path={`${props.path}.tier`} words="tier" />
      <div className="rows">
        <NumberField path={`${props.path}.nominalTons`} />
      </div>
      <Fold title={t('house.ratings')} aside={t('house.optional')}>
        <p className="text-soft">{t('money.ratingsNote')}</p>
        <RatingFields path={`${props.path}.ratings`} heats={heats} />
      </Fold>
      <PickField path={`${props.path}.blower`} words="blower" unknown />
      {heats ? <FurnaceFields path={props.path} /> : null}
    </>
  );
}
