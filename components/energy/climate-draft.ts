import { type Draft, textAt, valueAt, withValue } from '@/components/draft/draft-tree';
import { asideOf, putAside } from '@/components/draft/put-aside';

/**
 * The draft of one visit with other weather. An own table of hours that is left is kept while the page is open and comes
 * back when one's own is asked for again; until there is one, the weather chosen before stays.
 *
 * @param kind  city, region or own; empty for not known
 * @param key   of the city or the region
 * Check: tests/screens/climate-draft.test.ts
 */
export function switchedClimate(visitId: string, draft: Draft, kind: string, key: string): Draft {
  const left = valueAt(draft, 'site.climate');
  if (textAt(left, 'kind') === 'own') {
    if (kind === 'own') return draft;
    putAside(visitId, 'climate own', left);
  }
  if (kind === 'own') return withValue(draft, 'site.climate', asideOf(visitId, 'climate own') ?? left);
  return withValue(draft, 'site.climate', kind === '' ? undefined : { kind, [kind]: key });
}
