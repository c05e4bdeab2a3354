import type { Estimate } from '../math/estimate';
import type { CauseId } from '../visit/cause';
import type { Choice, Financing } from '../visit/choice';
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
  /** Equal payments in a row; one or two for a level loan, more where payments change. */
  readonly paymentRuns?: readonly { readonly count: number; readonly paymentUsd: MoneyText }[];
  readonly termMonths: number;
  readonly financeChargeUsd: MoneyText;
  readonly totalOfPaymentsUsd: MoneyText;
  /** Down payment, fee paid at the start, and all payments. */
  readonly totalPaidUsd: MoneyText;
  /** What the price was raised by for those who finance; part of the finance charge. */
  readonly dealerFeeUsd?: MoneyText;
  readonly noteRateFracPerYear: number;
  readonly apr: Rate;
};

/** One way to pay for a choice, with everything that must be said beside a payment. */
export type WayToPay = {
  readonly kind: Financing['kind'];
  readonly lender?: string;
  /** The totals of the choice count this one. */
  readonly counted: boolean;
  /** Of a promotion: the ending that is expected. Absent for cash, and when the down payment covers the price. */
  readonly loan?: LoanQuote;
  /** Deferred interest: both endings. */
  readonly promotion?: {
    readonly promotionMonths: number;
    /** Level payment that clears it in time. */
    readonly clearingPaymentUsd: MoneyText;
    readonly paidInTime: LoanQuote;
    readonly notPaidInTime: LoanQuote;
    /** Charged back to the first day if it is not paid in time; lenders differ between these. */
    readonly interestSimpleUsd: MoneyText;
    readonly interestCompoundedUsd: MoneyText;
  };
  /** To be shown wherever the payment is quoted; words under `finance.credit...`. */
  readonly disclosures: readonly Saying[];
  readonly notes: readonly Saying[];
};

/** Cash of one year in nominal dollars; costs are positive, money back is negative, `totalUsd` is the plain sum. */
export type YearRow = {
  /** 0 = the day of the visit. */
  readonly year: number;
  /** Price or down payment and fee; rebates that come later stand here in their own year. */
  readonly upFrontUsd: number;
  readonly loanUsd: number;
  readonly energyUsd: number;
  readonly upkeepUsd: number;
  readonly expectedRepairUsd: number;
  /** Price of a replacement times its chance in this year. */
  readonly expectedReplacementUsd: number;
  /** Value left in a unit bought during the stay: in the last year, negative. */
  readonly residualUsd: number;
  readonly totalUsd: number;
  readonly presentValueUsd: number;
  readonly cumulativePresentValueUsd: number;
  /** Chance that the unit in place at the start has failed by the end of the year. */
  readonly failedByFrac: number;
};

/** What one uncertain input does to a result at its low and its high end, all else likely. */
export type Driver = {
  /** Assumption key, or `loss`, `lossRecovered`, `newUnit`, `valueLeft`; words under `driver.<input>` for these. */
  readonly input: string;
  readonly lowUsd: number;
  readonly highUsd: number;
};

/** Leaving it now and buying a new unit k years later, for every k of the stay. */
export type ReplaceLater = {
  readonly choiceId: string;
  /** `afterYears` 0 = now; the last = only when it fails. */
  readonly byYear: readonly {
    readonly afterYears: number;
    readonly totalTodayUsd: number;
    readonly withoutValueLeftUsd: number;
  }[];
  readonly bestAfterYears: number;
  /** The best if a newer unit leaves no value behind: advice only where both agree. */
  readonly bestWithoutValueLeft: number;
  /** Every k whose total hardly differs from the lowest, the best included. */
  readonly aboutTheSameYears: readonly number[];
};

/** What rules of thumb say about a repair; never used to decide. */
export type RulesOfThumb = {
  readonly ageTimesPriceUsd: number;
  readonly ageTimesPriceSays: 'repair' | 'replace';
  readonly priceShareFrac: number;
  readonly priceShareSays: 'repair' | 'replace';
  /** What costs least by the full analysis; keeping the unit without a repair counts as `repair` does: it stays. */
  readonly fullSays?: 'repair' | 'replace';
  /** Where a rule says otherwise, and what it does not see; words under `finance.thumb...`. */
  readonly differs?: readonly Saying[];
};

/** A test or reading worth taking, or not. */
export type TestWorth = {
  /** As in the findings: words under `next.<test>`. */
  readonly code: string;
  readonly readings: readonly string[];
  /** What choosing after it would save on average, before its price. */
  readonly savesUsd: number;
  /** From the price book; absent when it has no price. */
  readonly priceUsd?: MoneyText;
  readonly minutes?: number;
  /** Saving less price. */
  readonly netUsd?: number;
  /** Whether any outcome would lead to another choice. */
  readonly changesChoice: boolean;
};

/** Whether finding out more is worth its money. */
export type Investigate =
  | {
      readonly kind: 'value';
      /** The most that knowing the cause could save on average. */
      readonly mostUsd: number;
      /** Lowest on average as things stand. */
      readonly choiceId: string;
      /** Which choice costs least under each cause, and how likely the cause is. */
      readonly byCause: readonly {
        readonly cause: CauseId;
        readonly frac: number;
        readonly choiceId: string;
        /** Total of each choice under this cause, by id. */
        readonly totalsUsd: Readonly<Record<string, number>>;
      }[];
      /** Best first. */
      readonly tests: readonly TestWorth[];
      readonly saying: Saying;
    }
  | { readonly kind: 'none'; readonly why: Saying };

/** Which choice costs least by years of stay and price of one repair. */
export type FlipMap = {
  /** The repair whose price varies: the cheapest in total. */
  readonly repairId: string;
  readonly stayYears: readonly number[];
  /** Cash prices after rebates [USD]. */
  readonly repairPricesUsd: readonly number[];
  /** By stay, then by price. */
  readonly choiceIds: readonly (readonly string[])[];
};

export type ComparedChoice = {
  readonly id: string;
  readonly kind: Choice['kind'];
  readonly name: string;
  readonly priceUsd: MoneyText;
  readonly rebateUsd: MoneyText;
  /** Paid on the day: the price, or the down payment and fees. */
  readonly upFrontUsd: MoneyText;
  readonly loan?: LoanQuote;
  /** Every way to pay, the one that counts first; empty where nothing is to be paid. */
  readonly waysToPay?: readonly WayToPay[];
  /** Energy saved against leaving it, a twelfth of the first year's; stands beside a monthly payment. */
  readonly energySavedPerMonthUsd?: number;
  /** Days without heating or cooling to be expected from failures within the stay. */
  readonly daysWithout?: Estimate;
  readonly yearlyEnergyUsd: Estimate;
  readonly failsWithinStayFrac: Estimate;
  readonly totalTodayUsd: Estimate;
  /** Deterministic likely total, quoted to the cent by Decimal; equals totalTodayUsd.likely within half a cent. */
  readonly totalTodayQuoted: MoneyText;
  /** Level yearly cost worth the total. */
  readonly perYearUsd: number;
  /** A twelfth of it. */
  readonly perMonthUsd: number;
  /** Against leaving it, end by end (same loss, same prices). */
  readonly netSavingUsd: Estimate;
  /** What it costs more than the lowest, end by end; 0 for the lowest itself. */
  readonly overLowestUsd: Estimate;
  /** False when it has no price list yet: then it is shown but never recommended. */
  readonly priced: boolean;
  /** Repairs: cash price, after rebates, up to which it would cost least; absent when it would not even for nothing. */
  readonly breakEvenPriceUsd?: number;
  /** Repairs: what the usual rules would say. */
  readonly rulesOfThumb?: RulesOfThumb;
  /** What moves the net saving (of leaving it: the total) most, widest first. */
  readonly drivers: readonly Driver[];
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
  /** Other choices whose range against the lowest includes zero: about the same on money. */
  readonly aboutTheSameIds: readonly string[];
  /** Which choice costs least for every length of stay from 1 year up; also if a newer unit leaves no value behind. */
  readonly lowestByStay: readonly {
    readonly stayYears: number;
    readonly choiceId: string;
    readonly choiceIdWithoutValueLeft: string;
  }[];
  /** For the replacement with the lowest total; absent when no replacement has a price. */
  readonly replaceLater?: ReplaceLater;
  /** Is it worth finding out more before choosing? */
  readonly investigate?: Investigate;
  /** Absent without a priced repair. */
  readonly flipMap?: FlipMap;
  readonly recommendation: {
    readonly choiceId?: string;
    readonly reason: Saying;
    /** Where choices cost about the same: the one that is lowest on the likely numbers. */
    readonly lowestOnLikely?: Saying;
    readonly wouldChange: readonly Saying[];
  };
  readonly notes: readonly Saying[];
};
