import { expect, test } from 'vitest';
import next from '@/lib/diagnostics/causes/data/next-readings.json';
import { defaultPriceBook } from '@/lib/finance/default-price-book';
import { bundleFromBook, entriesFor, priceFromBook, testEntry } from '@/lib/finance/price-from-book';
import { priceTotal } from '@/lib/finance/price-total';
import { PriceLine, RepairAction } from '@/lib/visit/choice';
import type { PriceBook } from '@/lib/visit/price-book';
import { orifice, single } from './fixtures';

const job = { date: '2026-11-03', nominalTons: 3, refrigerant: 'R-410A' } as const;

test('outside: a recharge by hand: hours, drier, recovery, vacuum, pounds by size, tax', () => {
  const price = priceFromBook(defaultPriceBook, 'drier-recharge', job);
  // 2.5 x 135 + 52 + 95 + 80 + 0.6 x 3 x 62 = 676.10; tax 7 %: 47.33
  expect(priceTotal(price?.priceLines ?? []).totalUsd).toBe('723.43');
  expect(price?.priceLines.every((line) => PriceLine.safeParse(line).success)).toBe(true);
  expect(price).toMatchObject({ warrantyYears: 1, siteHours: 3.5, notes: [] });
});

test('property: the price of a date is the one in force then; later changes do not reach it', () => {
  const labour = defaultPriceBook.items.find((i) => i.id === 'labour') ?? fail();
  const raised = {
    ...labour,
    prices: [...labour.prices, { fromDate: '2027-01-01', setBy: 'owner', why: 'wages', priceUsd: 150 }],
  };
  const items = defaultPriceBook.items.map((i) => (i.id === 'labour' ? raised : i));
  const book: PriceBook = { ...defaultPriceBook, items };
  const rate = (date: string) =>
    priceFromBook(book, 'open-registers', { ...job, date })?.priceLines.flatMap((l) =>
      l.kind === 'labour' ? [l.unitPriceUsd] : [],
    );
  expect([rate('2026-12-31'), rate('2027-01-01')]).toEqual([[135], [150]]);
  expect(priceFromBook(book, 'open-registers', { ...job, date: '2025-01-01' })).toBeUndefined();
});

test('property: what has no price is left out and said so', () => {
  const { refrigerant: _none, ...unknown } = job;
  const price = priceFromBook(defaultPriceBook, 'leak-recharge', unknown);
  expect(price?.notes.map((n) => n.code)).toEqual(['bookRefrigerantMissing']);
  expect(price?.priceLines.some((l) => l.kind === 'refrigerant')).toBe(false);
  expect(priceFromBook(defaultPriceBook, 'no-such-job', job)).toBeUndefined();
});

test('wiring: every repair, every new unit and every test of the findings has an entry, marked invented', () => {
  expect(defaultPriceBook.invented).toBe(true);
  const actions = RepairAction.options.map((action) =>
    entriesFor(defaultPriceBook, { ...orifice, actions: [action] }),
  );
  expect(actions.filter((ids) => ids.length !== 1)).toEqual([]);
  const tiers = (['singleSpeed', 'twoSpeed', 'variableSpeed'] as const).flatMap((tier) =>
    [false, true].map((dual) => entriesFor(defaultPriceBook, { ...single, tier }, dual)),
  );
  expect(tiers.filter((ids) => ids.length !== 1)).toEqual([]);
  const tests = [...Object.keys(next.readings), ...Object.keys(next.tests)];
  expect(tests.filter((id) => testEntry(defaultPriceBook, id) === undefined)).toEqual([]);
  const missing = defaultPriceBook.entries.flatMap(
    (e) => priceFromBook(defaultPriceBook, e.id, job)?.notes ?? [],
  );
  expect(missing).toEqual([]);
});

test('property: a bundle is its jobs one after the other with one tax', () => {
  const both = bundleFromBook(defaultPriceBook, ['capacitor', 'outdoor-coil'], job);
  expect(both?.priceLines.filter((l) => l.kind === 'tax')).toHaveLength(1);
  const sum = (id: string) =>
    Number(priceTotal(priceFromBook(defaultPriceBook, id, job)?.priceLines ?? []).totalUsd);
  const total = Number(priceTotal(both?.priceLines ?? []).totalUsd);
  expect(Math.abs(total - sum('capacitor') - sum('outdoor-coil'))).toBeLessThan(0.011);
  expect(bundleFromBook(defaultPriceBook, ['capacitor', 'nothing'], job)).toBeUndefined();
  expect(entriesFor(defaultPriceBook, { ...orifice, priceBookEntry: 'txv' })).toEqual(['txv']);
});

function fail(): never {
  throw new Error('missing');
}
