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
  /** Beginning of the note. */
  readonly note?: string;
  /** Modes of its runs, each once. */
  readonly modes?: readonly string[];
  /** What the customer chose, and when. */
  readonly chosen?: { readonly name: string; readonly date: string };
  readonly invented?: true;
};

type TextKey = Exclude<keyof VisitTitle, 'invented' | 'modes' | 'chosen'>;

const FIELDS: readonly (readonly [key: TextKey, path: readonly string[]])[] = [
  ['customer', ['site', 'customer']],
  ['street', ['site', 'street']],
  ['town', ['site', 'town']],
  ['visitDate', ['visitDate']],
  ['technician', ['technician']],
  ['unitKind', ['unit', 'kind']],
  ['nominalTons', ['unit', 'nominalTons']],
  ['refrigerant', ['unit', 'refrigerant']],
  ['note', ['note']],
];

/** A list row has room for no more. */
const MAX_LENGTH = 120;

/** A note is searched, not shown: enough of it to be found by. */
const MAX_NOTE_LENGTH = 1_000;

/** A visit holds no more runs; a draft of any shape might. */
const MAX_RUNS = 20;

/**
 * Title fields of a draft of any shape.
 *
 * @param draft an unfinished visit; wherever it is not what a visit looks like, the field is left out
 * Check: tests/store/visit-title.test.ts
 */
export function visitTitle(draft: Json): VisitTitle {
  const texts = FIELDS.flatMap(([key, path]) => {
    const text = textAt(draft, path, key === 'note' ? MAX_NOTE_LENGTH : MAX_LENGTH);
    return text === undefined ? [] : [[key, text] as const];
  });
  const modes = modesOf(draft);
  const chosen = chosenOf(draft);
  return {
    ...(Object.fromEntries(texts) as Pick<VisitTitle, TextKey>),
    ...(modes.length === 0 ? {} : { modes }),
    ...(chosen === undefined ? {} : { chosen }),
    ...(memberOf(draft, 'invented') === true ? { invented: true as const } : {}),
  };
}

function modesOf(draft: Json): string[] {
  const runs = listAt(draft, 'runs').slice(0, MAX_RUNS);
  return [...new Set(runs.flatMap((run) => textAt(run, ['mode']) ?? []))];
}

/** A choice that was taken out of the list since counts as none. */
function chosenOf(draft: Json): VisitTitle['chosen'] {
  const id = textAt(draft, ['chosen', 'choiceId']);
  const date = textAt(draft, ['chosen', 'date']);
  if (id === undefined || date === undefined) return undefined;
  const choice = listAt(draft, 'choices').find((one) => memberOf(one, 'id') === id);
  const name = choice === undefined ? undefined : (textAt(choice, ['name']) ?? id);
  return name === undefined ? undefined : { name, date };
}

function listAt(draft: Json, key: string): readonly Json[] {
  const found = memberOf(draft, key);
  return Array.isArray(found) ? (found as readonly Json[]) : [];
}

function textAt(draft: Json, path: readonly string[], longest = MAX_LENGTH): string | undefined {
  const found = path.reduce<Json | undefined>((node, key) => memberOf(node, key), draft);
  if (typeof found !== 'string' && typeof found !== 'number') return undefined;
  const text = [...String(found).trim()].slice(0, longest).join('');
  return text === '' ? undefined : text;
}

function memberOf(node: Json | undefined, key: string): Json | undefined {
  if (typeof node !== 'object' || node === null || Array.isArray(node)) return undefined;
  return Object.hasOwn(node, key) ? (node as { readonly [key: string]: Json | undefined })[key] : undefined;
}
