import { invariant } from '../math/invariant';

/** Cost of every choice under every cause, and how likely each cause is. */
export type CauseTable = {
  /** By cause; adds up to 1. */
  readonly causeFrac: readonly number[];
  /** By choice, then by cause [USD]. */
  readonly costUsd: readonly (readonly number[])[];
};

export type PerfectInformation = {
  readonly expectedCostUsd: readonly number[];
  /** Choice with the lowest expected cost; ties go to the earlier one. */
  readonly bestIndex: number;
  /** Expected cost when the cause is known before choosing. */
  readonly costKnowingUsd: number;
  /** The most that finding out could save on average, >= 0. */
  readonly valueUsd: number;
  /** By choice: what it costs on average above the best choice for the true cause. */
  readonly expectedRegretUsd: readonly number[];
};

/**
 * What knowing the true cause before choosing would save on average.
 *
 * @param table  costs by choice and cause, chances of the causes
 * @returns value >= 0; it equals the smallest expected regret, and is 0 when one choice wins under every cause
 * @throws invariant if the table is ragged or the chances do not add up to 1
 * Source: expected value of perfect information, textbook decision analysis; computed
 * Check: tests/finance/value-of-information.test.ts
 */
export function perfectInformation(table: CauseTable): PerfectInformation {
  checkTable(table);
  const { causeFrac, costUsd } = table;
  const expectedCostUsd = costUsd.map((row) => expectation(causeFrac, row));
  const bestIndex = indexOfLowest(expectedCostUsd);
  const lowest = causeFrac.map((_, cause) => Math.min(...costUsd.map((row) => row[cause] ?? 0)));
  const costKnowingUsd = expectation(causeFrac, lowest);
  return {
    expectedCostUsd,
    bestIndex,
    costKnowingUsd,
    valueUsd: Math.max(0, (expectedCostUsd[bestIndex] ?? 0) - costKnowingUsd),
    expectedRegretUsd: expectedCostUsd.map((cost) => Math.max(0, cost - costKnowingUsd)),
  };
}

export type TestOutcome = {
  readonly outcomeFrac: number;
  /** Chance of each cause after this outcome. */
  readonly causeFrac: readonly number[];
  readonly bestIndex: number;
};

export type TestInformation = {
  /** Saving on average from choosing after the test, before its price; 0 <= value <= that of perfect information. */
  readonly valueUsd: number;
  readonly outcomes: readonly TestOutcome[];
  /** Whether any outcome would lead to another choice than without the test. */
  readonly changesChoice: boolean;
};

/**
 * What a test that points to the cause would save on average.
 *
 * @param table       costs by choice and cause
 * @param likelihoodFrac  chance of each outcome of the test under each cause, by outcome, then by cause; the outcomes
 *   of a cause add up to 1
 * @throws invariant if a table is ragged or chances do not add up to 1
 * Outcomes that cannot occur are left out.
 * Source: expected value of sample information, textbook decision analysis; computed
 * Check: tests/finance/value-of-information.test.ts
 */
export function testInformation(
  table: CauseTable,
  likelihoodFrac: readonly (readonly number[])[],
): TestInformation {
  const without = perfectInformation(table);
  const { causeFrac, costUsd } = table;
  causeFrac.forEach((_, cause) => {
    checkSum(
      likelihoodFrac.map((row) => row[cause] ?? Number.NaN),
      `outcomes under cause ${cause}`,
    );
  });
  let costAfter = 0;
  const outcomes: TestOutcome[] = [];
  for (const row of likelihoodFrac) {
    const joint = causeFrac.map((p, cause) => p * (row[cause] ?? 0));
    const outcomeFrac = joint.reduce((a, b) => a + b, 0);
    if (outcomeFrac <= 0) continue;
    const posterior = joint.map((p) => p / outcomeFrac);
    const costs = costUsd.map((cost) => expectation(posterior, cost));
    const bestIndex = indexOfLowest(costs);
    costAfter += outcomeFrac * (costs[bestIndex] ?? 0);
    outcomes.push({ outcomeFrac, causeFrac: posterior, bestIndex });
  }
  const saved = (without.expectedCostUsd[without.bestIndex] ?? 0) - costAfter;
  return {
    valueUsd: Math.min(without.valueUsd, Math.max(0, saved)),
    outcomes,
    changesChoice: outcomes.some((o) => o.bestIndex !== without.bestIndex),
  };
}

function expectation(frac: readonly number[], values: readonly number[]): number {
  return frac.reduce((sum, p, i) => sum + p * (values[i] ?? 0), 0);
}

function indexOfLowest(values: readonly number[]): number {
  return values.reduce((best, v, i) => (v < (values[best] ?? 0) ? i : best), 0);
}

function checkTable({ causeFrac, costUsd }: CauseTable): void {
  invariant(costUsd.length >= 1, 'no choice');
  invariant(
    costUsd.every((row) => row.length === causeFrac.length && row.every(Number.isFinite)),
    'costs do not fit the causes',
  );
  checkSum(causeFrac, 'causes');
}

function checkSum(frac: readonly number[], what: string): void {
  const sum = frac.reduce((a, b) => a + b, 0);
  invariant(frac.every((p) => p >= 0) && Math.abs(sum - 1) < 1e-9, `chances of ${what} add up to ${sum}`);
}
