import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { steadyState } from '@/lib/diagnostics/healthy-unit/steady-state';
import { cities } from '@/lib/energy/city-list';
import { climateFor } from '@/lib/energy/climate';
import defaults from '@/lib/energy/data/load-defaults.json';
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

  it('at low and high need each slope and balance goes 0.7071 of its way, in the direction of less or more', () => {
    const [low, high] = [
      houseLoad(visit, healthy, atlanta, 'low'),
      houseLoad(visit, healthy, atlanta, 'high'),
    ];
    const { heatingBalanceF, coolingBalanceF, sizingFactorFrac } = assumptions.values;
    const part = (likely: number, end: number) => likely + Math.SQRT1_2 * (end - likely);
    expect(low.heatingBalanceF).toBeCloseTo(part(heatingBalanceF.likely, heatingBalanceF.low), 9);
    expect(low.coolingBalanceF).toBeCloseTo(part(coolingBalanceF.likely, coolingBalanceF.high), 9);
    expect(high.heatingBalanceF).toBeCloseTo(part(heatingBalanceF.likely, heatingBalanceF.high), 9);
    expect(high.coolingBalanceF).toBeCloseTo(part(coolingBalanceF.likely, coolingBalanceF.low), 9);
    const { low: least, likely, high: most } = defaults.heatLossPerCooling;
    expect(low.heatingBtuhPerF / load.heatingBtuhPerF).toBeCloseTo(part(likely, least) / likely, 9);
    expect(high.heatingBtuhPerF / load.heatingBtuhPerF).toBeCloseTo(part(likely, most) / likely, 9);
    // Atlanta's design temperature lies far above either balance: the load there goes with the sizing factor alone
    const atDesign = (l: typeof load) => coolingLoadBtuh(l, atlanta.coolingDesignF);
    expect(atDesign(load) / atDesign(low)).toBeCloseTo(
      part(sizingFactorFrac.likely, sizingFactorFrac.high) / sizingFactorFrac.likely,
      9,
    );
    expect([low.heatingRoomF, low.coolingRoomWetBulbF]).toEqual([
      load.heatingRoomF,
      load.coolingRoomWetBulbF,
    ]);
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
