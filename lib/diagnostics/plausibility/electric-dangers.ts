import limits from '../data/limits.json';
import { sensibleFactor } from '../derived/air-side';
import { derivedById } from '../derived/derive-run';
import type { DerivedValue, Flag } from '../findings';
import type { RunContext } from '../run-context';
import { constant } from '../sourced';
import { danger, doubt, round } from './conflict';

type Values = readonly DerivedValue[];

/**
 * Electric readings, and electric heat without enough air, that call for care whatever the economics say.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the same run
 * Source: data/limits.json
 * Check: tests/diagnostics/dangers.test.ts
 */
export function electricDangers(context: RunContext, values: Values): readonly Flag[] {
  return [
    ...voltageDangers(context, values),
    ...ampsDangers(context, values),
    ...capacitorDangers(context, values),
    ...electricHeatDangers(context),
    ...shortOfAirDangers(context, values),
  ];
}

function voltageDangers({ run, visit }: RunContext, values: Values): readonly Flag[] {
  const { lineV } = run;
  if (lineV === undefined) return [];
  const deviation = derivedById(values, 'voltageDeviationFrac');
  const percent = Math.round(100 * limits.voltageFrac.limit);
  if (deviation !== undefined) {
    const beyond = Math.abs(deviation.value) > limits.voltageFrac.limit + 1e-9;
    const shown = { reading: lineV, nameplate: visit.unit.ratedV ?? 0, percent };
    return beyond ? [danger(run.id, 'voltageOutsideNameplate', ['lineV'], shown)] : [];
  }
  const { low, high } = limits.dualVoltageV;
  const outside = lineV < low || lineV > high;
  return outside
    ? [danger(run.id, 'voltageOutsideDualRating', ['lineV'], { reading: lineV, low, high })]
    : [];
}

function ampsDangers({ run, visit }: RunContext, values: Values): readonly Flag[] {
  const flags: Flag[] = [];
  const ratio = derivedById(values, 'compressorAmpsToRatedFrac');
  if (ratio !== undefined && ratio.value > limits.ratedAmpsFrac.limit) {
    const shown = { reading: run.compressorA ?? 0, rated: visit.unit.ratedLoadA ?? 0 };
    flags.push(danger(run.id, 'ampsOverRating', ['compressorA'], shown));
  }
  const strips = derivedById(values, 'stripAmpsRatio');
  const nominal = derivedById(values, 'stripNominalA');
  if (strips !== undefined && nominal !== undefined && strips.value > limits.stripAmpsCircuit.limit) {
    const shown = { reading: run.stripA ?? 0, nominal: round(nominal.value) };
    flags.push(danger(run.id, 'stripAmpsOverCircuit', ['stripA'], shown));
  }
  return flags;
}

const CAPACITORS = [
  ['compressorCapacitorDeviationFrac', 'compressorCapUf', 'compressorCapRatedUf'],
  ['fanCapacitorDeviationFrac', 'fanCapUf', 'fanCapRatedUf'],
] as const;

function capacitorDangers({ run }: RunContext, values: Values): readonly Flag[] {
  const { far, dead } = limits.capacitorFrac;
  return CAPACITORS.flatMap(([id, reading, label]) => {
    const deviation = derivedById(values, id);
    if (deviation === undefined || Math.abs(deviation.value) <= far) return [];
    const shown = { reading: run[reading] ?? 0, label: run[label] ?? 0 };
    return deviation.value <= -dead
      ? [danger(run.id, 'capacitorDead', [reading], shown)]
      : [doubt(run.id, 'capacitorFarOff', [reading], shown)];
  });
}

function electricHeatDangers({ run }: RunContext): readonly Flag[] {
  const flags: Flag[] = [];
  if (run.mode === 'cooling' && (run.stripA ?? 0) > limits.stripHeatOnA.limit) {
    flags.push(danger(run.id, 'electricHeatInCooling', ['stripA'], { reading: run.stripA ?? 0 }));
  }
  if (run.mode === 'cooling' && run.electricHeatOn === true && run.stripA === undefined) {
    flags.push(danger(run.id, 'electricHeatOnInCooling', ['electricHeatOn'], {}));
  }
  return flags;
}

/** Electric heat with too little air: seen in the supply air, or worked out from heat and airflow. */
function shortOfAirDangers(context: RunContext, values: Values): readonly Flag[] {
  const { run } = context;
  const { limit } = limits.electricHeatSupplyF;
  const hot = Math.max(run.heatRiseSupplyF ?? 0, run.supplyAirF ?? 0);
  if (hot >= limit) {
    const reading = hot === run.heatRiseSupplyF ? 'heatRiseSupplyF' : 'supplyAirF';
    return [danger(run.id, 'electricHeatShortOfAir', [reading], { reading: hot, limit })];
  }
  const kilowatts = heatOnKw(context);
  const airflow = derivedById(values, 'airflowCfm');
  const { returnAirF } = run;
  if (run.mode !== 'heating' || kilowatts === undefined || airflow === undefined || returnAirF === undefined)
    return [];
  const heatBtuh = 1000 * kilowatts * constant('btuhPerW');
  const supplyF = returnAirF + heatBtuh / (sensibleFactor(context.altitude.value) * airflow.value);
  if (supplyF < limit) return [];
  const shown = { cfm: Math.round(airflow.value), kw: kilowatts, supply: Math.round(supplyF), limit };
  return [danger(run.id, 'electricHeatTooLittleAir', ['airflowCfm', 'stripKw'], shown)];
}

/** Electric heat that is on, as energised, else as installed. */
function heatOnKw({ run, visit }: RunContext): number | undefined {
  const isOn = run.electricHeatOn === true || (run.stripA ?? 0) > limits.stripHeatOnA.limit;
  return isOn ? (run.stripKw ?? visit.unit.electricHeatKw) : undefined;
}
