'use client';

import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { textAt } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { FieldError } from '@/components/form/field-message';
import { t } from '@/components/words/words';

/** A climate one can choose: a city with its own hours, or a region of the standard test procedure. */
export type ClimateOption = { readonly kind: 'city' | 'region'; readonly key: string; readonly name: string };

/** Where the weather of the yearly energy comes from. */
export function ClimateField(props: { readonly climates: readonly ClimateOption[] }) {
  const store = useDraftStore();
  const kind = useDraftState((s) => textAt(s.draft, 'site.climate.kind'));
  const key = useDraftState((s) => textAt(s.draft, `site.climate.${kind}`));
  const id = fieldId('site.climate');
  return (
    <div className="py-2">
      <label htmlFor={id} className="block font-medium">
        {t('house.climate')}
      </label>
      <select
        id={id}
        className="box mt-1 w-full"
        value={kind === '' ? '' : `${kind}:${key}`}
        onChange={(event) => {
          const [pickedKind = '', picked = ''] = event.target.value.split(':');
          const next = pickedKind === '' ? undefined : { kind: pickedKind, [pickedKind]: picked };
          store.set('site.climate', next, t('house.climate'));
        }}
      >
        <option value="">{t('field.notKnown')}</option>
        <optgroup label={t('house.cities')}>
          {props.climates.filter((c) => c.kind === 'city').map(optionOf)}
        </optgroup>
        <optgroup label={t('house.regions')}>
          {props.climates.filter((c) => c.kind === 'region').map(optionOf)}
        </optgroup>
      </select>
      <p className="text-soft">{t('house.climateHint')}</p>
      <FieldError path="site.climate" />
    </div>
  );
}

function optionOf(climate: ClimateOption) {
  return (
    <option key={`${climate.kind}:${climate.key}`} value={`${climate.kind}:${climate.key}`}>
      {climate.name}
    </option>
  );
}
