import { expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';
import { dataFromDraft } from '@/components/draft/typed-data';
import {
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
