import { invariant } from '../math/invariant';
import { addMonths, daysBetween } from './calendar';
import credit from './data/consumer-credit.json';

/** The common period between payments. */
export type UnitPeriod =
  | { readonly kind: 'months'; readonly months: number }
  | { readonly kind: 'days'; readonly days: number };

/** Time from the start of a loan to a payment, as the annual percentage rate counts it. */
export type PeriodCount = { readonly whole: number; readonly fraction: number };

/**
 * Whole unit periods and the fraction left over between the start of a loan and a payment. Whole periods are
 * counted back from the payment; what is left counts a month as 30 days (a yearly period: odd months as twelfths,
 * odd days as 365ths).
 *
 * @param start    ISO date on which the finance charge begins
 * @param payment  ISO date of the payment, not before `start`
 * @param unit     1 to 12 months, or a number of days
 * @returns whole periods and the fraction, 0 <= fraction < 1.04 (31 odd days of a 30-day month)
 * @throws invariant if the payment comes before the start
 * Source: 12 CFR 1026 Appendix J (b)(3)-(5); counting rule from memory, confirmed by its dated examples
 * Check: tests/finance/unit-periods.test.ts
 */
export function unitPeriodsBetween(start: string, payment: string, unit: UnitPeriod): PeriodCount {
  const days = daysBetween(start, payment);
  invariant(days >= 0, `payment ${payment} before ${start}`);
  if (unit.kind === 'days') {
    invariant(Number.isSafeInteger(unit.days) && unit.days >= 1, `unit of ${unit.days} days`);
    return { whole: Math.floor(days / unit.days), fraction: (days % unit.days) / unit.days };
  }
  invariant(
    Number.isSafeInteger(unit.months) && unit.months >= 1 && unit.months <= 12,
    `unit of ${unit.months} months`,
  );
  let months = 0;
  while (daysBetween(start, addMonths(payment, -(months + 1))) >= 0) months += 1;
  const oddDays = daysBetween(start, addMonths(payment, -months));
  const oddMonths = months % unit.months;
  const whole = (months - oddMonths) / unit.months;
  const { daysPerMonth, daysPerYear } = credit.values;
  const fraction =
    unit.months === 12
      ? oddMonths / 12 + oddDays / daysPerYear.value
      : (daysPerMonth.value * oddMonths + oddDays) / (daysPerMonth.value * unit.months);
  return { whole, fraction };
}
