import { patternOf } from '@/components/draft/draft-tree';
import type { FieldBook, FieldEntry } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import type { Issue } from '@/lib/visit/issue';
import { parseNumber } from '@/lib/visit/parse-number';

/**
 * The sentence of an issue as shown beside its field and in the list on top. Percent fields tell their limits in
 * percent, as typed; every other sentence is the reader's own.
 */
export function issueSentence(issue: Issue, book: FieldBook): string {
  const entry = book[patternOf(issue.path)];
  if (entry === undefined) return issue.fix;
  if (issue.code === 'notNumber' && entry.min !== undefined) {
    if (parseNumber(issue.value ?? '').kind === 'number') {
      return t('issue.otherUnit', { label: entry.label, unit: unitSaid(entry), typed: issue.value ?? '' });
    }
    return t(entry.whole ? 'issue.notWhole' : 'issue.notNumber', {
      label: entry.label,
      range: rangeWords(entry),
      typed: issue.value ?? '',
    });
  }
  if (issue.code === 'outOfRange' && entry.min !== undefined && issue.limit?.startsWith('between')) {
    return t(needsMinus(issue, entry) ? 'issue.needsMinus' : 'issue.outOfRange', {
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

/** Nothing above zero is possible here, and the number would do with a minus in front. */
function needsMinus(issue: Issue, entry: FieldEntry): boolean {
  const value = Number(issue.value) / entry.perFormUnit;
  return entry.max === 0 && value > 0 && -value >= (entry.min ?? 0);
}

/** The unit as a sentence says it: "dollars per kWh". */
export function unitSaid(entry: FieldEntry): string {
  if (entry.sign !== '') return entry.unit === '' ? t('unit.dollars') : `${t('unit.dollars')} ${entry.unit}`;
  return entry.unit;
}

function typedWords(issue: Issue, entry: FieldEntry): string {
  const value = Number(issue.value);
  if (!Number.isFinite(value)) return issue.value ?? '';
  return String(Number((value / entry.perFormUnit).toPrecision(12)));
}
