import { type FieldEntry, shownNumber, typedUnit } from '@/components/draft/field-book';
import { rangeWords, unitSaid } from '@/components/form/issue-words';
import { t } from '@/components/words/shop-words';
import { parseNumber } from '@/lib/visit/parse-number';

export type CheckedNumber =
  | { readonly ok: true; readonly value?: number }
  | { readonly ok: false; readonly words: string };

/**
 * A typed number in the unit it is kept in, or what is wrong with it; an empty box gives no value.
 *
 * @param needed  an empty box is an error
 * Check: tests/screens/shop-entries.test.ts
 */
export function checkNumber(typed: string, entry: FieldEntry, needed = false): CheckedNumber {
  const parsed = parseNumber(typed, typedUnit(entry));
  const values = { label: entry.label, range: rangeWords(entry), typed };
  if (parsed.kind === 'empty') {
    return needed ? { ok: false, words: t('shop.needed', { label: entry.label }) } : { ok: true };
  }
  if (parsed.kind === 'otherUnit') {
    return { ok: false, words: t('issue.otherUnit', { ...values, unit: unitSaid(entry) }) };
  }
  if (parsed.kind === 'notNumber' || (entry.whole && !Number.isInteger(parsed.value))) {
    return { ok: false, words: t(entry.whole ? 'issue.notWhole' : 'issue.notNumber', values) };
  }
  const outside =
    (entry.min !== undefined && parsed.value < entry.min) ||
    (entry.max !== undefined && parsed.value > entry.max);
  if (outside) return { ok: false, words: t('shop.outOfRange', values) };
  // Percent typed as 7.25 is kept as 0.0725, not as what the float makes of it.
  return { ok: true, value: Number((parsed.value * entry.perFormUnit).toPrecision(12)) };
}

/** A kept number with its unit as the form writes it: "60 %", "$1,500". */
export function numberWords(value: number, entry: FieldEntry): string {
  const shown = Number(shownNumber(value, entry));
  const cents = entry.sign === '$' && !Number.isInteger(shown);
  const digits = new Intl.NumberFormat('en-US', {
    minimumFractionDigits: cents ? 2 : 0,
    maximumFractionDigits: 6,
  }).format(shown);
  return `${entry.sign}${digits}${entry.unit === '' ? '' : ` ${entry.unit}`}`;
}

/** When, who and why, as typed. */
export type Mark = { readonly fromDate: string; readonly setBy: string; readonly why: string };

/** What is missing of a mark, by its key. */
export function markErrors(mark: Mark): Partial<Record<keyof Mark, string>> {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(mark.fromDate);
  return {
    ...(day ? {} : { fromDate: t('shop.needed', { label: t('shop.fromDate') }) }),
    ...(mark.setBy.trim() === '' ? { setBy: t('shop.needed', { label: t('shop.setBy') }) } : {}),
    ...(mark.why.trim() === '' ? { why: t('shop.needed', { label: t('shop.why') }) } : {}),
  };
}
