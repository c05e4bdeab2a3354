import type { PriceLine } from '../visit/choice';
import type { MoneyText } from './comparison';
import { exact, type Money, money, moneyText } from './money';

/** A price line worked out. */
export type PricedLine = {
  readonly kind: PriceLine['kind'];
  readonly label: string;
  readonly totalUsd: MoneyText;
};

export type PriceTotal = {
  readonly lines: readonly PricedLine[];
  readonly beforeTaxUsd: MoneyText;
  readonly taxUsd: MoneyText;
  readonly totalUsd: MoneyText;
};

/**
 * Price of a choice from its lines. Each line is rounded to cents and the total is the sum of the rounded lines,
 * so that the list adds up as printed. A tax line taxes every line above it that is no tax itself; lines below it
 * go untaxed.
 *
 * @param lines in the order of the price list
 * @returns every line, tax, and the total [USD]; no lines give 0.00
 * Source: arithmetic of a price list, common practice, no source
 * Check: tests/finance/price-total.test.ts
 */
export function priceTotal(lines: readonly PriceLine[]): PriceTotal {
  let beforeTax = money(0);
  let tax = money(0);
  const priced: PricedLine[] = lines.map((line) => {
    let amount: Money;
    if (line.kind === 'tax') {
      amount = money(beforeTax.times(exact(line.taxFrac)));
      tax = tax.plus(amount);
    } else {
      amount = money(exact(line.amount).times(exact(line.unitPriceUsd)));
      beforeTax = beforeTax.plus(amount);
    }
    return { kind: line.kind, label: line.label, totalUsd: moneyText(amount) };
  });
  return {
    lines: priced,
    beforeTaxUsd: moneyText(beforeTax),
    taxUsd: moneyText(tax),
    totalUsd: moneyText(beforeTax.plus(tax)),
  };
}
