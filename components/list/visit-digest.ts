import { headlineOf } from '@/components/appraisal/answer-view';
import { readTyped } from '@/components/appraisal/read-typed';
import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { t, tn } from '@/components/words/words';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { appraise } from '@/lib/appraise/appraise';
import { isDanger } from '@/lib/sheet/finding-section';
import type { Advice, VisitDigest } from './digest';

/**
 * What a list says about a visit: the result in one line, and by what one may look for it.
 *
 * Check: tests/screens/visit-digest.test.ts
 */
export function visitDigest(draft: Draft, book: FieldBook): VisitDigest {
  const { visit, issues } = readTyped(draft, book);
  if (visit === undefined) return { headline: t('headline.unfinished'), advice: 'unfinished', causes: [] };
  try {
    const appraisal = appraise(visit);
    const headline = headlineOf(appraisal);
    return {
      headline: issues.length === 0 ? headline : `${headline} ${tn('headline.issues', issues.length)}`,
      advice: adviceOf(appraisal),
      causes: causesOf(appraisal),
    };
  } catch (thrown) {
    console.error('appraisal failed', thrown);
    return { headline: t('headline.failed'), advice: 'failed', causes: [] };
  }
}

function adviceOf(appraisal: Appraisal): Advice {
  const { comparison, findings } = appraisal;
  if (findings.flags.some((flag) => isDanger(appraisal, flag))) return 'unsafe';
  if (comparison.choices.length < 2) return 'leaveOnly';
  const { choiceId } = comparison.recommendation;
  return comparison.choices.find(({ id }) => id === choiceId)?.kind ?? 'open';
}

/** Causes that stand as likely or more, the most probable first. */
function causesOf({ findings }: Appraisal): string[] {
  return (findings.causes?.causes ?? [])
    .filter(({ standing }) => standing === 'confirmed' || standing === 'likely')
    .map(({ cause }) => cause);
}
