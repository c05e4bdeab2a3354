import type { Draft, DraftValue } from './draft-tree';

/** A text so long that it may be what makes a draft too big to be kept. */
export type LongText = { readonly path: string; readonly length: number };

const LONG = 2_000;
const MOST = 5;

/**
 * The longest texts of a draft, longest first, at most five.
 *
 * Check: tests/screens/long-texts.test.ts
 */
export function longTexts(draft: Draft): readonly LongText[] {
  return texts(draft, '')
    .filter(({ length }) => length > LONG)
    .sort((a, b) => b.length - a.length)
    .slice(0, MOST);
}

function texts(node: DraftValue, path: string): LongText[] {
  if (typeof node === 'string') return [{ path, length: node.length }];
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) => texts(value, path === '' ? key : `${path}.${key}`));
}
