import { Z_10_90 } from '../../math/estimate';
import type { Mode } from '../../visit/run';
import { airflowCurve } from './airflow-quadratic';
import data from './data/airflow-quadratic.json';
import spread from './data/spread.json';
import { BETWEEN_UNITS, rampFrac } from './doubt';
import { type EffectPart, effectPart, widened } from './effect-part';
import type { FullConditions } from './fault-conditions';
import { worstUpTo } from './fault-curve';
import { impactPart } from './impact-part';
import { heldLevel } from './range-notes';

type AirflowCause = 'lowIndoorAirflow' | 'outdoorCoilFouled';

/**
 * Effect of missing indoor airflow on the refrigerant circuit; the blower stands apart.
 *
 * Likely: the single-speed quadratic. Cooling: the disagreement with the packaged-unit set, which says four
 * times as much, alone puts the 10 % point of capacity halfway to it, in logs. Heating: the quadratic alone.
 *
 * @param at     conditions
 * @param level  share of rated airflow missing, >= 0; published for 0..0.3
 * Check: tests/diagnostics/fault-effects/airflow-effect.test.ts
 */
export function indoorAirflowEffect(at: FullConditions, level: number): EffectPart {
  const likely = quadraticPart('lowIndoorAirflow', at.mode, level);
  if (at.mode === 'heating') return likely;
  return towardsPackaged('lowIndoorAirflow', likely, at, level, spread.airflowPessimisticShare.value);
}

/**
 * Effect of missing outdoor airflow: a fouled, flattened or iced outdoor coil, a slow fan.
 *
 * Cooling: the split-unit set of the fault-impact correlation. Heating: no published figure; the outdoor coil is the
 * evaporator then, so the evaporator quadratic is likely and the packaged-unit evaporator set the far end.
 *
 * @param at     conditions
 * @param level  share of outdoor airflow missing, >= 0; published for 0..0.5 in cooling
 * Check: tests/diagnostics/fault-effects/airflow-effect.test.ts
 */
export function outdoorAirflowEffect(at: FullConditions, level: number): EffectPart {
  const cause = 'outdoorCoilFouled';
  if (at.mode === 'cooling') {
    return impactPart({ set: 'splitOutdoorAirflow', cause, at, level, between: BETWEEN_UNITS });
  }
  const likely = quadraticPart(cause, 'cooling', level);
  const wide = towardsPackaged(cause, likely, at, level, 1);
  return level === 0 ? wide : widened(wide, 0, 0, [{ code: 'outdoorCoilAsEvaporator' }]);
}

function quadraticPart(cause: AirflowCause, curveMode: Mode, level: number): EffectPart {
  const held = heldLevel(level, data.range.missingMax);
  return effectPart(
    worstUpTo(airflowCurve(curveMode), held.value),
    {
      fitCapacity: data.fit.sdRatio,
      fitPower: data.fit.sdRatio,
      between: BETWEEN_UNITS,
      levelBeyond: held.beyond,
      conditionsBeyond: 0,
      rampFrac: rampFrac(cause, level),
    },
    held.notes,
  );
}

/** Widens so that the 10 % (or 90 %) point lies the given share of the way to the packaged-unit set. */
function towardsPackaged(
  cause: AirflowCause,
  likely: EffectPart,
  at: FullConditions,
  level: number,
  share: number,
): EffectPart {
  const far = impactPart({ set: 'packagedIndoorAirflow', cause, at, level, between: BETWEEN_UNITS });
  const gap = (of: 'lnCapacity' | 'lnPower'): number =>
    (share * Math.abs(far[of].mean - likely[of].mean)) / Z_10_90;
  const notes =
    level === 0
      ? []
      : [...far.notes.filter(({ code }) => code.endsWith('BeyondFit')), { code: 'airflowSetsDiffer' }];
  const wide = widened(likely, gap('lnCapacity'), gap('lnPower'), notes);
  return { ...wide, beyondRange: likely.beyondRange || far.beyondRange };
}
