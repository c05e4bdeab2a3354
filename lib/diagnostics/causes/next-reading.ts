import { normalCdf } from '../../math/normal';
import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { MeteringDevice } from '../../visit/unit';
import type { Flag, NextReading } from '../findings';
import table from './data/next-readings.json';
import type { FeatureId } from './feature';
import type { Part } from './hypotheses';
import type { EvidenceRun } from './likelihood';
import { patternsOf, shiftBy } from './pattern';
import type { Posterior, Weighed } from './posterior';

/** Outcomes beyond this many standard uncertainties of the target count as low or high. */
const LIMIT_SIGMAS = 1.5;
const LEAST_CHANCE = 1e-4;

type Outcome = NextReading['outcomes'][number]['outcome'];

/** What deciding on the next reading needs to know. */
export type NextInput = {
  readonly posterior: Posterior;
  readonly runs: readonly EvidenceRun[];
  readonly mode: Mode;
  readonly metering: MeteringDevice | undefined;
  readonly isHeatPump: boolean;
  readonly possible: readonly CauseId[];
  /** Properties of the refrigerant are at hand; without them pressures stay pressures. */
  readonly hasProperties: boolean;
};

/**
 * Readings and tests worth taking next, by the share of the uncertainty about the cause they are expected to take
 * away (mutual information over the entropy of the causes), with what each outcome would mean.
 *
 * @param input  chances so far, runs that count, mode the next reading would be taken in
 * @returns readings in conflict first, to be taken again, then best first; gains below the least one are left out
 * Source: data/next-readings.json, status beside each; mutual information after Shannon 1948
 * Check: tests/diagnostics/causes/next-reading.test.ts
 */
export function nextReadings(input: NextInput): readonly NextReading[] {
  const likely = input.posterior.weighed.filter(({ chance }) => chance > LEAST_CHANCE);
  const entropy = entropyOf(groups(likely));
  const again = readAgain(input.runs);
  if (entropy < 1e-6) return again;
  const taken = new Set(
    input.runs.flatMap((run) => [...run.features.map((feature) => feature.id), ...(run.leftOut ?? [])]),
  );
  const readings = (Object.entries(table.readings) as [FeatureId, ReadingRow][])
    .filter(([id]) => !taken.has(id) && isAsked(id, input))
    .map(([id, row]) =>
      weigh(likely, entropy, readingOutcomes(id, row, input), `next.${id}`, row.readings, input.mode),
    );
  const tests = (Object.entries(table.tests) as [string, TestRow][])
    .filter(([id, row]) => isPossible(id, row, input) && !taken.has(row.feature as FeatureId))
    .map(([id, row]) =>
      weigh(likely, entropy, testOutcomes(row), `next.${id}`, row.readings ?? [], input.mode),
    );
  const best = [...readings, ...tests]
    .filter((next) => next.gainFrac >= table.leastGainFrac.value)
    .sort((a, b) => b.gainFrac - a.gainFrac);
  return [...again, ...best];
}

/** Conflicts of the runs that took readings out of the causes. Check: tests/diagnostics/causes/next-reading.test.ts */
export function conflictsOf(runs: readonly EvidenceRun[]): readonly Flag[] {
  return runs.flatMap((run) => run.conflicts ?? []);
}

/** First of all, what cannot be true together; what it will read then is anyone's guess, so no outcomes and no gain. */
function readAgain(runs: readonly EvidenceRun[]): readonly NextReading[] {
  const readings = [...new Set(conflictsOf(runs).flatMap((flag) => flag.readings))];
  return readings.length === 0
    ? []
    : [
        {
          saying: { code: 'next.readAgain', values: { readings: readings.join(', ') } },
          readings,
          gainFrac: 0,
          outcomes: [],
        },
      ];
}

type ReadingRow = { readonly readings: readonly string[]; readonly typicalSd: number };
type TestRow = {
  /** Evidence the test leaves behind, once its readings are entered. */
  readonly feature?: string;
  readonly readings?: readonly string[];
  readonly yes: readonly string[];
  readonly sensitivity: number;
  readonly specificity: number;
  readonly heatPumpOnly?: boolean;
  readonly askedAbout: { readonly cause: string; readonly leastChance: number };
};

/** Chance of each outcome under a hypothesis. */
type OutcomeChances = (weighed: Weighed) => readonly (readonly [Outcome, number])[];

/** Worked out from saturation or enthalpy. */
const BY_PROPERTIES: ReadonlySet<string> = new Set([
  'superheat',
  'subcooling',
  'evaporating',
  'condensing',
  'discharge',
  'standing',
]);

function isAsked(id: FeatureId, input: NextInput): boolean {
  if (BY_PROPERTIES.has(id) && !input.hasProperties) return false;
  // energised in a cooling run it would be a danger, not a test
  return (
    id !== 'stripAmps' || (input.mode === 'heating' && input.possible.includes('supplementaryHeatFault'))
  );
}

function isPossible(id: string, row: TestRow, input: NextInput): boolean {
  if (row.heatPumpOnly === true && !input.isHeatPump) return false;
  if (row.feature !== undefined && BY_PROPERTIES.has(row.feature) && !input.hasProperties) return false;
  const chance = input.posterior.chances.get(row.askedAbout.cause as CauseId) ?? 0;
  if (chance < row.askedAbout.leastChance) return false;
  return id !== 'otherMode' || new Set(input.runs.map((run) => run.mode)).size < 2;
}

function readingOutcomes(id: FeatureId, row: ReadingRow, input: NextInput): OutcomeChances {
  const devices: readonly MeteringDevice[] =
    input.metering === undefined ? ['fixedOrifice', 'txv'] : [input.metering];
  const limit = LIMIT_SIGMAS * row.typicalSd;
  return ({ hypothesis }) => {
    const shifts = devices.flatMap((metering) => jointShifts(hypothesis.parts, input.mode, metering, id));
    let low = 0;
    let high = 0;
    for (const { mean, variance } of shifts) {
      const sd = Math.sqrt(variance + row.typicalSd ** 2);
      low += normalCdf((-limit - mean) / sd) / shifts.length;
      high += normalCdf((mean - limit) / sd) / shifts.length;
    }
    return [
      ['low', low],
      ['normal', Math.max(0, 1 - low - high)],
      ['high', high],
    ];
  };
}

/** Shift of a feature by some causes at once, one for each combination of their variants. */
function jointShifts(
  parts: readonly Part[],
  mode: Mode,
  metering: MeteringDevice,
  feature: FeatureId,
): readonly { readonly mean: number; readonly variance: number }[] {
  return parts.reduce(
    (sums, { cause, severity }) => {
      const shifts = patternsOf(cause, mode, metering).map((pattern) => shiftBy(pattern, severity, feature));
      return sums.flatMap((sum) =>
        shifts.map(({ mean, spread }) => ({ mean: sum.mean + mean, variance: sum.variance + spread ** 2 })),
      );
    },
    [{ mean: 0, variance: 0 }],
  );
}

function testOutcomes(row: TestRow): OutcomeChances {
  return ({ hypothesis }) => {
    const hit = hypothesis.parts.some((part) => row.yes.includes(part.cause));
    const yes = hit ? row.sensitivity : 1 - row.specificity;
    return [
      ['yes', yes],
      ['no', 1 - yes],
    ];
  };
}

function weigh(
  likely: readonly Weighed[],
  entropy: number,
  chancesOf: OutcomeChances,
  code: string,
  readings: readonly string[],
  mode: Mode,
): NextReading {
  const byOutcome = new Map<Outcome, { readonly weighed: Weighed; readonly chance: number }[]>();
  for (const weighed of likely) {
    for (const [outcome, chance] of chancesOf(weighed)) {
      const list = byOutcome.get(outcome) ?? [];
      list.push({ weighed, chance: weighed.chance * chance });
      byOutcome.set(outcome, list);
    }
  }
  const total = likely.reduce((sum, { chance }) => sum + chance, 0);
  const before = byCauseSum(likely.map((weighed) => ({ weighed, chance: weighed.chance / total })));
  let left = 0;
  const outcomes = [...byOutcome].map(([outcome, list]) => {
    const chance = list.reduce((sum, entry) => sum + entry.chance, 0) / total;
    const after = list.map(({ weighed, chance: joint }) => ({
      hypothesis: weighed.hypothesis,
      chance: chance > 0 ? joint / total / chance : 0,
    }));
    left += chance * entropyOf(groups(after));
    const byCause = byCauseSum(after.map((weighed) => ({ weighed, chance: weighed.chance })));
    const top = topCause(byCause);
    const moved = mostMoved(before, byCause, top.cause);
    return {
      outcome,
      chance,
      ...top,
      ...(moved === undefined ? {} : { moved }),
      byCause: chancesUnder(list, likely),
    };
  });
  return {
    saying: { code, values: { mode } },
    readings,
    gainFrac: Math.max(0, 1 - left / entropy),
    outcomes,
  };
}

/** Chance of an outcome under each cause: weight of its hypotheses with the outcome over their weight. */
function chancesUnder(
  withOutcome: readonly { readonly weighed: Weighed; readonly chance: number }[],
  likely: readonly Weighed[],
): readonly { readonly cause: CauseId; readonly chance: number }[] {
  const whole = byCauseSum(likely.map((weighed) => ({ weighed, chance: weighed.chance })));
  const part = byCauseSum(withOutcome);
  return [...whole].map(([cause, weight]) => ({ cause, chance: (part.get(cause) ?? 0) / weight }));
}

function byCauseSum(
  list: readonly { readonly weighed: Weighed; readonly chance: number }[],
): ReadonlyMap<CauseId, number> {
  const sums = new Map<CauseId, number>();
  for (const { weighed, chance } of list) {
    const { parts } = weighed.hypothesis;
    const causes: readonly CauseId[] = parts.length === 0 ? ['none'] : parts.map((part) => part.cause);
    for (const cause of causes) sums.set(cause, (sums.get(cause) ?? 0) + chance);
  }
  return sums;
}

/** Chances of sets of causes, severities put together. */
function groups(weighed: readonly Weighed[]): readonly number[] {
  const bySet = new Map<string, number>();
  for (const { hypothesis, chance } of weighed) {
    const key = hypothesis.parts.map((part) => part.cause).join(' + ');
    bySet.set(key, (bySet.get(key) ?? 0) + chance);
  }
  return [...bySet.values()];
}

function entropyOf(chances: readonly number[]): number {
  const total = chances.reduce((sum, chance) => sum + chance, 0);
  return chances.reduce((sum, chance) => {
    const p = chance / total;
    return p > 0 ? sum - p * Math.log(p) : sum;
  }, 0);
}

function topCause(byCause: ReadonlyMap<CauseId, number>): {
  readonly cause: CauseId;
  readonly probability: number;
} {
  let best: { cause: CauseId; probability: number } = { cause: 'none', probability: 0 };
  for (const [cause, probability] of byCause) {
    if (probability > best.probability) best = { cause, probability };
  }
  return best;
}

/** The fault whose chance moves most; undefined when it leads anyway, or moves too little to name. */
function mostMoved(
  before: ReadonlyMap<CauseId, number>,
  after: ReadonlyMap<CauseId, number>,
  leading: CauseId,
): NextReading['outcomes'][number]['moved'] {
  let most: { cause: CauseId; from: number; to: number } | undefined;
  for (const [cause, to] of after) {
    const from = before.get(cause) ?? 0;
    if (cause === 'none' || (most !== undefined && Math.abs(to - from) <= Math.abs(most.to - most.from)))
      continue;
    most = { cause, from, to };
  }
  if (most === undefined || most.cause === leading) return undefined;
  return Math.abs(most.to - most.from) >= table.leastMovedFrac.value ? most : undefined;
}
