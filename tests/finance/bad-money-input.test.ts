import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import en from '@/lib/finance/wording/en.json';
import type { Choice } from '@/lib/visit/choice';
import { readDraft } from '@/lib/visit/read-visit';
import { say } from '@/lib/visit/wording';
import { exampleInput, exampleVisit, leave, loan, single } from './fixtures';

const draft = (financing: unknown) =>
  readDraft({ ...exampleVisit(), choices: [leave, { ...single, financing }] } as unknown);
const noted = (over: Partial<Extract<Choice, { kind: 'replace' }>>) =>
  compareChoices(exampleInput({ choices: [leave, { ...single, ...over }] })).choices[1];

test('property: a loan rate of 600 % is named with its limit; its choice is left out and the rest kept', () => {
  const { visit, issues } = draft({ ...loan, rateFracPerYear: 6 });
  const issue = issues.find((i) => i.path.endsWith('rateFracPerYear'));
  expect(issue).toMatchObject({ code: 'outOfRange', label: expect.stringContaining('Loan rate') });
  expect(issue?.limit).toContain('between 0 and 0.6');
  expect(visit?.choices.map((c) => c.id)).toEqual(['leave']);
});

test('property: a term of 0 months is named, and the rest kept', () => {
  const { visit, issues } = draft({ ...loan, termMonths: 0 });
  expect(issues.map((i) => [i.code, i.path.split('.').at(-1)])).toContainEqual(['outOfRange', 'termMonths']);
  expect(visit?.choices.map((c) => c.id)).toEqual(['leave']);
});

test('property: a wrong offer beside the loan that counts goes alone', () => {
  const offers = [{ kind: 'cash' }, { ...loan, termMonths: 0 }];
  const choices = [leave, { ...single, financingOffers: offers }];
  const { visit, issues } = readDraft({ ...exampleVisit(), choices } as unknown);
  expect(issues.map((i) => i.path)).toEqual(['choices.1.financingOffers.1.termMonths']);
  expect(visit?.choices[1]?.financingOffers).toEqual([{ kind: 'cash' }]);
});

test('property: a promotion longer than its plan is named and cut', () => {
  const plan = { kind: 'promotional', rateFracPerYear: 0.29, promotionMonths: 48, termMonths: 36 } as const;
  const note = noted({ financing: plan })?.notes.find((n) => n.code === 'promotionOutlastsPlan');
  expect(note === undefined ? '' : say(en, note)).toContain('48 months is longer than the plan of 36');
});

test('property: a rebate over the price counts up to it, an expired one not at all; both are said', () => {
  const rebates = [
    { label: 'Too large', amountUsd: 50_000 },
    { label: 'Old', amountUsd: 500, lastDate: '2025-12-31' },
  ];
  const choice = noted({ rebates, financing: { kind: 'cash' } });
  expect(choice?.upFrontUsd).toBe('0.00');
  expect(choice?.notes.map((n) => n.code)).toEqual(
    expect.arrayContaining(['rebateOverPrice', 'rebateExpired']),
  );
});

test('property: a loan without a yearly rate says why, and the totals stand', () => {
  const price = { kind: 'other', label: 'price', amount: 1, unitPriceUsd: 1000 } as const;
  const choice = noted({ priceLines: [price], financing: { ...loan, downPaymentUsd: 0, feeUsd: 1000 } });
  const apr = choice?.loan?.apr;
  expect(apr?.kind === 'none' ? say(en, apr.why) : '').toContain('nothing is lent');
  expect(Number.isFinite(choice?.totalTodayUsd.likely)).toBe(true);
});
