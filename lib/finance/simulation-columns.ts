import type { EnergyResult, EnergyScenario } from '../energy/energy-result';
import { type Estimate, Z_10_90 } from '../math/estimate';
import { invariant } from '../math/invariant';
import { randomStream } from '../math/random';
import { repairs } from '../visit/choice';
import type { FinanceKey } from './bounded-assumption';
import type { ComparisonModel } from './comparison-model';
import limits from './data/assumption-limits.json';

/** Draws of every uncertain input, one column each; index = draw. */
export type Columns = {
  readonly draws: number;
  readonly values: Readonly<Record<FinanceKey, Float64Array>>;
  readonly ageYears: Float64Array;
  readonly foundHazardRatio: Float64Array;
  readonly replacementUsd: Float64Array;
  readonly valueLeftFrac: Float64Array;
  /** Yearly energy by scenario id, in prices of the visit. */
  readonly energyUsd: Readonly<Record<string, Float64Array>>;
  /** 1 where a repair aimed at the suspected cause cures it, else 0. */
  readonly cured: Float64Array;
};

/**
 * Value at a standard normal deviate of a distribution with given 10, 50 and 90 % points: half a normal curve below
 * the middle, another above, so that all three points are met exactly.
 *
 * @param value  low / likely / high as 10 / 50 / 90 % points
 * @param z      standard normal deviate
 * Source: two-piece normal distribution; computed
 * Check: tests/finance/simulation-columns.test.ts
 */
export function twoPiece(value: Estimate, z: number): number {
  const side = z < 0 ? value.likely - value.low : value.high - value.likely;
  return value.likely + (z / Z_10_90) * side;
}

/**
 * Draws every uncertain input from its own stream of one seed, so that another assumption more does not reshuffle
 * the rest. The same draws serve all choices. The loss moves all scenarios together; what repairs give back moves
 * all repairs together; the need of the house moves all scenarios, each in proportion to itself, and the power of new
 * units all new units; the stay and the stances (discount rate, value left at the end) do not vary.
 *
 * @param model   prepared comparison
 * @param energy  yearly energy
 * @param draws   number of draws, whole, >= 1
 * @param seed    whole number
 * Values are kept inside the limits of data/assumption-limits.json, energy at or above 0, and a repair at or below
 * the unit as found.
 * Check: tests/finance/simulation-columns.test.ts
 */
export function drawColumns(
  model: ComparisonModel,
  energy: EnergyResult,
  draws: number,
  seed: number,
): Columns {
  invariant(Number.isSafeInteger(draws) && draws >= 1, `draws ${draws}`);
  const { basis, fallback } = model;
  const normals = (key: string): Float64Array => {
    const stream = randomStream(seed, key);
    return Float64Array.from({ length: draws }, () => stream.normal());
  };
  const within = (key: FinanceKey, value: Estimate): Float64Array => {
    const { min, max } = limits.limits[key];
    return normals(key).map((z) => Math.min(max, Math.max(min, twoPiece(value, z))));
  };
  const values = {} as Record<FinanceKey, Float64Array>;
  for (const key of Object.keys(basis.values) as FinanceKey[]) {
    const value = basis.values[key];
    values[key] = varies(model, key) ? within(key, value) : new Float64Array(draws).fill(value.likely);
  }
  const cure = randomStream(seed, 'cured');
  return {
    draws,
    values,
    ageYears:
      basis.ageYears.low === basis.ageYears.high
        ? new Float64Array(draws).fill(basis.ageYears.likely)
        : within('ageYears', basis.ageYears),
    foundHazardRatio: largest(
      basis.riskKeys.map((key) => values[key]),
      draws,
    ),
    replacementUsd:
      fallback.quotedUsd === undefined
        ? values.replacementUsdPerTon.map((usd) => usd * basis.nominalTons)
        : new Float64Array(draws).fill(fallback.quotedUsd),
    valueLeftFrac: new Float64Array(draws).fill(basis.residual === 'linear' ? 1 : 0),
    energyUsd: energyColumns(model, energy, values, {
      loss: normals('loss'),
      recovered: normals('lossRecovered'),
      need: normals('houseNeed'),
      rated: normals('newUnit'),
    }),
    cured: values.repairSuccessFrac.map((chance) => (cure.uniform() < chance ? 1 : 0)),
  };
}

/** Stay and discount rate are no chances; the rest only where something hangs on it. */
function varies({ basis, fallback }: ComparisonModel, key: FinanceKey): boolean {
  switch (key) {
    case 'stayYears':
    case 'discountFracPerYear':
    case 'ageYears':
    case 'sizingFactorFrac':
      return false;
    case 'hotDischargeHazardRatio':
    case 'ailingHazardRatio':
      return basis.riskKeys.includes(key);
    case 'newCompressorHazardRatio':
      return basis.newCompressor;
    case 'replacementUsdPerTon':
      return fallback.quotedUsd === undefined;
    case 'electricityUsdPerKwh':
      return basis.priceAssumed;
    default:
      return true;
  }
}

function largest(columns: readonly Float64Array[], draws: number): Float64Array {
  if (columns.length === 0) return new Float64Array(draws).fill(1);
  return Float64Array.from({ length: draws }, (_, n) => Math.max(...columns.map((c) => c[n] ?? 1)));
}

function energyColumns(
  model: ComparisonModel,
  energy: EnergyResult,
  values: Readonly<Record<FinanceKey, Float64Array>>,
  z: Readonly<Record<'loss' | 'recovered' | 'need' | 'rated', Float64Array>>,
): Record<string, Float64Array> {
  const { basis } = model;
  const price = basis.values.electricityUsdPerKwh.likely;
  const level = Float64Array.from(z.loss, (_, n) =>
    basis.priceAssumed ? (values.electricityUsdPerKwh[n] ?? price) / price : 1,
  );
  const column = (s: EnergyScenario): Float64Array => {
    const [loss, back] = [swing(s, s.mild, s.severe), swing(s, s.recoveryLow, s.recoveryHigh)];
    const [need, rated] = [swing(s, s.loadLow, s.loadHigh), swing(s, s.ratedLow, s.ratedHigh)];
    const likelyUsd = s.likely.costUsd;
    return level.map((factor, n) => {
      const usd =
        likelyUsd +
        twoPiece(loss, z.loss[n] ?? 0) +
        twoPiece(back, z.recovered[n] ?? 0) +
        twoPiece(rated, z.rated[n] ?? 0);
      const ofNeed = likelyUsd > 0 ? Math.max(0, 1 + twoPiece(need, z.need[n] ?? 0) / likelyUsd) : 1;
      return Math.max(0, usd) * ofNeed * factor;
    });
  };
  const columns = Object.fromEntries(energy.scenarios.map((s) => [s.id, column(s)]));
  const found = columns.asFound;
  invariant(found !== undefined, 'no energy scenario "asFound"');
  for (const { choice } of model.choices) {
    const own = columns[choice.id];
    if (repairs(choice) && own !== undefined) {
      columns[choice.id] = own.map((usd, n) => Math.min(usd, found[n] ?? usd));
    }
  }
  return columns;
}

/** Change of cost at the 10 % and 90 % ends; the likely change is none. */
function swing(
  s: EnergyScenario,
  low: EnergyScenario['likely'] | undefined,
  high: EnergyScenario['likely'] | undefined,
): Estimate {
  return {
    low: (low?.costUsd ?? s.likely.costUsd) - s.likely.costUsd,
    likely: 0,
    high: (high?.costUsd ?? s.likely.costUsd) - s.likely.costUsd,
  };
}
