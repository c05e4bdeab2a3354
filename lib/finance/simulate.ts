import type { EnergyResult } from '../energy/energy-result';
import type { EnergySurfaces } from '../energy/energy-surface';
import { successPower } from '../energy/recovery';
import type { Estimate } from '../math/estimate';
import { invariant } from '../math/invariant';
import { repairs } from '../visit/choice';
import {
  type ComparisonInput,
  type ComparisonModel,
  capitalTodayUsd,
  comparisonModel,
} from './comparison-model';
import conventions from './data/conventions.json';
import { foundHazardRatio } from './hazard-ratio';
import { usdOf } from './money';
import { renewsCompressor } from './new-compressor';
import { capitalFlows, type PricedChoice } from './priced-choice';
import { type Columns, drawColumns } from './simulation-columns';
import { type KernelDraw, type KernelUnit, simulationKernel } from './simulation-kernel';
import { plannedYearOf, successorOf } from './successor';

export type SimulatedChoice = {
  readonly id: string;
  readonly meanTodayUsd: number;
  /** Standard error of the mean. */
  readonly standardErrorUsd: number;
  /** 10, 50 and 90 % points of the draws. */
  readonly totalTodayUsd: Estimate;
  /** Share of the draws in which it costs least; over all choices with a price these add up to 1. */
  readonly cheapestFrac: number;
  /** What it costs on average above the cheapest of each draw. */
  readonly expectedRegretUsd: number;
};

export type Simulation = {
  readonly draws: number;
  readonly seed: number;
  readonly choices: readonly SimulatedChoice[];
  /** What knowing everything uncertain before choosing would save on average: the smallest expected regret. */
  readonly perfectInformationUsd: number;
};

/**
 * Totals in today's money of every choice in many draws of everything uncertain. Within a draw, failures count with
 * their exact expected cost; one cause is at work, and a repair aimed at it either cures or does not.
 *
 * @param model   prepared comparison
 * @param energy  yearly energy
 * @param draws   number of draws, whole, >= 1
 * @param seed    whole number; the same seed gives the same result everywhere
 * @param surfaces  as for `drawColumns`
 * @returns totals by choice (model's order), each of length `draws`
 * Check: tests/finance/simulate.test.ts
 */
export function simulateTotals(
  model: ComparisonModel,
  energy: EnergyResult,
  draws: number,
  seed: number,
  surfaces?: EnergySurfaces,
): Float64Array[] {
  const columns = drawColumns(model, energy, draws, seed, surfaces);
  const { basis, likely } = model;
  const oldAge = conventions.values.smallRepairsOldFromAgeYears.value;
  const kernel = simulationKernel(basis.stayYears, basis.timing === 'midYear', oldAge);
  const d = likely.values.discountFracPerYear;
  const risk = foundRisk(model, columns);
  const plans = model.choices.map((priced) => ({
    ownTodayUsd: capitalTodayUsd(capitalFlows(priced, basis.stayYears), d),
    first: firstUnits(model, priced, columns, risk),
    totals: new Float64Array(draws),
    successor: successorOf(priced.choice, model.choices, model.fallback),
  }));
  const successors = [...new Set(plans.map((plan) => plan.successor))].map((successor) => {
    const energyUsd = columns.energyUsd[successor.scenarioId];
    invariant(energyUsd !== undefined, `no energy scenario "${successor.scenarioId}"`);
    const { quotedUsd } = successor;
    const priceUsd =
      quotedUsd === undefined ? columns.replacementUsd : new Float64Array(draws).fill(quotedUsd);
    return { priceUsd, energyUsd, plans: plans.filter((plan) => plan.successor === successor) };
  });
  const draw = { ...EMPTY_DRAW };
  const unit: KernelUnit = { ageYears: 0, hazardRatio: 1, energyUsd: 0, leavesUsd: 0, plannedYear: 0 };
  for (let n = 0; n < draws; n += 1) {
    fillDraw(draw, columns, n);
    kernel.start(draw);
    for (const { priceUsd, energyUsd, plans: own } of successors) {
      kernel.succeed(priceUsd[n] as number, energyUsd[n] as number);
      for (const { first, totals, ownTodayUsd } of own) {
        unit.ageYears = first.ageYears[n] as number;
        unit.hazardRatio = first.hazardRatio[n] as number;
        unit.energyUsd = first.energyUsd[n] as number;
        unit.leavesUsd = first.leavesUsd;
        unit.plannedYear = first.plannedYear;
        totals[n] = ownTodayUsd + kernel.runningTodayUsd(unit);
      }
    }
  }
  return plans.map((plan) => plan.totals);
}

/**
 * What the draws say about each choice.
 *
 * @param totals  totals by choice, as from `simulateTotals`
 * Choices without a price are summed up but never count as cheapest.
 * Check: tests/finance/simulate.test.ts
 */
export function summarise(model: ComparisonModel, totals: readonly Float64Array[], seed: number): Simulation {
  const draws = totals[0]?.length ?? 0;
  invariant(draws >= 1 && totals.length === model.choices.length, `${totals.length} choices, ${draws} draws`);
  const ranked = model.choices.flatMap((c, i) => (c.priced ? [i] : []));
  const lowest = new Float64Array(draws);
  const wins = new Float64Array(totals.length);
  for (let n = 0; n < draws; n += 1) {
    let best = ranked[0] as number;
    for (const i of ranked) if (at(totals, i, n) < at(totals, best, n)) best = i;
    lowest[n] = at(totals, best, n);
    wins[best] = (wins[best] as number) + 1;
  }
  const lowestMean = mean(lowest);
  const choices = model.choices.map((c, i): SimulatedChoice => {
    const own = totals[i] as Float64Array;
    const meanTodayUsd = mean(own);
    const spread = spreadOf(own, meanTodayUsd);
    const sorted = own.slice().sort();
    return {
      id: c.choice.id,
      meanTodayUsd,
      standardErrorUsd: spread / Math.sqrt(draws),
      totalTodayUsd: {
        low: quantile(sorted, 0.1),
        likely: quantile(sorted, 0.5),
        high: quantile(sorted, 0.9),
      },
      cheapestFrac: (wins[i] as number) / draws,
      expectedRegretUsd: meanTodayUsd - lowestMean,
    };
  });
  const regrets = ranked.map((i) => choices[i]?.expectedRegretUsd ?? 0);
  return { draws, seed, choices, perfectInformationUsd: Math.max(0, Math.min(...regrets)) };
}

/** What a simulation needs: the parts of an appraisal. */
export type SimulationInput = ComparisonInput & {
  readonly draws: number;
  readonly seed: number;
  readonly surfaces?: EnergySurfaces;
};

/**
 * A whole simulation of an appraisal in one call, for a worker: chance that each choice is cheapest, 10, 50 and 90 %
 * points, expected regret.
 *
 * @param input  visit, findings and energy of an appraisal, number of draws, seed
 * @returns as `summarise`; the same seed gives the same dollars everywhere
 * Check: tests/finance/simulate.test.ts
 */
export function simulate({ draws, seed, surfaces, ...input }: SimulationInput): Simulation {
  const model = comparisonModel(input);
  return summarise(model, simulateTotals(model, input.energy, draws, seed, surfaces), seed);
}

const EMPTY_DRAW: KernelDraw = {
  discountFrac: 0,
  inflationFrac: 0,
  escalationFrac: 0,
  shape: 1,
  medianLifeYears: 1,
  premiumFrac: 0,
  upkeepUsd: 0,
  smallRepairsOldUsd: 0,
  smallRepairsNewUsd: 0,
  valueLeftFrac: 0,
};

function fillDraw(draw: KernelDraw, columns: Columns, n: number): void {
  const { values } = columns;
  draw.discountFrac = values.discountFracPerYear[n] as number;
  draw.inflationFrac = values.inflationFracPerYear[n] as number;
  draw.escalationFrac = values.electricityEscalationFracPerYear[n] as number;
  draw.shape = values.survivalShape[n] as number;
  draw.medianLifeYears = values.medianLifeYears[n] as number;
  draw.premiumFrac = values.outOfHoursPremiumFrac[n] as number;
  draw.upkeepUsd = values.upkeepUsdPerYear[n] as number;
  draw.smallRepairsOldUsd = values.smallRepairsOldUsdPerYear[n] as number;
  draw.smallRepairsNewUsd = values.smallRepairsNewUsdPerYear[n] as number;
  draw.valueLeftFrac = columns.valueLeftFrac[n] as number;
}

/** The unit a choice starts with, by draw. */
type FirstUnits = {
  readonly ageYears: Float64Array;
  readonly hazardRatio: Float64Array;
  readonly energyUsd: Float64Array;
  readonly leavesUsd: number;
  readonly plannedYear: number;
};

/** Risk of the unit as found under the cause of each draw. */
function foundRisk({ chances }: ComparisonModel, { cause, values, hotRatio }: Columns): Float64Array {
  const causes = chances.causes.map((c) => c.cause);
  const ailing = values.ailingHazardRatio;
  return hotRatio.map((hot, n) => foundHazardRatio(hot, ailing[n] as number, causes[cause[n] as number]));
}

function firstUnits(
  model: ComparisonModel,
  priced: PricedChoice,
  columns: Columns,
  risk: Float64Array,
): FirstUnits {
  const { choice } = priced;
  const { asFound } = columns.energyUsd;
  const own = choice.kind === 'leave' ? asFound : columns.energyUsd[choice.id];
  invariant(own !== undefined && asFound !== undefined, `no energy scenario "${choice.id}"`);
  if (choice.kind === 'replace') {
    return {
      ageYears: new Float64Array(columns.draws),
      hazardRatio: new Float64Array(columns.draws).fill(1),
      energyUsd: own,
      leavesUsd: usdOf(priced.netPrice),
      plannedYear: 0,
    };
  }
  const plannedYear = plannedYearOf(choice, model.basis.stayYears) ?? 0;
  const kept = { ageYears: columns.ageYears, leavesUsd: 0, plannedYear };
  if (!repairs(choice)) return { ...kept, hazardRatio: risk, energyUsd: asFound };
  const hazardRatio = new Float64Array(columns.draws);
  const energyUsd = new Float64Array(columns.draws);
  const { newCompressorHazardRatio, repairSuccessFrac } = columns.values;
  const renews = renewsCompressor(choice);
  // a repair cures where the luck of the draw lies below the usual chance to this power; never where it has none
  const powers = model.chances.causes.map(({ cause }) =>
    choice.shownByRun === undefined ? successPower(choice, cause, model.chances.basis) : 0,
  );
  for (let n = 0; n < columns.draws; n += 1) {
    const power = powers[columns.cause[n] as number];
    const usual = repairSuccessFrac[n] as number;
    const cured = power !== undefined && (columns.luck[n] as number) < (power === 1 ? usual : usual ** power);
    hazardRatio[n] =
      (cured ? 1 : (risk[n] as number)) * (renews ? (newCompressorHazardRatio[n] as number) : 1);
    energyUsd[n] = (cured ? own[n] : asFound[n]) as number;
  }
  return { ...kept, hazardRatio, energyUsd };
}

function at(totals: readonly Float64Array[], i: number, n: number): number {
  return (totals[i] as Float64Array)[n] as number;
}

function mean(values: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < values.length; n += 1) sum += values[n] as number;
  return sum / values.length;
}

function spreadOf(values: Float64Array, middle: number): number {
  let sum = 0;
  for (let n = 0; n < values.length; n += 1) sum += ((values[n] as number) - middle) ** 2;
  return Math.sqrt(sum / values.length);
}

/** Linear between the sorted draws. */
function quantile(sorted: Float64Array, p: number): number {
  const place = p * (sorted.length - 1);
  const below = Math.floor(place);
  const left = sorted[below] as number;
  return left + (((sorted[below + 1] ?? left) as number) - left) * (place - below);
}
