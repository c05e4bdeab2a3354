import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import type { EnergyTotals } from '@/lib/energy/energy-result';
import { replacementUnit } from '@/lib/energy/scenarios';
import { energyOf, exampleVisit, leave, scenarioNamed } from './example-visit';

const newPump = {
  kind: 'replace' as const,
  id: 'new',
  name: 'New heat pump',
  priceLines: [],
  unitKind: 'heatPump' as const,
  tier: 'singleSpeed' as const,
  nominalTons: 3,
  ratings: { seer2BtuPerWh: 14.3, hspf2BtuPerWh: 7.5 },
};
const visit = exampleVisit({
  suspectedCause: { cause: 'meteringRestriction' },
  choices: [
    leave,
    newPump,
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

/** Cost of a year that must be there. */
const usd = (year: EnergyTotals | undefined) => year?.costUsd ?? Number.NaN;

describe('identity: ranges', () => {
  it('as found, the loss and the need of the house add by root sum of squares', () => {
    const asFound = scenarioNamed(result, 'asFound');
    const likely = asFound.likely.costUsd;
    const below = Math.hypot(likely - asFound.mild.costUsd, likely - usd(asFound.loadLow));
    const above = Math.hypot(asFound.severe.costUsd - likely, usd(asFound.loadHigh) - likely);
    expect(asFound.costUsd.low).toBeCloseTo(likely - below, 9);
    expect(asFound.costUsd.high).toBeCloseTo(likely + above, 9);
    expect([asFound.ratedLow, asFound.ratedHigh]).toEqual([undefined, undefined]);
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
      clean.likely.costUsd - usd(clean.loadLow),
    );
    const above = Math.hypot(
      clean.severe.costUsd - clean.likely.costUsd,
      (clean.recoveryLow?.costUsd ?? 0) - clean.likely.costUsd,
      usd(clean.loadHigh) - clean.likely.costUsd,
    );
    expect(clean.costUsd.low).toBeCloseTo(clean.likely.costUsd - below, 9);
    expect(clean.costUsd.high).toBeCloseTo(clean.likely.costUsd + above, 9);
    expect(clean.recoveryHigh?.costUsd).toBeLessThan(clean.recoveryLow?.costUsd ?? 0);
  });

  it('a healthy unit in place has only the range of the house', () => {
    const healthy = scenarioNamed(result, 'healthy');
    expect(healthy.costUsd.low).toBeCloseTo(usd(healthy.loadLow), 9);
    expect(healthy.costUsd.high).toBeCloseTo(usd(healthy.loadHigh), 9);
    expect(healthy.mild).toEqual(healthy.severe);
    expect(healthy.ratedLow).toBeUndefined();
    expect(usd(healthy.loadLow)).toBeLessThan(0.9 * healthy.likely.costUsd);
    expect(usd(healthy.loadHigh)).toBeGreaterThan(1.1 * healthy.likely.costUsd);
  });

  it('a new unit adds the range of its own power, both modes by their own', () => {
    const unit = scenarioNamed(result, 'new');
    const likely = unit.likely.costUsd;
    const healthy = healthyUnit({ unit: visit.unit, visitDate: visit.visitDate, assumptions: [] });
    const { cooling, heating } = replacementUnit(visit, healthy, newPump);
    expect(cooling.sdLnPower).toBeGreaterThan(0.01);
    expect(heating?.sdLnPower).toBeGreaterThan(0.01);
    const compressorRatio = Math.exp(1.2815515655446004 * (heating?.sdLnPower ?? 0));
    // the strips' share and the run times stay: only the outdoor unit's power moves; its blower part does not
    expect(unit.ratedHigh?.stripHeatKwh).toBeCloseTo(unit.likely.stripHeatKwh, 6);
    const ratio = (unit.ratedHigh?.heatingCompressorKwh ?? 0) / unit.likely.heatingCompressorKwh;
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThanOrEqual(compressorRatio * (1 + 1e-9));
    expect(unit.costUsd.low).toBeCloseTo(
      likely - Math.hypot(likely - usd(unit.loadLow), likely - usd(unit.ratedLow)),
      9,
    );
    expect(unit.costUsd.high).toBeCloseTo(
      likely + Math.hypot(usd(unit.loadHigh) - likely, usd(unit.ratedHigh) - likely),
      9,
    );
  });
});
