import type { EnergyResult, EnergyScenario, EnergyYear } from '../../energy/energy-result';
import type { Choice } from '../../visit/choice';
import { yearOf } from '../calendar';
import type { ComparisonInput } from '../comparison-model';
import { comparisonModel, outcomeOf } from '../comparison-model';
import data from '../data/shop-rule-grid.json';
import { breakEvenPrice } from '../recommend';

/** Largest repair price worth paying, by age of the unit and what it costs more to run than a healthy one. */
export type WallTable = {
  readonly agesYears: readonly number[];
  /** Running cost above that of the healthy unit, as a share of it. */
  readonly lossFrac: readonly number[];
  /** By age, then by loss [USD]; 0 = no repair is worth its price. */
  readonly largestPriceUsd: readonly (readonly number[])[];
  readonly stayYears: number;
  readonly newPriceUsd: number;
};

const REPAIR_ID = 'wall-repair';

/**
 * The wall table of one shop: for a unit like that of a visit, the price up to which a repair that gives the healthy
 * unit back costs least, against leaving it and against a new unit.
 *
 * @param input  a visit of the usual size, climate and tariff, with a priced replacement if there is one
 * @returns prices by age and loss, rounded down to 10 USD; the assumed chance of success counts, the cause is taken as met
 * Check: tests/finance/wall-table.test.ts
 */
export function wallTable(input: ComparisonInput): WallTable {
  const { agesYears, lossFrac } = data.wall;
  const at = (age: number, loss: number) => comparisonModel(inputAt(input, age, loss));
  const first = at(agesYears[0] ?? 0, lossFrac[0] ?? 0);
  const largestPriceUsd = agesYears.map((age) =>
    lossFrac.map((loss) => {
      const model = at(age, loss);
      const index = model.choices.findIndex((c) => c.choice.id === REPAIR_ID);
      const totals = model.choices.map((c) => outcomeOf(model, c, model.likely).totalTodayUsd);
      return Math.max(0, Math.floor((breakEvenPrice(model, index, totals) ?? 0) / 10) * 10);
    }),
  );
  return {
    agesYears,
    lossFrac,
    largestPriceUsd,
    stayYears: first.basis.stayYears,
    newPriceUsd: first.likely.replacementUsd,
  };
}

function inputAt(
  { visit, findings, energy, ...rest }: ComparisonInput,
  age: number,
  loss: number,
): ComparisonInput {
  const repair: Choice = {
    kind: 'repair',
    id: REPAIR_ID,
    name: REPAIR_ID,
    actions: ['leakRepairAndRecharge'],
    priceLines: [{ kind: 'other', label: REPAIR_ID, amount: 1, unitPriceUsd: 0 }],
  };
  const replacements = visit.choices.filter((c) => c.kind === 'replace');
  const { causes: _causes, suspectedCause: _suspected, ...others } = findings;
  return {
    ...rest,
    visit: {
      ...visit,
      unit: { ...visit.unit, manufactureYear: yearOf(visit.visitDate) - age },
      choices: [...visit.choices.filter((c) => c.kind === 'leave'), repair, ...replacements],
    },
    findings: { ...others, flags: [] },
    energy: { ...energy, scenarios: scenariosAt(energy, loss) },
  };
}

function scenariosAt(energy: EnergyResult, loss: number): EnergyScenario[] {
  const healthy = energy.scenarios.find((s) => s.id === 'healthy');
  if (healthy === undefined) return [...energy.scenarios];
  const scaled = (id: string, factor: number): EnergyScenario => {
    const year: EnergyYear = { ...healthy.likely, costUsd: healthy.likely.costUsd * factor };
    const { byCause: _byCause, ...plain } = healthy;
    return { ...plain, id, likely: year, mild: year, severe: year };
  };
  const kept = energy.scenarios.filter((s) => s.id !== 'asFound');
  return [...kept, scaled('asFound', 1 + loss), scaled(REPAIR_ID, 1)];
}
