import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { steadyState } from '../diagnostics/healthy-unit/steady-state';
import { wetBulbF } from '../diagnostics/moist-air';
import { baroPsiaAtAltitude } from '../diagnostics/refrigerant/gauge';
import { type Estimate, scaleEstimate } from '../math/estimate';
import { resolveAssumption } from '../visit/assumption';
import type { AssumptionKey } from '../visit/assumption-keys';
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
 * Load lines of the house, from floor area, age and insulation if given, else from the size of its unit.
 *
 * @param visit    floor area, age, insulation, set-points, set-back, altitude and the visit's own assumptions are used
 * @param healthy  the existing unit with nothing wrong; the house stays the same whatever replaces it
 * @param climate  design temperatures
 * @param moves    how far each assumed part goes towards the end at which the house asks for less (-1) or more (+1)
 * @returns slopes [Btu/h per F], balance temperatures [F] moved by the set-points, indoor conditions
 * From the unit's size: cooling load at the local design temperature is the healthy capacity there over the sizing
 * factor; heating slope follows the test procedures' load lines per cooling capacity. Set-back counts as the mean room
 * temperature of the day.
 * Source: data/load-defaults.json, each with its status; slopes, balance and sizing from the assumptions
 * Check: tests/energy/house-load.test.ts
 */
export function houseLoad(
  visit: Visit,
  healthy: HealthyUnit,
  climate: Climate,
  moves: Partial<LoadMoves> = {},
): HouseLoad {
  const { site, assumptions } = visit;
  const { heatingRoomF, coolingRoomF } = meanRooms(site);
  const at = (key: AssumptionKey, move: number | undefined): number =>
    moved(resolveAssumption(assumptions, key), move ?? 0);
  const less = (move: number | undefined): number => -(move ?? 0);
  const heatingBalanceF =
    at('heatingBalanceF', moves.heatingBalance) + heatingRoomF - defaults.setpoints.heatingF;
  // cooling that starts later, like a larger unit for the same house, means less need
  const coolingBalanceF =
    at('coolingBalanceF', less(moves.coolingBalance)) + coolingRoomF - defaults.setpoints.coolingF;
  const psia = baroPsiaAtAltitude(site.altitudeFt ?? climate.elevationFt ?? 0);
  const coolingRoomWetBulbF = wetBulbF(coolingRoomF, defaults.indoorHumidityFrac.value, psia);
  const designF = Math.max(climate.coolingDesignF, coolingBalanceF + MIN_COOLING_SPAN_FD);
  const rooms = { heatingBalanceF, coolingBalanceF, heatingRoomF, coolingRoomWetBulbF };
  if (site.floorAreaFt2 !== undefined) {
    const { heating, cooling, sources } = perFloor(visit);
    const coolingBtuh = moved(cooling, moves.coolingSlope ?? 0) * site.floorAreaFt2;
    return {
      ...rooms,
      heatingBtuhPerF: (moved(heating, moves.heatingSlope ?? 0) * site.floorAreaFt2) / FLOOR_UNIT_FT2,
      coolingBtuhPerF: coolingBtuh / (designF - coolingBalanceF),
      basis: 'assumed',
      source: sources,
    };
  }
  const loss = resolveAssumption(assumptions, 'heatLossPerTon');
  const sizing = resolveAssumption(assumptions, 'sizingFactorFrac');
  const steady = steadyState(healthy, {
    mode: 'cooling',
    outdoorF: designF,
    indoorWetBulbF: coolingRoomWetBulbF,
    frost: 'none',
  });
  return {
    ...rooms,
    heatingBtuhPerF: (moved(loss, moves.heatingSlope ?? 0) * healthy.cooling95Btuh) / BTUH_PER_TON,
    coolingBtuhPerF:
      steady.netCapacityBtuh / moved(sizing, less(moves.coolingSlope)) / (designF - coolingBalanceF),
    basis: 'assumed',
    source: `Size of the unit; ${loss.source}; ${sizing.source}`,
  };
}

/** How far each assumed part of the load goes towards less (-1) or more (+1) need; 0 = likely. */
export type LoadMoves = {
  readonly heatingSlope: number;
  readonly heatingBalance: number;
  readonly coolingSlope: number;
  readonly coolingBalance: number;
};

/** A value part of the way from likely to its low (-1) or high (+1) end. */
export function moved(value: Estimate, move: number): number {
  const end = move < 0 ? value.low : value.high;
  return value.likely + Math.abs(move) * (end - value.likely);
}

const BTUH_PER_TON = 12_000;
/** Heat loss is assumed for this much floor. */
const FLOOR_UNIT_FT2 = 1_000;

/** Room temperatures as means of the day, set-back and set-up spread over it [F]. */
function meanRooms(site: Visit['site']): { readonly heatingRoomF: number; readonly coolingRoomF: number } {
  const { setpoints, setbackHoursPerDay } = defaults;
  const share = (hours: number | undefined): number => (hours ?? setbackHoursPerDay.value) / 24;
  return {
    heatingRoomF:
      (site.heatingSetpointF ?? setpoints.heatingF) -
      (site.heatingSetbackFd ?? 0) * share(site.heatingSetbackHoursPerDay),
    coolingRoomF:
      (site.coolingSetpointF ?? setpoints.coolingF) +
      (site.coolingSetupFd ?? 0) * share(site.coolingSetupHoursPerDay),
  };
}

/** Heat loss and cooling need for floor area: the visit's own, else by age and insulation, else of a house of mixed age. */
function perFloor(visit: Visit): {
  readonly heating: Estimate;
  readonly cooling: Estimate;
  readonly sources: string;
} {
  const { site, assumptions } = visit;
  const heating = resolveAssumption(assumptions, 'heatLossPerFloor');
  const cooling = resolveAssumption(assumptions, 'coolingPerFloor');
  const { rows, insulationRatio, coolingShareFrac, source } = defaults.heatLossByAge;
  const known = site.builtYear !== undefined || site.insulation !== undefined;
  const builtYear = site.builtYear;
  const row = builtYear === undefined ? undefined : rows.find((r) => builtYear < r.beforeYear);
  const ratio = site.insulation === undefined ? 1 : insulationRatio[site.insulation];
  const aged = heating.setBy === 'visit' || !known ? heating : scaleEstimate(row ?? heating, ratio);
  const followed = 1 + coolingShareFrac * (aged.likely / heating.likely - 1);
  return {
    heating: aged,
    cooling: cooling.setBy === 'visit' ? cooling : scaleEstimate(cooling, followed),
    sources: `Floor area${aged === heating ? '' : ', age and insulation'}; ${aged === heating ? heating.source : source}; ${cooling.source}`,
  };
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
