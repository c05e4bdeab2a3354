import { describe, expect, it } from 'vitest';
import {
  compressionRatioTarget,
  condensingTarget,
  dischargeTarget,
  evaporatingTarget,
  healthySuperheat,
  heatingOrificeSuperheat,
  subcoolingTarget,
  superheatTarget,
} from '@/lib/diagnostics/targets/refrigerant-targets';
import '../support/matchers';
import { contextOfRun, contextOfUnknownRefrigerant, type RunPart } from '../support/visit-of';

const summer = {
  mode: 'cooling',
  outdoorAirF: 95,
  returnAirF: 80,
  returnWetBulbF: 67,
} as const satisfies RunPart;
const winter = { mode: 'heating', outdoorAirF: 40, returnAirF: 70 } as const satisfies RunPart;
const fixed = { metering: 'fixedOrifice' } as const;

describe('superheat', () => {
  it('outside: fixed metering at 95 F and 67 F wet bulb: 12.0 F +/-5 [regulatory table, installer tolerance]', () => {
    const target = superheatTarget(contextOfRun(summer, fixed));
    expect(target).toMatchObject({ low: expect.any(Number), unit: 'Fd' });
    expect('value' in target ? [target.value, target.low, target.high] : []).toEqual([12, 7, 17]);
  });

  it('outside: an expansion valve has 5-25 F whatever the weather [RA3.2: 4-25 F; makers: never below 5 F]', () => {
    expect(superheatTarget(contextOfRun(summer))).toMatchObject({ low: 5, high: 25 });
    expect(superheatTarget(contextOfRun({ mode: 'cooling' }))).toMatchObject({ low: 5, high: 25 });
  });

  it.each([
    [{ outdoorAirF: 54 }, 'tooColdForCharging'],
    [{ outdoorAirF: 116 }, 'tooHotForTable'],
    [{ returnWetBulbF: 49 }, 'tooDryForTable'],
    [{ returnWetBulbF: 77 }, 'tooHumidForTable'],
    [{ outdoorAirF: 105, returnWetBulbF: 60 }, 'noTargetDash'],
  ])(
    'identity: outside the published range there is a reason instead of a target: %o -> %s',
    (change, code) => {
      const target = superheatTarget(contextOfRun({ ...summer, ...change }, fixed));
      expect(target).toEqual({ id: 'suctionSuperheatFd', note: { code } });
    },
  );

  it('property: no superheat below 5 F is ever called as it should be [makers, data/limits.json]', () => {
    const lows = [60, 75, 90, 105].flatMap((outdoorAirF) =>
      [55, 60, 63, 67, 72].flatMap((returnWetBulbF) => {
        const target = superheatTarget(contextOfRun({ ...summer, outdoorAirF, returnWetBulbF }, fixed));
        return 'low' in target ? [target.low] : [];
      }),
    );
    expect(lows.length).toBeGreaterThan(8);
    expect(Math.min(...lows)).toBe(5);
  });

  it('identity: a heating run never gets the cooling table', () => {
    const heating = { ...winter, outdoorAirF: 60, returnWetBulbF: 60 };
    expect(superheatTarget(contextOfRun(heating, fixed))).toEqual({
      id: 'suctionSuperheatFd',
      note: { code: 'noHeatingSuperheatRule' },
    });
    expect(superheatTarget(contextOfRun(heating))).toMatchObject({ low: 5, high: 15 });
  });

  it('identity: without metering device or conditions it says what is needed', () => {
    const unknown = contextOfRun(summer);
    const { metering: _, ...unit } = unknown.visit.unit;
    expect(superheatTarget({ ...unknown, visit: { ...unknown.visit, unit } })).toMatchObject({
      note: { code: 'meteringUnknown' },
    });
    expect(superheatTarget(contextOfRun({ mode: 'cooling', outdoorAirF: 90 }, fixed))).toMatchObject({
      note: { code: 'needsOutdoorAndWetBulb' },
    });
  });

  it('identity: inside computed targets a missing rule is a wide guess', () => {
    const at = (outdoorAirF: number) =>
      heatingOrificeSuperheat(contextOfRun({ ...winter, outdoorAirF }, fixed));
    expect(healthySuperheat(contextOfRun(winter, fixed))).toEqual(at(40));
    expect(at(42)).toEqual({ value: 8, sd: 8 });
    expect([at(17).value, at(60).value, at(90).value]).toEqual([0, 22.4, 25]);
    expect(healthySuperheat(contextOfRun(summer, fixed)).sd).toBeLessThan(4);
  });

  // California Energy Commission 2008, read: 105 F outdoors and 58 F wet bulb is a dash, a target below 5 F.
  it('outside: a heating rule never stands in for cooling: hot and dry, fixed metering has next to no superheat', () => {
    const hotAndDry = { mode: 'cooling', outdoorAirF: 105, returnAirF: 76, returnWetBulbF: 58 } as const;
    expect(superheatTarget(contextOfRun(hotAndDry, fixed))).toMatchObject({ note: { code: 'noTargetDash' } });
    expect(healthySuperheat(contextOfRun(hotAndDry, fixed)).value).toBeLessThan(5);
    const beyond = contextOfRun({ ...hotAndDry, outdoorAirF: 120 }, fixed);
    expect(healthySuperheat(beyond)).toEqual({ value: 10, sd: 6 });
  });
});

describe('subcooling', () => {
  it('outside: nameplate +/-3 F, valve 8-12 F, fixed metering 5-15 F', () => {
    expect(subcoolingTarget(contextOfRun(summer, { nameplateSubcoolingFd: 9 }))).toMatchObject({
      low: 6,
      high: 12,
    });
    expect(subcoolingTarget(contextOfRun(summer))).toMatchObject({ low: 8, high: 12 });
    expect(subcoolingTarget(contextOfRun(summer, fixed))).toMatchObject({ low: 5, high: 15 });
  });

  it('identity: none in heating', () => {
    expect(subcoolingTarget(contextOfRun(winter, { nameplateSubcoolingFd: 9 }))).toMatchObject({
      note: { code: 'noHeatingSubcoolingRule' },
    });
  });
});

describe('saturation temperatures against air', () => {
  it('identity: ids follow the mode', () => {
    expect(condensingTarget(contextOfRun(summer))).toMatchObject({
      id: 'condensingOverOutdoorFd',
      unit: 'Fd',
    });
    expect(evaporatingTarget(contextOfRun(summer))).toMatchObject({ id: 'evaporatingBelowReturnFd' });
    expect(condensingTarget(contextOfRun(winter))).toMatchObject({ id: 'condensingOverReturnFd' });
    expect(evaporatingTarget(contextOfRun(winter))).toMatchObject({ id: 'evaporatingBelowOutdoorFd' });
  });

  it('identity: each says which air it lacks', () => {
    const bare = contextOfRun({ mode: 'cooling' });
    expect(condensingTarget(bare)).toMatchObject({ note: { code: 'needsOutdoor' } });
    expect(evaporatingTarget(bare)).toMatchObject({ note: { code: 'needsReturn' } });
    const cold = contextOfRun({ mode: 'heating' });
    expect(condensingTarget(cold)).toMatchObject({ note: { code: 'needsOutdoorAndReturn' } });
    expect(evaporatingTarget(cold)).toMatchObject({ note: { code: 'needsOutdoor' } });
  });

  it('identity: the heating band is wider above than below, as coils differ', () => {
    const target = condensingTarget(contextOfRun(winter));
    const wide = 'value' in target ? [target.high - target.value, target.value - target.low] : [0, 0];
    expect(wide[0] ?? 0).toBeGreaterThan(wide[1] ?? 0);
  });
});

describe('compression ratio', () => {
  it('outside: 2.3-3.5 for older, 2-3 for modern units near design [trade article, read]', () => {
    expect(compressionRatioTarget(contextOfRun(summer, { ratings: { seerBtuPerWh: 10 } }))).toMatchObject({
      low: 2.3,
      high: 3.5,
    });
    expect(compressionRatioTarget(contextOfRun(summer, { ratings: { seerBtuPerWh: 16 } }))).toMatchObject({
      low: 2,
      high: 3,
    });
  });

  it('identity: no answer in heating or far from design', () => {
    expect(compressionRatioTarget(contextOfRun(winter))).toMatchObject({
      note: { code: 'noHeatingRatioRule' },
    });
    expect(compressionRatioTarget(contextOfRun({ ...summer, outdoorAirF: 74.9 }))).toMatchObject({
      note: { code: 'ratioRuleNearDesignOnly' },
    });
    expect(compressionRatioTarget(contextOfRun({ ...summer, outdoorAirF: 75 }))).toHaveProperty('low');
    expect(compressionRatioTarget(contextOfRun({ ...summer, outdoorAirF: 100.1 }))).toHaveProperty('note');
  });
});

describe('discharge line', () => {
  // Trade rule in heating, read: about outdoor + 100 F; between 35 and 60 F a reading on the rule must be accepted.
  it.each([36, 47, 59])(
    'outside: in heating at %d F outdoors a discharge line on the trade rule is within',
    (outdoorAirF) => {
      const target = dischargeTarget(contextOfRun({ ...winter, outdoorAirF }));
      const low = 'low' in target ? target.low : Number.NaN;
      const high = 'high' in target ? target.high : Number.NaN;
      expect(outdoorAirF + 100).toBeGreaterThanOrEqual(low);
      expect(outdoorAirF + 100).toBeLessThanOrEqual(high);
    },
  );

  it('identity: in the cold the rule does not apply: lossless compression alone is hotter', () => {
    const target = dischargeTarget(contextOfRun({ ...winter, outdoorAirF: 17 }));
    expect('low' in target ? target.low : 0).toBeGreaterThan(117);
  });

  it('identity: the rule alone serves an unknown refrigerant; in cooling there is none then', () => {
    expect(dischargeTarget(contextOfUnknownRefrigerant(winter))).toMatchObject({
      value: 140,
      low: 125,
      high: 155,
    });
    expect(dischargeTarget(contextOfUnknownRefrigerant(summer))).toMatchObject({
      note: { code: 'needsConditionsOrPressures' },
    });
  });

  it('identity: worked out at the pressures read, it says so', () => {
    const context = contextOfRun({ mode: 'cooling', suctionPsig: 125, dischargePsig: 360 });
    expect(dischargeTarget(context)).toMatchObject({ note: { code: 'dischargeAtPressuresRead' } });
  });
});

describe('condensing far from the rule', () => {
  it('regression: at 40 F or 120 F outdoors the class rule has no answer, and says where it has', () => {
    const at = (outdoorAirF: number) => condensingTarget(contextOfRun({ ...summer, outdoorAirF }));
    const none = {
      id: 'condensingOverOutdoorFd',
      note: { code: 'condensingRuleRange', values: { low: 55, high: 115 } },
    };
    expect([at(40), at(120)]).toEqual([none, none]);
    expect(at(55)).toHaveProperty('value');
    expect(at(115)).toHaveProperty('value');
  });
});
