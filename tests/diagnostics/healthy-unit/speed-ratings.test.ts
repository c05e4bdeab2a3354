import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import data from '@/lib/diagnostics/healthy-unit/data/speed-ratios.json';
import { frostTest, seasonalHeatingRating } from '@/lib/diagnostics/healthy-unit/seasonal-rating';
import { speedCoolingRating, speedHeatingRating } from '@/lib/diagnostics/healthy-unit/speed-rating';
import {
  twoSpeedCooling,
  twoSpeedCoolingTable,
  twoSpeedHeating,
  twoSpeedHeatingTable,
} from '@/lib/diagnostics/healthy-unit/two-speed';
import {
  variableSpeedCooling,
  variableSpeedCoolingTable,
  variableSpeedHeating,
  variableSpeedHeatingTable,
} from '@/lib/diagnostics/healthy-unit/variable-speed';
import reference from '../../reference/seasonal-speeds.json';

const BTUH_PER_W = 3.412142;
const cooling = (seer2BtuPerWh: number, eer2BtuPerWh: number) => ({
  kind: 'heatPump' as const,
  cooling95Btuh: 36_000,
  seer2BtuPerWh,
  eer2BtuPerWh,
  ratedBlowerW: 450,
});
const heating = (hspf2BtuPerWh: number, q17PerQ47: number, cutOutF: number) => ({
  heating47Btuh: 36_000,
  heating17Btuh: 36_000 * q17PerQ47,
  cooling95Btuh: 36_000,
  hspf2BtuPerWh,
  ratedBlowerW: 450,
  cutOutF,
});

type HeatingTable = {
  readonly hspf2BtuPerWh: readonly number[];
  readonly q17Axis: readonly number[];
  readonly cop47Full: readonly (readonly number[])[];
};
const rowsOf = (table: HeatingTable) =>
  table.hspf2BtuPerWh.flatMap((hspf2, i) =>
    table.q17Axis.map((q17, j) => ({ hspf2, q17, cop47: table.cop47Full[i]?.[j] ?? Number.NaN })),
  );
type CoolingTable = {
  readonly seer2BtuPerWh: readonly number[];
  readonly seer2PerEer2: readonly number[];
  readonly cop82Min: readonly (readonly number[])[];
};
const coolingRowsOf = (table: CoolingTable) =>
  table.seer2BtuPerWh.flatMap((seer2, i) =>
    table.seer2PerEer2.map((ratio, j) => ({ seer2, ratio, cop82: table.cop82Min[i]?.[j] ?? Number.NaN })),
  );

describe('outside: COP against HSPF2 as another body solved it [RESNET HERS Addendum 82, read]', () => {
  // same formula, bins and frost; their table is printed to three decimals
  it('single speed: all 25 rows rate as printed, within 0.2 %', () => {
    const rows = rowsOf(reference.singleSpeed);
    expect(rows).toHaveLength(25);
    const off = rows.map(({ hspf2, q17, cop47 }) => {
      const at47 = { capacityBtuh: 36_000, powerW: 36_000 / BTUH_PER_W / cop47 };
      const at17 = { capacityBtuh: 36_000 * q17, powerW: ((36_000 * q17) / BTUH_PER_W / cop47) * 1.356 };
      const { ratingBtuPerWh } = seasonalHeatingRating({
        procedure: 'newer',
        region: 'IV',
        tests: { at47, at17, at35: frostTest(at47, at17) },
        cooling95Btuh: 36_000,
        cyclicFrac: 0.08,
        cutOutF: 0,
        cutInF: 0,
      });
      return Math.abs(ratingBtuPerWh / hspf2 - 1);
    });
    expect(Math.max(...off)).toBeLessThan(0.002);
  });

  it('two speeds: all 25 rows rate as printed, within 0.6 %', () => {
    const rows = rowsOf(reference.twoSpeedHeating);
    expect(rows).toHaveLength(25);
    const off = rows.map(({ hspf2, q17, cop47 }) => {
      const table = twoSpeedHeatingTable(heating(hspf2, q17, 0), cop47);
      const input = { cyclicFrac: 0.08, cooling95Btuh: 36_000, cutOutF: 0, variableSpeed: false };
      return Math.abs(speedHeatingRating(table, input) / hspf2 - 1);
    });
    expect(Math.max(...off)).toBeLessThan(0.006);
  });

  // there the efficiency between speeds bends through a test at a middle speed, here it is a straight line
  it('variable speed: rows of ordinary units (HSPF2 7 to 11.5, 0.54 to 0.78 kept at 17 F) within 8 %', () => {
    const rows = rowsOf(reference.variableSpeedHeating).filter(
      (r) => r.hspf2 < 12 && r.q17 > 0.52 && r.q17 < 0.8,
    );
    expect(rows).toHaveLength(9);
    const off = rows.map(({ hspf2, q17, cop47 }) => {
      const table = variableSpeedHeatingTable(heating(hspf2, q17, -20), cop47);
      const input = { cyclicFrac: 0.4, cooling95Btuh: 36_000, cutOutF: -20, variableSpeed: true };
      return Math.abs(speedHeatingRating(table, input) / hspf2 - 1);
    });
    expect(Math.max(...off)).toBeLessThan(0.08);
  });
});

describe('outside: COP against SEER2 as another body solved it [RESNET HERS Addendum 82, read]', () => {
  it('two speeds: all four corners rate as printed, within 0.05 %', () => {
    const rows = coolingRowsOf(reference.twoSpeedCooling);
    expect(rows).toHaveLength(4);
    const off = rows.map(({ seer2, ratio, cop82 }) => {
      const table = twoSpeedCoolingTable(cooling(seer2, seer2 / ratio), cop82);
      return Math.abs(speedCoolingRating(table, 0.08, 36_000, 1) / seer2 - 1);
    });
    expect(Math.max(...off)).toBeLessThan(0.0005);
  });

  // as above; beyond SEER2 / EER2 of 1.75 their low-speed efficiencies leave what is built
  it('variable speed: rows with SEER2 up to 1.75 times EER2 within 13 %', () => {
    const rows = coolingRowsOf(reference.variableSpeedCooling).filter((r) => r.ratio < 1.8);
    expect(rows).toHaveLength(6);
    const off = rows.map(({ seer2, ratio, cop82 }) => {
      const table = variableSpeedCoolingTable(cooling(seer2, seer2 / ratio), cop82);
      return Math.abs(speedCoolingRating(table, 0.4, 36_000, 1) / seer2 - 1);
    });
    expect(Math.max(...off)).toBeLessThan(0.13);
  });
});

const seer2 = fc.double({ min: 14.5, max: 22, noNaN: true });
const ratio = fc.double({ min: 1.25, max: 1.6, noNaN: true });
const hspf2 = fc.double({ min: 7.2, max: 10.5, noNaN: true });
const q17 = fc.double({ min: 0.55, max: 0.85, noNaN: true });

describe('identity: a solved rating of several speeds rates as it was given', () => {
  it('two speeds', () => {
    fc.assert(
      fc.property(seer2, fc.double({ min: 1.1, max: 1.5, noNaN: true }), hspf2, q17, (s, r, h, q) => {
        const cool = twoSpeedCooling(cooling(s, s / r));
        const heat = twoSpeedHeating(heating(h, q, 0));
        expect(cool.outOfReach || heat.outOfReach).toBe(false);
        expect(speedCoolingRating(cool.table, data.cyclicFrac.twoSpeed, 36_000, 1)).toBeCloseTo(s, 6);
        const input = { cyclicFrac: 0.08, cooling95Btuh: 36_000, cutOutF: 0, variableSpeed: false };
        expect(speedHeatingRating(heat.table, input)).toBeCloseTo(h, 6);
      }),
      { numRuns: 40 },
    );
  });

  it('variable speed', () => {
    fc.assert(
      fc.property(seer2, ratio, hspf2, q17, (s, r, h, q) => {
        const cool = variableSpeedCooling(cooling(s, s / r));
        const heat = variableSpeedHeating(heating(h, q, -20));
        expect(cool.outOfReach || heat.outOfReach).toBe(false);
        expect(speedCoolingRating(cool.table, data.cyclicFrac.variableSpeed, 36_000, 0.93)).toBeCloseTo(s, 6);
        const input = { cyclicFrac: 0.4, cooling95Btuh: 36_000, cutOutF: -20, variableSpeed: true };
        expect(speedHeatingRating(heat.table, input)).toBeCloseTo(h, 6);
      }),
      { numRuns: 40 },
    );
  });

  it('EER2 is met at 95 F and nominal speed', () => {
    const { table } = variableSpeedCooling(cooling(18, 12));
    const nominal = table.speeds[table.nominal];
    expect((nominal?.netCapacityBtuh[1] ?? 0) / (nominal?.netPowerW[1] ?? 1)).toBeCloseTo(12, 9);
  });

  it('ratings that do not belong together are held and marked', () => {
    expect(variableSpeedCooling(cooling(30, 8)).outOfReach).toBe(true);
    expect(twoSpeedCooling(cooling(8, 14)).outOfReach).toBe(true);
    expect(twoSpeedHeating(heating(14, 0.6, 0)).outOfReach).toBe(true);
  });
});
