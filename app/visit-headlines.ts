import { headlineOf } from '@/components/appraisal/answer-view';
import { readTyped } from '@/components/appraisal/build-view';
import { fieldBook } from '@/components/draft/build-field-book';
import { t, tn } from '@/components/words/words';
import { appraise } from '@/lib/appraise/appraise';
import { draftOf } from './draft-of';
import { store } from './open-store-once';

const MOST_KEPT = 500;
const kept = new Map<string, string>();

/** Result of a visit in one line, computed once per revision. */
export async function visitHeadline(id: string, revision: number): Promise<string> {
  const key = `${id} ${revision}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const stored = await (await store()).loadVisit(id);
  const words = stored === undefined ? '' : compute(stored.draft);
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, words);
  return words;
}

function compute(draft: unknown): string {
  const { visit, issues } = readTyped(draftOf(draft), fieldBook());
  if (visit === undefined) return t('headline.unfinished');
  try {
    const headline = headlineOf(appraise(visit));
    return issues.length === 0 ? headline : `${headline} ${tn('headline.issues', issues.length)}`;
  } catch (thrown) {
    console.error('appraisal failed', thrown);
    return t('headline.failed');
  }
}
