import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { steadyState } from '../diagnostics/healthy-unit/steady-state';
import type { HouseLoad } from './house-load';

/** Full-speed performance of a healthy unit in each temperature bin; computed once, then scaled by losses. */
export type UnitBins = {
  readonly unit: HealthyUnit;
  readonly binF: readonly number[];
  /** Gross heating capacity, frost averaged in; empty for cooling-only units [Btu/h]. */
  readonly heatingGrossBtuh: readonly number[];
  readonly heatingOutdoorW: readonly number[];
  readonly coolingGrossBtuh: readonly number[];
  readonly coolingOutdoorW: readonly number[];
};

/**
 * Full-speed performance in each bin at the rooms' conditions.
 *
 * @param unit  healthy unit
 * @param binF  bin temperatures [F]
 * @param load  room conditions
 * Check: tests/energy/unit-year.test.ts
 */
export function unitBins(unit: HealthyUnit, binF: readonly number[], load: HouseLoad): UnitBins {
  const cooling = binF.map((outdoorF) =>
    steadyState(unit, {
      mode: 'cooling',
      outdoorF,
      indoorWetBulbF: load.coolingRoomWetBulbF,
      frost: 'none',
    }),
  );
  const heating =
    unit.heating === undefined
      ? []
      : binF.map((outdoorF) =>
          steadyState(unit, { mode: 'heating', outdoorF, indoorF: load.heatingRoomF, frost: 'smooth' }),
        );
  return {
    unit,
    binF,
    heatingGrossBtuh: heating.map((s) => s.capacityBtuh),
    heatingOutdoorW: heating.map((s) => s.outdoorUnitW),
    coolingGrossBtuh: cooling.map((s) => s.capacityBtuh),
    coolingOutdoorW: cooling.map((s) => s.outdoorUnitW),
  };
}
