import type { DerivedValue, Target } from '../findings';
import type { RunContext } from '../run-context';
import { capacitorChecks, stripCheck } from './electric-checks';
import { grilleMeasuring } from './grille';
import { heatRiseOf } from './heat-rise';
import type { RunMeasuring } from './measuring';
import { methodAirflows } from './method-airflows';
import { staticBudget } from './static-budget';

/**
 * What the measuring screens show of one run beyond its derived values.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the same run
 * @param targets  targets of the same run
 * @returns parts without readings are absent
 * Check: tests/diagnostics/measuring/measuring-of-run.test.ts
 */
export function measuringOfRun(
  context: RunContext,
  values: readonly DerivedValue[],
  targets: readonly Target[],
): RunMeasuring {
  const heatRise = heatRiseOf(context);
  const statics = staticBudget(context);
  const strips = stripCheck(context, values, targets);
  return {
    airflows: methodAirflows(context, values),
    grille: grilleMeasuring(context),
    ...(heatRise === undefined ? {} : { heatRise }),
    ...(statics === undefined ? {} : { statics }),
    capacitors: capacitorChecks(context, values),
    ...(strips === undefined ? {} : { strips }),
  };
}
