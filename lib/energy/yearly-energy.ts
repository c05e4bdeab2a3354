import type { Findings } from '../diagnostics/findings';
import { healthyUnit } from '../diagnostics/healthy-unit/healthy-unit';
import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { assertNever } from '../math/invariant';
import type { ReplaceChoice } from '../visit/choice';
import type { Tariff } from '../visit/tariff';
import type { Unit } from '../visit/unit';
import type { Visit } from '../visit/visit';
import type { Saying } from '../visit/wording';
import { type BillUse, billUse } from './bills/bill-use';
import { type BilledLoad, loadFromBills } from './bills/load-from-bills';
import { type Climate, hoursByMonthAndBin, monthMeansF } from './climate-model';
import { withDegreeDays } from './degree-day-correction';
import { emissionFactor } from './emission-factor';
import { energyAssumptions } from './energy-assumptions';
import { energyPrice } from './energy-price';
import type { EnergyResult, EnergyScenario } from './energy-result';
import type { Furnace } from './furnace';
import { type HouseLoad, houseLoad } from './house-load';
import { lossEnds } from './loss-ratios';
import { type CauseChances, causeChances } from './recovery';
import { recoveryScenario } from './recovery-scenario';
import { healthyScenario, newUnitScenario, scenarioOf } from './scenario';
import { shownLoss } from './shown-loss';
import { pricingOf } from './tariff/pricing';
import { unitBins } from './unit-bins';
import type { YearContext } from './unit-year';

export type YearlyEnergyInput = {
  readonly visit: Visit;
  readonly healthy: HealthyUnit;
  readonly loss: Findings['loss'];
  /** What each run shows; a repair may name the run that shows its effect. */
  readonly lossByRun?: NonNullable<Findings['lossByRun']>;
  /** What may be at work; left out = what the technician suspects. */
  readonly chances?: CauseChances;
  readonly climate: Climate;
  /** Furnaces behind new heat pumps, by the id of the choice. */
  readonly furnaces?: Readonly<Record<string, Furnace>>;
};

/**
 * Energy and cost of a year in this house: with the unit healthy (`healthy`), as found (`asFound`), and after
 * each choice (under the choice's id; leaving it equals as found).
 *
 * @param given  visit, its healthy unit, the loss per mode, the climate
 * @returns scenarios with low / likely / high cost, the load lines, the price, everything assumed, notes
 * The house and its weather are the same in every scenario; only the unit changes. Costs hold energy alone: fixed
 * monthly charges are saved by no choice. A unit that does not heat leaves heating out of every scenario, unless
 * its electric heat does the heating.
 * Source: bin method; parts cite their own sources
 * Check: tests/energy/yearly-energy.test.ts
 */
export function yearlyEnergy(given: YearlyEnergyInput): EnergyResult {
  const climate = withDegreeDays(given.climate, given.visit.site);
  const input = { ...given, climate };
  const { visit, healthy } = input;
  const price = energyPrice(visit);
  const emission = emissionFactor(visit.site.stateCode);
  const bills = billsOf(input);
  const usable = bills !== undefined && bills.verdict !== 'unusable';
  const duty = {
    heats: unitHeatsHouse(visit, healthy),
    monthBinHours: hoursByMonthAndBin(climate),
    pricing: pricingOf(price.tariff, climate, usable ? bills.baseKwhPerYear / 12 : undefined),
    co2LbPerKwh: emission.lbPerKwh,
  };
  const { load, notes: loadNotes } = loadOf(input, duty, bills);
  const notes: Saying[] = [
    ...climate.notes,
    ...price.notes,
    ...healthy.notes.map(ofUnit),
    ...lossNotes(input, duty.heats),
    ...(bills?.notes ?? []),
    ...loadNotes,
  ];
  const scenarios = scenariosOf(input, { ...duty, load, ...loadEndsOf(input, load) }, notes);
  const priceUsdPerKwh = meanPrice(price.tariff, scenarios);
  return {
    scenarios,
    climateName: climate.name,
    load: loadSummary(load, climate),
    priceUsdPerKwh,
    priceBasis: price.basis,
    assumptions: energyAssumptions({ visit, healthy, climate, load, price, priceUsdPerKwh, emission }),
    ...(bills === undefined ? {} : { bills }),
    notes,
  };
}

function billsOf(input: YearlyEnergyInput): BillUse | undefined {
  const { bills } = input.visit;
  if (bills === undefined || bills.length === 0) return undefined;
  return billUse({ bills, typicalMonthMeanF: monthMeansF(input.climate) });
}

function loadOf(
  input: YearlyEnergyInput,
  duty: Omit<YearContext, 'load'>,
  bills: BillUse | undefined,
): BilledLoad {
  const load = houseLoad(input.visit, input.healthy, input.climate);
  if (bills === undefined) return { load, notes: [] };
  const bins = unitBins(input.healthy, input.climate.binF, load);
  return loadFromBills(bills, load, bins, lossEnds(input.loss).likely, duty);
}

/** A load set by bills has no range of its own here: what is left open about it is in the fit. */
function loadEndsOf(
  { visit, healthy, climate }: YearlyEnergyInput,
  load: HouseLoad,
): Pick<YearContext, 'loadEnds'> {
  if (load.basis !== 'assumed') return {};
  const at = (need: 'low' | 'high') => houseLoad(visit, healthy, climate, need);
  return { loadEnds: { low: at('low'), high: at('high') } };
}

function scenariosOf(input: YearlyEnergyInput, context: YearContext, notes: Saying[]): EnergyScenario[] {
  const { visit, healthy, climate } = input;
  const bins = unitBins(healthy, climate.binF, context.load);
  const ends = lossEnds(input.loss);
  const chances = input.chances ?? chancesBySuspicion(visit);
  const asFound = scenarioOf('asFound', bins, ends, context);
  const ofChoices = visit.choices.map((choice): EnergyScenario => {
    switch (choice.kind) {
      case 'leave':
        return { ...asFound, id: choice.id };
      case 'repair':
      case 'repairThenReplace': {
        const shown = shownLoss(input, choice.shownByRun);
        if (shown !== undefined) return scenarioOf(choice.id, bins, lossEnds(shown), context);
        const { scenario, notes: told } = recoveryScenario(choice, bins, ends, context, chances);
        notes.push(...told);
        return scenario;
      }
      case 'replace': {
        const unit = replacementUnit(visit, healthy, choice);
        notes.push(...unit.notes.map((note) => ofChoice(note, choice.name)));
        notes.push(...replacementNotes(visit, unit, choice, context.heats));
        const furnace = input.furnaces?.[choice.id];
        return newUnitScenario(choice.id, unitBins(unit, climate.binF, context.load, furnace), context);
      }
      default:
        return assertNever(choice);
    }
  });
  return [healthyScenario('healthy', bins, context), asFound, ...ofChoices];
}

/**
 * The new unit of a replacement, as it performs with nothing wrong. Electric heat in the house stays.
 *
 * Check: tests/energy/yearly-energy.test.ts
 */
export function replacementUnit(visit: Visit, existing: HealthyUnit, choice: ReplaceChoice): HealthyUnit {
  const unit: Unit = {
    kind: choice.unitKind,
    nominalTons: choice.nominalTons,
    manufactureYear: Number.parseInt(visit.visitDate.slice(0, 4), 10),
    ratings: choice.ratings,
    electricHeatKw: existing.stripKw,
    ...(choice.blower === undefined ? {} : { blower: choice.blower }),
  };
  return healthyUnit({
    unit,
    visitDate: visit.visitDate,
    tier: choice.tier,
    ...(visit.site.stateCode === undefined ? {} : { stateCode: visit.site.stateCode }),
    assumptions: visit.assumptions,
  });
}

function chancesBySuspicion({ suspectedCause }: Visit): CauseChances {
  return causeChances({
    loss: {},
    ...(suspectedCause === undefined
      ? {}
      : { suspectedCause: { cause: suspectedCause.cause, saidBy: 'technician' } }),
  });
}

/** The flat price, or what the unit as found pays on average for a kilowatt-hour. */
function meanPrice(tariff: Tariff, scenarios: readonly EnergyScenario[]): number {
  if (tariff.kind === 'flat') return tariff.energyUsdPerKwh;
  const year = scenarios.find((s) => s.id === 'asFound')?.likely;
  return year === undefined || year.totalKwh === 0 ? 0 : year.costUsd / year.totalKwh;
}

function unitHeatsHouse(visit: Visit, healthy: HealthyUnit): boolean {
  if (visit.site.otherHeat === true) return false;
  return healthy.heating !== undefined || healthy.stripKw > 0;
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

function replacementNotes(visit: Visit, unit: HealthyUnit, choice: ReplaceChoice, heats: boolean): Saying[] {
  const values = { choice: choice.name };
  if (unit.heating !== undefined && !heats && visit.site.otherHeat !== true) {
    return [{ code: 'heatingNotCounted', values }];
  }
  if (unit.heating === undefined && heats) return [{ code: 'replacementStripsHeat', values }];
  return [];
}

function ofUnit(note: Saying): Saying {
  return { ...note, code: `unit.${note.code}` };
}

function ofChoice(note: Saying, choice: string): Saying {
  return { code: `choice.${note.code}`, values: { ...note.values, choice } };
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
