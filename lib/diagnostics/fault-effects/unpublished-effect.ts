import fanMotor from './data/fan-motor.json';
import data from './data/unpublished.json';
import { BETWEEN_UNITS, rampFrac } from './doubt';
import { type EffectPart, effectPart, widened } from './effect-part';
import { fanMotorCurve } from './fan-motor';
import { type FaultCurve, worstUpTo } from './fault-curve';
import { heldLevel } from './range-notes';

/** Capacity follows the flow that is left; power falls with it, less. */
const leakCurve: FaultCurve = {
  capacityAt: (lost) => 1 - lost,
  eirAt: (lost) => (1 - lost) ** (data.leak.powerShare - 1),
  turns: [],
};

/**
 * Effect of refrigerant that leaks back inside the compressor or across the reversing valve. No correlation is
 * published: an estimate of our own, wide in power. Where a heat balance was measured, that should speak first.
 *
 * @param cause  where it leaks; the effect is taken as the same
 * @param level  share of the refrigerant flow that no longer reaches the coils, >= 0; held at 0.5
 * Source: data/unpublished.json, leak, status assumption
 * Check: tests/diagnostics/fault-effects/unpublished-effect.test.ts
 */
export function leakEffect(
  cause: 'compressorValvesLeaking' | 'reversingValveLeaking',
  level: number,
): EffectPart {
  const held = heldLevel(level, data.leak.levelMax);
  const part = effectPart(
    worstUpTo(leakCurve, held.value),
    {
      fitCapacity: 0,
      fitPower: 0,
      between: BETWEEN_UNITS,
      levelBeyond: held.beyond,
      conditionsBeyond: 0,
      rampFrac: rampFrac(cause, level),
    },
    held.notes,
  );
  if (level === 0) return part;
  const powerDoubt = data.leak.powerShareSd * Math.abs(part.lnCapacity.mean);
  return widened(part, 0, powerDoubt, [{ code: 'noPublishedLeakEffect' }]);
}

/**
 * Effect of a weak run capacitor: the fan-motor formula, the motor losing efficiency in the proportion the
 * capacitance is short. No correlation is published for it: wide in power.
 *
 * @param level  share of the capacitance on the label that is missing, >= 0; held at 0.5
 * Source: data/unpublished.json, capacitor, status assumption
 * Check: tests/diagnostics/fault-effects/unpublished-effect.test.ts
 */
export function capacitorEffect(level: number): EffectPart {
  const held = heldLevel(level, fanMotor.levelMax);
  const part = effectPart(
    worstUpTo(fanMotorCurve, held.value),
    {
      fitCapacity: 0,
      fitPower: 0,
      between: { capacity: data.capacitor.spreadCapacity, power: data.capacitor.spreadPower },
      levelBeyond: held.beyond,
      conditionsBeyond: 0,
      rampFrac: rampFrac('runCapacitorWeak', level),
    },
    held.notes,
  );
  if (level === 0) return part;
  return widened(part, 0, Math.abs(part.lnPower.mean), [{ code: 'noPublishedCapacitorEffect' }]);
}
