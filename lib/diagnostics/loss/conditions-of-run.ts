import type { Mode } from '../../visit/run';
import { type FaultConditions, typicalConditions } from '../fault-effects/fault-conditions';
import { type RunContext, reading, returnWetBulb } from '../run-context';
import { constant } from '../sourced';

/**
 * Conditions at which fault correlations are asked: those of the run, else typical ones of the mode.
 *
 * @param mode     mode asked for
 * @param context  a run of that mode; undefined = none was taken
 * @param anyRun   any context of the visit, for the unit's own figures; undefined without runs
 * @returns outdoor and indoor air [F], metering device, rated gross COP of compressor and outdoor fan
 * Check: tests/diagnostics/fault-route.test.ts
 */
export function conditionsOf(
  mode: Mode,
  context: RunContext | undefined,
  anyRun: RunContext | undefined,
): FaultConditions {
  const unit = context ?? anyRun;
  const shared = {
    ...(unit?.visit.unit.metering === undefined ? {} : { metering: unit.visit.unit.metering }),
    ...(unit === undefined ? {} : { ratedCop: ratedCop(unit) }),
  };
  const outdoor = context === undefined ? undefined : reading(context, 'outdoorAirF');
  if (context === undefined || outdoor === undefined) return { ...typicalConditions(mode), ...shared };
  const dry = reading(context, 'returnAirF');
  const wet = mode === 'cooling' ? returnWetBulb(context) : undefined;
  return {
    mode,
    outdoorF: outdoor.value,
    ...(dry === undefined ? {} : { indoorF: dry.value }),
    ...(wet === undefined ? {} : { indoorWetBulbF: wet.value }),
    ...shared,
  };
}

function ratedCop(context: RunContext): number {
  const { grossCapacityBtuh, outdoorUnitW } = context.healthy.cooling;
  return grossCapacityBtuh / (constant('btuhPerW') * outdoorUnitW);
}
