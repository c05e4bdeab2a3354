import type { Choice, Financing } from '../visit/choice';
import type { Saying } from '../visit/wording';
import type { LoanQuote, MoneyText, WayToPay } from './comparison';
import { quoteLoan } from './loan-quote';
import { exact, money, moneyText } from './money';
import { quotePromotional } from './promotional-quote';

/**
 * Every way to pay for a choice side by side: the one the totals count first, then the other offers, each with
 * everything that must be said beside a payment.
 *
 * @param choice        as entered
 * @param cashPriceUsd  what a customer paying cash would pay on the day
 * @param visitDate     ISO date the loan would start
 * @returns one entry for each; none for a choice that costs nothing
 * Source: trigger terms and what they call for: 12 CFR 1026.24(c) and (d), secondary; deferred interest 1026.16(h), read
 * Check: tests/finance/ways-to-pay.test.ts
 */
export function waysToPay(choice: Choice, cashPriceUsd: MoneyText, visitDate: string): WayToPay[] {
  const cash: Financing = { kind: 'cash' };
  const all = [choice.financing ?? cash, ...(choice.financingOffers ?? [])];
  if (money(cashPriceUsd).lte(0)) return [];
  return all.map((financing, i) => ({ ...wayToPay(financing, cashPriceUsd, visitDate), counted: i === 0 }));
}

function wayToPay(
  financing: Financing,
  cashPriceUsd: MoneyText,
  visitDate: string,
): Omit<WayToPay, 'counted'> {
  switch (financing.kind) {
    case 'cash':
      return { kind: 'cash', disclosures: [], notes: [] };
    case 'levelLoan': {
      const quoted = quoteLoan(cashPriceUsd, financing, visitDate);
      if (quoted === undefined)
        return { kind: 'levelLoan', disclosures: [], notes: [{ code: 'nothingToBorrow' }] };
      return {
        kind: 'levelLoan',
        ...(financing.lender === undefined ? {} : { lender: financing.lender }),
        loan: quoted.quote,
        disclosures: disclosuresOf(quoted.quote),
        notes: quoted.notes,
      };
    }
    case 'promotional': {
      const quoted = quotePromotional(cashPriceUsd, financing);
      if (quoted === undefined)
        return { kind: 'promotional', disclosures: [], notes: [{ code: 'nothingToBorrow' }] };
      const { paidInTime, notPaidInTime, promotionMonths } = quoted;
      const inTime = (financing.expectedEnding ?? 'paidInTime') === 'paidInTime';
      return {
        kind: 'promotional',
        ...(financing.lender === undefined ? {} : { lender: financing.lender }),
        loan: (inTime ? paidInTime : notPaidInTime).quote,
        promotion: {
          promotionMonths,
          clearingPaymentUsd: quoted.clearingPaymentUsd,
          paidInTime: paidInTime.quote,
          notPaidInTime: notPaidInTime.quote,
          interestSimpleUsd: quoted.interestSimpleUsd,
          interestCompoundedUsd: quoted.interestCompoundedUsd,
        },
        disclosures: [
          ...disclosuresOf(paidInTime.quote),
          {
            code: 'creditDeferred',
            values: {
              months: promotionMonths,
              interestUsd: quoted.interestCompoundedUsd,
              rate: percent(financing.rateFracPerYear),
            },
          },
          ...disclosuresOf(notPaidInTime.quote)
            .filter((s) => s.code !== 'creditEstimate' && s.code !== 'creditDown')
            .map((s) => ({ ...s, code: `notInTime.${s.code}` })),
        ],
        notes: quoted.notes,
      };
    }
  }
}

/**
 * What stands beside a quoted payment: an estimate and no offer, down payment, terms of repayment, annual percentage
 * rate, finance charge and total.
 *
 * Check: tests/finance/ways-to-pay.test.ts
 */
export function disclosuresOf(quote: LoanQuote): Saying[] {
  const downShare = money(quote.cashPriceUsd).isZero()
    ? 0
    : exact(quote.downPaymentUsd).div(exact(quote.cashPriceUsd)).times(100).toDecimalPlaces(1).toNumber();
  return [
    { code: 'creditEstimate' },
    { code: 'creditDown', values: { downUsd: quote.downPaymentUsd, percent: downShare } },
    ...(quote.paymentRuns ?? []).map(({ count, paymentUsd }, i) => ({
      code: `${i === 0 ? 'creditTerms' : 'creditTermsThen'}${count === 1 ? '.one' : ''}`,
      values: { count, paymentUsd },
    })),
    quote.apr.kind === 'rate'
      ? { code: 'creditApr', values: { apr: percent(quote.apr.fracPerYear) } }
      : { code: 'creditAprUnknown' },
    {
      code: 'creditTotal',
      values: { chargeUsd: quote.financeChargeUsd, totalPaidUsd: moneyText(quote.totalPaidUsd) },
    },
    ...(quote.dealerFeeUsd === undefined
      ? []
      : [{ code: 'creditDealerFee', values: { feeUsd: quote.dealerFeeUsd } }]),
  ];
}

/** Percent with two decimals, as rates of credit are told. */
function percent(frac: number): string {
  return exact(frac).times(100).toFixed(2);
}
