import type { Estimate } from '../math/estimate';
import type { Saying } from '../visit/wording';

/** Quoted money in JSON: a decimal string with two places, "1234.50". */
export type MoneyText = string;

export type Years =
  | { readonly kind: 'years'; readonly years: number }
  | { readonly kind: 'none'; readonly why: Saying };
export type Rate =
  | { readonly kind: 'rate'; readonly fracPerYear: number }
  | { readonly kind: 'none'; readonly why: Saying };
export type Ratio =
  | { readonly kind: 'ratio'; readonly ratio: number }
  | { readonly kind: 'none'; readonly why: Saying };

/** What a quoted payment must always be shown with. */
export type LoanQuote = {
  readonly cashPriceUsd: MoneyText;
  readonly downPaymentUsd: MoneyText;
  readonly amountFinancedUsd: MoneyText;
  readonly paymentUsd: MoneyText;
  readonly lastPaymentUsd: MoneyText;
  readonly termMonths: number;
  readonly financeChargeUsd: MoneyText;
  readonly totalOfPaymentsUsd: MoneyText;
  /** Down payment, fee paid at the start, and all payments. */
  readonly totalPaidUsd: MoneyText;
  readonly noteRateFracPerYear: number;
  readonly apr: Rate;
};

/** Cash of one year in nominal dollars; costs are positive. */
export type YearRow = {
  readonly year: number;
  readonly upFrontUsd: number;
  readonly loanUsd: number;
  readonly energyUsd: number;
  readonly upkeepUsd: number;
  readonly expectedRepairUsd: number;
  /** Price of a replacement times its chance in this year. */
  readonly expectedReplacementUsd: number;
  readonly residualUsd: number;
  readonly totalUsd: number;
  readonly presentValueUsd: number;
  readonly cumulativePresentValueUsd: number;
  /** Chance that the unit in place at the start has failed by the end of the year. */
  readonly failedByFrac: number;
};

export type ComparedChoice = {
  readonly id: string;
  readonly kind: 'leave' | 'repair' | 'replace';
  readonly name: string;
  readonly priceUsd: MoneyText;
  readonly rebateUsd: MoneyText;
  /** Paid on the day: the price, or the down payment and fees. */
  readonly upFrontUsd: MoneyText;
  readonly loan?: LoanQuote;
  readonly yearlyEnergyUsd: Estimate;
  readonly failsWithinStayFrac: Estimate;
  readonly totalTodayUsd: Estimate;
  /** Deterministic likely total, quoted to the cent by Decimal; equals totalTodayUsd.likely within half a cent. */
  readonly totalTodayQuoted: MoneyText;
  readonly perYearUsd: number;
  readonly perMonthUsd: number;
  /** Against leaving it, end by end (same loss, same prices). */
  readonly netSavingUsd: Estimate;
  readonly simplePayback: Years;
  readonly discountedPayback: Years;
  readonly savingsToInvestment: Ratio;
  readonly adjustedReturn: Rate;
  readonly rows: readonly YearRow[];
  readonly notes: readonly Saying[];
};

/** All choices on one time line in present value. */
export type Comparison = {
  readonly baseDate: string;
  readonly stayYears: number;
  readonly discountFracPerYear: number;
  readonly inflationFracPerYear: number;
  readonly electricityEscalationFracPerYear: number;
  readonly timing: 'endOfYear' | 'midYear';
  readonly residual: 'linear' | 'none';
  /** Leave first, repairs by price, replacements by price. */
  readonly choices: readonly ComparedChoice[];
  readonly lowestTotalId: string;
  /** Choices whose range against the lowest includes zero: about the same on money. */
  readonly aboutTheSameIds: readonly string[];
  readonly recommendation: {
    readonly choiceId?: string;
    readonly reason: Saying;
    readonly wouldChange: readonly Saying[];
  };
  readonly notes: readonly Saying[];
};
