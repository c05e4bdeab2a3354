import type { FeatureId, FeatureReading } from '@/lib/diagnostics/causes/feature';
import { hypothesesOf } from '@/lib/diagnostics/causes/hypotheses';
import { posteriorOf, ranked, runLikelihood } from '@/lib/diagnostics/causes/posterior';
import { type RandomStream, randomStream } from '@/lib/math/random';
import { visitOf } from '../support/visit-of';
import type { Judged } from './confusion';
import { CHART_FEATURES, type PublishedPattern, publishedPatterns } from './published-patterns';

export type JudgedPattern = Judged & { readonly group: string };

/**
 * Readings made from the printed words alone, not from the engine's table: "high" lies 2.5 to 3.5 standard
 * uncertainties above target, "normal or high" is one or the other at even chance, "varies" anything between, all with
 * the noise of a reading. Uncertainties are those of an ordinary run. Beside the seven features of the charts stand the
 * readings their discriminating tests name.
 */
const SIGMA: Readonly<Partial<Record<FeatureId, number>>> = {
  evaporating: 3.8,
  condensing: 3.3,
  superheat: 4.5,
  subcooling: 2.5,
  discharge: 9,
  power: 0.1,
  airDifference: 2.6,
  airflow: 34,
  drierDrop: 1.6,
  efficiency: 0.06,
  capacityGap: 0.13,
  standing: 1.9,
  valveRise: 2.1,
  compressorCapacitor: 0.04,
  fanCapacitor: 0.04,
  stripAmps: 0.06,
};

/** Discriminating readings: drop over the drier, airflow, capacitors, strips, compressor efficiency, bypassed gas. */
const DISCRIMINATING: readonly (readonly [FeatureId, (pattern: PublishedPattern) => number])[] = [
  ['drierDrop', (p) => (p.cause === 'liquidLineRestriction' ? 5 : 0)],
  ['airflow', (p) => (p.cause === 'lowIndoorAirflow' ? -110 : 0)],
  ['compressorCapacitor', (p) => (p.name === 'weak run capacitor, compressor' ? -0.18 : 0)],
  ['fanCapacitor', (p) => (p.name === 'weak run capacitor, outdoor fan' ? -0.18 : 0)],
  ['stripAmps', (p) => (p.cause === 'supplementaryHeatFault' ? -0.5 : 0)],
  ['efficiency', (p) => (p.cause === 'compressorValvesLeaking' ? -0.14 : 0)],
  ['standing', (p) => (p.cause === 'nonCondensables' ? 7 : 0)],
  ['valveRise', (p) => (p.cause === 'reversingValveLeaking' ? 15 : 0)],
  ['capacityGap', (p) => (p.cause === 'reversingValveLeaking' ? 0.3 : 0)],
];

function sigmasOf(word: string, random: RandomStream): number | undefined {
  const size = 2.5 + random.uniform();
  const either = random.uniform() < 0.5;
  switch (word) {
    case 'high':
      return size;
    case 'low':
      return -size;
    case 'normal':
      return 0;
    case 'normal or high':
      return either ? size : 0;
    case 'normal or low':
      return either ? -size : 0;
    case 'varies':
      return (2 * random.uniform() - 1) * size;
    default:
      return undefined;
  }
}

function readingsOf(pattern: PublishedPattern, random: RandomStream): readonly FeatureReading[] {
  const reading = (id: FeatureId, mean: number): FeatureReading => {
    const sd = SIGMA[id] ?? Number.NaN;
    return { id, readingId: id, residual: mean + sd * random.normal(), sd };
  };
  const charts = Object.entries(CHART_FEATURES).flatMap(([word, id]) => {
    const sigmas = sigmasOf(pattern.words[word as keyof typeof CHART_FEATURES], random);
    return sigmas === undefined ? [] : [reading(id, sigmas * (SIGMA[id] ?? Number.NaN))];
  });
  return [...charts, ...DISCRIMINATING.map(([id, mean]) => reading(id, mean(pattern)))];
}

/** Draws of each pattern. */
export const DRAWS = 40;

/**
 * Every published pattern drawn `DRAWS` times and judged.
 *
 * @param firstSeed  its own seeds follow from it; 1 is kept for reporting, others were used while sizes were chosen
 */
export function judgedPatterns(firstSeed: number): readonly JudgedPattern[] {
  return publishedPatterns.flatMap((pattern) => {
    const hypotheses = hypothesesOf(visitOf([], { metering: pattern.metering, electricHeatKw: 10 }));
    return Array.from({ length: DRAWS }, (_, k) => {
      const random = randomStream(firstSeed + k, `${pattern.name} ${pattern.mode} ${pattern.metering}`);
      const features = readingsOf(pattern, random);
      const run = { runId: 'r', mode: pattern.mode, metering: pattern.metering, features };
      const posterior = posteriorOf(hypotheses, [runLikelihood(hypotheses, run)]);
      return {
        group: `${pattern.metering} ${pattern.mode}`,
        truth: [pattern.cause],
        order: ranked(posterior).map(({ cause }) => cause),
      };
    });
  });
}
