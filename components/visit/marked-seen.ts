import { type Draft, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { asideOf, putAside } from '@/components/draft/put-aside';

/**
 * The draft of one visit with an observation marked or unmarked; note and photos of one unmarked are kept while the page
 * is open and come back with the mark.
 *
 * Check: tests/screens/marked-seen.test.ts
 */
export function markedSeen(visitId: string, draft: Draft, id: string, on: boolean): Draft {
  const all = listAt(draft, 'observations');
  const marked = all.find((seen) => textAt(seen, 'id') === id);
  if (on === (marked !== undefined)) return draft;
  if (marked !== undefined) putAside(visitId, `seen ${id}`, marked);
  const others = all.filter((seen) => seen !== marked);
  return withValue(
    draft,
    'observations',
    on ? [...others, asideOf(visitId, `seen ${id}`) ?? { id }] : others,
  );
}
