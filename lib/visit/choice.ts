import { z } from 'zod';
import { CauseId } from './cause';
import { dollars, quantity, text, wholeQuantity } from './quantity';
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
});
export type Rebate = z.infer<typeof Rebate>;

/** How the customer pays. Rates are nominal, per year. */
export const Financing = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('cash') }),
  z.strictObject({
    kind: z.literal('levelLoan'),
    rateFracPerYear: quantity('Loan rate a year', 'frac/year', 0, 0.6),
    termMonths: wholeQuantity('Loan term', 'months', 1, 240),
    downPaymentUsd: dollars('Down payment', 0, 100_000).optional(),
    feeUsd: dollars('Loan fee paid at the start', 0, 20_000).optional(),
    lender: text('Lender or plan', 120).optional(),
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
  note: text('Note on the choice', 2_000).optional(),
};

/** Leave as is: nothing is bought now; it is replaced when it fails. */
export const LeaveChoice = z.strictObject({ kind: z.literal('leave'), ...common });

/** A repair gives back a share of the loss that its cause explains, if that is the cause. */
export const RepairChoice = z.strictObject({
  kind: z.literal('repair'),
  ...common,
  actions: z.array(RepairAction).min(1).max(6),
  /** Cause the repair is aimed at; left out = the cause the technician suspects. */
  addresses: CauseId.optional(),
  /** Run taken after this repair was done or tried: what it gives back is then measured, not assumed. */
  shownByRun: text('Run that shows what the repair gives back', 40).optional(),
  /** Share of the loss given back; left out = the table's default for the action. */
  lossRecoveredFrac: z
    .strictObject({
      low: quantity('Share of the loss given back, low', 'frac', 0, 1),
      likely: quantity('Share of the loss given back, likely', 'frac', 0, 1),
      high: quantity('Share of the loss given back, high', 'frac', 0, 1),
    })
    .optional(),
});

/** A new unit in the old one's place. */
export const ReplaceChoice = z.strictObject({
  kind: z.literal('replace'),
  ...common,
  unitKind: z.enum(['heatPump', 'airConditioner']).meta({ label: 'Kind of new unit' }),
  tier: z.enum(['singleSpeed', 'twoSpeed', 'variableSpeed']).meta({ label: 'Compressor stages' }),
  nominalTons: quantity('Size of the new unit', 'ton', 0.75, 6),
  ratings: Ratings,
  blower: BlowerKind.optional(),
});

export const Choice = z.discriminatedUnion('kind', [LeaveChoice, RepairChoice, ReplaceChoice]);
export type Choice = z.infer<typeof Choice>;
export type LeaveChoice = z.infer<typeof LeaveChoice>;
export type RepairChoice = z.infer<typeof RepairChoice>;
export type ReplaceChoice = z.infer<typeof ReplaceChoice>;
