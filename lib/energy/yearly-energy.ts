import type { Findings } from '../diagnostics/findings';
import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { resolveAssumption } from '../visit/assumption';
import type { Visit } from '../visit/visit';
import type { Saying } from '../visit/wording';
import { type BillUse, billUse } from './bills/bill-use';
import { billedEnds, loadFromBills } from './bills/load-from-bills';
import { type Climate, hoursByMonthAndBin, monthMeansF } from './climate-model';
import { comfortCheck } from './comfort-check';
import { withDegreeDays } from './degree-day-correction';
import { emissionFactor } from './emission-factor';
import { energyAssumptions } from './energy-assumptions';
import { energyPrice } from './energy-price';
import type { EnergyResult, EnergyScenario } from './energy-result';
import { fuelPriceUsed } from './furnace-behind';
import { type HouseLoad, houseLoad, moved } from './house-load';
import { installedUnit } from './installed-unit';
import { lossEnds } from './loss-ratios';
import { type ModelMoves, modelEnds } from './model-ends';
import { priceUsed } from './price-used';
import type { CauseChances } from './recovery';
import { scenariosOf } from './scenarios';
import { type OtherUse, otherUseOf } from './tariff/other-use';
import { pricingOf } from './tariff/pricing';
import { unitBins } from './unit-bins';
import { unitTotals } from './unit-year';
import type { HouseModel, YearContext } from './year-context';

export type YearlyEnergyInput = {
  readonly visit: Visit;
  readonly healthy: HealthyUnit;
  readonly loss: Findings['loss'];
  /** What each run shows; a repair may name the run that shows its effect. */
  readonly lossByRun?: NonNullable<Findings['lossByRun']>;
  /** What may be at work; left out = what the technician suspects. */
  readonly chances?: CauseChances;
  /** What was derived from the readings; blower power and airflow are used. */
  readonly runs?: Findings['runs'];
  readonly climate: Climate;
};

/**
 * Energy and cost of a year in this house: with the unit healthy (`healthy`), as found (`asFound`), and after
 * each choice (under the choice's id; leaving it equals as found).
 *
 * @param given  visit with its bills, tariff and comfort; its healthy unit, the loss per mode, the climate
 * @returns scenarios with low / likely / high cost, the load lines, the price, everything assumed, notes
 * The house and its weather are the same in every scenario; only the unit changes. Costs hold energy alone: fixed
 * monthly charges are saved by no choice. A unit that does not heat leaves heating out of every scenario, unless
 * its electric heat does the heating. Own degree-days win over the typical year's; bills, where usable, over what floor
 * area, age or unit size say about the house.
 * Source: bin method; parts cite their own sources
 * Check: tests/energy/yearly-energy.test.ts
 */
export function yearlyEnergy(given: YearlyEnergyInput): EnergyResult {
  const { visit } = given;
  const { input, context, loadNotes, price, co2, bills, otherUse } = houseOfYear(given);
  const { climate, healthy } = input;
  const notes: Saying[] = [
    ...climate.notes,
    ...price.notes,
    ...otherUseNotes(otherUse),
    ...healthy.notes.map((note) => ({ ...note, code: `unit.${note.code}` })),
    ...lossNotes(input, context.heats),
    ...(bills?.notes ?? []),
    ...loadNotes,
    ...setbackNotes(visit, healthy, context.heats),
  ];
  const scenarios = scenariosOf(input, context, notes).map((s) => withBothCo2(s, co2));
  const asFound = scenarios.find((s) => s.id === 'asFound')?.likely;
  if (asFound !== undefined) notes.push(...comfortCheck(visit, asFound, context.heats));
  const fuels = [
    ...new Set(visit.choices.flatMap((c) => (c.kind === 'replace' ? (c.furnace?.fuel ?? []) : []))),
  ];
  const used = priceUsed(
    price,
    context.pricing,
    asFound,
    fuels.map((fuel) => fuelPriceUsed(fuel, visit)),
  );
  const { averageUsdPerKwh: priceUsdPerKwh } = used;
  return {
    scenarios,
    climateName: climate.name,
    load: loadSummary(context.load, climate),
    priceUsdPerKwh,
    priceBasis: price.basis,
    price: used,
    co2,
    assumptions: energyAssumptions({ visit, healthy, climate, model: context, price: used, co2, otherUse }),
    ...(bills === undefined ? {} : { bills }),
    notes,
  };
}

/**
 * The house a year is worked out for, with its unit as installed, its weather and its prices.
 *
 * @param given  as for `yearlyEnergy`
 * Check: tests/energy/energy-surface.test.ts
 */
export function houseOfYear(given: YearlyEnergyInput) {
  const { visit } = given;
  const climate = withDegreeDays(given.climate, visit.site);
  const healthy = installedUnit(visit, given.healthy, given.runs);
  const input = { ...given, climate, healthy };
  const price = energyPrice(visit);
  const co2 = co2Of(visit);
  const bills = billsOf(input);
  const otherUse = otherUseOf(price.tariff, bills);
  const duty = {
    heats: unitHeatsHouse(visit, healthy),
    monthBinHours: hoursByMonthAndBin(climate),
    pricing: pricingOf(price.tariff, climate, otherUse?.kwhPerMonth),
    co2LbPerKwh: co2[co2.used].lbPerKwh,
  };
  const { context, notes: loadNotes } = contextOf(input, duty, bills);
  return { input, context, loadNotes, price, co2, bills, otherUse };
}

function co2Of(visit: Visit): NonNullable<EnergyResult['co2']> {
  const { stateCode, co2Factor } = visit.site;
  return {
    used: co2Factor ?? 'marginal',
    marginal: emissionFactor(stateCode, 'marginal'),
    average: emissionFactor(stateCode, 'average'),
  };
}

/** Fuel counts the same whichever grid factor is used. */
function withBothCo2(s: EnergyScenario, co2: NonNullable<EnergyResult['co2']>): EnergyScenario {
  const { totalKwh, co2Lb } = s.likely;
  const at = (kind: 'marginal' | 'average'): number =>
    co2Lb + totalKwh * (co2[kind].lbPerKwh - co2[co2.used].lbPerKwh);
  return { ...s, co2Lb: { marginal: at('marginal'), average: at('average') } };
}

function billsOf(input: YearlyEnergyInput): BillUse | undefined {
  const { bills } = input.visit;
  if (bills === undefined || bills.length === 0) return undefined;
  return billUse({ bills, typicalMonthMeanF: monthMeansF(input.climate) });
}

/** House, hours and prices, with the ends of what was assumed, or of what the bills leave open. */
function contextOf(
  input: YearlyEnergyInput,
  duty: Omit<YearContext, 'load'>,
  bills: BillUse | undefined,
): { readonly context: YearContext; readonly notes: readonly Saying[] } {
  const { visit, healthy, climate } = input;
  const { assumptions } = visit;
  const at = (moves: Partial<ModelMoves>): HouseModel => ({
    load: houseLoad(visit, healthy, climate, moves),
    cyclicRatio: moved(resolveAssumption(assumptions, 'cyclicRatio'), moves.cyclic ?? 0),
    frostRatio: moved(resolveAssumption(assumptions, 'frostRatio'), moves.frost ?? 0),
  });
  const likely = at({});
  const bins = unitBins(healthy, climate.binF, likely.load, { stages: visit.unit.electricHeatStages });
  const ratios = lossEnds(input.loss).likely;
  const billed =
    bills === undefined
      ? { load: likely.load, notes: [] }
      : loadFromBills(bills, likely.load, bins, ratios, { ...duty, ...likely });
  const model = { ...likely, load: billed.load };
  const ends =
    bills !== undefined && billed.load.basis === 'bill'
      ? billedEnds(bills, model)
      : modelEnds(at, (trial) => unitTotals(bins, ratios, { ...duty, ...trial }).costUsd);
  return { context: { ...duty, ...model, ends }, notes: billed.notes };
}

function unitHeatsHouse(visit: Visit, healthy: HealthyUnit): boolean {
  if (visit.site.otherHeat === true) return false;
  return healthy.heating !== undefined || healthy.stripKw > 0;
}

/** Nobody typed what fills the lower tiers: the price of every saving hangs on it. */
function otherUseNotes(otherUse: OtherUse | undefined): Saying[] {
  if (otherUse?.basis !== 'assumed') return [];
  return [{ code: 'tariffTiersOther', values: { otherKwh: otherUse.kwhPerMonth } }];
}

/** Morning recovery after a set-back may call the strips: the mean room temperature does not show it. */
function setbackNotes(visit: Visit, healthy: HealthyUnit, heats: boolean): Saying[] {
  const setsBack = (visit.site.heatingSetbackFd ?? 0) > 0;
  return setsBack && heats && healthy.heating !== undefined && healthy.stripKw > 0
    ? [{ code: 'setbackRecovery' }]
    : [];
}

function lossNotes(input: YearlyEnergyInput, heats: boolean): Saying[] {
  const notes: Saying[] = [];
  if (input.loss.cooling === undefined) notes.push({ code: 'lossMissing', values: { mode: 'cooling' } });
  if (input.healthy.heating !== undefined) {
    if (!heats) notes.push({ code: 'otherHeat' });
    else if (input.loss.heating === undefined)
      notes.push({ code: 'lossMissing', values: { mode: 'heating' } });
  } else if (heats) notes.push({ code: 'stripsHeatHouse' });
  return notes;
}

function loadSummary(load: HouseLoad, climate: Climate): EnergyResult['load'] {
  return {
    heatingBtuhAtDesign: Math.max(0, load.heatingBtuhPerF * (load.heatingBalanceF - climate.heatingDesignF)),
    heatingDesignF: climate.heatingDesignF,
    heatingBalanceF: load.heatingBalanceF,
    coolingBtuhAtDesign: Math.max(0, load.coolingBtuhPerF * (climate.coolingDesignF - load.coolingBalanceF)),
    coolingDesignF: climate.coolingDesignF,
    coolingBalanceF: load.coolingBalanceF,
    basis: load.basis,
    source: load.source,
  };
}
