import { expect, test } from 'vitest';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { drier, exampleInput, leave, single, variable } from './fixtures';

const fallback = (choices: Parameters<typeof exampleInput>[0]) => {
  const model = comparisonModel(exampleInput(choices));
  return { ...model.fallback, notes: model.notes.map((n) => n.code), usd: model.likely.replacementUsd };
};

test('property: a failed unit is replaced by the cheapest quoted one of the same kind', () => {
  expect(fallback({})).toMatchObject({ quotedUsd: 9002.05, scenarioId: 'single', usd: 9002.05 });
  expect(fallback({ choices: [leave, variable] })).toMatchObject({
    quotedUsd: 14_250,
    scenarioId: 'variable',
  });
  expect(fallback({}).notes).toContain('replacementPriceQuoted');
});

test('property: without one, by the price per ton, and it runs like the healthy unit', () => {
  const other = { ...single, unitKind: 'airConditioner' } as const;
  const free = { ...single, priceLines: [] };
  const cases = [{ choices: [leave, drier] }, { choices: [leave, other] }, { choices: [leave, free] }];
  expect(cases).toHaveLength(3);
  for (const over of cases) {
    expect(fallback(over)).toMatchObject({ scenarioId: 'healthy', usd: 8700 });
    expect(fallback(over).notes).toContain('replacementPriceAssumed');
    expect(fallback(over).quotedUsd).toBeUndefined();
  }
});
