/** Why no property can be given. One policy for the whole folder: no value outside the range, never a clamp. */
export type OutOfRange = {
  readonly kind: 'none';
  readonly why:
    | 'pressure below the table'
    | 'pressure above the table'
    | 'temperature below the table'
    | 'temperature above the table'
    | 'colder than dew: liquid may be present'
    | 'warmer than bubble: vapour may be present'
    | 'discharge pressure not above suction pressure';
};

/**
 * Tells a property from its absence.
 *
 * @param value  result of a property function
 * @returns true when there is no value
 * Check: tests/diagnostics/refrigerant/properties.test.ts
 */
export function isOutOfRange(value: object | number): value is OutOfRange {
  return typeof value === 'object' && 'kind' in value && value.kind === 'none';
}

/** One shared object for each reason, so that a refusal costs nothing. */
export const outOfRange = {
  pressureLow: { kind: 'none', why: 'pressure below the table' },
  pressureHigh: { kind: 'none', why: 'pressure above the table' },
  temperatureLow: { kind: 'none', why: 'temperature below the table' },
  temperatureHigh: { kind: 'none', why: 'temperature above the table' },
  wet: { kind: 'none', why: 'colder than dew: liquid may be present' },
  flashing: { kind: 'none', why: 'warmer than bubble: vapour may be present' },
  notCompressed: { kind: 'none', why: 'discharge pressure not above suction pressure' },
} as const satisfies Record<string, OutOfRange>;
