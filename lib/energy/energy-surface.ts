import lossData from '../diagnostics/data/loss.json';
import type { Findings, Loss } from '../diagnostics/findings';
import { repairs } from '../visit/choice';
import { type CostSurface, costSurface, type ModeReach, type Reach } from './cost-surface';
import { furnaceBehind } from './furnace-behind';
import { causeChances, type Recovery, recoveriesOf } from './recovery';
import { replacementUnit } from './scenarios';
import { shownLoss } from './shown-loss';
import { unitBins } from './unit-bins';
import { houseOfYear, type YearlyEnergyInput } from './yearly-energy';

/** Normal law of the log ratios of one mode; draws stay inside the limits. */
export type ModeLaw = {
  readonly lnCapacity: { readonly mean: number; readonly sd: number };
  readonly lnPower: { readonly mean: number; readonly sd: number };
};
export type LossLaw = { readonly heating: ModeLaw; readonly cooling: ModeLaw };

/** A new unit: nothing wrong, power known as well as its rating tells it. */
export type NewUnitSurface = {
  readonly surface: CostSurface;
  readonly sdLnPower: { readonly heating: number; readonly cooling: number };
};

/** The yearly cost of every unit a choice may leave in place, over everything uncertain about it. */
export type EnergySurfaces = {
  /** The unit in place: as found, repaired or healthy by its ratios. */
  readonly existing: CostSurface;
  readonly found: LossLaw;
  /** Repairs whose effect a later run has shown: the loss it shows, by id of the choice. */
  readonly shown: Readonly<Record<string, LossLaw>>;
  /** What every other repair gives back under each cause it treats, by id of the choice. */
  readonly recoveries: Readonly<Record<string, readonly Recovery[]>>;
  readonly newUnits: Readonly<Record<string, NewUnitSurface>>;
};

/** Draws reach as far as this many standard deviations; what lies beyond takes the edge (6 in 100,000). */
const SIGMAS = 4;
const { capacityRatioLow, capacityRatioHigh, powerRatioLow, powerRatioHigh } = lossData.limits;

/** How far a draw of a log ratio may go, whatever its law says. Source: limits of the loss, data/loss.json. */
export const lnRatioLimits = {
  capacity: { from: Math.log(capacityRatioLow), to: Math.log(capacityRatioHigh) },
  power: { from: Math.log(powerRatioLow / 1.25), to: Math.log(powerRatioHigh * 1.25) },
} as const satisfies Record<string, Reach>;

/**
 * Surfaces of every unit in a visit, as `yearlyEnergy` would work each of them out.
 *
 * @param given  as for `yearlyEnergy`
 * @returns the unit in place over capacity, power and need of the house; new units over power and need
 * Check: tests/energy/energy-surface.test.ts
 */
export function energySurfaces(given: YearlyEnergyInput): EnergySurfaces {
  const { input, context } = houseOfYear(given);
  const { visit, healthy, climate, loss } = input;
  const stages = visit.unit.electricHeatStages;
  const found = lawOf(loss);
  const shown: Record<string, LossLaw> = {};
  const recoveries: Record<string, readonly Recovery[]> = {};
  const newUnits: Record<string, NewUnitSurface> = {};
  const chances = given.chances ?? causeChances({ loss: {} });
  for (const choice of visit.choices) {
    if (repairs(choice)) {
      const after = shownLoss(input, choice.shownByRun);
      if (after !== undefined) shown[choice.id] = lawOf(after);
      else recoveries[choice.id] = recoveriesOf(choice, chances);
    } else if (choice.kind === 'replace') {
      const unit = replacementUnit(visit, healthy, choice);
      const furnace =
        choice.furnace === undefined
          ? undefined
          : furnaceBehind(choice.furnace, visit, context.load, climate);
      const sdLnPower = { heating: unit.heating?.sdLnPower ?? 0, cooling: unit.cooling.sdLnPower };
      newUnits[choice.id] = {
        surface: costSurface(
          unitBins(unit, climate.binF, context.load, { stages, furnace }),
          { heating: ratedReach(sdLnPower.heating), cooling: ratedReach(sdLnPower.cooling) },
          context,
        ),
        sdLnPower,
      };
    }
  }
  const laws = [found, ...Object.values(shown)];
  const existing = costSurface(
    unitBins(healthy, climate.binF, context.load, { stages }),
    { heating: reachOf(laws.map((l) => l.heating)), cooling: reachOf(laws.map((l) => l.cooling)) },
    context,
  );
  return { existing, found, shown, recoveries, newUnits };
}

const NO_LOSS: ModeLaw = { lnCapacity: { mean: 0, sd: 0 }, lnPower: { mean: 0, sd: 0 } };

/** A mode without a loss counts as healthy, as in `lossEnds`; the middle is the likely ratio. */
function lawOf(loss: Findings['loss']): LossLaw {
  const mode = (own: Loss | undefined): ModeLaw =>
    own === undefined
      ? NO_LOSS
      : {
          lnCapacity: { mean: Math.log(own.capacityRatioToHealthy.likely), sd: own.lnCapacity.sd },
          lnPower: { mean: Math.log(own.powerRatioToHealthy.likely), sd: own.lnPower.sd },
        };
  return { heating: mode(loss.heating), cooling: mode(loss.cooling) };
}

/** From no loss, which a repair may give back, to as far as any law goes. */
function reachOf(laws: readonly ModeLaw[]): ModeReach {
  const reach = (key: keyof ModeLaw, limits: Reach): Reach => ({
    from: Math.max(limits.from, Math.min(0, ...laws.map((l) => l[key].mean - SIGMAS * l[key].sd))),
    to: Math.min(limits.to, Math.max(0, ...laws.map((l) => l[key].mean + SIGMAS * l[key].sd))),
  });
  const power = reach('lnPower', lnRatioLimits.power);
  return {
    lnCapacity: reach('lnCapacity', lnRatioLimits.capacity),
    power: { from: Math.exp(power.from), to: Math.exp(power.to) },
  };
}

function ratedReach(sdLnPower: number): ModeReach {
  const end = SIGMAS * sdLnPower;
  return { lnCapacity: { from: 0, to: 0 }, power: { from: Math.exp(-end), to: Math.exp(end) } };
}
