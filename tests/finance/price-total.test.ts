import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exact } from '@/lib/finance/money';
import { priceTotal } from '@/lib/finance/price-total';
import type { PriceLine } from '@/lib/visit/choice';

const labour: PriceLine = { kind: 'labour', label: 'Labour', amount: 2.75, unitPriceUsd: 128.5 };
const refrigerant: PriceLine = { kind: 'refrigerant', label: 'R-410A', amount: 3.4, unitPriceUsd: 62.35 };
const drier: PriceLine = { kind: 'part', label: 'Filter-drier', amount: 1, unitPriceUsd: 38.95 };
const permit: PriceLine = { kind: 'permit', label: 'Permit', amount: 1, unitPriceUsd: 85 };
const tax: PriceLine = { kind: 'tax', label: 'Sales tax', taxFrac: 0.0825 };

test('outside: a price list worked by hand', () => {
  // by hand: 2.75 x 128.50 = 353.375 -> 353.38; 3.4 x 62.35 = 211.99; 38.95; tax 8.25 % of 604.32 = 49.8564 -> 49.86
  const total = priceTotal([labour, refrigerant, drier, tax, permit]);
  expect(total.lines.map((l) => l.totalUsd)).toEqual(['353.38', '211.99', '38.95', '49.86', '85.00']);
  expect(total).toMatchObject({ beforeTaxUsd: '689.32', taxUsd: '49.86', totalUsd: '739.18' });
});

test('property: a tax taxes only the lines above it, and never another tax', () => {
  expect(priceTotal([tax, labour]).totalUsd).toBe('353.38');
  expect(priceTotal([drier, tax, tax]).taxUsd).toBe('6.42');
  expect(priceTotal([]).totalUsd).toBe('0.00');
});

test('property: the total is the sum of the lines as printed, whatever they are', () => {
  const priced = fc.record({
    kind: fc.constantFrom('labour', 'part', 'refrigerant', 'equipment', 'permit', 'other'),
    label: fc.constant('line'),
    amount: fc.double({ min: 0, max: 200, noNaN: true }),
    unitPriceUsd: fc.integer({ min: 0, max: 900_000 }).map((c) => c / 100),
  });
  const taxed = fc.record({
    kind: fc.constant('tax' as const),
    label: fc.constant('tax'),
    taxFrac: fc.double({ min: 0, max: 0.25, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(fc.oneof(priced, taxed), { maxLength: 20 }), (lines) => {
      const total = priceTotal(lines as PriceLine[]);
      const sum = total.lines.reduce((a, l) => a.plus(exact(l.totalUsd)), exact(0));
      expect(sum.eq(exact(total.totalUsd))).toBe(true);
      const more = priceTotal([...(lines as PriceLine[]), drier]);
      expect(exact(more.totalUsd).minus(exact(total.totalUsd)).toFixed(2)).toBe('38.95');
    }),
  );
});
