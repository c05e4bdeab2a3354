import { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { MeteringDevice } from '../../visit/unit';
import type { Flag } from '../findings';
import table from './data/features.json';
import { type FeatureId, type FeatureReading, featureIds, type SeverityWord, severityWords } from './feature';
import { type Part, partOf } from './hypotheses';
import { type Pattern, patternsOf, shiftBy } from './pattern';

const { chanceFrac, widthSigmas } = table.outlier;
const { exponent } = table.tempering;

/** A run as the likelihood sees it. */
export type EvidenceRun = {
  readonly runId: string;
  readonly mode: Mode;
  /** Unknown: both are weighed alike. */
  readonly metering?: MeteringDevice;
  readonly features: readonly FeatureReading[];
  /** Readings that cannot all be true: what rests on them is not among the features. */
  readonly conflicts?: readonly Flag[];
  readonly leftOut?: readonly FeatureId[];
};

/** Shifts of every feature, in the order of `featureIds`, by one pattern at one severity. */
type Shifts = {
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  /** 0 where the pattern neither shifts nor spreads the feature. */
  readonly touches: Uint8Array;
};

/** A pattern as a run sees it: with the density of each feature of the run under this part alone. */
type Shifted = { readonly by: Shifts; readonly density: Float64Array };

/** By cause and severity: one entry for each variant. */
type ByPart<T> = ReadonlyMap<string, readonly T[]>;

/** A run made ready for many hypotheses. */
export type ReadyRun = {
  readonly run: EvidenceRun;
  readonly byMetering: readonly ByPart<Shifted>[];
  readonly nothing: readonly Shifted[];
  readonly plain: PlainFeatures;
};

/** Features as plain numbers, with what does not depend on the hypothesis worked out once. */
type PlainFeatures = {
  /** Place of each in `featureIds`. */
  readonly place: Uint8Array;
  readonly residual: Float64Array;
  readonly own: Float64Array;
  /** -Infinity where there is none. */
  readonly floor: Float64Array;
  readonly outlier: Float64Array;
};

function plainOf(features: readonly FeatureReading[]): PlainFeatures {
  return {
    place: Uint8Array.from(features, (f) => featureIds.indexOf(f.id)),
    residual: Float64Array.from(features, (f) => f.residual),
    own: Float64Array.from(features, (f) => f.sd * f.sd),
    floor: Float64Array.from(features, (f) => f.floor ?? Number.NEGATIVE_INFINITY),
    outlier: Float64Array.from(features, (f) => outlierDensity(f.residual, outlierVariance(f.sd * f.sd, 0))),
  };
}

function outlierVariance(own: number, total: number): number {
  return Math.max(widthSigmas * widthSigmas * own, total);
}

function outlierDensity(residual: number, wide: number): number {
  return (chanceFrac * Math.exp((-residual * residual) / (2 * wide))) / Math.sqrt(wide);
}

/**
 * Makes a run ready: looks every shift up once, and weighs every feature under each part alone.
 *
 * @param run  evidence
 * Check: tests/diagnostics/causes/likelihood.test.ts
 */
export function readyRun(run: EvidenceRun): ReadyRun {
  const plain = plainOf(run.features);
  const nothing = Float64Array.from(run.features, (_, i) => densityAt(plain, i, 0, 0));
  return {
    run,
    byMetering: devicesOf(run).map((metering) => {
      const found = new Map<string, readonly Shifted[]>();
      for (const [key, variants] of shiftsOf(run.mode, metering)) {
        found.set(
          key,
          variants.map((by) => ({ by, density: densitiesOf(plain, nothing, by) })),
        );
      }
      return found;
    }),
    nothing: [{ by: NO_SHIFTS, density: nothing }],
    plain,
  };
}

/** Metering devices a run is weighed with. */
export function devicesOf(run: EvidenceRun): readonly MeteringDevice[] {
  return run.metering === undefined ? ['fixedOrifice', 'txv'] : [run.metering];
}

function densitiesOf(plain: PlainFeatures, nothing: Float64Array, by: Shifts): Float64Array {
  const density = nothing.slice();
  for (let i = 0; i < density.length; i += 1) {
    const place = plain.place[i] as number;
    if (by.touches[place] === 0) continue;
    density[i] = densityAt(plain, i, by.mean[place] as number, by.variance[place] as number);
  }
  return density;
}

const NO_SHIFTS: Shifts = {
  mean: new Float64Array(featureIds.length),
  variance: new Float64Array(featureIds.length),
  touches: new Uint8Array(featureIds.length),
};

const known = new Map<string, ByPart<Shifts>>();

/** Shifts by every cause and severity that has a pattern; the same object at every call. */
function shiftsOf(mode: Mode, metering: MeteringDevice): ByPart<Shifts> {
  const place = `${mode} ${metering}`;
  const already = known.get(place);
  if (already !== undefined) return already;
  const made = new Map<string, readonly Shifts[]>();
  for (const cause of CauseId.options) {
    const patterns = patternsOf(cause, mode, metering);
    for (const severity of severityWords) {
      made.set(
        partOf(cause, severity).key,
        patterns.map((pattern) => shiftsBy(pattern, severity)),
      );
    }
  }
  known.set(place, made);
  return made;
}

function shiftsBy(pattern: Pattern, severity: SeverityWord): Shifts {
  const shifts = featureIds.map((id) => shiftBy(pattern, severity, id));
  return {
    mean: Float64Array.from(shifts, (shift) => shift.mean),
    variance: Float64Array.from(shifts, (shift) => shift.spread ** 2),
    touches: Uint8Array.from(shifts, ({ mean, spread }) => (mean === 0 && spread === 0 ? 0 : 1)),
  };
}

/**
 * Logarithm of the likelihood of one feature whose causes shift it together: shifts add, spreads add as squares, and
 * a small share of wide outliers keeps any single reading from deciding alone. Nothing wrong is no shift and no
 * spread, so a reading at its target never speaks for a fault against it.
 *
 * @param feature   residual and uncertainty
 * @param mean      sum of the shifts [feature's unit]
 * @param variance  sum of the squared spreads
 * @returns ln of the density, tempered; only differences between hypotheses mean anything
 * Check: tests/diagnostics/causes/likelihood.test.ts
 */
export function lnFeature(feature: FeatureReading, mean: number, variance: number): number {
  const own = feature.sd * feature.sd;
  const centre = feature.floor === undefined ? mean : Math.max(mean, feature.floor);
  const total = own + variance;
  const off = feature.residual - centre;
  const density =
    ((1 - chanceFrac) * Math.exp((-off * off) / (2 * total))) / Math.sqrt(total) +
    outlierDensity(feature.residual, outlierVariance(own, total));
  return exponent * Math.log(density + 1e-300);
}

/**
 * Logarithm of the likelihood of a run under some causes at once.
 *
 * @param ready  run made ready with at least these causes
 * @param parts  at most two causes at work; empty = nothing wrong
 * @returns with an unknown metering device, or variants of a cause, the mean over all of them
 * Check: tests/diagnostics/causes/likelihood.test.ts
 */
export function lnRun(ready: ReadyRun, parts: readonly Part[]): number {
  const first = parts[0];
  const second = parts[1];
  const { nothing } = ready;
  const values: number[] = [];
  for (const shifts of ready.byMetering) {
    const ones = first === undefined ? nothing : (shifts.get(first.key) ?? nothing);
    const twos = second === undefined ? nothing : (shifts.get(second.key) ?? nothing);
    for (const one of ones) {
      for (const two of twos) values.push(lnShifted(ready.plain, one, two));
    }
  }
  return logSum(values) - Math.log(values.length);
}

/** A product of densities is turned into a logarithm before it could leave the range of a double. */
const SMALLEST = 1e-150;
const LARGEST = 1e150;

/** As the sum of `lnFeature` over the features, with one logarithm for many of them. */
function lnShifted(plain: PlainFeatures, one: Shifted, two: Shifted): number {
  let ln = 0;
  let product = 1;
  for (let i = 0; i < one.density.length; i += 1) {
    const place = plain.place[i] as number;
    // most features are moved by one part at most, and its density is known
    if (two.by.touches[place] === 0) product *= one.density[i] as number;
    else if (one.by.touches[place] === 0) product *= two.density[i] as number;
    else {
      const mean = (one.by.mean[place] as number) + (two.by.mean[place] as number);
      const variance = (one.by.variance[place] as number) + (two.by.variance[place] as number);
      product *= densityAt(plain, i, mean, variance);
    }
    if (product < SMALLEST || product > LARGEST) {
      ln += Math.log(product);
      product = 1;
    }
  }
  return exponent * (ln + Math.log(product));
}

/** The density of `lnFeature`, before tempering. */
function densityAt(plain: PlainFeatures, i: number, mean: number, variance: number): number {
  const own = plain.own[i] as number;
  const read = plain.residual[i] as number;
  const total = own + variance;
  const off = read - Math.max(mean, plain.floor[i] as number);
  const wide =
    total > widthSigmas * widthSigmas * own ? outlierDensity(read, total) : (plain.outlier[i] as number);
  return ((1 - chanceFrac) * Math.exp((-off * off) / (2 * total))) / Math.sqrt(total) + wide + 1e-300;
}

/** ln of the sum of exp(values); -Infinity for none. Check: tests/diagnostics/causes/likelihood.test.ts */
export function logSum(values: readonly number[]): number {
  const [only] = values;
  if (values.length === 1 && only !== undefined) return only;
  let top = Number.NEGATIVE_INFINITY;
  for (const value of values) top = Math.max(top, value);
  if (top === Number.NEGATIVE_INFINITY) return top;
  let sum = 0;
  for (const value of values) sum += Math.exp(value - top);
  return top + Math.log(sum);
}
