import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CausesFound, Findings, NextReading } from '@/lib/diagnostics/findings';
import { compareChoices } from '@/lib/finance/compare-choices';
import type { Investigate } from '@/lib/finance/comparison';
import en from '@/lib/finance/wording/en.json';
import type { CauseId } from '@/lib/visit/cause';
import type { Choice } from '@/lib/visit/choice';
import { say } from '@/lib/visit/wording';
import { drier, exampleInput, findingsOf, leave, orifice, single } from './fixtures';

const next = (sensitivity: number): NextReading => ({
  saying: { code: 'next.leakSearch' },
  readings: [],
  gainFrac: 0.5,
  outcomes: (['yes', 'no'] as const).map((outcome) => ({
    outcome,
    chance: 0.5,
    cause: 'lowCharge',
    probability: 0.5,
    byCause: [
      { cause: 'lowCharge', chance: outcome === 'yes' ? sensitivity : 1 - sensitivity },
      { cause: 'meteringRestriction', chance: outcome === 'yes' ? 1 - sensitivity : sensitivity },
    ],
  })),
});

function findings(chances: Partial<Record<CauseId, number>>, nextReadings: readonly NextReading[]): Findings {
  const causes = Object.entries(chances).map(([cause, probability]) => ({ cause, probability }));
  const found = { verdict: 'found', noFaultProbability: 0, causes, nextReadings } as unknown as CausesFound;
  return { ...findingsOf(), causes: found };
}

const asked = (
  chances: Partial<Record<CauseId, number>>,
  sensitivity: number,
  choices: Choice[] = [leave, drier, orifice],
) => {
  const c = compareChoices({
    ...exampleInput({ choices }),
    findings: findings(chances, [next(sensitivity)]),
  });
  return { c, told: c.investigate };
};
const value = (i: Investigate | undefined) => (i?.kind === 'value' ? i : undefined);

test('property: two repairs for two causes: knowing which is worth money, a perfect test worth all of it', () => {
  const { told } = asked({ lowCharge: 0.5, meteringRestriction: 0.5 }, 1);
  const known = value(told);
  expect(known?.mostUsd).toBeGreaterThan(200);
  expect(known?.tests[0]?.savesUsd).toBeCloseTo(known?.mostUsd ?? 0, 6);
  expect(known?.tests[0]?.changesChoice).toBe(true);
  expect(known?.tests[0]?.priceUsd).toBe('180.56');
  expect(known?.byCause.map((b) => b.choiceId)).toEqual(['drier', 'orifice']);
  expect(known?.saying.code).toBe('investigateWorth');
});

test('property: a test that tells nothing saves nothing; one choice that always wins leaves nothing to find out', () => {
  const useless = value(asked({ lowCharge: 0.5, meteringRestriction: 0.5 }, 0.5).told);
  expect(useless?.tests[0]?.savesUsd).toBeCloseTo(0, 6);
  expect(useless?.saying.code).toBe('investigateNotWorthSame');
  const settled = value(asked({ lowCharge: 0.5, meteringRestriction: 0.5 }, 1, [leave, single]).told);
  expect(settled?.mostUsd).toBeCloseTo(0, 6);
  expect(settled?.saying.code).toBe('investigateSame');
});

test('property: never negative, and no test beats knowing the cause', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (p, s) => {
        const known = value(asked({ lowCharge: p, meteringRestriction: 1 - p }, s).told);
        expect(known?.mostUsd).toBeGreaterThanOrEqual(0);
        expect(known?.tests[0]?.savesUsd).toBeLessThanOrEqual((known?.mostUsd ?? -1) + 1e-9);
        expect(known?.tests[0]?.savesUsd).toBeGreaterThanOrEqual(0);
      },
    ),
    { numRuns: 25 },
  );
});

test('property: without chances from the readings it says to read first', () => {
  expect(compareChoices(exampleInput()).investigate).toEqual({
    kind: 'none',
    why: { code: 'investigateTooFewReadings' },
  });
});

test('wiring: every sentence is there', () => {
  const codes = Object.keys(en).filter((code) => code.startsWith('investigate'));
  expect(codes).toHaveLength(7);
  const values = { choice: 'A', mostUsd: 1, savesUsd: 1, costsUsd: 1, leastUsd: 10 };
  expect(codes.map((code) => say(en, { code, values })).filter((s) => s.includes('{'))).toEqual([]);
});

test('identity: the map at the own stay and price names the lowest total, and a dear repair loses', () => {
  const { c } = asked({ meteringRestriction: 1 }, 1);
  const map = c.flipMap;
  expect(map?.repairId).toBe('orifice');
  const row = map?.choiceIds[map.stayYears.indexOf(10)] ?? [];
  expect(row[0]).toBe('orifice');
  const breakEven = c.choices.find((x) => x.id === 'orifice')?.breakEvenPriceUsd ?? 0;
  const flips = map?.repairPricesUsd.map((usd, k) => [usd < breakEven, row[k] === 'orifice']) ?? [];
  expect(flips.length).toBe(9);
  expect(flips.filter(([below, wins]) => below !== wins)).toEqual([]);
});
