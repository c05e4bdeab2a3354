import { patternOf } from '@/components/draft/draft-tree';
import type { FieldBook, FieldEntry } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import type { Issue } from '@/lib/visit/issue';

/**
 * The sentence of an issue as shown beside its field and in the list on top. Percent fields tell their limits in
 * percent, as typed; every other sentence is the reader's own.
 */
export function issueSentence(issue: Issue, book: FieldBook): string {
  const entry = book[patternOf(issue.path)];
  if (entry === undefined) return issue.fix;
  if (issue.code === 'notNumber' && entry.min !== undefined) {
    return t(entry.whole ? 'issue.notWhole' : 'issue.notNumber', {
      label: entry.label,
      range: rangeWords(entry),
      typed: issue.value ?? '',
    });
  }
  if (issue.code === 'outOfRange' && entry.min !== undefined && issue.limit?.startsWith('between')) {
    return t('issue.outOfRange', {
      label: entry.label,
      range: rangeWords(entry),
      typed: typedWords(issue, entry),
    });
  }
  if (issue.code === 'notAllowed') return t('issue.choose', { label: entry.label });
  return issue.fix;
}

/** "between 0 and 300 psig", "between $0 and $50,000". */
export function rangeWords(entry: FieldEntry): string {
  const end = (n: number | undefined) => `${entry.sign}${new Intl.NumberFormat('en-US').format(n ?? 0)}`;
  return t('field.range', { min: end(entry.min), max: end(entry.max), unit: entry.unit }).trim();
}

function typedWords(issue: Issue, entry: FieldEntry): string {
  const value = Number(issue.value);
  if (!Number.isFinite(value)) return issue.value ?? '';
  return String(Number((value / entry.perFormUnit).toPrecision(12)));
}
