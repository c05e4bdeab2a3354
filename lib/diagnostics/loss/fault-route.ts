import type { Uncertain } from '../../math/propagate';
import type { CauseId } from '../../visit/cause';
import type { UnitKind } from '../../visit/unit';
import type { Visit } from '../../visit/visit';
import type { Saying } from '../../visit/wording';
import type { Part } from '../causes/hypotheses';
import type { Posterior } from '../causes/posterior';
import lossData from '../data/loss.json';
import type { FaultConditions } from '../fault-effects/fault-conditions';
import { type Fault, type FaultEffect, faultEffect } from '../fault-effects/fault-effect';
import { faultPairEffect } from '../fault-effects/fault-pair-effect';
import { severityScale } from '../fault-effects/severity';

/** What published correlations say the likely causes do, weighted by their chances. */
export type FaultRoute = {
  readonly lnCapacity: Uncertain;
  readonly lnPower: Uncertain;
  /** Efficiency lost to each cause (ln power - ln capacity), weighted by its chance. */
  readonly lostByCause: readonly { readonly cause: CauseId; readonly lnEfficiency: number }[];
  /** Some correlation was used outside its published range. */
  readonly beyondRange: boolean;
  /** What the correlation of the likeliest story assumed or held at its edge; words under `effect.<code>`. */
  readonly notes: readonly Saying[];
};

/**
 * Loss by published fault correlations at the inferred severity, weighted by the chance of each cause (and pair).
 *
 * @param visit       unit
 * @param posterior   chances of the causes
 * @param conditions  mode and air conditions at which the loss is asked for
 * @param without     causes that cannot act there: their part of a story is left out
 * @returns mean and standard uncertainty of the log ratios over all stories (law of total variance), never surer than
 * the published between-unit spread
 * Source: fault-effects/data, status beside each; between-unit spread in data/loss.json
 * Check: tests/diagnostics/fault-route.test.ts
 */
export function faultRoute(
  visit: Visit,
  posterior: Posterior,
  conditions: FaultConditions,
  without: readonly CauseId[] = [],
): FaultRoute {
  const { leastChance, floorSd } = lossData.faultRoute;
  const at = atConditions(conditions, visit.unit.kind);
  const stories = posterior.weighed
    .filter(({ chance }) => chance >= leastChance)
    .map(({ hypothesis, chance }) => {
      const parts = hypothesis.parts.filter(({ cause }) => !without.includes(cause));
      return { chance, parts, effect: effectOf(at, parts) };
    });
  const total = stories.reduce((sum, story) => sum + story.chance, 0);
  const mixed = (part: 'lnCapacity' | 'lnPower'): Uncertain => {
    let mean = 0;
    let square = 0;
    for (const { chance, effect } of stories) {
      const ln = effect === undefined || effect.kind === 'none' ? { mean: 0, sd: 0 } : effect[part];
      mean += (chance / total) * ln.mean;
      square += (chance / total) * (ln.mean ** 2 + ln.sd ** 2);
    }
    return { value: mean, sd: Math.hypot(Math.sqrt(Math.max(0, square - mean ** 2)), floorSd) };
  };
  return {
    lnCapacity: mixed('lnCapacity'),
    lnPower: mixed('lnPower'),
    lostByCause: lostByCause(at, stories, total),
    notes: notesOf(stories),
    beyondRange: stories.some(({ effect }) => effect?.kind === 'effect' && effect.beyondRange),
  };
}

function notesOf(
  stories: readonly { readonly chance: number; readonly effect: FaultEffect | undefined }[],
): readonly Saying[] {
  const first = stories.reduce<(typeof stories)[number] | undefined>(
    (best, story) => (best === undefined || story.chance > best.chance ? story : best),
    undefined,
  );
  if (first?.effect?.kind !== 'effect') return [];
  return first.effect.notes.map((note) => ({ ...note, code: `effect.${note.code}` }));
}

type At = {
  readonly conditions: FaultConditions & { readonly unitKind: UnitKind };
  /** By cause and level: most stories share their parts. */
  readonly known: Map<string, FaultEffect>;
};

const everAsked = new WeakMap<FaultConditions, Map<UnitKind, At>>();

/** The same object at every call with the same conditions: runs of a visit ask for the same effects. */
function atConditions(conditions: FaultConditions, unitKind: UnitKind): At {
  const byKind = everAsked.get(conditions) ?? new Map<UnitKind, At>();
  everAsked.set(conditions, byKind);
  const at = byKind.get(unitKind) ?? { conditions: { ...conditions, unitKind }, known: new Map() };
  byKind.set(unitKind, at);
  return at;
}

function effectAlone({ conditions, known }: At, fault: Fault): FaultEffect {
  const key = `${fault.cause} ${fault.level}`;
  const already = known.get(key);
  if (already !== undefined) return already;
  const effect = faultEffect({ ...conditions, ...fault });
  known.set(key, effect);
  return effect;
}

type Story = { readonly chance: number; readonly parts: readonly Part[] };

function levelOf({ cause, severity }: Part): Fault {
  return { cause, level: severityScale(cause)[severity] };
}

function effectOf(at: At, parts: readonly Part[]): FaultEffect | undefined {
  const [first, second] = parts;
  if (first === undefined) return undefined;
  if (second === undefined) return effectAlone(at, levelOf(first));
  return faultPairEffect(at.conditions, [levelOf(first), levelOf(second)], (fault) => effectAlone(at, fault));
}

function lostByCause(at: At, stories: readonly Story[], total: number): FaultRoute['lostByCause'] {
  const lost = new Map<CauseId, number>();
  for (const { chance, parts } of stories) {
    for (const part of parts) {
      const alone = efficiencyLost(effectAlone(at, levelOf(part)));
      lost.set(part.cause, (lost.get(part.cause) ?? 0) + (chance / total) * alone);
    }
  }
  return [...lost]
    .map(([cause, lnEfficiency]) => ({ cause, lnEfficiency }))
    .sort((a, b) => b.lnEfficiency - a.lnEfficiency);
}

function efficiencyLost(effect: FaultEffect): number {
  return effect.kind === 'none' ? 0 : Math.max(0, effect.lnPower.mean - effect.lnCapacity.mean);
}
