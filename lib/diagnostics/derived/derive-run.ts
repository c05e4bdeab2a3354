import type { DerivedValue } from '../findings';
import { type RunContext, wetBulbFromHumidity } from '../run-context';
import {
  airDifference,
  airflowPerTon,
  bestAirflow,
  directAirflow,
  grilleAirflow,
  grilleFreeArea,
  grilleGrossArea,
  heatRiseAirflow,
  sensibleCapacity,
  totalCapacity,
  totalExternalStatic,
} from './air-side';
import { efficiency, massFlow, refrigerantCapacity, refrigerantCop } from './balance';
import { reversingValveRise, standingOverAir } from './circuit-tests';
import { coilFlow } from './coil-flow';
import {
  compressorCapacitor,
  fanCapacitor,
  loadAmpsRatio,
  stripAmpsRatio,
  stripNominalAmps,
  voltageDeviation,
} from './electric-side';
import { blowerPower, compressorPower, outdoorUnitPower, powerFactor } from './power';
import {
  compressionRatio,
  condensingMean,
  condensingOverAir,
  dischargeSuperheat,
  drierDrop,
  evaporatingBelowAir,
  evaporatingDew,
  glideTemperatures,
  liquidSubcooling,
  suctionGlide,
  suctionSuperheat,
} from './refrigerant-side';

/**
 * Every quantity that follows from the readings of one run. What a missing reading would be needed for is left out.
 *
 * @param context  run with its unit and site
 * @returns derived values in the order a technician reads them; ids are unique
 * Check: tests/diagnostics/derive-run.test.ts
 */
export function deriveRun(context: RunContext): readonly DerivedValue[] {
  const methods = present([directAirflow(context), grilleAirflow(context), heatRiseAirflow(context)]);
  const airflow = bestAirflow(methods);
  const capacity = refrigerantCapacity(context);
  const outdoorUnit = outdoorUnitPower(context);
  const sensible = sensibleCapacity(context, airflow);
  const total = totalCapacity(context, airflow);
  const wetBulb = context.run.returnWetBulbF === undefined ? wetBulbFromHumidity(context) : undefined;
  return present([
    evaporatingDew(context),
    suctionGlide(context),
    ...glideTemperatures(context),
    suctionSuperheat(context),
    condensingMean(context),
    liquidSubcooling(context),
    dischargeSuperheat(context),
    compressionRatio(context),
    condensingOverAir(context),
    evaporatingBelowAir(context),
    drierDrop(context),
    standingOverAir(context),
    reversingValveRise(context),
    efficiency(context),
    ...methods,
    airflow,
    airflowPerTon(context, airflow),
    grilleGrossArea(context),
    grilleFreeArea(context),
    totalExternalStatic(context),
    airDifference(context),
    wetBulb,
    sensible,
    total,
    outdoorUnit,
    compressorPower(context),
    blowerPower(context),
    powerFactor(context),
    massFlow(context),
    coilFlow(context, context.run.mode === 'cooling' ? total : sensible),
    capacity,
    refrigerantCop(capacity, outdoorUnit),
    voltageDeviation(context),
    loadAmpsRatio(context),
    compressorCapacitor(context),
    fanCapacitor(context),
    stripNominalAmps(context),
    stripAmpsRatio(context),
  ]);
}

/**
 * Only what the loss rests on: power and power factor, and capacity of refrigerant and air side.
 *
 * @returns the same values as `deriveRun` has under these ids, for a fraction of the work
 * Check: tests/diagnostics/derive-run.test.ts
 */
export function deriveForLoss(context: RunContext): readonly DerivedValue[] {
  const airflow = bestAirflow(
    present([directAirflow(context), grilleAirflow(context), heatRiseAirflow(context)]),
  );
  const air =
    context.run.mode === 'cooling' ? totalCapacity(context, airflow) : sensibleCapacity(context, airflow);
  return present([outdoorUnitPower(context), powerFactor(context), refrigerantCapacity(context), air]);
}

/** A derived value by its id. */
export function derivedById(values: readonly DerivedValue[], id: string): DerivedValue | undefined {
  return values.find((value) => value.id === id);
}

function present(values: readonly (DerivedValue | undefined)[]): DerivedValue[] {
  return values.filter((value) => value !== undefined);
}
