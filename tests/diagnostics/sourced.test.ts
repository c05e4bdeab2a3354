import { describe, expect, it } from 'vitest';
import table from '@/lib/diagnostics/data/instruments.json';
import { allowance, assumed, constant, instrumentSd, plateValue, readingOf } from '@/lib/diagnostics/sourced';
import { resolveAssumption } from '@/lib/visit/assumption';
import type { AssumptionKey } from '@/lib/visit/assumption-keys';
import { fieldAt } from '@/lib/visit/field-at';
import { type ReadingName, Run } from '@/lib/visit/run';
import './support/matchers';

describe('instruments', () => {
  it('wiring: every numeric reading of a run has an instrument with the unit of the schema', () => {
    const numeric = Object.keys(Run.shape).filter((name) => fieldAt(['runs', '0', name]).unit !== undefined);
    const listed = numeric.filter((name) => name !== 'grilleFacePointsFpm');
    expect(listed.length).toBeGreaterThan(40);
    expect(Object.keys(table.readings).sort()).toEqual([...listed].sort());
    const units = listed.map((name) => table.readings[name as keyof typeof table.readings].unit);
    expect(units).toEqual(listed.map((name) => fieldAt(['runs', '0', name]).unit));
  });

  it('wiring: every row of the table has a source and a status', () => {
    const rows = [
      ...Object.values(table.kinds),
      ...Object.values(table.allowances),
      ...Object.values(table.constants),
    ];
    expect(rows.length).toBeGreaterThan(25);
    expect(rows.filter((row) => row.source === '' || row.status === '')).toEqual([]);
  });

  // Gauges 1 psi or 1 %, clamps 1 F, amps and watts 2 %: usual accuracies, common practice.
  it('identity: the larger of absolute and relative uncertainty counts', () => {
    expect(instrumentSd('gauge', 50)).toBe(1);
    expect(instrumentSd('gauge', 300)).toBeCloseToWithin(3, 1e-12);
    expect(instrumentSd('clamp', 200)).toBe(1);
    expect(instrumentSd('static', -0.4)).toBe(0.02);
  });

  it('identity: an instrument that a shop may set starts from the very value of the table', () => {
    const keys = Object.values(table.kinds).flatMap((row) => [
      ...('absoluteKey' in row ? [[row.absoluteKey, row.absolute] as const] : []),
      ...('relativeKey' in row ? [[row.relativeKey, row.relativeFrac] as const] : []),
    ]);
    expect(keys).toHaveLength(5);
    const defaults = keys.map(([key]) => resolveAssumption([], key as AssumptionKey).likely);
    expect(defaults).toEqual(keys.map(([, value]) => value));
  });

  it("property: a shop's own instruments count where they are set, and the floor of the kind stays", () => {
    const own = (key: AssumptionKey, likely: number) => ({ key, low: 0, likely, high: 9, source: 'shop' });
    const shops = [own('gaugeErrorFrac', 0.03), own('clampErrorFd', 0.4)];
    expect(instrumentSd('gauge', 300, shops)).toBeCloseToWithin(9, 1e-12);
    expect(instrumentSd('gauge', 10, shops)).toBe(1);
    expect(instrumentSd('clamp', 200, shops)).toBe(0.4);
    expect(instrumentSd('air', 75, shops)).toBe(1);
    const run = { id: 'r', mode: 'cooling', suctionLineF: 55 } as const;
    expect(readingOf(run, 'suctionLineF', shops)?.sd).toBe(0.4);
  });

  it('identity: a reading not taken stays absent', () => {
    const run = { id: 'r', mode: 'cooling', suctionPsig: 120 } as const;
    expect(readingOf(run, 'suctionPsig')).toMatchObject({ value: 120, unit: 'psig', basis: 'measured' });
    const missing: ReadingName = 'dischargePsig';
    expect(readingOf(run, missing)).toBeUndefined();
    expect(plateValue('ratedV', undefined, 'V')).toBeUndefined();
    expect(plateValue('ratedV', 230, 'V')).toMatchObject({ basis: 'nameplate', sd: 0 });
  });

  it("identity: the visit's own assumption beats the default", () => {
    const own = { key: 'shellLossFrac', low: 0.1, likely: 0.1, high: 0.1, source: 'blanket' } as const;
    expect(assumed([own], 'shellLossFrac')).toMatchObject({ value: 0.1, sd: 0, source: 'blanket' });
    expect(assumed([], 'shellLossFrac').value).toBe(0.08);
    expect(assumed([], 'shellLossFrac').sd).toBeCloseToWithin(0.13 / 2.5631, 1e-4);
  });

  it('identity: allowances and constants come from the table', () => {
    expect(allowance('altitudeFt')).toMatchObject({ value: 0, basis: 'assumed' });
    expect(constant('sensibleBtuhPerCfmFd')).toBe(1.08);
  });
});
