import type { Json } from './json';

/** What a list shows of a visit, as typed; a field not filled in is left out. */
export type VisitTitle = {
  readonly customer?: string;
  readonly street?: string;
  readonly town?: string;
  readonly visitDate?: string;
  readonly technician?: string;
  readonly unitKind?: string;
  readonly nominalTons?: string;
  readonly refrigerant?: string;
  readonly invented?: true;
};

const FIELDS: readonly (readonly [key: Exclude<keyof VisitTitle, 'invented'>, path: readonly string[]])[] = [
  ['customer', ['site', 'customer']],
  ['street', ['site', 'street']],
  ['town', ['site', 'town']],
  ['visitDate', ['visitDate']],
  ['technician', ['technician']],
  ['unitKind', ['unit', 'kind']],
  ['nominalTons', ['unit', 'nominalTons']],
  ['refrigerant', ['unit', 'refrigerant']],
];

/** A list row has room for no more. */
const MAX_LENGTH = 120;

/**
 * Title fields of a draft of any shape.
 *
 * @param draft an unfinished visit; wherever it is not what a visit looks like, the field is left out
 * Check: tests/store/visit-title.test.ts
 */
export function visitTitle(draft: Json): VisitTitle {
  const texts = FIELDS.flatMap(([key, path]) => {
    const text = textAt(draft, path);
    return text === undefined ? [] : [[key, text] as const];
  });
  return {
    ...(Object.fromEntries(texts) as Omit<VisitTitle, 'invented'>),
    ...(memberOf(draft, 'invented') === true ? { invented: true as const } : {}),
  };
}

function textAt(draft: Json, path: readonly string[]): string | undefined {
  const found = path.reduce<Json | undefined>((node, key) => memberOf(node, key), draft);
  if (typeof found !== 'string' && typeof found !== 'number') return undefined;
  const text = [...String(found).trim()].slice(0, MAX_LENGTH).join('');
  return text === '' ? undefined : text;
}

function memberOf(node: Json | undefined, key: string): Json | undefined {
  if (typeof node !== 'object' || node === null || Array.isArray(node)) return undefined;
  return Object.hasOwn(node, key) ? (node as { readonly [key: string]: Json | undefined })[key] : undefined;
}
