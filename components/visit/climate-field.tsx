'use client';

import { useState } from 'react';
import { useDraftState, useDraftStore, useVisitId } from '@/components/draft/draft-context';
import { textAt } from '@/components/draft/draft-tree';
import { switchedClimate } from '@/components/energy/climate-draft';
import { OwnBins } from '@/components/energy/own-bins';
import { fieldId } from '@/components/form/field-id';
import { errorId, FieldError } from '@/components/form/field-message';
import { useIssues } from '@/components/form/use-field-issues';
import { t } from '@/components/words/words';

/** A climate one can choose: a city with its own hours, or a region of the standard test procedure. */
export type ClimateOption = { readonly kind: 'city' | 'region'; readonly key: string; readonly name: string };

const OWN = 'own:';

/** Where the weather of the yearly energy comes from. */
export function ClimateField(props: { readonly climates: readonly ClimateOption[] }) {
  const store = useDraftStore();
  const visitId = useVisitId();
  const kind = useDraftState((s) => textAt(s.draft, 'site.climate.kind'));
  const key = useDraftState((s) => textAt(s.draft, `site.climate.${kind}`));
  const { issues } = useIssues();
  // One list stands for several fields: an issue of any of them is said here, and its link leads here.
  const issue = issues.find((one) => `${one.path}.`.startsWith('site.climate.'));
  const path = issue?.path ?? 'site.climate';
  const id = fieldId(path);
  // an own table counts once it is there; until then the climate chosen before stays
  const [wantsOwn, setWantsOwn] = useState(false);
  const own = wantsOwn || kind === 'own';
  return (
    <div className="py-2">
      <label htmlFor={id} className="block font-medium">
        {t('house.climate')}
      </label>
      <select
        id={id}
        className="box mt-1 w-full"
        aria-invalid={issue !== undefined}
        aria-describedby={issue === undefined ? undefined : errorId(path)}
        value={own ? OWN : kind === '' ? '' : `${kind}:${key}`}
        onChange={(event) => {
          const [pickedKind = '', picked = ''] = event.target.value.split(':');
          setWantsOwn(pickedKind === 'own');
          store.change(t('house.climate'), (draft) => switchedClimate(visitId, draft, pickedKind, picked));
        }}
      >
        <option value="">{t('field.notKnown')}</option>
        {kind === '' ||
        kind === 'own' ||
        props.climates.some((c) => c.kind === kind && c.key === key) ? null : (
          <option value={`${kind}:${key}`}>{t('house.unlisted', { name: key })}</option>
        )}
        <optgroup label={t('house.cities')}>
          {props.climates.filter((c) => c.kind === 'city').map(optionOf)}
        </optgroup>
        <optgroup label={t('house.regions')}>
          {props.climates.filter((c) => c.kind === 'region').map(optionOf)}
        </optgroup>
        <option value={OWN}>{t('climate.own')}</option>
      </select>
      <p className="text-soft">{t('house.climateHint')}</p>
      {own ? <OwnBins cities={props.climates.filter((c) => c.kind === 'city')} /> : null}
      <FieldError path={path} />
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
