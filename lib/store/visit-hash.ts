import { createHash } from 'node:crypto';

/** Digits of the hash that are printed: enough to tell two states of one visit apart, short enough to be read out. */
const printedDigits = 12;

/**
 * Mark of a visit's data, printed on every paper made from it so that a printed one can be traced. The order of fields
 * does not matter.
 *
 * @param visit  the data the paper was made from
 * @returns the first 12 hexadecimal digits of its SHA-256 (48 bits)
 * Check: tests/store/visit-hash.test.ts
 */
export function visitHash(visit: unknown): string {
  return createHash('sha256').update(inOrder(visit)).digest('hex').slice(0, printedDigits);
}

function inOrder(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}
