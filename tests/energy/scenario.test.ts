import { describe, expect, it } from 'vitest';
import { energyOf, exampleVisit, leave, scenarioNamed } from './example-visit';

const visit = exampleVisit({
  suspectedCause: { cause: 'meteringRestriction' },
  choices: [
    leave,
    {
      kind: 'repair',
      id: 'clean',
      name: 'Clean the orifice',
      priceLines: [],
      actions: ['meteringOrificeCleaning'],
    },
  ],
});
const result = energyOf(visit);

describe('identity: ranges', () => {
  it('as found, the range runs from the mild to the severe year', () => {
    const asFound = scenarioNamed(result, 'asFound');
    expect(asFound.costUsd.low).toBeCloseTo(asFound.mild.costUsd, 9);
    expect(asFound.costUsd.high).toBeCloseTo(asFound.severe.costUsd, 9);
    expect(asFound.totalKwh.likely).toBe(asFound.likely.totalKwh);
    expect(asFound.mild.costUsd).toBeLessThan(asFound.likely.costUsd);
    expect(asFound.likely.costUsd).toBeLessThan(asFound.severe.costUsd);
    expect(asFound.recoveryLow).toBeUndefined();
  });

  it('a repair adds the range of what it gives back, by root sum of squares', () => {
    const clean = scenarioNamed(result, 'clean');
    const below = Math.hypot(
      clean.likely.costUsd - clean.mild.costUsd,
      clean.likely.costUsd - (clean.recoveryHigh?.costUsd ?? 0),
    );
    const above = Math.hypot(
      clean.severe.costUsd - clean.likely.costUsd,
      (clean.recoveryLow?.costUsd ?? 0) - clean.likely.costUsd,
    );
    expect(clean.costUsd.low).toBeCloseTo(clean.likely.costUsd - below, 9);
    expect(clean.costUsd.high).toBeCloseTo(clean.likely.costUsd + above, 9);
    expect(clean.recoveryHigh?.costUsd).toBeLessThan(clean.recoveryLow?.costUsd ?? 0);
  });

  it('a healthy unit has no range', () => {
    const healthy = scenarioNamed(result, 'healthy');
    expect(healthy.costUsd.low).toBe(healthy.costUsd.high);
    expect(healthy.mild).toEqual(healthy.severe);
  });
});
