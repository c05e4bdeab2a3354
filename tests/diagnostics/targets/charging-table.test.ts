import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chargingTablePressure } from '@/lib/diagnostics/targets/charging-table';
import { healthyCondensing, healthyEvaporating } from '@/lib/diagnostics/targets/healthy-pressures';
import type { ChargingTable } from '@/lib/visit/unit';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

const table: ChargingTable = {
  mode: 'cooling',
  outdoorF: [75, 85, 95],
  indoorF: [59, 67],
  suctionPsig: [
    [110, 126],
    [114, 130],
    [120, 136],
  ],
  dischargePsig: [
    [260, 280],
    [300, 320],
    [345, 370],
  ],
};

function at(outdoorAirF: number, returnWetBulbF: number, tables: readonly ChargingTable[] = [table]) {
  return contextOfRun(
    { mode: 'cooling', outdoorAirF, returnAirF: 78, returnWetBulbF },
    { chargingTables: [...tables] },
  );
}

describe("the unit's own charging table", () => {
  it('identity: exact at its points, bilinear between them', () => {
    expect(chargingTablePressure(at(85, 67), 'suctionPsig')).toMatchObject({ psig: 130, stepsBeyond: 0 });
    expect(chargingTablePressure(at(80, 63), 'suctionPsig')?.psig).toBeCloseToWithin(120, 1e-9);
    expect(chargingTablePressure(at(90, 67), 'dischargePsig')?.psig).toBeCloseToWithin(345, 1e-9);
  });

  it('identity: outside it goes on by its last step, says so and widens', () => {
    const edge = chargingTablePressure(at(95, 67), 'dischargePsig');
    const beyond = chargingTablePressure(at(105, 67), 'dischargePsig');
    expect(beyond?.psig).toBeCloseToWithin(370 + 50, 1e-9);
    expect(beyond?.stepsBeyond).toBeCloseToWithin(1, 1e-9);
    const relative = (x: typeof edge) => (x?.tolerancePsi ?? 0) / (x?.psig ?? 1);
    expect(relative(beyond)).toBeGreaterThan(relative(edge));
    expect(healthyCondensing(at(105, 67))?.note).toEqual({
      code: 'beyondChargingTable',
      values: { steps: 1 },
    });
    expect(chargingTablePressure(at(65, 59), 'dischargePsig')?.psig).toBeCloseToWithin(220, 1e-9);
  });

  it('identity: a table of another mode is not used', () => {
    expect(chargingTablePressure(at(85, 67, [{ ...table, mode: 'heating' }]), 'suctionPsig')).toBeUndefined();
  });

  it('identity: one column needs no indoor air; two columns do', () => {
    const run = { mode: 'cooling', outdoorAirF: 85 } as const;
    const narrow: ChargingTable = {
      mode: 'cooling',
      outdoorF: [75, 95],
      indoorF: [67],
      suctionPsig: [[120], [130]],
    };
    expect(chargingTablePressure(contextOfRun(run, { chargingTables: [narrow] }), 'suctionPsig')?.psig).toBe(
      125,
    );
    expect(
      chargingTablePressure(contextOfRun(run, { chargingTables: [table] }), 'suctionPsig'),
    ).toBeUndefined();
  });

  it('identity: it beats the class rule for both pressures', () => {
    const own = at(95, 67);
    const rule = at(95, 67, []);
    expect(healthyCondensing(own)?.status).toBe('nameplate');
    expect(healthyEvaporating(own)?.status).toBe('nameplate');
    expect(healthyCondensing(rule)?.status).not.toBe('nameplate');
    // 370 psig R-410A condenses at 110.8 F
    expect(healthyCondensing(own)?.temperatureF).toBeCloseToWithin(110.8, 0.3);
  });

  it('property: inside the table the pressure stays between its smallest and largest cell', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 75, max: 95, noNaN: true }),
        fc.double({ min: 59, max: 67, noNaN: true }),
        (outdoorF, wetF) => {
          const psig = chargingTablePressure(at(outdoorF, wetF), 'suctionPsig')?.psig ?? Number.NaN;
          expect(psig).toBeGreaterThanOrEqual(110 - 1e-9);
          expect(psig).toBeLessThanOrEqual(136 + 1e-9);
        },
      ),
      { seed: 22, numRuns: 100 },
    );
  });
});
