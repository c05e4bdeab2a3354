import { type Draft, listAt, patternOf, textAt } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { issueSentence, rangeWords } from '@/components/form/issue-words';
import { t } from '@/components/words/words';
import { lowerFirst } from '@/lib/sheet/phrase';
import type { Issue } from '@/lib/visit/issue';

/** A choice as entered that is not counted, and why, for the sheet and the comparison. */
export type LeftOut = { readonly name: string; readonly why: string };

/**
 * The choices that reading a draft left out, in the form's order, so that none vanishes in silence.
 *
 * @param draft   as typed
 * @param issues  of reading it, at their places in the form
 * Check: tests/screens/left-out.test.ts
 */
export function leftOutChoices(draft: Draft, issues: readonly Issue[], book: FieldBook): LeftOut[] {
  return listAt(draft, 'choices').flatMap((_, i) => {
    const own = issues.filter(({ path }) => path === 'choices' || `${path}.`.startsWith(`choices.${i}.`));
    if (own.length === 0) return [];
    const typed = textAt(draft, `choices.${i}.name`).trim();
    const reasons = [...new Set(own.map((issue) => whyOf(issue, book)))];
    return [{ name: typed === '' ? t('choice.unnamed', { n: i + 1 }) : typed, why: whyWords(reasons) }];
  });
}

const mostReasons = 2;

function whyWords(reasons: readonly string[]): string {
  const more = reasons.length - mostReasons;
  const told = reasons.slice(0, mostReasons);
  return [...told, ...(more > 0 ? [t('issue.andMore', { n: more })] : [])].join(', ');
}

/** The reason as part of a sentence: "loan term must be between 1 and 240 months". */
function whyOf(issue: Issue, book: FieldBook): string {
  const entry = book[patternOf(issue.path)];
  if (entry?.min !== undefined && issue.code !== 'missing') {
    return lowerFirst(t('issue.mustBe', { label: entry.label, range: rangeWords(entry) }));
  }
  return lowerFirst(issueSentence(issue, book).replace(/\.$/, ''));
}
