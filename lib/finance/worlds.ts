import { type CauseChances, repairTreats, successFrac } from '../energy/recovery';
import { invariant } from '../math/invariant';
import type { CauseId } from '../visit/cause';
import type { Choice } from '../visit/choice';
import { foundHazardRatio } from './hazard-ratio';
import type { MoneyDraw } from './money-draw';
import { renewsCompressor } from './new-compressor';
import { costKey } from './scenario-costs';

/** One way things can stand from the first day: a cause is at work, and a repair has cured it or not. */
export type World = {
  readonly weightFrac: number;
  readonly ageYears: number;
  readonly hazardRatio: number;
  readonly energyUsd: number;
  readonly bought: boolean;
};

/** What a choice comes to under one cause. */
export type CauseWorlds = {
  readonly cause?: CauseId;
  readonly frac: number;
  /** Chance that it cures; 0 where nothing is cured. */
  readonly curedFrac: number;
  readonly cured?: World;
  readonly uncured: World;
};

/**
 * What a choice comes to under each cause that may be at work. A repair aimed at the cause cures with its chance of
 * success, and then takes back the raised risk; aimed at another it changes nothing. A new compressor lowers the risk
 * of age in either case, since it is new. A repair whose effect a later run has shown has worked, whatever the cause.
 *
 * @returns one entry for each cause, weights of the worlds inside adding up to 1 each
 * @throws invariant if the energy stage gave no scenario for the choice
 * Check: tests/finance/worlds.test.ts
 */
export function worldsByCause(choice: Choice, draw: MoneyDraw, chances: CauseChances): CauseWorlds[] {
  return chances.causes.map(({ cause, frac }) => ({
    ...(cause === undefined ? {} : { cause }),
    frac,
    ...worldsUnder(choice, draw, cause, chances.basis),
  }));
}

function worldsUnder(
  choice: Choice,
  draw: MoneyDraw,
  cause: CauseId | undefined,
  basis: CauseChances['basis'],
): Pick<CauseWorlds, 'curedFrac' | 'cured' | 'uncured'> {
  const { values } = draw;
  const found: World = {
    weightFrac: 1,
    ageYears: draw.ageYears,
    hazardRatio: foundHazardRatio(draw.hotRatio, values.ailingHazardRatio, cause),
    energyUsd: energyOf(draw, 'asFound'),
    bought: false,
  };
  if (choice.kind === 'leave') return { curedFrac: 0, uncured: found };
  if (choice.kind === 'replace') {
    const energyUsd = energyOf(draw, choice.id);
    return { curedFrac: 0, uncured: { weightFrac: 1, ageYears: 0, hazardRatio: 1, energyUsd, bought: true } };
  }
  const renewed = renewsCompressor(choice) ? values.newCompressorHazardRatio : 1;
  const shown = choice.shownByRun !== undefined;
  const treats = shown || repairTreats(choice, cause);
  const curedFrac = shown ? 1 : treats ? successFrac(choice, cause, basis, values.repairSuccessFrac) : 0;
  const uncured = { ...found, weightFrac: 1 - curedFrac, hazardRatio: found.hazardRatio * renewed };
  if (!treats) return { curedFrac: 0, uncured };
  const own = draw.energyUsd[costKey(choice.id, cause)] ?? energyOf(draw, choice.id);
  return {
    curedFrac,
    cured: { ...found, weightFrac: curedFrac, hazardRatio: renewed, energyUsd: own },
    uncured,
  };
}

/**
 * All worlds of a choice; those with the same risk are put together at their mean energy, which is exact since every
 * total is straight in the energy.
 *
 * @returns weights adding up to 1, none of them 0
 * Check: tests/finance/worlds.test.ts
 */
export function worldsOf(choice: Choice, draw: MoneyDraw, chances: CauseChances): World[] {
  const merged = new Map<string, World>();
  for (const { frac, cured, uncured } of worldsByCause(choice, draw, chances)) {
    for (const world of cured === undefined ? [uncured] : [cured, uncured]) {
      const weightFrac = frac * world.weightFrac;
      if (weightFrac === 0) continue;
      const key = `${world.ageYears} ${world.hazardRatio} ${world.bought}`;
      const before = merged.get(key);
      const together = weightFrac + (before?.weightFrac ?? 0);
      const energyUsd =
        ((before?.weightFrac ?? 0) * (before?.energyUsd ?? 0) + weightFrac * world.energyUsd) / together;
      merged.set(key, { ...world, weightFrac: together, energyUsd });
    }
  }
  return [...merged.values()];
}

function energyOf(draw: MoneyDraw, id: string): number {
  const usd = draw.energyUsd[id];
  invariant(usd !== undefined, `no energy scenario "${id}"`);
  return usd;
}
