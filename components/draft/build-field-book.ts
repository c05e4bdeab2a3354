import { z } from 'zod';
import { unitWords } from '@/lib/visit/field-at';
import type { QuantityMeta } from '@/lib/visit/quantity';
import { Visit } from '@/lib/visit/visit';
import type { FieldBook, FieldEntry } from './field-book';

type Node = z.core.$ZodType;
type Def = {
  innerType?: Node;
  shape?: Record<string, Node>;
  element?: Node;
  options?: readonly Node[];
  entries?: Record<string, string>;
};

/**
 * Walks a schema and notes label, unit, limits and options of every field.
 *
 * @param root  the visit's when left out
 * @returns entries by path pattern; variants of a record share one pattern, the first that says something wins
 * Check: tests/screens/field-book.test.ts
 */
export function buildFieldBook(root: Node = Visit): FieldBook {
  const book: Record<string, FieldEntry> = {};
  walk(root, '', book);
  return book;
}

let made: FieldBook | undefined;
/** The book, made once. */
export function fieldBook(): FieldBook {
  made ??= buildFieldBook();
  return made;
}

function walk(node: Node, path: string, book: Record<string, FieldEntry>): void {
  const meta = metaOf(node);
  const bare = unwrap(node);
  const def = bare._zod.def as Def;
  const options = def.entries === undefined ? undefined : Object.values(def.entries);
  if (path !== '' && book[path]?.label === undefined && meta.label !== undefined) {
    book[path] = entryOf(path, meta, options);
  }
  for (const variant of def.options ?? []) walk(variant, path, book);
  if (def.element !== undefined) walk(def.element, `${path}.*`, book);
  for (const [key, child] of Object.entries(def.shape ?? {})) {
    walk(child, path === '' ? key : `${path}.${key}`, book);
  }
}

/** Fractions that the trade writes as 0.95, not as 95 %. */
const WRITTEN_AS_FRACTION = new Set(['powerFactorFrac', 'grilleFreeAreaFrac']);

function entryOf(
  path: string,
  meta: Partial<QuantityMeta>,
  options: readonly string[] | undefined,
): FieldEntry {
  const plain = WRITTEN_AS_FRACTION.has(path.split('.').at(-1) ?? '');
  const form = formUnit(plain ? 'own' : (meta.unit ?? ''));
  const shown = (limit: number) => Number((limit / form.perFormUnit).toPrecision(12));
  return {
    label: meta.label ?? '',
    unit: form.unit,
    sign: form.sign,
    perFormUnit: form.perFormUnit,
    whole: meta.whole ?? false,
    ...(meta.min === undefined || meta.max === undefined
      ? {}
      : { min: shown(meta.min), max: shown(meta.max) }),
    ...(options === undefined ? {} : { options }),
  };
}

/** How a unit is typed: fractions as percent, dollars with their sign in front. */
export function formUnit(unit: string): { unit: string; sign: string; perFormUnit: number } {
  if (unit === '' || unit === 'own') return { unit: '', sign: '', perFormUnit: 1 };
  if (unit === 'frac') return { unit: '%', sign: '', perFormUnit: 0.01 };
  if (unit === 'frac/year') return { unit: '% a year', sign: '', perFormUnit: 0.01 };
  if (unit === 'USD') return { unit: '', sign: '$', perFormUnit: 1 };
  if (unit.startsWith('USD/')) return { unit: `per ${unit.slice('USD/'.length)}`, sign: '$', perFormUnit: 1 };
  return { unit: unitWords(unit), sign: '', perFormUnit: 1 };
}

function metaOf(node: Node): Partial<QuantityMeta> {
  const own = z.globalRegistry.get(node) as Partial<QuantityMeta> | undefined;
  if (own?.label !== undefined) return own;
  const inner = (node._zod.def as Def).innerType;
  return inner === undefined ? {} : metaOf(inner);
}

function unwrap(node: Node): Node {
  const inner = (node._zod.def as Def).innerType;
  return inner === undefined ? node : unwrap(inner);
}
