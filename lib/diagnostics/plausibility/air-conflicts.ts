import limits from '../data/limits.json';
import { sensibleFactor } from '../derived/air-side';
import { derivedById } from '../derived/derive-run';
import { blowerPower } from '../derived/power';
import type { DerivedValue, Flag } from '../findings';
import { wetBulbF } from '../moist-air';
import { baroPsiaAtAltitude } from '../refrigerant/gauge';
import type { RunContext } from '../run-context';
import { constant } from '../sourced';
import { healthyAt } from '../targets/healthy-state';
import { conflict, doubt, round } from './conflict';

const SIGMAS = limits.conflictSigmas.value;

/**
 * Air-side and electric readings that cannot all be true, and runs that were not steady.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the same run
 * Source: data/limits.json
 * Check: tests/diagnostics/plausibility.test.ts
 */
export function airConflicts(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  return [
    ...wetBulbFlags(context),
    ...directionFlags(context),
    ...airflowFlags(context, values),
    ...capacityFlags(context, values),
    ...impliedAirflowFlags(context, values),
    ...electricFlags(context, values),
    ...openCapacitorFlags(context, values),
    ...steadyFlags(context),
  ];
}

function wetBulbFlags(context: RunContext): readonly Flag[] {
  const { run } = context;
  const flags: Flag[] = [];
  const pairs = [
    ['returnWetBulbF', 'returnAirF'],
    ['supplyWetBulbF', 'supplyAirF'],
  ] as const;
  for (const [wet, dry] of pairs) {
    const wetF = run[wet];
    const dryF = run[dry];
    if (wetF !== undefined && dryF !== undefined && wetF > dryF + SIGMAS * Math.SQRT2) {
      flags.push(conflict(run.id, 'wetBulbAboveDryBulb', [wet, dry], { wetBulb: wetF, dryBulb: dryF }));
    }
  }
  const { returnWetBulbF, returnHumidityFrac, returnAirF } = run;
  if (returnWetBulbF !== undefined && returnHumidityFrac !== undefined && returnAirF !== undefined) {
    const expected = wetBulbF(returnAirF, returnHumidityFrac, baroPsiaAtAltitude(context.altitude.value));
    if (Math.abs(expected - returnWetBulbF) > 4) {
      flags.push(
        conflict(run.id, 'wetBulbAgainstHumidity', ['returnWetBulbF', 'returnHumidityFrac'], {
          wetBulb: returnWetBulbF,
          fromHumidity: round(expected),
        }),
      );
    }
  }
  return flags;
}

function directionFlags({ run }: RunContext): readonly Flag[] {
  const { returnAirF, supplyAirF, mode } = run;
  if (returnAirF === undefined || supplyAirF === undefined) return [];
  const wrongFd = mode === 'cooling' ? supplyAirF - returnAirF : returnAirF - supplyAirF;
  if (wrongFd <= limits.splitSignFd.limit) return [];
  return [
    conflict(
      run.id,
      mode === 'cooling' ? 'supplyWarmerInCooling' : 'supplyColderInHeating',
      ['supplyAirF', 'returnAirF'],
      {
        supply: supplyAirF,
        return: returnAirF,
      },
    ),
  ];
}

/** Which readings a method of measuring airflow rests on. */
const AIRFLOW_READINGS: Readonly<Record<string, readonly string[]>> = {
  airflowDirectCfm: ['airflowCfm'],
  airflowGrilleCfm: ['grilleFaceFpm', 'grilleAreaIn2'],
  airflowHeatRiseCfm: ['heatRiseSupplyF', 'heatRiseReturnF', 'heatRiseA'],
};

function airflowFlags({ run }: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const methods = values.filter((value) => AIRFLOW_READINGS[value.id] !== undefined);
  const flags: Flag[] = [];
  for (const [i, a] of methods.entries()) {
    for (const b of methods.slice(i + 1)) {
      if (Math.abs(a.value - b.value) <= SIGMAS * Math.hypot(a.sd, b.sd)) continue;
      const readings = [...(AIRFLOW_READINGS[a.id] ?? []), ...(AIRFLOW_READINGS[b.id] ?? [])];
      flags.push(
        conflict(run.id, 'airflowMethodsDisagree', readings, {
          first: Math.round(a.value),
          second: Math.round(b.value),
        }),
      );
    }
  }
  return flags;
}

function capacityFlags(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const { run } = context;
  const refrigerant = derivedById(values, 'refrigerantCapacityBtuh');
  const air = airSideGross(context, values);
  const superheat = derivedById(values, 'suctionSuperheatFd');
  const mayBeWet = superheat !== undefined && superheat.value < SIGMAS * superheat.sd;
  if (refrigerant === undefined || air === undefined || run.electricHeatOn === true || mayBeWet) return [];
  if (Math.abs(refrigerant.value - air.value) <= SIGMAS * Math.hypot(refrigerant.sd, air.sd)) return [];
  return [
    conflict(
      run.id,
      'capacitiesDisagree',
      ['supplyAirF', 'returnAirF', 'airflowCfm', 'dischargeLineF', 'suctionLineF', 'liquidLineF'],
      { air: Math.round(air.value / 100) * 100, refrigerant: Math.round(refrigerant.value / 100) * 100 },
    ),
  ];
}

/** Without an airflow read: the air that refrigerant-side heat and the rise of the air ask for. Sensible heat only. */
function impliedAirflowFlags(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const { run, visit } = context;
  const heat = derivedById(values, 'refrigerantCapacityBtuh');
  const rise = derivedById(values, 'airRiseFd');
  const { nominalTons } = visit.unit;
  const isTold = run.mode === 'heating' && derivedById(values, 'airflowCfm') === undefined;
  if (heat === undefined || rise === undefined || nominalTons === undefined || !isTold) return [];
  if (rise.value <= SIGMAS * rise.sd || run.electricHeatOn === true) return [];
  const perTon = heat.value / (sensibleFactor(context.altitude.value) * rise.value) / nominalTons;
  const sd = perTon * Math.hypot(heat.sd / heat.value, rise.sd / rise.value);
  const { low, high } = limits.impliedAirflowCfmPerTon;
  if (perTon + sd >= low && perTon - sd <= high) return [];
  const shown = { heat: Math.round(heat.value / 100) * 100, cfm: Math.round(perTon), low, high };
  return [doubt(run.id, 'impliedAirflow', ['supplyAirF', 'returnAirF', 'airflowCfm'], shown)];
}

/** A compressor that runs at its usual power has a run capacitor. */
function openCapacitorFlags(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const { run } = context;
  const { open, runsAtHealthyPowerFrac } = limits.capacitorFrac;
  const deviation = derivedById(values, 'compressorCapacitorDeviationFrac');
  const power = derivedById(values, 'outdoorUnitW');
  const healthy = healthyAt(context);
  if (deviation === undefined || power === undefined || healthy === undefined) return [];
  const runsAsUsual = power.value <= runsAtHealthyPowerFrac * healthy.outdoorUnitW;
  if (deviation.value > -open || !runsAsUsual) return [];
  const shown = { reading: run.compressorCapUf ?? 0, label: run.compressorCapRatedUf ?? 0 };
  return [conflict(run.id, 'capacitorOpenWhileRunning', ['compressorCapUf'], shown)];
}

/**
 * Heat moved by the coil as the air shows it: total in cooling, sensible in heating, with the blower's heat put back.
 *
 * @returns [Btu/h] gross, comparable with the refrigerant side; absent without airflow and both air temperatures (and
 * wet bulbs in cooling)
 * Check: tests/diagnostics/plausibility.test.ts
 */
export function airSideGross(
  context: RunContext,
  values: readonly DerivedValue[],
): { readonly value: number; readonly sd: number } | undefined {
  const cooling = context.run.mode === 'cooling';
  const net = derivedById(values, cooling ? 'totalCapacityBtuh' : 'sensibleCapacityBtuh');
  if (net === undefined) return undefined;
  const measured = blowerPower(context);
  const blower = measured ?? { value: context.healthy.blowerW, sd: 0.3 * context.healthy.blowerW };
  const heat = constant('btuhPerW');
  const sign = cooling ? 1 : -1;
  return { value: net.value + sign * heat * blower.value, sd: Math.hypot(net.sd, heat * blower.sd) };
}

function electricFlags({ run }: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const flags: Flag[] = [];
  const { compressorA, outdoorUnitA, outdoorFanA } = run;
  if (compressorA !== undefined && outdoorUnitA !== undefined) {
    const parts = compressorA + (outdoorFanA ?? 0);
    if (parts > outdoorUnitA * 1.06 + 0.3) {
      flags.push(
        conflict(run.id, 'partsDrawMoreThanWhole', ['compressorA', 'outdoorUnitA'], {
          parts: round(parts),
          whole: outdoorUnitA,
        }),
      );
    }
  }
  const factor = derivedById(values, 'powerFactorFrac');
  if (factor !== undefined && factor.value - SIGMAS * factor.sd > limits.powerFactorFrac.high) {
    flags.push(
      conflict(run.id, 'wattsAboveVoltAmps', ['outdoorUnitW', 'lineV', 'outdoorUnitA'], {
        factor: round(factor.value),
      }),
    );
  }
  if (factor !== undefined && factor.value + SIGMAS * factor.sd < limits.powerFactorFrac.low) {
    flags.push({
      code: 'powerFactorLow',
      severity: 'doubt',
      runId: run.id,
      readings: ['outdoorUnitW', 'lineV', 'outdoorUnitA'],
      values: { factor: Math.round(100 * factor.value) / 100 },
    });
  }
  return flags;
}

function steadyFlags({ run }: RunContext): readonly Flag[] {
  const flags: Flag[] = [];
  if (run.runningMinutes !== undefined && run.runningMinutes < limits.steadyMinutes.limit) {
    flags.push({
      code: 'notSteady',
      severity: 'doubt',
      runId: run.id,
      readings: ['runningMinutes'],
      values: { minutes: run.runningMinutes, limit: limits.steadyMinutes.limit },
    });
  }
  if (run.electricHeatOn === true && run.mode === 'heating') {
    flags.push({ code: 'electricHeatOn', severity: 'doubt', runId: run.id, readings: ['supplyAirF'] });
  }
  return flags;
}
