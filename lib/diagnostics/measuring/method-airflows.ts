import { airflowPerTon } from '../derived/air-side';
import { derivedById } from '../derived/derive-run';
import type { DerivedValue } from '../findings';
import type { RunContext } from '../run-context';
import { judged } from '../targets/build-target';
import { airflowTarget } from '../targets/other-targets';
import type { MethodAirflow } from './measuring';

const METHODS = ['airflowDirectCfm', 'airflowGrilleCfm', 'airflowHeatRiseCfm'] as const;

/**
 * Airflow by every method for which readings exist, each for itself.
 *
 * @param context  run with its unit
 * @param values   derived values of the same run
 * @returns [cfm] and [cfm/ton] with their uncertainty, held against the target per ton
 * Source: targets/other-targets.ts, airflowTarget
 * Check: tests/diagnostics/measuring/method-airflows.test.ts
 */
export function methodAirflows(
  context: RunContext,
  values: readonly DerivedValue[],
): readonly MethodAirflow[] {
  return METHODS.flatMap((id) => {
    const airflow = derivedById(values, id);
    const perTon = airflowPerTon(context, airflow);
    if (airflow === undefined || perTon === undefined) return [];
    const { low, high, verdict } = judged(airflowTarget(), perTon.value);
    if (verdict === undefined) return [];
    return [
      {
        id,
        cfm: airflow.value,
        sdCfm: airflow.sd,
        cfmPerTon: perTon.value,
        sdCfmPerTon: perTon.sd,
        low,
        high,
        verdict,
      },
    ];
  });
}
