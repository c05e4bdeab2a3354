import { describe, expect, it } from 'vitest';
import { steadyState } from '@/lib/diagnostics/healthy-unit/steady-state';
import { healthyAt } from '@/lib/diagnostics/targets/healthy-state';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

describe('the healthy unit at the conditions of a run', () => {
  it('wiring: the same numbers as the healthy unit itself, frost-free', () => {
    const context = contextOfRun({ mode: 'heating', outdoorAirF: 33, returnAirF: 69 });
    const direct = steadyState(context.healthy, {
      mode: 'heating',
      outdoorF: 33,
      indoorF: 69,
      frost: 'none',
    });
    expect(healthyAt(context)).toMatchObject({
      capacityBtuh: direct.capacityBtuh,
      outdoorUnitW: direct.outdoorUnitW,
      indoorAssumed: false,
      beyondRange: direct.beyondRange,
    });
  });

  it('identity: no outdoor air, or heating of a unit that only cools: none', () => {
    expect(healthyAt(contextOfRun({ mode: 'cooling', returnAirF: 76 }))).toBeUndefined();
    expect(
      healthyAt(contextOfRun({ mode: 'heating', outdoorAirF: 40 }, { kind: 'airConditioner' })),
    ).toBeUndefined();
  });

  it('identity: indoor air not read is assumed, said and widened, in both modes', () => {
    const cooling = healthyAt(contextOfRun({ mode: 'cooling', outdoorAirF: 95 }));
    const coolingRead = healthyAt(
      contextOfRun({ mode: 'cooling', outdoorAirF: 95, returnAirF: 75, returnWetBulbF: 63 }),
    );
    expect(cooling?.indoorAssumed).toBe(true);
    expect(cooling?.indoor).toMatchObject({ value: 63, basis: 'assumed' });
    expect(cooling?.sdLnCapacity ?? 0).toBeGreaterThan(coolingRead?.sdLnCapacity ?? 1e9);
    const heating = healthyAt(contextOfRun({ mode: 'heating', outdoorAirF: 40 }));
    expect(heating?.indoor).toMatchObject({ value: 70, basis: 'assumed' });
  });

  it('identity: beyond the published curve it is marked and widened by half', () => {
    const inside = healthyAt(contextOfRun({ mode: 'heating', outdoorAirF: 30, returnAirF: 70 }));
    const beyond = healthyAt(contextOfRun({ mode: 'heating', outdoorAirF: -30, returnAirF: 70 }));
    expect(inside?.beyondRange).toBe(false);
    expect(beyond?.beyondRange).toBe(true);
    expect(beyond?.sdLnCapacity ?? 0).toBeGreaterThan(1.3 * (inside?.sdLnCapacity ?? 1e9));
  });
});
