import { z } from 'zod';
import type { QuantityMeta } from './quantity';
import { Visit } from './visit';

/** What a form or an error message needs to know about one field of the visit. */
export type Field = {
  readonly label: string;
  /** "between 0 and 600 psig"; absent for text. */
  readonly range?: string;
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  /** A number inside the limits, as an example of what to type. */
  readonly example: string;
};

/**
 * Label, unit and limits of the field at a path of the visit.
 *
 * @param path keys from the root, array positions as digits
 * @returns the field; an unknown path gives its last key as label
 * Check: tests/visit/field-at.test.ts
 */
export function fieldAt(path: readonly string[]): Field {
  let nodes: z.core.$ZodType[] = [Visit];
  let meta: Partial<QuantityMeta> = {};
  for (const key of path) {
    nodes = nodes.flatMap((node) => children(node, key));
    const own = nodes.map(metaOf).find((m) => m.label !== undefined);
    meta = own ?? {};
  }
  const label = meta.label ?? words(path.at(-1) ?? 'Visit');
  const { unit, min, max } = meta;
  if (min === undefined || max === undefined || unit === undefined) return { label, example: '10' };
  const shown = unit === 'own' ? '' : unitWords(unit);
  const range = `between ${min} and ${max}${shown === '' ? '' : ` ${shown}`}`;
  return { label, unit, min, max, range, example: exampleOf(min, max) };
}

/** Unit as a person reads it ("F" and "Fd" are both degrees). */
export function unitWords(unit: string): string {
  const words: Record<string, string> = {
    F: '°F',
    Fd: '°F',
    ton: 'tons',
    frac: '(1 = 100 %)',
    in2: 'sq in',
    ft2: 'sq ft',
    uF: 'µF',
    in: 'in',
    count: '',
    year: '',
    ratio: '',
    shape: '',
    'frac/year': 'a year (0.05 = 5 %)',
    USD: 'dollars',
    'calendar month': '',
    'clock hour': "o'clock",
    'h/day': 'hours a day',
    'h/year': 'hours a year',
    'F-day': 'degree-days',
  };
  return words[unit] ?? unit;
}

/** Degrees inside a formula or the name of a source, written as everywhere else: "5 F" becomes "5 °F". */
export function unitsInText(text: string): string {
  return text.replace(/(\d) F\b/g, '$1 °F');
}

function exampleOf(min: number, max: number): string {
  const mid = min + (max - min) * 0.3;
  return String(max - min > 20 ? Math.round(mid) : Math.round(mid * 10) / 10);
}

function words(key: string): string {
  const spaced = key.replace(/([A-Z])/g, ' $1').toLowerCase();
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}

function metaOf(node: z.core.$ZodType): Partial<QuantityMeta> {
  const own = z.globalRegistry.get(node) as Partial<QuantityMeta> | undefined;
  if (own?.label !== undefined) return own;
  const inner = unwrap(node);
  return inner === node ? {} : metaOf(inner);
}

function unwrap(node: z.core.$ZodType): z.core.$ZodType {
  const def = node._zod.def as { innerType?: z.core.$ZodType };
  return def.innerType ?? node;
}

function children(node: z.core.$ZodType, key: string): z.core.$ZodType[] {
  const inner = unwrap(node);
  if (inner !== node) return children(inner, key);
  const def = node._zod.def as {
    shape?: Record<string, z.core.$ZodType>;
    element?: z.core.$ZodType;
    options?: readonly z.core.$ZodType[];
  };
  if (def.options !== undefined) return def.options.flatMap((o) => children(o, key));
  if (def.element !== undefined) return [def.element];
  const child = def.shape?.[key];
  return child === undefined ? [] : [child];
}
