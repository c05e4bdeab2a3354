import type { CauseId } from '../../visit/cause';
import type { Observation } from '../../visit/observation';
import type { Visit } from '../../visit/visit';
import observations from './data/observations.json';
import priors from './data/priors.json';
import { type SeverityWord, severityShare, severityWords } from './feature';

/** A cause at one severity; `key` names both. */
export type Part = { readonly cause: CauseId; readonly severity: SeverityWord; readonly key: string };

const parts = new Map<CauseId, Readonly<Record<SeverityWord, Part>>>();

/** A cause at a severity as part of a story; the same object at every call. */
export function partOf(cause: CauseId, severity: SeverityWord): Part {
  const known = parts.get(cause);
  if (known !== undefined) return known[severity];
  const at = (word: SeverityWord): Part => ({ cause, severity: word, key: `${cause} ${word}` });
  const made = { mild: at('mild'), moderate: at('moderate'), severe: at('severe') };
  parts.set(cause, made);
  return made[severity];
}

/** One story about the unit: nothing wrong, one cause, or two. */
export type Hypothesis = {
  readonly parts: readonly Part[];
  /** Logarithm of its weight before any reading; only differences mean anything. */
  readonly lnPrior: number;
};

const ALL: readonly CauseId[] = Object.keys(priors.causes) as CauseId[];

/**
 * Causes a unit can have: no reversing valve in an air conditioner, no fault of electric heat where there is none.
 *
 * Check: tests/diagnostics/causes/hypotheses.test.ts
 */
export function possibleCauses(visit: Visit): readonly CauseId[] {
  const { kind, electricHeatKw } = visit.unit;
  const hasStrips = kind === 'heatPump' ? electricHeatKw !== 0 : (electricHeatKw ?? 0) > 0;
  return ALL.filter(
    (cause) =>
      cause !== 'none' &&
      (cause !== 'reversingValveLeaking' || kind === 'heatPump') &&
      (cause !== 'supplementaryHeatFault' || hasStrips),
  );
}

/**
 * Every story to weigh: nothing wrong, each cause at each severity, and each pair of causes, both at least moderate
 * (two faults of which one is mild read like the other alone).
 *
 * @param visit  unit (which causes are possible) and observations (which speak for some)
 * @returns hypotheses with prior weights; the first is "nothing wrong"
 * Source: data/priors.json, data/observations.json, status beside each
 * Check: tests/diagnostics/causes/hypotheses.test.ts
 */
export function hypothesesOf(visit: Visit): readonly Hypothesis[] {
  const causes = possibleCauses(visit);
  const odds = causes.map((cause) => oddsOf(cause, visit.observations));
  const found: Hypothesis[] = [{ parts: [], lnPrior: Math.log(ratioOf('none', visit.observations)) }];
  for (const [i, cause] of causes.entries()) {
    for (const word of severityWords) {
      const lnPrior = Math.log((odds[i] ?? 0) * severityShare(word).priorFrac);
      found.push({ parts: [partOf(cause, word)], lnPrior });
    }
  }
  for (const [i, first] of causes.entries()) {
    for (const [k, second] of causes.slice(i + 1).entries()) {
      const both = (odds[i] ?? 0) * (odds[i + 1 + k] ?? 0) * priors.pair.factor;
      for (const [a, aShare] of IN_PAIRS) {
        for (const [b, bShare] of IN_PAIRS) {
          found.push({
            parts: [partOf(first, a), partOf(second, b)],
            lnPrior: Math.log(both * aShare * bShare),
          });
        }
      }
    }
  }
  return found;
}

/** Severities of a fault in a pair, with their chances. */
const IN_PAIRS: readonly (readonly [SeverityWord, number])[] = [
  ['moderate', severityShare('mild').priorFrac + severityShare('moderate').priorFrac],
  ['severe', severityShare('severe').priorFrac],
];

/** Odds of a cause against nothing wrong, with what was seen. */
function oddsOf(cause: CauseId, seen: readonly Observation[]): number {
  return (priors.causes[cause].prior / priors.causes.none.prior) * ratioOf(cause, seen);
}

function ratioOf(cause: CauseId, seen: readonly Observation[]): number {
  const kinds = new Set<string>(seen.map((observation) => observation.id));
  const covered = new Set([...kinds].flatMap((id) => seenRows[id]?.covers ?? []));
  return [...kinds]
    .filter((id) => !covered.has(id))
    .reduce((product, id) => product * (seenRows[id]?.ratios[cause] ?? 1), 1);
}

const seenRows: Partial<
  Record<
    string,
    { readonly ratios: Readonly<Partial<Record<string, number>>>; readonly covers?: readonly string[] }
  >
> = observations.rows;

/** How much more often an observation is made with a cause than without. Check: tests/diagnostics/causes/hypotheses.test.ts */
export function observationRatio(cause: CauseId, seen: Observation): number {
  return ratioOf(cause, [seen]);
}
