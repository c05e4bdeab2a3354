import { type CostSurface, type SurfacePlaces, surfaceCosts } from '../energy/cost-surface';
import { type EnergySurfaces, type LossLaw, lnRatioLimits, type ModeLaw } from '../energy/energy-surface';
import { twoPiece } from '../math/estimate';
import { invariant } from '../math/invariant';
import { repairs } from '../visit/choice';
import type { ComparisonModel } from './comparison-model';
import conventions from './data/conventions.json';

/** Standard normal deviates of what moves the energy, one column each; every scenario of a draw shares them. */
export type EnergyDeviates = {
  /** The loss of capacity, in both modes together. */
  readonly loss: Float64Array;
  /** The part of the loss of power that does not go with the capacity, in both modes together. */
  readonly power: Float64Array;
  readonly recovered: Float64Array;
  readonly need: Float64Array;
  readonly rated: Float64Array;
};

/**
 * Yearly energy of every scenario in every draw, read from surfaces: the capacity and the power of the unit in place,
 * what a repair gives back under the cause of the draw, the need of the house, the power of new units.
 *
 * @param cause  the cause of each draw, as a place in the model's chances
 * @param level  price of electricity of each draw against the likely one
 * @returns cost of a year by scenario id [USD]; a repair that meets no cause it treats costs what the unit costs as found,
 *   and never more than that
 * Check: tests/finance/simulation-energy.test.ts
 */
export function surfaceColumns(
  model: ComparisonModel,
  surfaces: EnergySurfaces,
  cause: Uint8Array,
  z: EnergyDeviates,
  level: Float64Array,
): Record<string, Float64Array> {
  const draws = cause.length;
  const power = powerDeviates(z);
  const none = new Float64Array(draws);
  const whole = new Float64Array(draws).fill(1);
  const priced = (surface: CostSurface, at: SurfacePlaces): Float64Array => {
    const usd = surfaceCosts(surface, at);
    for (let n = 0; n < draws; n += 1) usd[n] = Math.max(0, usd[n] as number) * (level[n] as number);
    return usd;
  };
  const inPlace = (law: LossLaw, left: Float64Array): Float64Array =>
    priced(surfaces.existing, {
      heatingLnCapacity: lnRatios(law.heating, 'capacity', z.loss, left),
      heatingPower: lnRatios(law.heating, 'power', power, left).map(Math.exp),
      coolingLnCapacity: lnRatios(law.cooling, 'capacity', z.loss, left),
      coolingPower: lnRatios(law.cooling, 'power', power, left).map(Math.exp),
      needZ: z.need,
    });
  const asFound = inPlace(surfaces.found, whole);
  const columns: Record<string, Float64Array> = { asFound };
  if (model.fallback.scenarioId === 'healthy') columns.healthy = inPlace(surfaces.found, none);
  for (const { choice } of model.choices) {
    if (choice.kind === 'replace') {
      const unit = surfaces.newUnits[choice.id];
      invariant(unit !== undefined, `no surface for "${choice.id}"`);
      columns[choice.id] = priced(unit.surface, {
        heatingLnCapacity: none,
        heatingPower: z.rated.map((zn) => Math.exp(zn * unit.sdLnPower.heating)),
        coolingLnCapacity: none,
        coolingPower: z.rated.map((zn) => Math.exp(zn * unit.sdLnPower.cooling)),
        needZ: z.need,
      });
    } else if (repairs(choice)) {
      const law = surfaces.shown[choice.id];
      const own =
        law === undefined
          ? inPlace(surfaces.found, leftAfter(model, surfaces, choice.id, cause, z.recovered))
          : inPlace(law, whole);
      for (let n = 0; n < draws; n += 1) own[n] = Math.min(own[n] as number, asFound[n] as number);
      columns[choice.id] = own;
    }
  }
  return columns;
}

const { value: CORRELATION } = conventions.values.lossCapacityPowerCorrelation;

/** Deviates of ln power, going with those of ln capacity as far as the convention says. */
function powerDeviates({ loss, power }: EnergyDeviates): Float64Array {
  const own = Math.sqrt(1 - CORRELATION * CORRELATION);
  return power.map((z, n) => CORRELATION * (loss[n] as number) + own * z);
}

/** Log ratios of the draws, inside what a unit can do, times the share of the loss that is left. */
function lnRatios(law: ModeLaw, of: 'capacity' | 'power', z: Float64Array, left: Float64Array): Float64Array {
  const { mean, sd } = of === 'capacity' ? law.lnCapacity : law.lnPower;
  const { from, to } = lnRatioLimits[of];
  const column = new Float64Array(z.length);
  for (let n = 0; n < column.length; n += 1) {
    const ln = mean + sd * (z[n] as number);
    column[n] = (left[n] as number) * Math.min(to, Math.max(from, ln));
  }
  return column;
}

/** Share of the log loss left by a repair that works, under the cause of each draw. */
function leftAfter(
  { chances }: ComparisonModel,
  surfaces: EnergySurfaces,
  id: string,
  cause: Uint8Array,
  recovered: Float64Array,
): Float64Array {
  const own = surfaces.recoveries[id] ?? [];
  const byPlace = chances.causes.map((c) => own.find((r) => r.cause === c.cause)?.recoveredFrac);
  const left = new Float64Array(cause.length);
  for (let n = 0; n < left.length; n += 1) {
    const back = byPlace[cause[n] as number];
    left[n] = back === undefined ? 1 : 1 - Math.min(1, Math.max(0, twoPiece(back, recovered[n] as number)));
  }
  return left;
}
