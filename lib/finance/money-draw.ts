import type { CostEnds, EnergyResult } from '../energy/energy-result';
import { invariant } from '../math/invariant';
import type { FinanceKey } from './bounded-assumption';
import type { MoneyBasis } from './money-basis';
import { scenarioCosts } from './scenario-costs';

/** One value for everything uncertain. The likely draw gives the likely totals; a simulation supplies many. */
export type MoneyDraw = {
  readonly values: Readonly<Record<FinanceKey, number>>;
  readonly ageYears: number;
  /** Failure risk from a dangerous discharge temperature; 1 = none. What the cause adds: see `foundHazardRatio`. */
  readonly hotRatio: number;
  /** Cost of a year's energy in prices of the visit, by scenario id; under a cause by `costKey`. */
  readonly energyUsd: Readonly<Record<string, number>>;
  /** Price today of the unit that replaces a failed one, without the out-of-hours premium. */
  readonly replacementUsd: number;
  /** Share of the straight-line value left that counts at the end of the stay: 1, or 0 for none. */
  readonly valueLeftFrac: number;
};

/** A draw with one input moved to its low and to its high end, all else likely. */
export type Deviation = {
  readonly input: string;
  readonly low: MoneyDraw;
  readonly high: MoneyDraw;
  /** A way of counting and not a chance: shown among what moves the result, left out of its range. */
  readonly stance?: true;
};

/** What a failed unit is replaced by. */
export type FallbackUnit = {
  /** Quoted price; left out = the assumption per ton. */
  readonly quotedUsd?: number;
  /** Energy scenario of the new unit. */
  readonly scenarioId: string;
};

type Level = 'low' | 'likely' | 'high';

/** Not varied as themselves: the stay is the customer's, the discount rate is a stance, the last three act through others. */
const NOT_VARIED: readonly FinanceKey[] = [
  'stayYears',
  'discountFracPerYear',
  'ageYears',
  'electricityUsdPerKwh',
  'sizingFactorFrac',
];

/**
 * Draw with every input at its likely value.
 *
 * Check: tests/finance/money-draw.test.ts
 */
export function likelyDraw(
  basis: MoneyBasis,
  energy: EnergyResult,
  fallback: FallbackUnit,
  repairIds: readonly string[],
): MoneyDraw {
  const costs = energyOf(energy, repairIds, (s) => s.likely);
  return build(basis, fallback, {}, costs);
}

/**
 * One deviation for each uncertain input: loss mild and severe (all scenarios together), what repairs give back,
 * the need of the house (all scenarios together) and the power of new units, the price of electricity where it was
 * assumed, age where it was assumed, and every
 * assumption of the money side. Two stances follow: the discount rate, and counting no value left at the end.
 *
 * @returns deviations that change at least one value
 * The need of the house goes by the key of its leading assumption, the sizing factor; the energy stage moves slopes
 * and balance temperatures with it.
 * Check: tests/finance/money-draw.test.ts
 */
export function deviations(
  basis: MoneyBasis,
  energy: EnergyResult,
  fallback: FallbackUnit,
  repairIds: readonly string[],
): Deviation[] {
  const costs = (cost: (s: CostEnds) => number) => energyOf(energy, repairIds, cost);
  const likely = costs((s) => s.likely);
  const of = (input: string, at: (level: Level) => MoneyDraw): Deviation => ({
    input,
    low: at('low'),
    high: at('high'),
  });
  const withEnergy = (cost: (s: CostEnds) => number) => build(basis, fallback, {}, costs(cost));
  const scaled = (factor: number) => withEnergy((s) => s.likely * factor);
  const price = basis.values.electricityUsdPerKwh;
  const list: Deviation[] = [
    of('loss', (level) => withEnergy((s) => (level === 'low' ? s.mild : s.severe))),
    of('lossRecovered', (level) =>
      withEnergy((s) => (level === 'low' ? s.recoveryLow : s.recoveryHigh) ?? s.likely),
    ),
    of('sizingFactorFrac', (level) =>
      withEnergy((s) => (level === 'low' ? s.loadLow : s.loadHigh) ?? s.likely),
    ),
    of('newUnit', (level) => withEnergy((s) => (level === 'low' ? s.ratedLow : s.ratedHigh) ?? s.likely)),
  ];
  if (basis.priceAssumed)
    list.push(of('electricityUsdPerKwh', (level) => scaled(price[level] / price.likely)));
  if (basis.ageYears.low !== basis.ageYears.high) {
    list.push(
      of('ageYears', (level) => ({ ...build(basis, fallback, {}, likely), ageYears: basis.ageYears[level] })),
    );
  }
  for (const key of Object.keys(basis.values) as FinanceKey[]) {
    if (NOT_VARIED.includes(key) || idle(key, basis, fallback)) continue;
    list.push(of(key, (level) => build(basis, fallback, { [key]: basis.values[key][level] }, likely)));
  }
  list.push(...stances(basis, fallback, likely));
  const plain = JSON.stringify(build(basis, fallback, {}, likely));
  return list.filter((d) => JSON.stringify(d.low) !== plain || JSON.stringify(d.high) !== plain);
}

function stances(basis: MoneyBasis, fallback: FallbackUnit, likely: MoneyDraw['energyUsd']): Deviation[] {
  const rate = basis.values.discountFracPerYear;
  const discounted = (level: Level) => build(basis, fallback, { discountFracPerYear: rate[level] }, likely);
  const draw = build(basis, fallback, {}, likely);
  const none: Deviation = {
    input: 'valueLeft',
    low: { ...draw, valueLeftFrac: 0 },
    high: draw,
    stance: true,
  };
  return [
    { input: 'discountFracPerYear', low: discounted('low'), high: discounted('high'), stance: true },
    ...(basis.residual === 'linear' ? [none] : []),
  ];
}

/** Whether a value plays no part here: a risk that nothing changes, a price per ton beside a quoted price. */
function idle(key: FinanceKey, basis: MoneyBasis, fallback: FallbackUnit): boolean {
  if (key === 'hotDischargeHazardRatio' || key === 'ailingHazardRatio') return !basis.riskKeys.includes(key);
  if (key === 'newCompressorHazardRatio') return !basis.newCompressor;
  return key === 'replacementUsdPerTon' && fallback.quotedUsd !== undefined;
}

function build(
  basis: MoneyBasis,
  fallback: FallbackUnit,
  moved: Partial<Record<FinanceKey, number>>,
  energyUsd: Readonly<Record<string, number>>,
): MoneyDraw {
  const values = {} as Record<FinanceKey, number>;
  for (const key of Object.keys(basis.values) as FinanceKey[])
    values[key] = moved[key] ?? basis.values[key].likely;
  return {
    values,
    ageYears: basis.ageYears.likely,
    valueLeftFrac: basis.residual === 'linear' ? 1 : 0,
    hotRatio: basis.riskKeys.includes('hotDischargeHazardRatio') ? values.hotDischargeHazardRatio : 1,
    energyUsd,
    replacementUsd: fallback.quotedUsd ?? values.replacementUsdPerTon * basis.nominalTons,
  };
}

/** Where the unit may be better than its healthy reference, a repair gives nothing back; it never makes it worse. */
function energyOf(
  energy: EnergyResult,
  repairIds: readonly string[],
  cost: (s: CostEnds) => number,
): Record<string, number> {
  const costs: Record<string, number> = {};
  const list = scenarioCosts(energy);
  for (const { key, costs: ends } of list) {
    const usd = cost(ends);
    invariant(Number.isFinite(usd) && usd >= 0, `energy cost of ${key}: ${usd}`);
    costs[key] = usd;
  }
  const found = costs.asFound;
  invariant(found !== undefined, 'no energy scenario "asFound"');
  for (const { key, id } of list) {
    const usd = costs[key];
    if (usd !== undefined && repairIds.includes(id)) costs[key] = Math.min(usd, found);
  }
  return costs;
}
