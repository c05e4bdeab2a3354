import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { steadyState } from '../diagnostics/healthy-unit/steady-state';
import { wetBulbF } from '../diagnostics/moist-air';
import { baroPsiaAtAltitude } from '../diagnostics/refrigerant/gauge';
import type { Estimate } from '../math/estimate';
import { resolveAssumption } from '../visit/assumption';
import type { Basis } from '../visit/basis';
import type { Visit } from '../visit/visit';
import type { Climate } from './climate-model';
import defaults from './data/load-defaults.json';

/** What the house asks for: straight lines from balance temperatures; rooms at their set-points. */
export type HouseLoad = {
  readonly heatingBtuhPerF: number;
  readonly heatingBalanceF: number;
  readonly coolingBtuhPerF: number;
  readonly coolingBalanceF: number;
  readonly heatingRoomF: number;
  readonly coolingRoomWetBulbF: number;
  readonly basis: Basis;
  readonly source: string;
};

/**
 * Load lines of the house, from its floor area if given, else from the size of its unit.
 *
 * @param visit    floor area, set-points, altitude and the visit's own assumptions are used
 * @param healthy  the existing unit with nothing wrong; the house stays the same whatever replaces it
 * @param climate  design temperatures
 * @param need     likely; or low or high: slopes and balance temperatures moved together towards the ends at which the
 *   house asks for less or more, each by 0.7071 of the way, since they are independent of each other
 * @returns slopes [Btu/h per F], balance temperatures [F] moved by the set-points, indoor conditions
 * From the unit's size: cooling load at the local design temperature is the healthy capacity there over the sizing
 * factor; heating slope follows the test procedures' load lines per cooling capacity.
 * Source: data/load-defaults.json, each with its status; balance and sizing from the assumptions
 * Check: tests/energy/house-load.test.ts
 */
export function houseLoad(
  visit: Visit,
  healthy: HealthyUnit,
  climate: Climate,
  need: Need = 'likely',
): HouseLoad {
  const { site, assumptions } = visit;
  const heatingRoomF = site.heatingSetpointF ?? defaults.setpoints.heatingF;
  const coolingRoomF = site.coolingSetpointF ?? defaults.setpoints.coolingF;
  const heatingBalanceF =
    atNeed(resolveAssumption(assumptions, 'heatingBalanceF'), need) +
    heatingRoomF -
    defaults.setpoints.heatingF;
  const coolingBalanceF =
    atNeed(resolveAssumption(assumptions, 'coolingBalanceF'), opposite[need]) +
    coolingRoomF -
    defaults.setpoints.coolingF;
  const psia = baroPsiaAtAltitude(site.altitudeFt ?? climate.elevationFt ?? 0);
  const coolingRoomWetBulbF = wetBulbF(coolingRoomF, defaults.indoorHumidityFrac.value, psia);
  const designF = Math.max(climate.coolingDesignF, coolingBalanceF + MIN_COOLING_SPAN_FD);
  const rooms = { heatingBalanceF, coolingBalanceF, heatingRoomF, coolingRoomWetBulbF };
  if (site.floorAreaFt2 !== undefined) {
    const { heatLossPerFloor, coolingPerFloor } = defaults;
    return {
      ...rooms,
      heatingBtuhPerF: atNeed(heatLossPerFloor, need) * site.floorAreaFt2,
      coolingBtuhPerF: (atNeed(coolingPerFloor, need) * site.floorAreaFt2) / (designF - coolingBalanceF),
      basis: 'assumed',
      source: `Floor area; ${heatLossPerFloor.source}; ${coolingPerFloor.source}`,
    };
  }
  const sizing = resolveAssumption(assumptions, 'sizingFactorFrac');
  const at = steadyState(healthy, {
    mode: 'cooling',
    outdoorF: designF,
    indoorWetBulbF: coolingRoomWetBulbF,
    frost: 'none',
  });
  return {
    ...rooms,
    heatingBtuhPerF: atNeed(defaults.heatLossPerCooling, need) * healthy.cooling95Btuh,
    coolingBtuhPerF: at.netCapacityBtuh / atNeed(sizing, opposite[need]) / (designF - coolingBalanceF),
    basis: 'assumed',
    source: `Size of the unit; ${defaults.heatLossPerCooling.source}; ${sizing.source}`,
  };
}

/** How much the house asks for, within what was assumed. */
export type Need = 'low' | 'likely' | 'high';

/** A larger unit for the same house, or cooling that starts later, means less need. */
const opposite = { low: 'high', likely: 'likely', high: 'low' } as const;

/** Two independent parts moved by this share of their way move the result as far as their root sum of squares. */
const EACH_OF_TWO = Math.SQRT1_2;

function atNeed(value: Estimate, need: Need): number {
  return value.likely + EACH_OF_TWO * (value[need] - value.likely);
}

/** In cool climates the design temperature is hardly above balance; a line over less than this is no line. */
const MIN_COOLING_SPAN_FD = defaults.minCoolingSpanFd.value;

/** Heat the house asks for at an outdoor temperature [Btu/h], never negative. */
export function heatingLoadBtuh(load: HouseLoad, outdoorF: number): number {
  return Math.max(0, load.heatingBtuhPerF * (load.heatingBalanceF - outdoorF));
}

/** Cooling the house asks for at an outdoor temperature [Btu/h], never negative. */
export function coolingLoadBtuh(load: HouseLoad, outdoorF: number): number {
  return Math.max(0, load.coolingBtuhPerF * (outdoorF - load.coolingBalanceF));
}
