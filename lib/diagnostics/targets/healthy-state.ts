import { propagate, type Uncertain } from '../../math/propagate';
import data from '../data/targets.json';
import { steadyState } from '../healthy-unit/steady-state';
import { wetBulbF } from '../moist-air';
import { baroPsiaAtAltitude } from '../refrigerant/gauge';
import { oncePerContext, type RunContext, reading, returnWetBulb } from '../run-context';
import type { Sourced } from '../sourced';

/** What the healthy unit would do at the conditions of a run. */
export type HealthyState = {
  /** Gross, at the coil [Btu/h]. */
  readonly capacityBtuh: number;
  readonly outdoorUnitW: number;
  readonly blowerW: number;
  /** Standard uncertainty of ln capacity: the model's own and that of the conditions. */
  readonly sdLnCapacity: number;
  readonly sdLnPower: number;
  /** A condition lay outside the published curves. */
  readonly beyondRange: boolean;
  readonly indoorAssumed: boolean;
  /** Heating: return dry bulb; cooling: return wet bulb, as used [F]. */
  readonly indoor: Sourced;
};

/** How much wider the model's own uncertainty gets beyond the published curves. */
const BEYOND_WIDENING = data.beyondCurves.wideningFactor;

/**
 * Capacity and power of the healthy unit at the conditions of a run, frost-free as a steady run is.
 *
 * @param context  run with outdoor air
 * @returns undefined without outdoor air, or for heating of a unit that does not heat
 * Indoor air not measured: 75 F at 50 % humidity in cooling, 70 F in heating, with their own uncertainty. Beyond the
 * curves: held at their edge, marked, and widened by half.
 * Source: healthy-unit/steady-state.ts; assumed indoor conditions in data/targets.json
 * Check: tests/diagnostics/targets/healthy-state.test.ts
 */
export const healthyAt = oncePerContext((context): HealthyState | undefined => {
  const { healthy, run } = context;
  const outdoor = reading(context, 'outdoorAirF');
  const performance = run.mode === 'heating' ? healthy.heating : healthy.cooling;
  if (outdoor === undefined || performance === undefined) return undefined;
  const { indoor, assumed } = indoorOf(context);
  const at = (outdoorF: number, indoorF: number) =>
    steadyState(healthy, {
      mode: run.mode,
      outdoorF,
      frost: 'none',
      ...(run.mode === 'heating' ? { indoorF } : { indoorWetBulbF: indoorF }),
    });
  const state = at(outdoor.value, indoor.value);
  const inputs = { outdoor, indoor };
  const lnCapacity = propagate((v) => Math.log(at(v.outdoor, v.indoor).capacityBtuh), inputs);
  const lnPower = propagate((v) => Math.log(at(v.outdoor, v.indoor).outdoorUnitW), inputs);
  const widening = state.beyondRange ? BEYOND_WIDENING : 1;
  return {
    capacityBtuh: state.capacityBtuh,
    outdoorUnitW: state.outdoorUnitW,
    blowerW: state.blowerW,
    sdLnCapacity: Math.hypot(widening * performance.sdLnCapacity, lnCapacity.sd),
    sdLnPower: Math.hypot(widening * performance.sdLnPower, lnPower.sd),
    beyondRange: state.beyondRange,
    indoorAssumed: assumed,
    indoor,
  };
});

/** Return wet bulb in cooling: read, worked out from humidity, or assumed at half humidity. */
export const coolingWetBulb = oncePerContext(
  (context): { readonly indoor: Sourced; readonly assumed: boolean } => {
    const read = returnWetBulb(context);
    if (read !== undefined) return { indoor: read, assumed: false };
    const { coolingWetBulbF, coolingWetBulbSdFd, humidityFrac, humiditySdFrac, source } =
      data.indoorUnmeasured;
    const shared = { name: 'returnWetBulbF', unit: 'F', basis: 'assumed', source } as const;
    const dry = reading(context, 'returnAirF');
    if (dry === undefined) {
      return { indoor: { ...shared, value: coolingWetBulbF, sd: coolingWetBulbSdFd }, assumed: true };
    }
    const humidity: Uncertain = { value: humidityFrac, sd: humiditySdFrac };
    const psia = baroPsiaAtAltitude(context.altitude.value);
    const wet = propagate((v) => wetBulbF(v.dry, v.humidity, psia), { dry, humidity });
    return { indoor: { ...shared, value: wet.value, sd: wet.sd }, assumed: true };
  },
);

function indoorOf(context: RunContext): { readonly indoor: Sourced; readonly assumed: boolean } {
  if (context.run.mode === 'cooling') return coolingWetBulb(context);
  const read = reading(context, 'returnAirF');
  if (read !== undefined) return { indoor: read, assumed: false };
  const { heatingReturnF, heatingReturnSdFd, source } = data.indoorUnmeasured;
  return {
    indoor: {
      name: 'returnAirF',
      value: heatingReturnF,
      sd: heatingReturnSdFd,
      unit: 'F',
      basis: 'assumed',
      source,
    },
    assumed: true,
  };
}
