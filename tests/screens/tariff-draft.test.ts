import { expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';
import { dataFromDraft } from '@/components/draft/typed-data';
import {
  switchedTariff,
  TARIFF_KINDS,
  tariffKind,
  withPeriodMonth,
  withSeasonMonth,
  withTariffKind,
} from '@/components/energy/tariff-draft';
import { readDraft } from '@/lib/visit/read-visit';

const base: Draft = {
  schemaVersion: 1,
  id: 'tariff',
  visitDate: '2026-11-25',
  site: {},
  unit: { kind: 'heatPump', nominalTons: '3' },
  runs: [],
  observations: [],
  assumptions: [],
  choices: [{ kind: 'leave', id: 'leave', name: 'Leave', priceLines: [] }],
};
const priced: Draft = { ...base, tariff: { energyUsdPerKwh: '0.16', fixedUsdPerMonth: '14' } };

const read = (draft: Draft) => readDraft(dataFromDraft(draft, fieldBook(), (kind) => kind).data);

test('wiring: whatever kind is picked, the price and the fixed charge typed before count on', () => {
  const kinds = TARIFF_KINDS.map((kind) => withTariffKind(priced, kind));
  expect(kinds.map(tariffKind)).toEqual(TARIFF_KINDS);
  const visits = kinds.map((draft) => read(draft).visit);
  expect(visits.map((visit) => visit?.tariff?.kind)).toEqual(TARIFF_KINDS);
  expect(visits.map((visit) => visit?.tariff?.fixedUsdPerMonth)).toEqual([14, 14, 14, 14]);
  expect(visits.every((visit) => JSON.stringify(visit?.tariff).includes('"energyUsdPerKwh":0.16'))).toBe(
    true,
  );
  expect(kinds.map((draft) => tariffKind(withTariffKind(draft, 'flat')))).toEqual(Array(4).fill('flat'));
});

test('wiring: between seasons and tiers the names and months of the seasons are kept', () => {
  const seasonal = withTariffKind(priced, 'seasonal');
  const back = withTariffKind(withSeasonMonth(seasonal, 0, 5, true), 'seasonal');
  expect(read(back).visit?.tariff).toMatchObject({
    seasons: [
      { label: 'Summer', months: [5, 6, 7, 8, 9] },
      { label: 'Rest of the year', months: [1, 2, 3, 4, 10, 11, 12] },
    ],
  });
});

test('property: a month pressed in one season leaves the others, so that none is named twice', () => {
  let draft = withTariffKind(priced, 'seasonal');
  for (const [at, month] of [
    [0, 1],
    [1, 7],
    [0, 12],
    [1, 1],
  ] as const)
    draft = withSeasonMonth(draft, at, month, true);
  const seasons = read(draft).visit?.tariff;
  const months = JSON.stringify(seasons).match(/"months":\[([\d,]*)\]/g);
  expect(months).toEqual(['"months":[6,8,9,12]', '"months":[1,2,3,4,5,7,10,11]']);
});

test('wiring: by time of day begins with a peak and a price for the rest, so that no hour is without one', () => {
  const { visit } = read(withTariffKind(priced, 'timeOfUse'));
  expect(visit?.tariff).toMatchObject({ otherUsdPerKwh: 0.16 });
  const draft = withPeriodMonth(withTariffKind(priced, 'timeOfUse'), 0, 3, false);
  expect(JSON.stringify(draft.tariff)).toContain('"months":[1,2,4,5,6,7,8,9,10,11,12],"days":"weekdays"');
});

test('regression: a kind of tariff typed before comes back with every price, hour, tier and month', () => {
  const timeOfUse = {
    kind: 'timeOfUse',
    periods: [
      { label: 'Dear', months: [6, 7], days: 'all', fromHour: '15', toHour: '20', energyUsdPerKwh: '0.45' },
    ],
    otherUsdPerKwh: '0.12',
  };
  const seasons = switchedTariff('there', { ...base, tariff: timeOfUse }, 'seasonal');
  expect(switchedTariff('there', seasons, 'timeOfUse').tariff).toEqual(timeOfUse);
  const tiers = [{ upToKwh: '500', energyUsdPerKwh: '0.10' }, { energyUsdPerKwh: '0.22' }];
  const tiered = { kind: 'tiered', seasons: [{ months: [1, 2, 3], tiers }] };
  const flat = switchedTariff('back', { ...base, tariff: tiered }, 'flat');
  const typed = { ...flat, tariff: { kind: 'flat', energyUsdPerKwh: '0.15', fixedUsdPerMonth: '9' } };
  // the fixed charge belongs to every kind: the newest counts
  const again = switchedTariff('back', typed, 'tiered');
  expect(again.tariff).toEqual({ ...tiered, fixedUsdPerMonth: '9' });
  expect(switchedTariff('back', again, 'flat').tariff).toEqual(typed.tariff);
});

test('regression: prices that differ are left open in another kind, and the gap is named, not filled', () => {
  const touTariff = {
    kind: 'timeOfUse',
    periods: [{ months: [1, 2], days: 'all', fromHour: '16', toHour: '21', energyUsdPerKwh: '0.45' }],
    otherUsdPerKwh: '0.12',
  };
  for (const kind of ['flat', 'seasonal', 'tiered'] as const) {
    const next = withTariffKind({ ...base, tariff: touTariff }, kind);
    expect(JSON.stringify(next.tariff)).not.toContain('UsdPerKwh');
    expect(read(next).visit?.tariff).toBeUndefined();
  }
  const seasonal = withTariffKind({ ...base, tariff: touTariff }, 'seasonal');
  expect(read(seasonal).issues.map(({ path }) => path)).toContain('tariff.seasons.0.energyUsdPerKwh');
});

test('identity: a season keeps its own price where it has but one, between seasons and tiers', () => {
  const seasons = [
    { label: 'Warm', months: [5, 6], energyUsdPerKwh: '0.2' },
    { months: [1, 2], energyUsdPerKwh: '0.1' },
  ];
  const tiered = withTariffKind({ ...base, tariff: { kind: 'seasonal', seasons } }, 'tiered');
  expect(tiered.tariff).toMatchObject({
    seasons: [
      { label: 'Warm', months: [5, 6], tiers: [{ energyUsdPerKwh: '0.2' }, { energyUsdPerKwh: '0.2' }] },
      { months: [1, 2], tiers: [{ energyUsdPerKwh: '0.1' }, { energyUsdPerKwh: '0.1' }] },
    ],
  });
  expect(withTariffKind(tiered, 'seasonal').tariff).toEqual({ kind: 'seasonal', seasons });
});

test('property: what a switch filled in and nobody touched is made anew from the price typed since', () => {
  const seasonal = switchedTariff('fresh', priced, 'seasonal');
  const flat = switchedTariff('fresh', seasonal, 'flat');
  const dearer = { ...flat, tariff: { kind: 'flat', energyUsdPerKwh: '0.21' } };
  const prices = JSON.stringify(switchedTariff('fresh', dearer, 'seasonal').tariff).match(
    /"energyUsdPerKwh":"[\d.]+"/g,
  );
  expect(prices).toEqual(Array(2).fill('"energyUsdPerKwh":"0.21"'));
});
