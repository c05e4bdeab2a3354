import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exact } from '@/lib/finance/money';
import { readRebates } from '@/lib/finance/rebates';
import en from '@/lib/finance/wording/en.json';
import type { Rebate } from '@/lib/visit/choice';
import { say } from '@/lib/visit/wording';

const utility: Rebate = { label: 'Utility', amountUsd: 400, firstDate: '2026-03-01', lastDate: '2026-10-31' };
const state: Rebate = {
  label: 'State',
  amountUsd: 1200.5,
  paidAfterMonths: 5,
  condition: 'income below limit',
};

test('property: first and last dates are inclusive; outside them the rebate drops out and says so', () => {
  const on = (date: string) => readRebates([utility], date, '9000.00');
  expect(on('2026-03-01').totalUsd).toBe('400.00');
  expect(on('2026-10-31').totalUsd).toBe('400.00');
  const late = on('2026-11-01');
  expect(late).toMatchObject({ counted: [], atOnceUsd: '0.00', totalUsd: '0.00' });
  expect(late.notes).toEqual([{ code: 'rebateExpired', values: { rebate: 'Utility', date: '2026-10-31' } }]);
  const early = on('2026-02-28');
  expect(early.totalUsd).toBe('0.00');
  expect(early.notes.map((n) => say(en, n))).toEqual([
    'The rebate "Utility" starts on 2026-03-01. It is not counted today.',
  ]);
});

test('property: a rebate paid later is kept apart from the price on the day', () => {
  const reading = readRebates([utility, state], '2026-06-01', '9000.00');
  expect(reading).toMatchObject({ atOnceUsd: '400.00', totalUsd: '1600.50' });
  expect(reading.counted.map((r) => r.paidAfterMonths)).toEqual([0, 5]);
  expect(reading.notes.map((n) => n.code)).toEqual(['rebatePaidLater', 'rebateCondition']);
});

test('property: rebates larger than the price are capped and say so', () => {
  const reading = readRebates([utility, state], '2026-06-01', '1000.00');
  expect(reading).toMatchObject({ atOnceUsd: '400.00', totalUsd: '1000.00' });
  expect(reading.counted.map((r) => r.amountUsd)).toEqual(['400.00', '600.00']);
  expect(reading.notes[0]).toEqual({
    code: 'rebateOverPrice',
    values: { rebate: 'State', amountUsd: '1200.50', countedUsd: '600.00' },
  });
  expect(readRebates([utility, state], '2026-06-01', '0.00').counted).toEqual([]);
});

test('property: whatever is entered, what counts lies between nothing and the price', () => {
  const rebate = fc.record({
    label: fc.constant('r'),
    amountUsd: fc.integer({ min: 0, max: 5e6 }).map((c) => c / 100),
  });
  fc.assert(
    fc.property(fc.array(rebate, { maxLength: 10 }), fc.integer({ min: 0, max: 1e6 }), (list, cents) => {
      const price = exact(cents).div(100).toFixed(2);
      const reading = readRebates(list, '2026-06-01', price);
      const sum = reading.counted.reduce((a, r) => a.plus(exact(r.amountUsd)), exact(0));
      expect(sum.toFixed(2)).toBe(reading.totalUsd);
      expect(exact(reading.totalUsd).lte(exact(price))).toBe(true);
      expect(exact(reading.atOnceUsd).lte(exact(reading.totalUsd))).toBe(true);
    }),
  );
});

test('wiring: every note has its sentence', () => {
  const codes = [
    'rebateExpired',
    'rebateNotStarted',
    'rebateOverPrice',
    'rebatePaidLater',
    'rebateCondition',
  ];
  expect(codes.filter((code) => !(code in en))).toEqual([]);
});
