'use client';

import { useAppraisal } from '@/components/appraisal/appraisal-context';
import { useDraftState, useDraftStore, useVisitId } from '@/components/draft/draft-context';
import { type DraftValue, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { PickField, PressRow } from '@/components/form/pick-field';
import { TextField } from '@/components/form/text-field';
import { t, tCode } from '@/components/words/words';
import { MonthsField } from './months-field';
import { PriceClocks } from './price-clocks';
import {
  switchedTariff,
  TARIFF_KINDS,
  type TariffKind,
  tariffKind,
  withPeriodMonth,
  withSeasonMonth,
} from './tariff-draft';

/** What electricity costs: one price, or prices by season, by amount or by time of day. */
export function TariffFields() {
  const store = useDraftStore();
  const visitId = useVisitId();
  const kind = useDraftState((s) => tariffKind(s.draft));
  const view = useAppraisal().answer?.energyInputs.tariff;
  return (
    <>
      <fieldset className="min-w-0 py-2">
        <legend className="font-medium">{t('tariff.kind')}</legend>
        <PressRow
          name={fieldId('tariff.kind')}
          options={TARIFF_KINDS.map((value) => ({ value, words: tCode(`option.tariff.${value}`) }))}
          current={kind}
          onPick={(picked) =>
            store.change(t('tariff.kind'), (draft) => switchedTariff(visitId, draft, picked as TariffKind))
          }
        />
      </fieldset>
      {kind === 'flat' ? (
        <NumberField path="tariff.energyUsdPerKwh" hint={t('money.powerHint')} />
      ) : (
        <p className="py-2 text-soft">{t('money.powerHint')}</p>
      )}
      {kind === 'seasonal' || kind === 'tiered' ? <Seasons tiered={kind === 'tiered'} /> : null}
      {kind === 'timeOfUse' ? <Periods /> : null}
      <FieldError path="tariff" />
      {view === undefined ? null : (
        <div role="status" className="py-2">
          {view.notes.map((note) => (
            <p key={note} className="note-doubt mb-2">
              {note}
            </p>
          ))}
          <p className={view.assumed ? 'note-plain' : 'text-soft'}>{view.used}</p>
        </div>
      )}
      {kind === 'timeOfUse' && view !== undefined ? <PriceClocks clocks={view.clocks} /> : null}
      <NumberField path="tariff.fixedUsdPerMonth" hint={t('tariff.fixedHint')} />
    </>
  );
}

function Seasons(props: { readonly tiered: boolean }) {
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, 'tariff.seasons').length);
  const blank: DraftValue = props.tiered ? { months: [], tiers: [{}] } : { months: [] };
  return (
    <>
      <FieldError path="tariff.seasons" />
      {Array.from({ length: count }, (_, i) => `tariff.seasons.${i}`).map((path, i) => (
        <Part key={path} path={path} n={i + 1} of="season" canGo={count > 1}>
          <MonthsField
            path={`${path}.months`}
            onPress={(month, on) =>
              store.change(t('tariff.months'), (draft) => withSeasonMonth(draft, i, month, on))
            }
          />
          {props.tiered ? <Tiers path={`${path}.tiers`} /> : <NumberField path={`${path}.energyUsdPerKwh`} />}
        </Part>
      ))}
      <Add words={t('tariff.addSeason')} list="tariff.seasons" blank={blank} />
    </>
  );
}

function Tiers(props: { readonly path: string }) {
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, props.path).length);
  return (
    <div className="py-2">
      <p className="font-medium">{t('tariff.tiers')}</p>
      <p className="text-soft">{t('tariff.tiersHint')}</p>
      {Array.from({ length: count }, (_, i) => `${props.path}.${i}`).map((tier, i) => (
        <div key={tier} className="flex flex-wrap items-end gap-x-4 border-t border-hair">
          <NumberField path={`${tier}.upToKwh`} label={t('tariff.tierEnd', { n: i + 1 })} stacked />
          <NumberField path={`${tier}.energyUsdPerKwh`} label={t('tariff.tierPrice', { n: i + 1 })} stacked />
          {count < 2 ? null : (
            <button
              type="button"
              className="press press-plain mb-2 ml-auto px-1"
              onClick={() => store.change(t('tariff.removed'), (draft) => withValue(draft, tier, undefined))}
            >
              {t('tariff.removeTier', { n: i + 1 })}
            </button>
          )}
        </div>
      ))}
      <Add words={t('tariff.addTier')} list={props.path} blank={{}} />
    </div>
  );
}

function Periods() {
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, 'tariff.periods').length);
  const months = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
  return (
    <>
      <FieldError path="tariff.periods" />
      {Array.from({ length: count }, (_, i) => `tariff.periods.${i}`).map((path, i) => (
        <Part key={path} path={path} n={i + 1} of="period" canGo={count > 1}>
          <NumberField path={`${path}.energyUsdPerKwh`} />
          <PickField path={`${path}.days`} words="days" />
          <div className="flex flex-wrap gap-x-6">
            <NumberField path={`${path}.fromHour`} stacked />
            <NumberField path={`${path}.toHour`} stacked />
          </div>
          <p className="text-soft">{t('tariff.hoursHint')}</p>
          <MonthsField
            path={`${path}.months`}
            onPress={(month, on) =>
              store.change(t('tariff.months'), (draft) => withPeriodMonth(draft, i, month, on))
            }
          />
        </Part>
      ))}
      <Add words={t('tariff.addPeriod')} list="tariff.periods" blank={{ months, days: 'all' }} />
      <NumberField path="tariff.otherUsdPerKwh" hint={t('tariff.otherHint')} />
    </>
  );
}

/** One season or period, with its name and a way to take it out. */
function Part(props: {
  readonly path: string;
  readonly n: number;
  readonly of: 'season' | 'period';
  readonly canGo: boolean;
  readonly children: React.ReactNode;
}) {
  const { path, n } = props;
  const store = useDraftStore();
  const label = useDraftState((s) => textAt(s.draft, `${path}.label`).trim());
  const name = label === '' ? t(`tariff.${props.of}`, { n }) : label;
  return (
    <fieldset className="mt-3 min-w-0 border-l-4 border-hair pl-3">
      <legend className="font-serif text-lg font-bold">{name}</legend>
      <FieldError path={path} />
      {props.children}
      <div className="flex flex-wrap items-end gap-x-3">
        <div className="min-w-36 flex-1">
          <TextField path={`${path}.label`} />
        </div>
        {props.canGo ? (
          <button
            type="button"
            className="press press-plain mb-2 px-1"
            onClick={() => store.change(t('tariff.removed'), (draft) => withValue(draft, path, undefined))}
          >
            {t('tariff.remove', { name })}
          </button>
        ) : null}
      </div>
    </fieldset>
  );
}

function Add(props: { readonly words: string; readonly list: string; readonly blank: DraftValue }) {
  const store = useDraftStore();
  return (
    <button
      type="button"
      className="press my-2"
      onClick={() =>
        store.change(props.words, (draft) =>
          withValue(draft, props.list, [...listAt(draft, props.list), props.blank]),
        )
      }
    >
      {props.words}
    </button>
  );
}
