import type { Issue } from './issue';

/** Stands where something was left out, so that what follows in a list keeps its place. */
const GAP = Symbol('left out');

/**
 * A copy of a JSON tree with a gap at the path; the same tree if nothing stands there.
 *
 * @param tree  JSON, perhaps with gaps
 * @param path  keys from the root, list positions as digits
 * Check: tests/visit/gaps.test.ts
 */
export function leaveGap(tree: unknown, path: readonly string[]): unknown {
  const [head, ...tail] = path;
  if (head === undefined || head === '' || typeof tree !== 'object' || tree === null) return tree;
  const node = tree as Readonly<Record<string, unknown>>;
  const old = node[head];
  if (old === undefined || old === GAP) return tree;
  const now = tail.length === 0 ? GAP : leaveGap(old, tail);
  if (now === old) return tree;
  if (Array.isArray(tree)) return tree.map((value, i) => (i === Number(head) ? now : value));
  return { ...node, [head]: now };
}

/** The tree without its gaps: list elements close up, keys go. Check: tests/visit/gaps.test.ts */
export function withoutGaps(tree: unknown): unknown {
  if (Array.isArray(tree)) return tree.filter((value) => value !== GAP).map(withoutGaps);
  if (typeof tree !== 'object' || tree === null) return tree;
  return Object.fromEntries(
    Object.entries(tree).flatMap(([key, value]) => (value === GAP ? [] : [[key, withoutGaps(value)]])),
  );
}

/**
 * An issue found in the tree without gaps, told at its place in the tree with them.
 *
 * @param issue  its path counts list positions without gaps
 * @param tree   the tree with gaps
 * Check: tests/visit/gaps.test.ts
 */
export function atOriginalPlace(issue: Issue, tree: unknown): Issue {
  let node = tree;
  let moved = false;
  const path = issue.path.split('.').map((key) => {
    if (Array.isArray(node)) {
      const place = originalPlace(node, Number(key));
      if (place !== Number(key)) moved = true;
      node = node[place];
      return String(place);
    }
    node = typeof node === 'object' && node !== null ? (node as Record<string, unknown>)[key] : undefined;
    return key;
  });
  if (!moved) return issue;
  const label = issue.label.replace(/^(Run|Choice) \d+$/, (_, what) => `${what} ${Number(path[1]) + 1}`);
  return { ...issue, path: path.join('.'), label };
}

function originalPlace(list: readonly unknown[], kept: number): number {
  let left = kept;
  for (const [i, value] of list.entries()) {
    if (value === GAP) continue;
    if (left === 0) return i;
    left -= 1;
  }
  return kept;
}
