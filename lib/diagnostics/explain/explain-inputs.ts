import type { DerivedInput } from '../findings';
import { baroPsiaAtAltitude } from '../refrigerant/gauge';

/**
 * Inputs of a value as they are told: behind an altitude stands the barometric pressure it gives, on which every gauge
 * reading rests.
 *
 * @param inputs  inputs of a derived value or conditions of a target
 * @returns the same, each name once and no correction of nothing, with `barometricPsia` after the altitude; its basis is that of the altitude
 * Source: standard atmosphere, refrigerant/data/standard-atmosphere.json
 * Check: tests/diagnostics/explain/explain-inputs.test.ts
 */
export function explainInputs(inputs: readonly DerivedInput[]): readonly DerivedInput[] {
  const once = inputs.filter((input, i) => inputs.findIndex(({ name }) => name === input.name) === i);
  return once.filter(isTold).flatMap((input) => {
    if (input.name !== 'altitudeFt' || typeof input.value !== 'number') return [input];
    const barometric: DerivedInput = {
      name: 'barometricPsia',
      value: baroPsiaAtAltitude(input.value),
      unit: 'psia',
      basis: input.basis,
      source: 'standard atmosphere at that altitude',
    };
    return [input, barometric];
  });
}

/** A correction that was not needed at the port read says nothing. */
function isTold({ name, value, sd }: DerivedInput): boolean {
  return name !== 'pressureDropFrac' || value !== 0 || (sd ?? 0) > 0;
}
