import fc from 'fast-check';
import type { ComparisonInput } from '@/lib/finance/comparison-model';
import type { Assumption } from '@/lib/visit/assumption';
import { assumptionKeys } from '@/lib/visit/assumption-keys';
import { CauseId } from '@/lib/visit/cause';
import type { Choice, PriceLine, Rebate } from '@/lib/visit/choice';
import { RepairAction } from '@/lib/visit/choice';
import type { Visit } from '@/lib/visit/visit';
import { type Costs, energyOf, findingsOf, hotDischarge } from './fixtures';

const cents = (maxUsd: number) => fc.integer({ min: 0, max: maxUsd * 100 }).map((c) => c / 100);
const date = fc.constantFrom('2024-01-01', '2026-11-03', '2027-06-30');

const line: fc.Arbitrary<PriceLine> = fc.oneof(
  fc.record({
    kind: fc.constantFrom('labour' as const, 'part' as const, 'equipment' as const),
    label: fc.constant('line'),
    amount: fc.double({ min: 0, max: 30, noNaN: true }),
    unitPriceUsd: cents(3000),
  }),
  fc.record({
    kind: fc.constant('tax' as const),
    label: fc.constant('tax'),
    taxFrac: fc.double({ min: 0, max: 0.25, noNaN: true }),
  }),
);
const rebate: fc.Arbitrary<Rebate> = fc.record(
  {
    label: fc.constant('rebate'),
    amountUsd: cents(5000),
    firstDate: date,
    lastDate: date,
    paidAfterMonths: fc.integer({ min: 0, max: 36 }),
  },
  { requiredKeys: ['label', 'amountUsd'] },
);
const financing = fc.oneof(
  fc.record({ kind: fc.constant('cash' as const) }),
  fc.record(
    {
      kind: fc.constant('levelLoan' as const),
      rateFracPerYear: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.6, noNaN: true })),
      termMonths: fc.integer({ min: 1, max: 240 }),
      downPaymentUsd: cents(6000),
      feeUsd: cents(800),
    },
    { requiredKeys: ['kind', 'rateFracPerYear', 'termMonths'] },
  ),
);

const choice = (id: string): fc.Arbitrary<Choice> => {
  const common = {
    id: fc.constant(id),
    name: fc.constant(id),
    priceLines: fc.array(line, { maxLength: 6 }),
    rebates: fc.array(rebate, { maxLength: 3 }),
    financing,
  };
  return fc.oneof(
    fc.record({ kind: fc.constant('leave' as const), ...common }),
    fc.record({
      kind: fc.constant('repair' as const),
      ...common,
      actions: fc.array(fc.constantFrom(...RepairAction.options), { minLength: 1, maxLength: 3 }),
    }),
    fc.record({
      kind: fc.constant('replace' as const),
      ...common,
      unitKind: fc.constantFrom('heatPump' as const, 'airConditioner' as const),
      tier: fc.constantFrom('singleSpeed' as const, 'variableSpeed' as const),
      nominalTons: fc.double({ min: 1, max: 5, noNaN: true }),
      ratings: fc.constant({}),
    }),
  );
};

/** Any assumption set to anything the schema lets through, wild values included. */
const assumption: fc.Arbitrary<Assumption> = fc
  .tuple(
    fc.constantFrom(...assumptionKeys),
    fc.array(fc.oneof(fc.double({ min: -2, max: 30, noNaN: true }), fc.constantFrom(-1e9, 0, 1e9, 1e-300)), {
      minLength: 3,
      maxLength: 3,
    }),
  )
  .map(([key, values]) => {
    const [low = 0, likely = 0, high = 0] = values.sort((a, b) => a - b);
    return { key, low, likely, high, source: 'any' };
  });

const costs: fc.Arbitrary<Costs> = fc
  .array(fc.double({ min: 0, max: 8000, noNaN: true }), { minLength: 3, maxLength: 3 })
  .map((values) => {
    const [mild = 0, likely = 0, severe = 0] = values.sort((a, b) => a - b);
    return { mild, likely, severe, recoveryLow: severe, recoveryHigh: mild };
  });

/** Any visit with its findings and energy as the earlier stages could hand them over. */
export const anyInput: fc.Arbitrary<ComparisonInput> = fc
  .integer({ min: 0, max: 5 })
  .chain((n) => {
    const ids = Array.from({ length: n }, (_, k) => `choice-${k}`);
    return fc.record({
      choices: fc.tuple(...ids.map(choice)),
      energy: fc.tuple(...['healthy', 'asFound', ...ids].map((id) => costs.map((c) => [id, c] as const))),
      assumptions: fc.array(assumption, { maxLength: 4 }),
      stayYears: fc.option(fc.double({ min: 1, max: 25, noNaN: true })),
      manufactureYear: fc.option(fc.integer({ min: 1970, max: 2026 })),
      convention: fc.record({
        timing: fc.constantFrom('endOfYear' as const, 'midYear' as const),
        residual: fc.constantFrom('linear' as const, 'none' as const),
      }),
      cause: fc.option(fc.constantFrom(...CauseId.options)),
      hot: fc.boolean(),
      assumed: fc.boolean(),
    });
  })
  .map((x) => {
    const visit: Visit = {
      schemaVersion: 1,
      id: 'any',
      visitDate: '2026-11-03',
      site: x.stayYears === null ? {} : { stayYears: x.stayYears },
      unit: {
        kind: 'heatPump',
        nominalTons: 3,
        ...(x.manufactureYear === null ? {} : { manufactureYear: x.manufactureYear }),
      },
      runs: [],
      observations: [],
      assumptions: x.assumptions,
      convention: x.convention,
      choices: x.choices,
    };
    const energy = energyOf(Object.fromEntries(x.energy));
    const basis = x.assumed ? ('assumed' as const) : ('bill' as const);
    return {
      visit,
      findings: findingsOf(x.cause ?? undefined, x.hot ? [hotDischarge] : []),
      energy: { ...energy, priceBasis: basis, load: { ...energy.load, basis } },
    };
  });
