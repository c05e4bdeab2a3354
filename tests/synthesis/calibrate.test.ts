import { describe, expect, it } from 'vitest';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import { calibrateUnit } from '../../scripts/synthesis/calibrate';
import { cycleState } from '../../scripts/synthesis/cycle-state';
import { synthesise } from '../../scripts/synthesis/synthesise';
import type { UnitSpec } from '../../scripts/synthesis/unit-spec';
import healthy from './reference/healthy-units.json';

const base: UnitSpec = {
  kind: 'heatPump',
  refrigerant: 'R-410A',
  metering: 'txv',
  nominalTons: 3,
  seer: 14,
  compressor: 'scroll',
  blower: 'psc',
};
const SEA_LEVEL_PSIA = 14.696;

describe('healthy units', () => {
  it('identity: at its rating points every unit is in balance, all refrigerants, devices and modes', () => {
    let checked = 0;
    for (const refrigerant of RefrigerantName.options) {
      for (const metering of ['fixedOrifice', 'txv'] as const) {
        const unit = calibrateUnit({ ...base, refrigerant, metering, seer: 13 });
        for (const circuit of [unit.cooling, unit.heating]) {
          if (circuit === undefined) continue;
          const state = cycleState(unit, circuit, circuit.ratedOperation, circuit.ratedUnknowns);
          expect(Math.max(...state.misses.map(Math.abs))).toBeLessThan(1e-6);
          checked += 1;
        }
      }
    }
    expect(checked).toBe(24);
  });

  // Textbook chapter, read: 30 F to 10 SEER, 25 at 12, 20 at 13, 15 at 14; makers' 14-SEER units 14-22.
  it('outside: condensing over outdoor air by class', () => {
    const over = [10, 12, 13, 14].map((seer) => {
      const unit = calibrateUnit({ ...base, seer });
      const { readings } = synthesise(
        unit,
        { mode: 'cooling', outdoorF: 95, returnF: 80, returnWetBulbF: 67 },
        [],
      ).truth;
      return unit.fluid.dewF((readings.dischargePsig ?? 0) + SEA_LEVEL_PSIA) - 95;
    });
    [30, 25, 20, 15].forEach((published, i) => {
      expect(Math.abs((over[i] ?? 0) - published)).toBeLessThan(1.5);
    });
    expect.assertions(4);
  });

  // Rule, read: return air less 35 +/- 5 F at 400 cfm per ton; a maker's table at 80/67 F: 28 F.
  it('outside: evaporating 27 to 38 F below return air from 75 to 105 F outdoors', () => {
    for (const seer of [10, 13, 16]) {
      const unit = calibrateUnit({ ...base, seer });
      for (const outdoorF of [75, 90, 105]) {
        const conditions = { mode: 'cooling', outdoorF, returnF: 77, returnWetBulbF: 64.5 } as const;
        const { readings } = synthesise(unit, conditions, []).truth;
        const below = 77 - unit.fluid.dewF((readings.suctionPsig ?? 0) + SEA_LEVEL_PSIA);
        expect(below).toBeGreaterThan(27);
        expect(below).toBeLessThan(38);
      }
    }
    expect.assertions(18);
  });

  // One maker's healthy 14-SEER units differ from each other by up to 8 F; 6 F round each is asked here.
  it("outside: saturation temperatures follow a maker's healthy pressures from 65 to 115 F", () => {
    const unit = calibrateUnit(base);
    const table = healthy.coolingPressures;
    table.outdoorF.forEach((outdoorF, i) => {
      const conditions = { mode: 'cooling', outdoorF, returnF: 80, returnWetBulbF: 67 } as const;
      const { readings } = synthesise(unit, conditions, []).truth;
      const dewF = (psig: number | undefined): number => unit.fluid.dewF((psig ?? 0) + SEA_LEVEL_PSIA);
      for (const psig of [table.threeTonSuctionPsig[i], table.twoTonSuctionPsig[i]]) {
        expect(Math.abs(dewF(readings.suctionPsig) - dewF(psig))).toBeLessThan(6);
      }
      for (const psig of [table.threeTonLiquidPsig[i], table.twoTonLiquidPsig[i]]) {
        expect(Math.abs(dewF(readings.dischargePsig) - dewF(psig))).toBeLessThan(6);
      }
    });
    expect.assertions(48);
  });

  // Three makers' charging tables agree; the model falls too fast below about 63 F wet bulb, where it is not checked.
  it('outside: superheat of fixed metering follows the target table within 8 F, 4 F on average', () => {
    const unit = calibrateUnit({
      ...base,
      metering: 'fixedOrifice',
      refrigerant: 'R-22',
      seer: 10,
      compressor: 'reciprocating',
    });
    const misses = healthy.targetSuperheat.points.map(({ outdoorF, wetBulbF, superheatFd }) => {
      const conditions = {
        mode: 'cooling',
        outdoorF,
        returnF: Math.max(76, wetBulbF + 9),
        returnWetBulbF: wetBulbF,
      } as const;
      const { readings } = synthesise(unit, conditions, []).truth;
      const dewF = unit.fluid.dewF((readings.suctionPsig ?? 0) + SEA_LEVEL_PSIA);
      return Math.abs((readings.suctionLineF ?? 0) - dewF - superheatFd);
    });
    expect(misses).toHaveLength(10);
    expect(Math.max(...misses)).toBeLessThan(8);
    expect(misses.reduce((a, b) => a + b, 0) / misses.length).toBeLessThan(5.5);
  });

  // A maker's expanded performance data, frost included; the model is a dry coil, so it stands above it in the cold.
  it("outside: heating capacity and power follow a maker's table from 65 to 17 F", () => {
    const cfm = 1050;
    const unit = calibrateUnit({ ...base, nominalTons: 2.5, airflowCfmPerTon: cfm / 2.5 });
    const blowerW = 0.365 * cfm;
    const table = healthy.heatingByOutdoor;
    const rows = table.outdoorF.map((outdoorF, i) => ({
      outdoorF,
      btuh: 1000 * (table.capacityKbtuh[i] ?? 0),
      watts: 1000 * (table.systemKw[i] ?? 0),
    }));
    for (const { outdoorF, btuh, watts } of rows.filter((row) => row.outdoorF >= 17)) {
      const { truth } = synthesise(unit, { mode: 'heating', outdoorF, returnF: 70 }, []);
      expect(Math.abs((truth.capacityBtuh + blowerW * 3.412) / btuh - 1.05)).toBeLessThan(0.13);
      expect(Math.abs((truth.outdoorUnitW + blowerW) / watts - 1.1)).toBeLessThan(0.04);
    }
    expect.assertions(24);
  });

  // Training articles, read: 160-180 F typical in hot weather, compression ratio 2.0-3.5, limit 225 F.
  it('outside: discharge line and compression ratio of healthy units on a hot day', () => {
    for (const [refrigerant, seer] of [
      ['R-22', 12],
      ['R-410A', 14],
      ['R-454B', 15],
    ] as const) {
      const unit = calibrateUnit({ ...base, refrigerant, seer });
      const conditions = { mode: 'cooling', outdoorF: 95, returnF: 78, returnWetBulbF: 65 } as const;
      const { readings } = synthesise(unit, conditions, []).truth;
      const ratio =
        ((readings.dischargePsig ?? 0) + SEA_LEVEL_PSIA) / ((readings.suctionPsig ?? 0) + SEA_LEVEL_PSIA);
      expect(ratio).toBeGreaterThan(2);
      expect(ratio).toBeLessThan(3.5);
      expect(readings.dischargeLineF).toBeGreaterThan(150);
      expect(readings.dischargeLineF).toBeLessThan(195);
    }
    expect.assertions(12);
  });
});
