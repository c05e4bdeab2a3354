import type { CostEnds, EnergyResult } from '../energy/energy-result';
import type { EnergySurfaces } from '../energy/energy-surface';
import { type Estimate, twoPiece, Z_10_90 } from '../math/estimate';
import { invariant } from '../math/invariant';
import { repairs } from '../visit/choice';
import type { FinanceKey } from './bounded-assumption';
import type { ComparisonModel } from './comparison-model';
import limits from './data/assumption-limits.json';
import { drawnNumbers } from './drawn-numbers';
import { costKey, type KeyedCosts, scenarioCosts } from './scenario-costs';
import { type EnergyDeviates, surfaceColumns } from './simulation-energy';

/** Draws of every uncertain input, one column each; index = draw. */
export type Columns = {
  readonly draws: number;
  readonly values: Readonly<Record<FinanceKey, Float64Array>>;
  readonly ageYears: Float64Array;
  readonly hotRatio: Float64Array;
  readonly replacementUsd: Float64Array;
  readonly valueLeftFrac: Float64Array;
  /** The cause at work: place in the list of chances. */
  readonly cause: Uint8Array;
  /** Uniform 0..1: a repair that treats the cause cures where this lies below its chance of success. */
  readonly luck: Float64Array;
  /** Yearly energy by scenario id, in prices of the visit; of a repair: where it cures the cause of the draw. */
  readonly energyUsd: Readonly<Record<string, Float64Array>>;
};

/**
 * Draws every uncertain input from its own stream of one seed, so that another assumption more does not reshuffle
 * the rest. The same draws serve all choices. The loss moves all scenarios together; each draw has one cause at work
 * and one luck of repairs; what repairs give back moves all repairs together; the need of the house moves all scenarios
 * and the power of new units all new units; the stay and the stances (discount rate, value left at the end) do not vary.
 *
 * @param model   prepared comparison
 * @param energy  yearly energy
 * @param draws   number of draws, whole, >= 1
 * @param seed    whole number
 * @param surfaces  yearly cost of every unit; left out = the cost goes straight between the ends the energy stage gave,
 *   the need of the house in proportion to it
 * Values are kept inside the limits of data/assumption-limits.json, energy at or above 0, and a repair at or below
 * the unit as found.
 * Check: tests/finance/simulation-columns.test.ts
 */
export function drawColumns(
  model: ComparisonModel,
  energy: EnergyResult,
  draws: number,
  seed: number,
  surfaces?: EnergySurfaces,
): Columns {
  invariant(Number.isSafeInteger(draws) && draws >= 1, `draws ${draws}`);
  const { basis, fallback } = model;
  const normals = (key: string): Float64Array => drawnNumbers('normal', key, draws, seed);
  const within = (key: FinanceKey, value: Estimate): Float64Array => {
    const { min, max } = limits.limits[key];
    const z = normals(key);
    const { low, likely, high } = value;
    const [below, above] = [(likely - low) / Z_10_90, (high - likely) / Z_10_90];
    const column = new Float64Array(draws);
    for (let n = 0; n < draws; n += 1) {
      const zn = z[n] as number;
      column[n] = Math.min(max, Math.max(min, likely + zn * (zn < 0 ? below : above)));
    }
    return column;
  };
  const values = {} as Record<FinanceKey, Float64Array>;
  for (const key of Object.keys(basis.values) as FinanceKey[]) {
    const value = basis.values[key];
    values[key] = varies(model, key) ? within(key, value) : new Float64Array(draws).fill(value.likely);
  }
  const uniforms = (key: string): Float64Array => drawnNumbers('uniform', key, draws, seed);
  const cause = placesOf(
    uniforms('cause'),
    model.chances.causes.map((c) => c.frac),
  );
  const price = basis.values.electricityUsdPerKwh.likely;
  const level = basis.priceAssumed
    ? values.electricityUsdPerKwh.map((usd) => usd / price)
    : new Float64Array(draws).fill(1);
  const z: EnergyDeviates = {
    loss: normals('loss'),
    power: normals('lossOfPower'),
    recovered: normals('lossRecovered'),
    need: normals('houseNeed'),
    rated: normals('newUnit'),
  };
  return {
    draws,
    values,
    ageYears:
      basis.ageYears.low === basis.ageYears.high
        ? new Float64Array(draws).fill(basis.ageYears.likely)
        : within('ageYears', basis.ageYears),
    hotRatio: basis.riskKeys.includes('hotDischargeHazardRatio')
      ? values.hotDischargeHazardRatio
      : new Float64Array(draws).fill(1),
    cause,
    luck: uniforms('cured'),
    replacementUsd:
      fallback.quotedUsd === undefined
        ? values.replacementUsdPerTon.map((usd) => usd * basis.nominalTons)
        : new Float64Array(draws).fill(fallback.quotedUsd),
    valueLeftFrac: new Float64Array(draws).fill(basis.residual === 'linear' ? 1 : 0),
    energyUsd:
      surfaces === undefined
        ? energyColumns(model, energy, cause, z, level)
        : surfaceColumns(model, surfaces, cause, z, level),
  };
}

/** Stay and discount rate are no chances; the rest only where something hangs on it. */
function varies({ basis, fallback }: ComparisonModel, key: FinanceKey): boolean {
  switch (key) {
    case 'stayYears':
    case 'discountFracPerYear':
    case 'ageYears':
    case 'sizingFactorFrac':
    case 'daysWithoutPerFailure':
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

/** Place of each uniform number on a scale cut by chances that add up to 1. */
function placesOf(uniforms: Float64Array, chances: readonly number[]): Uint8Array {
  const places = new Uint8Array(uniforms.length);
  for (let n = 0; n < uniforms.length; n += 1) {
    let left = uniforms[n] as number;
    let place = 0;
    while (place < chances.length - 1 && left >= (chances[place] as number)) {
      left -= chances[place] as number;
      place += 1;
    }
    places[n] = place;
  }
  return places;
}

function energyColumns(
  model: ComparisonModel,
  energy: EnergyResult,
  cause: Uint8Array,
  z: EnergyDeviates,
  level: Float64Array,
): Record<string, Float64Array> {
  const { chances } = model;
  const column = ({ costs: s }: KeyedCosts): Float64Array => {
    const [loss, back] = [swing(s, s.mild, s.severe), swing(s, s.recoveryLow, s.recoveryHigh)];
    const [need, rated] = [swing(s, s.loadLow, s.loadHigh), swing(s, s.ratedLow, s.ratedHigh)];
    const column = new Float64Array(level.length);
    const [varies, isNew] = [s.recoveryLow !== undefined, s.ratedLow !== undefined];
    for (let n = 0; n < column.length; n += 1) {
      let usd = s.likely + twoPiece(loss, z.loss[n] as number);
      if (varies) usd += twoPiece(back, z.recovered[n] as number);
      if (isNew) usd += twoPiece(rated, z.rated[n] as number);
      const ofNeed = s.likely > 0 ? Math.max(0, 1 + twoPiece(need, z.need[n] as number) / s.likely) : 1;
      column[n] = Math.max(0, usd) * ofNeed * (level[n] as number);
    }
    return column;
  };
  const columns = Object.fromEntries(scenarioCosts(energy).map((costs) => [costs.key, column(costs)]));
  const found = columns.asFound;
  invariant(found !== undefined, 'no energy scenario "asFound"');
  for (const { choice } of model.choices) {
    const own = columns[choice.id];
    if (!repairs(choice) || own === undefined) continue;
    const byPlace = chances.causes.map((c) => columns[costKey(choice.id, c.cause)] ?? own);
    columns[choice.id] = own.map((_, n) => {
      const usd = (byPlace[cause[n] as number] as Float64Array)[n] as number;
      return Math.min(usd, found[n] as number);
    });
  }
  return columns;
}

/** Change of cost at the 10 % and 90 % ends; the likely change is none. */
function swing(s: CostEnds, low: number | undefined, high: number | undefined): Estimate {
  return { low: (low ?? s.likely) - s.likely, likely: 0, high: (high ?? s.likely) - s.likely };
}
