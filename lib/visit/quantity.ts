import { z } from 'zod';

/** What every numeric field of the visit says about itself; forms, errors and the unit test read it. */
export type QuantityMeta = {
  readonly unit: string;
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
};

/**
 * A number with its unit, plain label and limits.
 *
 * @param label plain-language name as shown beside the field
 * @param unit  unit as the trade writes it; the key's suffix must match (checked by tests/visit/units-in-names.test.ts)
 * @param min,max  inclusive limits in that unit: outside them the entry is a slip, not a reading
 */
export function quantity(label: string, unit: string, min: number, max: number) {
  return z.number().min(min).max(max).meta({ label, unit, min, max });
}

/** A whole number with its unit, plain label and limits. */
export function wholeQuantity(label: string, unit: string, min: number, max: number) {
  return z.number().int().min(min).max(max).meta({ label, unit, min, max, whole: true });
}

/** Dollars and cents as typed; more than two decimals is refused so that Decimal and float agree. */
export function dollars(label: string, min: number, max: number) {
  return z
    .number()
    .min(min)
    .max(max)
    .refine((v) => Math.abs(v * 100 - Math.round(v * 100)) < 1e-6, {
      params: { limit: 'dollars and whole cents' },
    })
    .meta({ label, unit: 'USD', min, max });
}

/** A text field with a label and a length limit. */
export function text(label: string, maxLength: number) {
  return z.string().max(maxLength).meta({ label });
}
