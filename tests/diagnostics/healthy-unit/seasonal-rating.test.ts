import { describe, expect, it } from 'vitest';
import procedure from '@/lib/diagnostics/healthy-unit/data/test-procedure.json';
import {
  designRequirementBtuh,
  procedureHeatingPoint,
  type Region,
  seasonalCoolingRating,
  seasonalHeatingRating,
} from '@/lib/diagnostics/healthy-unit/seasonal-rating';
import reference from '../../reference/seasonal-ratings.json';

const regions: readonly Region[] = ['I', 'II', 'III', 'IV', 'V', 'VI'];

type Point = { readonly Q_Btu_h: number; readonly P_W: number };
const point = (p: Point) => ({ capacityBtuh: p.Q_Btu_h, powerW: p.P_W });

const cases = reference.cases.map((c) => {
  const older = c.procedure === 'appendix_M';
  const answers = c.answers as unknown as Readonly<Record<string, unknown>>;
  return {
    name: c.name,
    procedure: older ? ('older' as const) : ('newer' as const),
    cooling: answers[older ? 'SEER' : 'SEER2'] as number,
    heating: answers[older ? 'HSPF_by_region' : 'HSPF2_by_region'] as Readonly<Record<Region, number>>,
    inputs: c.inputs,
    rows: c.region_IV_bins.rows,
  };
});
type Case = (typeof cases)[number];

/** The reference library keeps the general design-requirement rule in region V; the procedure has its own. */
function requirementOfReference(c: Case, region: Region): number {
  const raw = (c.inputs.H1_47F.Q_Btu_h * (65 - procedure.regions[region].outdoorDesignF)) / 60;
  return procedure.standardDesignRequirementBtuh.reduce((best, v) =>
    Math.abs(v - raw) < Math.abs(best - raw) ? v : best,
  );
}

function rate(c: Case, region: Region) {
  return seasonalHeatingRating({
    procedure: c.procedure,
    region,
    tests: { at47: point(c.inputs.H1_47F), at35: point(c.inputs.H2_35F), at17: point(c.inputs.H3_17F) },
    cooling95Btuh: c.inputs.A.Q_Btu_h,
    cyclicFrac: c.inputs.Cd_h,
    cutOutF: c.inputs.t_off_F,
    cutInF: c.inputs.t_on_F,
    designRequirementBtuh: requirementOfReference(c, region),
  });
}

describe('outside: ratings recomputed from test points [resdx, computed twice; points rounded to 0.01 Btu/h]', () => {
  it('has three units under two procedures', () => {
    expect(cases).toHaveLength(6);
  });

  it.each(cases)('SEER / SEER2 of $name', (c) => {
    const rating = seasonalCoolingRating(point(c.inputs.B), c.inputs.Cd_c);
    expect(Math.abs(rating - c.cooling)).toBeLessThan(reference.toleranceBtuPerWh);
  });

  it.each(cases)('HSPF / HSPF2 in all six regions of $name', (c) => {
    expect.assertions(6);
    for (const region of regions) {
      const { ratingBtuPerWh } = rate(c, region);
      expect(
        Math.abs(ratingBtuPerWh - c.heating[region]),
        `${region}: ${ratingBtuPerWh} against ${c.heating[region]}`,
      ).toBeLessThan(reference.toleranceBtuPerWh);
    }
  });

  it.each(cases)('region IV bin by bin of $name', (c) => {
    const { bins } = rate(c, 'IV');
    const used = bins.filter((bin) => bin.binFrac > 0);
    const sum = used.reduce((a, bin) => a + bin.binFrac, 0);
    expect(used).toHaveLength(c.rows.length);
    expect.assertions(1 + 9 * c.rows.length);
    c.rows.forEach((row, i) => {
      const bin = used[i];
      const [f, fraction, load, capacity, power, loadFactor, plf, delta, compressor, resistance] = row;
      expect(bin?.outdoorF).toBe(f);
      // the newer rows print the fraction divided by its sum, 0.757
      expect((bin?.binFrac ?? 0) / sum).toBeCloseTo(fraction ?? 0, 5);
      expect(bin?.loadBtuh).toBeCloseTo(load ?? 0, 0);
      expect(bin?.capacityBtuh).toBeCloseTo(capacity ?? 0, 0);
      expect(bin?.powerW).toBeCloseTo(power ?? 0, 1);
      expect(bin?.loadFactor).toBeCloseTo(loadFactor ?? 0, 3);
      expect(bin?.partLoadFactor).toBeCloseTo(plf ?? 0, 3);
      expect(bin?.runningShare).toBe(delta);
      // rounded inputs: one part in 10,000
      expect(
        Math.abs((bin?.compressorW ?? 0) - (compressor ?? 0)) +
          Math.abs((bin?.resistanceW ?? 0) - (resistance ?? 0)),
      ).toBeLessThan(0.5);
    });
  });
});

describe('outside: the bins of the procedure', () => {
  it('cooling fractions are the national ones and sum to one', () => {
    expect(procedure.coolingBinF).toEqual(reference.coolingBins.temperatures_F);
    expect(procedure.coolingBinFrac).toEqual(reference.coolingBins.fractional_bin_hours);
    expect(procedure.coolingBinFrac.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  it('older heating fractions sum to one in every region, newer ones to the printed sums', () => {
    expect(reference.heatingRegions).toHaveLength(6);
    expect.assertions(1 + 4 * 6);
    for (const row of reference.heatingRegions) {
      const region = procedure.regions[row.region as Region];
      expect(region.older.binFrac).toEqual(row.appendix_M.fractional_bin_hours);
      expect(region.newer.binFrac).toEqual(row.appendix_M1.fractional_bin_hours);
      // printed to three decimals
      expect(Math.abs(region.older.binFrac.reduce((a, b) => a + b, 0) - 1)).toBeLessThan(0.0015);
      expect(region.newer.binFrac.reduce((a, b) => a + b, 0)).toBeCloseTo(row.appendix_M1.sum, 9);
    }
  });

  it('newer fractions are the older ones cut off at the zero-load temperature', () => {
    expect.assertions(6 * 18);
    for (const region of regions) {
      const { older, newer } = procedure.regions[region];
      procedure.heatingBinF.forEach((f, i) => {
        expect(newer.binFrac[i]).toBe(f >= newer.zeroLoadF ? 0 : older.binFrac[i]);
      });
    }
  });
});

describe('outside: parts of the heating procedure', () => {
  it('design requirement rounds to the standard list, region V by its own rule [Appendix M, secondary]', () => {
    expect(designRequirementBtuh(35_460, 'IV')).toBe(35_000);
    expect(designRequirementBtuh(35_460, 'I')).toBe(15_000);
    expect(designRequirementBtuh(35_460, 'V')).toBe(35_000);
  });

  it('the procedure steps down just below 45 F and is continuous at 17 F', () => {
    const first = cases[0];
    const tests = {
      at47: point(first?.inputs.H1_47F ?? { Q_Btu_h: 0, P_W: 0 }),
      at35: point(first?.inputs.H2_35F ?? { Q_Btu_h: 0, P_W: 0 }),
      at17: point(first?.inputs.H3_17F ?? { Q_Btu_h: 0, P_W: 0 }),
    };
    expect(procedureHeatingPoint(tests, 45).capacityBtuh).toBeGreaterThan(
      procedureHeatingPoint(tests, 44.999).capacityBtuh + 1_500,
    );
    expect(procedureHeatingPoint(tests, 17.0001).capacityBtuh).toBeCloseTo(22_680, 0);
  });
});
