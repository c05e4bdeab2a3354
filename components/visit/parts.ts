import { type Draft, type DraftValue, listAt, textAt, valueAt } from '@/components/draft/draft-tree';
import { pathOfHash } from '@/components/form/field-id';

/** Parts of a visit, in the order of the work; each has its own address. */
export const PARTS = ['house', 'readings', 'seen', 'money', 'results'] as const;
export type Part = (typeof PARTS)[number];

/** What the address says is open: a part and, in lists, which entry. */
export type Place = { readonly part: Part | undefined; readonly entry: number | undefined };

/** Place of an address: "#readings-2", or a field inside a part. */
export function placeOfHash(hash: string): Place {
  const path = pathOfHash(hash);
  if (path !== undefined) return placeOfField(path);
  const found = /^#([a-z]+)(?:-(\d+))?$/.exec(hash);
  const part = PARTS.find((p) => p === found?.[1]);
  return { part, entry: found?.[2] === undefined ? undefined : Number(found[2]) - 1 };
}

/** Fields of the unit that are typed where they are measured. */
const MEASURED_UNIT_FIELDS = new Set(['unit.ratedStaticInWc', 'unit.coilCountedIn']);

function placeOfField(path: string): Place {
  const [root, at] = path.split('.');
  const entry = at !== undefined && /^\d+$/.test(at) ? Number(at) : undefined;
  if (path.startsWith('unit.chargingTables') || MEASURED_UNIT_FIELDS.has(path))
    return { part: 'readings', entry: undefined };
  if (root === 'runs') return { part: 'readings', entry };
  if (root === 'choices') return { part: 'money', entry };
  if (root === 'tariff' || root === 'convention' || path === 'site.stayYears')
    return { part: 'money', entry: undefined };
  if (root === 'observations' || root === 'suspectedCause') return { part: 'seen', entry: undefined };
  return { part: 'house', entry: undefined };
}

const ABOUT_THE_RUN = new Set(['id', 'mode', 'label', 'note', 'electricHeatOn', 'runningMinutes']);

/** How many readings a run has. */
export function readingCount(run: DraftValue): number {
  if (typeof run !== 'object' || run === null || Array.isArray(run)) return 0;
  return Object.keys(run).filter((key) => !ABOUT_THE_RUN.has(key)).length;
}

/** Whether a part holds what it needs for a first answer; results are never "done". */
export function isDone(part: Part, draft: Draft): boolean {
  if (part === 'house') return textAt(draft, 'unit.kind') !== '' && textAt(draft, 'unit.nominalTons') !== '';
  if (part === 'readings') return listAt(draft, 'runs').some((run) => readingCount(run) > 0);
  if (part === 'seen')
    return listAt(draft, 'observations').length > 0 || textAt(draft, 'suspectedCause.cause') !== '';
  if (part === 'money')
    return listAt(draft, 'choices').some((choice) => listAt(choice, 'priceLines').length > 0);
  return false;
}

/** Name of a visit as its own screens show it. */
export function visitName(draft: Draft): string {
  return [textAt(draft, 'site.customer'), textAt(draft, 'site.town')].filter((w) => w !== '').join(', ');
}

export function isInvented(draft: Draft): boolean {
  return valueAt(draft, 'invented') === true;
}
