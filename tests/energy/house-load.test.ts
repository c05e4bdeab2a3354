import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { steadyState } from '@/lib/diagnostics/healthy-unit/steady-state';
import { cities } from '@/lib/energy/city-list';
import { climateFor } from '@/lib/energy/climate';
import { coolingLoadBtuh, heatingLoadBtuh, houseLoad } from '@/lib/energy/house-load';
import assumptions from '@/lib/visit/data/assumptions.json';
import { exampleVisit } from './example-visit';

const visit = exampleVisit();
const healthy = healthyUnit({ unit: visit.unit, visitDate: visit.visitDate });
const atlanta = climateFor(visit.site.climate);
const load = houseLoad(visit, healthy, atlanta);

describe('outside: load lines from the size of the unit', () => {
  it('heating at 5 F lies between the two test procedures [0.77 x 0.985 and 1.15 of cooling capacity, secondary]', () => {
    const at5 = heatingLoadBtuh(load, 5);
    expect(at5).toBeGreaterThan(0.77 * 0.985 * 36_000);
    expect(at5).toBeLessThan(1.15 * 36_000);
    expect(at5 / 36_000).toBeCloseTo((0.77 * 0.985 + 1.15) / 2, 2);
  });

  it('cooling at the design temperature is the capacity there over the sizing factor', () => {
    const at = steadyState(healthy, {
      mode: 'cooling',
      outdoorF: atlanta.coolingDesignF,
      indoorWetBulbF: load.coolingRoomWetBulbF,
      frost: 'none',
    });
    expect(coolingLoadBtuh(load, atlanta.coolingDesignF)).toBeCloseTo(at.netCapacityBtuh / 1.15, 6);
  });

  it('rooms at 75 F and half humidity have a wet bulb near 62.6 F [psychrometric chart at sea level; 0.3 F for 1,010 ft]', () => {
    expect(Math.abs(load.coolingRoomWetBulbF - 62.6)).toBeLessThan(0.3);
  });
});

describe('wiring: what moves the load', () => {
  it('nothing is asked beyond the balance temperatures', () => {
    expect(heatingLoadBtuh(load, 61)).toBe(0);
    expect(heatingLoadBtuh(load, 60.9)).toBeGreaterThan(0);
    expect(coolingLoadBtuh(load, 68)).toBe(0);
    expect(coolingLoadBtuh(load, 68.1)).toBeGreaterThan(0);
  });

  it('set-points move the balance temperatures degree by degree', () => {
    const cooler = houseLoad(
      { ...visit, site: { ...visit.site, heatingSetpointF: 66, coolingSetpointF: 78 } },
      healthy,
      atlanta,
    );
    expect(cooler.heatingBalanceF).toBe(57);
    expect(cooler.coolingBalanceF).toBe(71);
    expect(cooler.heatingRoomF).toBe(66);
  });

  it('assumptions of the visit win', () => {
    const own = houseLoad(
      {
        ...visit,
        assumptions: [
          { key: 'heatingBalanceF', low: 52, likely: 54, high: 56, source: 'bills' },
          { key: 'sizingFactorFrac', low: 1, likely: 2, high: 3, source: 'load calculation' },
        ],
      },
      healthy,
      atlanta,
    );
    expect(own.heatingBalanceF).toBe(54);
    expect(own.coolingBtuhPerF).toBeCloseTo((load.coolingBtuhPerF * 1.15) / 2, 9);
  });

  it('each assumed part moves by itself, all the way to the end at which less or more is asked for', () => {
    const at = (moves: Parameters<typeof houseLoad>[3]) => houseLoad(visit, healthy, atlanta, moves);
    const { heatingBalanceF, coolingBalanceF, sizingFactorFrac, heatLossPerTon } = assumptions.values;
    expect(at({ heatingBalance: -1 }).heatingBalanceF).toBe(heatingBalanceF.low);
    expect(at({ heatingBalance: 1 }).heatingBalanceF).toBe(heatingBalanceF.high);
    expect(at({ coolingBalance: -1 }).coolingBalanceF).toBe(coolingBalanceF.high);
    expect(at({ coolingBalance: 1 }).coolingBalanceF).toBe(coolingBalanceF.low);
    const loss = heatLossPerTon;
    expect(at({ heatingSlope: -1 }).heatingBtuhPerF / load.heatingBtuhPerF).toBeCloseTo(
      loss.low / loss.likely,
      9,
    );
    expect(at({ heatingSlope: 0.5 }).heatingBtuhPerF / load.heatingBtuhPerF).toBeCloseTo(
      (loss.likely + loss.high) / 2 / loss.likely,
      9,
    );
    expect(at({ coolingSlope: -1 }).coolingBtuhPerF / load.coolingBtuhPerF).toBeCloseTo(
      sizingFactorFrac.likely / sizingFactorFrac.high,
      9,
    );
    expect(at({ heatingSlope: 1, coolingSlope: 1 })).toMatchObject({
      heatingBalanceF: load.heatingBalanceF,
      coolingBalanceF: load.coolingBalanceF,
      heatingRoomF: load.heatingRoomF,
    });
  });

  it('set-back counts as the mean room temperature of the day: 6 F for 8 hours are 2 F', () => {
    const site = { ...visit.site, heatingSetpointF: 70, heatingSetbackFd: 6, heatingSetbackHoursPerDay: 8 };
    const back = houseLoad({ ...visit, site }, healthy, atlanta);
    expect(back.heatingBalanceF).toBeCloseTo(load.heatingBalanceF - 2, 9);
    expect(back.heatingRoomF).toBe(68);
    const up = { ...visit.site, coolingSetupFd: 4, coolingSetupHoursPerDay: 6 };
    expect(houseLoad({ ...visit, site: up }, healthy, atlanta).coolingBalanceF).toBeCloseTo(
      load.coolingBalanceF + 1,
      9,
    );
    const unsaid = { ...visit.site, heatingSetbackFd: 6 };
    expect(houseLoad({ ...visit, site: unsaid }, healthy, atlanta).heatingRoomF).toBe(68);
  });

  it('an older or worse insulated house of one floor area never needs less; its own slope wins over its age', () => {
    const at = (site: Partial<typeof visit.site>) =>
      houseLoad({ ...visit, site: { ...visit.site, floorAreaFt2: 2_000, ...site } }, healthy, atlanta);
    const years = [1930, 1965, 1990, 2005, 2020].map((builtYear) => at({ builtYear }));
    years.slice(1).forEach((younger, i) => {
      expect(younger.heatingBtuhPerF).toBeLessThan(years[i]?.heatingBtuhPerF ?? 0);
      expect(younger.coolingBtuhPerF).toBeLessThan(years[i]?.coolingBtuhPerF ?? 0);
    });
    expect(at({ builtYear: 1990 }).heatingBtuhPerF).toBe(660);
    expect(at({ builtYear: 1990, insulation: 'poor' }).heatingBtuhPerF).toBe(825);
    expect(at({ insulation: 'good' }).heatingBtuhPerF).toBeCloseTo(0.8 * 760, 9);
    const own = {
      key: 'heatLossPerFloor' as const,
      low: 200,
      likely: 300,
      high: 400,
      source: 'load calculation',
    };
    const told = houseLoad(
      { ...visit, assumptions: [own], site: { ...visit.site, floorAreaFt2: 2_000, builtYear: 1930 } },
      healthy,
      atlanta,
    );
    expect(told.heatingBtuhPerF).toBe(600);
    expect(at({ builtYear: 1990 }).source).toContain('age and insulation');
  });

  it('floor area, when known, sets both slopes', () => {
    const floor = houseLoad({ ...visit, site: { ...visit.site, floorAreaFt2: 2_000 } }, healthy, atlanta);
    expect(floor.heatingBtuhPerF).toBeCloseTo(760, 9);
    const designF = floor.coolingBalanceF + 44_000 / floor.coolingBtuhPerF;
    expect(designF).toBeCloseTo(Math.max(atlanta.coolingDesignF, floor.coolingBalanceF + 15), 6);
    expect(floor.source).toContain('Floor area');
  });

  it('gives a finite line in every listed city', () => {
    expect(cities.length).toBe(29);
    const slopes = cities.map((c) => houseLoad(visit, healthy, climateFor({ kind: 'city', city: c.slug })));
    expect(slopes.filter((l) => !(l.coolingBtuhPerF > 0 && l.coolingBtuhPerF < 3_000))).toEqual([]);
  });
});
