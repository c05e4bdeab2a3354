import { Decimal } from 'decimal.js';
import { invariant } from '../math/invariant';
import type { MoneyText } from './comparison';

/** Our own copy of the decimal type, so that no other code's settings can change a price. */
const Exact = Decimal.clone({ precision: 40, rounding: Decimal.ROUND_HALF_UP, toExpNeg: -30, toExpPos: 30 });

/** A decimal number not yet rounded. */
export type Exact = Decimal;
/** A decimal number of whole cents. */
export type Money = Decimal;

/**
 * Decimal number from text, or from a number by its shortest text ("0.1", never 0.1000000000000000055).
 *
 * @param value decimal text, a finite number, or a decimal
 * @throws invariant if it is no finite number
 * Check: tests/finance/money.test.ts
 */
export function exact(value: string | number | Decimal): Exact {
  invariant(typeof value !== 'number' || Number.isFinite(value), `money ${value}`);
  invariant(typeof value !== 'string' || /^-?\d+(\.\d+)?$/.test(value), `money "${value}"`);
  return new Exact(typeof value === 'number' ? String(value) : value);
}

/**
 * Amount of money in whole cents, a half cent going away from zero; never minus zero.
 *
 * @param value decimal text, number or decimal [USD]
 * Source: java.math.RoundingMode documentation, HALF_UP table, status read; the choice of half-up is ours
 * Check: tests/finance/money.test.ts
 */
export function money(value: string | number | Decimal): Money {
  const cents = exact(value).toDecimalPlaces(2, Decimal.ROUND_HALF_UP);
  return cents.isZero() ? new Exact(0) : cents;
}

/**
 * Amount in whole cents, any part of a cent going up: for a payment that has to clear a debt.
 *
 * Check: tests/finance/money.test.ts
 */
export function moneyRoundedUp(value: string | number | Decimal): Money {
  return exact(value).toDecimalPlaces(2, Decimal.ROUND_CEIL).plus(0);
}

/** Money as kept in JSON: two places, "1234.50". */
export function moneyText(value: string | number | Decimal): MoneyText {
  return money(value).toFixed(2);
}

/** The one way from quoted money to the floats of present values and simulation [USD]. */
export function usdOf(value: MoneyText | Decimal): number {
  return Number(value);
}

/**
 * A total cut into equal parts of whole cents that add up to it: the first parts carry the odd cents.
 *
 * @param total money in whole cents
 * @param parts whole number of parts, >= 1
 * Source: largest-remainder method; computed
 * Check: tests/finance/money.test.ts
 */
export function equalParts(total: MoneyText | Decimal, parts: number): Money[] {
  invariant(Number.isSafeInteger(parts) && parts >= 1, `parts ${parts}`);
  const cents = money(total).times(100);
  const floor = cents.div(parts).floor();
  const odd = cents.minus(floor.times(parts)).toNumber();
  return Array.from({ length: parts }, (_, i) => floor.plus(i < odd ? 1 : 0).div(100));
}
