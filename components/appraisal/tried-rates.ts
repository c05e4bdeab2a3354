import type { Estimate } from '@/lib/math/estimate';
import { resolveAssumption } from '@/lib/visit/assumption';
import type { Visit } from '@/lib/visit/visit';

/** A rate nobody measured, as it counts now, to be tried at the table. */
export type TriedRate = Estimate & {
  readonly key: 'electricityEscalationFracPerYear' | 'discountFracPerYear';
};

const KEYS = ['electricityEscalationFracPerYear', 'discountFracPerYear'] as const;

/** Check: tests/screens/assumption-draft.test.ts */
export function triedRates(visit: Visit): TriedRate[] {
  return KEYS.map((key) => {
    const { low, likely, high } = resolveAssumption(visit.assumptions, key);
    return { key, low, likely, high };
  });
}
