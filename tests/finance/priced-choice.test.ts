import { expect, test } from 'vitest';
import { balanceAtEnd, capitalFlows, priceChoice } from '@/lib/finance/priced-choice';
import { drier, leave, loan, single, variable } from './fixtures';

const DATE = '2026-11-03';

test('outside: a priced repair by hand', () => {
  // 3.5 x 135 = 472.50; 48.90; 4.2 x 68.75 = 288.75; tax 7.75 % of 810.15 = 62.786625 -> 62.79; total 872.94
  const priced = priceChoice(drier, DATE);
  expect(priced.price.toFixed(2)).toBe('872.94');
  expect(capitalFlows(priced, 10).map((f) => [f.kind, f.months, f.usd])).toEqual([['price', 0, 872.94]]);
  expect(priced.notes).toEqual([]);
});

test('property: rebates at once lower the price, later ones come back in their month, expired ones drop out', () => {
  const priced = priceChoice(variable, DATE);
  expect([priced.price, priced.rebate, priced.netPrice, priced.upFront].map((m) => m.toFixed(2))).toEqual([
    '14250.00',
    '2100.00',
    '12150.00',
    '13650.00',
  ]);
  expect(capitalFlows(priced, 10).map((f) => [f.kind, f.months, f.usd])).toEqual([
    ['price', 0, 13_650],
    ['rebate', 7, -1500],
  ]);
  expect(priced.notes.map((n) => n.code)).toEqual(['rebatePaidLater', 'rebateExpired']);
});

test('property: a rebate at once lowers what is lent', () => {
  const priced = priceChoice({ ...variable, financing: loan }, DATE);
  expect(priced.loan?.quote).toMatchObject({ cashPriceUsd: '13650.00', amountFinancedUsd: '12500.00' });
  expect(priced.upFront.toFixed(2)).toBe('1150.00');
});

test('property: a loan that outlasts the stay is paid off at its end, to the cent', () => {
  const priced = priceChoice(single, DATE);
  const flows = capitalFlows(priced, 3);
  expect(flows).toHaveLength(1 + 36 + 1);
  expect(flows.at(-1)).toMatchObject({ kind: 'loan', months: 36 });
  expect(flows.at(-1)?.amount.eq(balanceAtEnd(priced, 3))).toBe(true);
  expect(balanceAtEnd(priced, 3).toFixed(2)).toBe(priced.loan?.schedule.rows[35]?.balance.toFixed(2));
  expect(capitalFlows(priced, 7)).toHaveLength(1 + 84);
  expect(capitalFlows(priced, 25)).toHaveLength(1 + 84);
});

test('property: no price list is said so, leaving it needs none, a down payment may cover everything', () => {
  expect(priceChoice({ ...drier, priceLines: [] }, DATE)).toMatchObject({
    priced: false,
    notes: [{ code: 'priceMissing' }],
  });
  expect(priceChoice(leave, DATE)).toMatchObject({ priced: true, notes: [] });
  const covered = priceChoice({ ...drier, financing: { ...loan, downPaymentUsd: 872.94 } }, DATE);
  expect(covered.loan).toBeUndefined();
  expect(covered.upFront.toFixed(2)).toBe('872.94');
  expect(covered.notes.map((n) => n.code)).toEqual(['downPaymentCoversPrice']);
});
