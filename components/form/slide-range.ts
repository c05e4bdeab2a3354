/** Ends and step of a slider, in the unit of the form. */
export type SlideRange = { readonly min: number; readonly max: number; readonly step: number };

/** A slider that starts at nothing still reaches this many steps. Ours. */
const LEAST_STEPS = 20;

/**
 * Ends of a slider around a value: from the lower limit to about twice the value, within the limits of the field.
 *
 * @param value  where it stands, `undefined` while the field is empty
 * @param limits of the field, in the unit of the form
 * @param step   of the slider, > 0
 * @returns ends on whole steps counted from the lower one
 * Check: tests/screens/slide-range.test.ts
 */
export function slideRange(
  value: number | undefined,
  limits: { readonly min?: number; readonly max?: number },
  step: number,
): SlideRange {
  const min = Math.max(limits.min ?? 0, 0);
  const wanted = Math.max(2 * (value ?? 0), min + LEAST_STEPS * step);
  const steps = Math.ceil((Math.min(limits.max ?? wanted, wanted) - min) / step - 1e-9);
  return { min, max: Number((min + Math.max(1, steps) * step).toFixed(6)), step };
}
