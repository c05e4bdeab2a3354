import { expect, test } from 'vitest';
import { triedRates } from '@/components/appraisal/tried-rates';
import { likelyOf, withRate } from '@/components/compare/assumption-draft';
import type { Draft } from '@/components/draft/draft-tree';
import { readDraft } from '@/lib/visit/read-visit';
import { SCHEMA_VERSION } from '@/lib/visit/visit';

const draft: Draft = {
  schemaVersion: SCHEMA_VERSION,
  id: 'rates',
  visitDate: '2026-11-25',
  site: {},
  unit: { kind: 'heatPump', nominalTons: 3 },
  runs: [],
  observations: [],
  assumptions: [{ key: 'upkeepUsdPerYear', low: 100, likely: 150, high: 200, source: 'asked' }],
  choices: [{ kind: 'leave', id: 'leave', name: 'Leave', priceLines: [] }],
};

test('wiring: a rate tried at the table moves its range along, replaces the one tried before, and keeps the rest', () => {
  const rate = { key: 'discountFracPerYear', low: 0.03, likely: 0.05, high: 0.08 } as const;
  const once = withRate(draft, rate, 0.06, 'tried at the table');
  const [before] = triedRates(readDraft(once).visit ?? never()).filter((r) => r.key === rate.key);
  expect(before).toEqual({ key: rate.key, low: 0.04, likely: 0.06, high: 0.09 });
  expect([likelyOf(draft, rate), likelyOf(once, rate)]).toEqual([0.05, 0.06]);
  const twice = withRate(once, before ?? never(), 0.055, 'tried at the table');
  const reading = readDraft(twice);
  expect(reading.issues).toEqual([]);
  expect(reading.visit?.assumptions).toEqual([
    { key: 'upkeepUsdPerYear', low: 100, likely: 150, high: 200, source: 'asked' },
    { key: rate.key, low: 0.035, likely: 0.055, high: 0.085, source: 'tried at the table' },
  ]);
});

function never(): never {
  throw new Error('the draft could not be read');
}
