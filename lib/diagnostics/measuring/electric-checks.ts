import targets from '../data/targets.json';
import { derivedById } from '../derived/derive-run';
import type { DerivedValue, Target } from '../findings';
import type { RunContext } from '../run-context';
import data from './data/measuring.json';
import type { CapacitorCheck, StripCheck } from './measuring';

type Values = readonly DerivedValue[];

/**
 * Run capacitors against their labels.
 *
 * @param context  run
 * @param values   derived values of the same run
 * @returns one check for each capacitor with label and measurement
 * Source: label tolerance classes 5, 6 and 10 % (data/targets.json, capacitor), status secondary
 * Check: tests/diagnostics/measuring/electric-checks.test.ts
 */
export function capacitorChecks({ run }: RunContext, values: Values): readonly CapacitorCheck[] {
  const rows = [
    ['compressor', 'compressorCapacitorDeviationFrac', run.compressorCapRatedUf, run.compressorCapUf],
    ['fan', 'fanCapacitorDeviationFrac', run.fanCapRatedUf, run.fanCapUf],
  ] as const;
  return rows.flatMap(([which, id, labelUf, measuredUf]) => {
    const deviation = derivedById(values, id);
    if (deviation === undefined || labelUf === undefined || measuredUf === undefined) return [];
    const { tightFrac, high: wideFrac } = targets.capacitor;
    const verdict = capacitorVerdict(deviation.value, tightFrac, wideFrac);
    return [{ which, labelUf, measuredUf, deviationFrac: deviation.value, tightFrac, wideFrac, verdict }];
  });
}

/** On the limit is inside it; rounding in the last digits must not decide. */
const SLACK = 1e-9;

function capacitorVerdict(deviation: number, tight: number, wide: number): CapacitorCheck['verdict'] {
  const size = Math.abs(deviation);
  if (size <= tight + SLACK) return 'within';
  if (size <= wide + SLACK) return deviation < 0 ? 'low' : 'high';
  return deviation < 0 ? 'weak' : 'strong';
}

/**
 * Amps of the electric heat against its kilowatts at the volts read, and how many elements carry current.
 *
 * @param context  run
 * @param values   derived values of the same run
 * @param judged   targets of the same run, for the verdict
 * @returns absent without the kilowatts energised
 * Source: P = V^2 / R: 5 kW printed for 240 V draws 20.83 A at 240 V and 18.06 A at 208 V, status computed
 * Check: tests/diagnostics/measuring/electric-checks.test.ts
 */
export function stripCheck(
  context: RunContext,
  values: Values,
  judged: readonly Target[],
): StripCheck | undefined {
  const nominal = derivedById(values, 'stripNominalA');
  const volts = nominal?.inputs.find(({ unit }) => unit === 'V')?.value;
  if (nominal === undefined || typeof volts !== 'number') return undefined;
  const { stripA, stripElementCount, stripV, lineV } = context.run;
  const ratio = derivedById(values, 'stripAmpsRatio')?.value;
  const verdict = judged.find((target) => target.id === 'stripAmpsRatio')?.verdict;
  const carrying = carryingCount(ratio, stripElementCount);
  return {
    nominalA: nominal.value,
    volts: volts,
    voltsMeasured: (stripV ?? lineV) !== undefined,
    ...(stripA === undefined ? {} : { measuredA: stripA }),
    ...(ratio === undefined ? {} : { ratioToNominal: ratio }),
    ...(verdict === undefined ? {} : { verdict }),
    ...(stripElementCount === undefined
      ? {}
      : { elementCount: stripElementCount, ampsPerElementA: nominal.value / stripElementCount }),
    ...(carrying === undefined ? {} : { carryingCount: carrying }),
  };
}

function carryingCount(ratio: number | undefined, elements: number | undefined): number | undefined {
  if (ratio === undefined || elements === undefined) return undefined;
  const share = ratio * elements;
  const whole = Math.round(share);
  const clear = Math.abs(share - whole) <= data.strips.clearShareOfElement.value;
  return clear && whole <= elements ? whole : undefined;
}
