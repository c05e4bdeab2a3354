import { z } from 'zod';
import { CauseId } from './cause';
import { dollars, quantity, text, wholeQuantity } from './quantity';
import { Fuel } from './tariff';
import { BlowerKind, Ratings } from './unit';

const isoDate = (label: string) => z.iso.date().meta({ label });

/** One line of a price: quantity times unit price, or a tax on all lines above. */
export const PriceLine = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z
      .enum(['labour', 'part', 'refrigerant', 'equipment', 'permit', 'other'])
      .meta({ label: 'Kind of price line' }),
    label: text('Price line', 120),
    amount: z
      .number()
      .min(0)
      .max(10_000)
      .meta({ label: 'Amount (hours, pounds or pieces)', unit: 'own', min: 0, max: 10_000 }),
    unitPriceUsd: dollars('Price each', 0, 100_000),
  }),
  z.strictObject({
    kind: z.literal('tax'),
    label: text('Price line', 120),
    taxFrac: quantity('Tax rate', 'frac', 0, 0.25),
  }),
]);
export type PriceLine = z.infer<typeof PriceLine>;

/** Money back, never assumed: it drops out after its last date and says so. */
export const Rebate = z.strictObject({
  label: text('Rebate', 120),
  amountUsd: dollars('Rebate amount', 0, 50_000),
  condition: text('Condition of the rebate', 400).optional(),
  firstDate: isoDate('First date of the rebate').optional(),
  lastDate: isoDate('Last date of the rebate').optional(),
  paidAfterMonths: wholeQuantity('Months until the rebate is paid', 'months', 0, 36).optional(),
  /** Put against what is still owed on the loan when it comes; without a loan it is money back like any other. */
  toPrincipal: z.boolean().meta({ label: 'Rebate goes against the loan' }).optional(),
});
export type Rebate = z.infer<typeof Rebate>;

const loanParts = {
  downPaymentUsd: dollars('Down payment', 0, 100_000).optional(),
  feeUsd: dollars('Loan fee paid at the start', 0, 20_000).optional(),
  /** What the lender keeps from the contractor, where the customer's price is raised for it. */
  dealerFeeFrac: quantity('Dealer fee passed on, share of what is lent', 'frac', 0, 0.4).optional(),
  lender: text('Lender or plan', 120).optional(),
};

/** How the customer pays. Rates are nominal, per year. */
export const Financing = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('cash') }),
  z.strictObject({
    kind: z.literal('levelLoan'),
    rateFracPerYear: quantity('Loan rate a year', 'frac/year', 0, 0.6),
    termMonths: wholeQuantity('Loan term', 'months', 1, 240),
    ...loanParts,
    /** Left out = one month after the visit. */
    firstPaymentDate: isoDate('Date of the first payment').optional(),
  }),
  /** No interest if paid in full within the promotion; else interest is charged back to the first day. */
  z.strictObject({
    kind: z.literal('promotional'),
    rateFracPerYear: quantity('Rate charged back if it is not paid in time', 'frac/year', 0, 0.6),
    promotionMonths: wholeQuantity('Months without interest', 'months', 1, 120),
    /** From the first day to the last payment, promotion included. */
    termMonths: wholeQuantity('Months until all is paid if it is not paid in time', 'months', 1, 240),
    ...loanParts,
    /** What the customer pays each month if the promotion is missed; left out = the debt spread over the whole term. */
    monthlyPaymentUsd: dollars('Payment a month', 0, 20_000).optional(),
    /** Which ending the totals count; left out = paid in time. The other is shown beside it. */
    expectedEnding: z
      .enum(['paidInTime', 'notPaidInTime'])
      .meta({ label: 'Ending that the totals count' })
      .optional(),
  }),
]);
export type Financing = z.infer<typeof Financing>;

export const RepairAction = z
  .enum([
    'filterDrierAndRecharge',
    'leakRepairAndRecharge',
    'meteringOrificeCleaning',
    'txvReplacement',
    'blowerService',
    'openRegisters',
    'indoorCoilCleaning',
    'outdoorCoilCleaning',
    'runCapacitor',
    'reversingValve',
    'compressor',
  ])
  .meta({ label: 'Repair' });
export type RepairAction = z.infer<typeof RepairAction>;

const common = {
  id: z
    .string()
    .regex(/^[a-z0-9-]{1,40}$/)
    .meta({ label: 'Choice' }),
  name: text('Name of the choice', 80),
  priceLines: z.array(PriceLine).max(40),
  rebates: z.array(Rebate).max(10).optional(),
  financing: Financing.optional(),
  /** Other ways to pay for the same choice, quoted beside each other; `financing` is the one the totals count. */
  financingOffers: z.array(Financing).max(6).optional(),
  /** Entry of the price book the lines came from. */
  priceBookEntry: text('Entry of the price book', 60).optional(),
  warrantyYears: quantity('Warranty', 'years', 0, 25).optional(),
  note: text('Note on the choice', 2_000).optional(),
};

/** Leave as is: nothing is bought now; it is replaced when it fails. */
export const LeaveChoice = z.strictObject({ kind: z.literal('leave'), ...common });

const repairParts = {
  actions: z.array(RepairAction).min(1).max(6),
  /** Cause the repair is aimed at; left out = the cause the technician suspects. */
  addresses: CauseId.optional(),
  /** Run taken after this repair was done or tried: what it gives back is then measured, not assumed. */
  shownByRun: text('Run that shows what the repair gives back', 40).optional(),
  /** Share of its cause's loss given back; left out = the table's default for the action. */
  lossRecoveredFrac: z
    .strictObject({
      low: quantity('Share of the loss given back, low', 'frac', 0, 1),
      likely: quantity('Share of the loss given back, likely', 'frac', 0, 1),
      high: quantity('Share of the loss given back, high', 'frac', 0, 1),
    })
    .optional(),
};

/** A repair, or several done together; it gives back a share of the loss that its causes explain, if they are the cause. */
export const RepairChoice = z.strictObject({ kind: z.literal('repair'), ...common, ...repairParts });

/** Repaired now, and replaced some years later, or earlier if it fails. Its price lines are those of the repair. */
export const RepairThenReplaceChoice = z.strictObject({
  kind: z.literal('repairThenReplace'),
  ...common,
  ...repairParts,
  replaceAfterYears: wholeQuantity('Years until it is replaced', 'years', 1, 24),
  /** Id of the replacement choice bought then; left out = the cheapest one of the same kind. */
  replaceWith: text('Choice that replaces it', 40).optional(),
});

/** A furnace behind a new heat pump (dual fuel): it heats at and below the switch-over temperature. */
export const FurnaceBehind = z.strictObject({
  fuel: Fuel,
  afueFrac: quantity('Furnace efficiency (AFUE)', 'frac', 0.5, 1),
  switchOverF: quantity('Furnace takes over below', 'F', -20, 60),
  /** Left out = large enough for the house. */
  outputBtuh: quantity('Furnace output', 'Btu/h', 10_000, 250_000).optional(),
});
export type FurnaceBehind = z.infer<typeof FurnaceBehind>;

/** A new unit in the old one's place. */
export const ReplaceChoice = z.strictObject({
  kind: z.literal('replace'),
  ...common,
  unitKind: z.enum(['heatPump', 'airConditioner']).meta({ label: 'Kind of new unit' }),
  tier: z.enum(['singleSpeed', 'twoSpeed', 'variableSpeed']).meta({ label: 'Compressor stages' }),
  nominalTons: quantity('Size of the new unit', 'ton', 0.75, 6),
  ratings: Ratings,
  blower: BlowerKind.optional(),
  cutOutF: quantity('Compressor rests below', 'F', -40, 50).optional(),
  furnace: FurnaceBehind.optional(),
});

export const Choice = z.discriminatedUnion('kind', [
  LeaveChoice,
  RepairChoice,
  RepairThenReplaceChoice,
  ReplaceChoice,
]);
export type Choice = z.infer<typeof Choice>;
export type LeaveChoice = z.infer<typeof LeaveChoice>;
export type RepairChoice = z.infer<typeof RepairChoice>;
export type RepairThenReplaceChoice = z.infer<typeof RepairThenReplaceChoice>;
/** What repairs something now, whatever comes later. */
export type Repairing = RepairChoice | RepairThenReplaceChoice;
export type ReplaceChoice = z.infer<typeof ReplaceChoice>;

/** Whether a choice repairs something now. Check: tests/visit/choice.test.ts */
export function repairs(choice: Choice): choice is Repairing {
  return choice.kind === 'repair' || choice.kind === 'repairThenReplace';
}
