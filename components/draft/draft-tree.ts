/** A visit as it stands in the form: numbers may still be typed text, and anything may be missing. */
export type DraftValue = string | number | boolean | null | DraftValue[] | { [key: string]: DraftValue };
export type Draft = { [key: string]: DraftValue };

/** Value at a dotted path ("runs.0.suctionPsig"), `undefined` where there is none. */
export function valueAt(tree: DraftValue | undefined, path: string): DraftValue | undefined {
  let node: DraftValue | undefined = tree;
  for (const key of path.split('.')) {
    if (typeof node !== 'object' || node === null) return undefined;
    node = Array.isArray(node) ? node[Number(key)] : node[key];
  }
  return node;
}

/** Elements of the list at a path; anything else is an empty list. */
export function listAt(tree: DraftValue | undefined, path: string): readonly DraftValue[] {
  const found = valueAt(tree, path);
  return Array.isArray(found) ? found : [];
}

/** Text at a path as the form shows it; missing is the empty text. */
export function textAt(tree: DraftValue | undefined, path: string): string {
  const found = valueAt(tree, path);
  return typeof found === 'string' || typeof found === 'number' ? String(found) : '';
}

/**
 * Copy of a tree with a value set at a path; records on the way are made where they are missing.
 *
 * @param value new value; `undefined` takes the key away (a list element is taken out of its list)
 */
export function withValue(tree: Draft, path: string, value: DraftValue | undefined): Draft {
  return setIn(tree, path.split('.'), value) as Draft;
}

function setIn(
  node: DraftValue | undefined,
  path: readonly string[],
  value: DraftValue | undefined,
): DraftValue | undefined {
  const [head, ...rest] = path;
  if (head === undefined) return value;
  if (Array.isArray(node)) {
    const at = Number(head);
    const next = setIn(node[at], rest, value);
    if (next === undefined) return node.filter((_, i) => i !== at);
    return at >= node.length ? [...node, next] : node.map((v, i) => (i === at ? next : v));
  }
  const record: { [key: string]: DraftValue } = typeof node === 'object' && node !== null ? node : {};
  const next = setIn(record[head], rest, value);
  if (next !== undefined) return { ...record, [head]: next };
  return Object.fromEntries(Object.entries(record).filter(([key]) => key !== head));
}

/** Path with list positions replaced by `*`, as the field book is keyed ("runs.*.suctionPsig"). */
export function patternOf(path: string): string {
  return path
    .split('.')
    .map((key) => (/^\d+$/.test(key) ? '*' : key))
    .join('.');
}

/** A difference between two drafts at one field. */
export type DraftDifference = { readonly path: string; readonly mine: string; readonly theirs: string };

/** Fields in which two drafts differ, in order of appearance; a record that only one has counts field by field. */
export function differences(mine: Draft, theirs: Draft): DraftDifference[] {
  const left = leaves(mine, '');
  const right = leaves(theirs, '');
  const paths = [...new Set([...left.keys(), ...right.keys()])];
  return paths.flatMap((path) => {
    const a = left.get(path) ?? '';
    const b = right.get(path) ?? '';
    return a === b ? [] : [{ path, mine: a, theirs: b }];
  });
}

function leaves(node: DraftValue, path: string): Map<string, string> {
  if (typeof node !== 'object' || node === null) return new Map([[path, String(node)]]);
  const entries = Array.isArray(node)
    ? node.map((v, i) => [String(i), v] as const)
    : Object.entries(node).map(([k, v]) => [k, v] as const);
  return new Map(entries.flatMap(([k, v]) => [...leaves(v, path === '' ? k : `${path}.${k}`)]));
}
