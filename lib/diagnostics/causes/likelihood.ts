import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { MeteringDevice } from '../../visit/unit';
import table from './data/features.json';
import { type FeatureReading, featureIds, type SeverityWord, severityWords } from './feature';
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
};

/** Shifts of every feature of a run by one pattern at one severity. */
type Shifts = { readonly mean: Float64Array; readonly variance: Float64Array };

/** By cause and severity: one entry for each variant. */
type ShiftTable = ReadonlyMap<string, readonly Shifts[]>;

/** A run made ready for many hypotheses. */
export type ReadyRun = {
  readonly run: EvidenceRun;
  readonly byMetering: readonly ShiftTable[];
  readonly plain: PlainFeatures;
};

/** Features as plain numbers, with what does not depend on the hypothesis worked out once. */
type PlainFeatures = {
  readonly residual: Float64Array;
  readonly own: Float64Array;
  /** -Infinity where there is none. */
  readonly floor: Float64Array;
  readonly outlier: Float64Array;
};

function plainOf(features: readonly FeatureReading[]): PlainFeatures {
  return {
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
 * Makes a run ready: looks every shift up once.
 *
 * @param run     evidence
 * @param causes  causes that will be asked for
 * Check: tests/diagnostics/causes/likelihood.test.ts
 */
export function readyRun(run: EvidenceRun, causes: readonly CauseId[]): ReadyRun {
  return {
    run,
    byMetering: devicesOf(run).map((metering) => tableFor(run, metering, causes)),
    plain: plainOf(run.features),
  };
}

/** Metering devices a run is weighed with. */
export function devicesOf(run: EvidenceRun): readonly MeteringDevice[] {
  return run.metering === undefined ? ['fixedOrifice', 'txv'] : [run.metering];
}

function tableFor(run: EvidenceRun, metering: MeteringDevice, causes: readonly CauseId[]): ShiftTable {
  const places = run.features.map((feature) => featureIds.indexOf(feature.id));
  const found = new Map<string, readonly Shifts[]>();
  for (const cause of causes) {
    const patterns = patternsOf(cause, run.mode, metering);
    for (const severity of severityWords) {
      const variants = patterns.map((pattern) => {
        const all = shiftsOf(pattern, severity);
        return {
          mean: Float64Array.from(places, (place) => all.mean[place] ?? 0),
          variance: Float64Array.from(places, (place) => all.variance[place] ?? 0),
        };
      });
      found.set(partOf(cause, severity).key, variants);
    }
  }
  return found;
}

const known = new Map<Pattern, Map<SeverityWord, Shifts>>();

/** Shifts of all features, in the order of `featureIds`; the same object at every call. */
function shiftsOf(pattern: Pattern, severity: SeverityWord): Shifts {
  const bySeverity = known.get(pattern) ?? new Map<SeverityWord, Shifts>();
  known.set(pattern, bySeverity);
  const already = bySeverity.get(severity);
  if (already !== undefined) return already;
  const shifts = featureIds.map((id) => shiftBy(pattern, severity, id));
  const made = {
    mean: Float64Array.from(shifts, (shift) => shift.mean),
    variance: Float64Array.from(shifts, (shift) => shift.spread ** 2),
  };
  bySeverity.set(severity, made);
  return made;
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
  const [first, second] = parts;
  const values: number[] = [];
  for (const shifts of ready.byMetering) {
    const ones = first === undefined ? NOTHING : (shifts.get(first.key) ?? NOTHING);
    const twos = second === undefined ? NOTHING : (shifts.get(second.key) ?? NOTHING);
    for (const one of ones) {
      for (const two of twos) values.push(lnShifted(ready.plain, one, two));
    }
  }
  return logSum(values) - Math.log(values.length);
}

const NOTHING: readonly (Shifts | undefined)[] = [undefined];
/** A product of densities is turned into a logarithm before it could leave the range of a double. */
const SMALLEST = 1e-150;
const LARGEST = 1e150;

/** As the sum of `lnFeature` over the features, with one logarithm for many of them. */
function lnShifted(
  { residual, own, floor, outlier }: PlainFeatures,
  one: Shifts | undefined,
  two: Shifts | undefined,
): number {
  let ln = 0;
  let product = 1;
  for (let i = 0; i < residual.length; i += 1) {
    const shift = (one?.mean[i] ?? 0) + (two?.mean[i] ?? 0);
    const variance = (one?.variance[i] ?? 0) + (two?.variance[i] ?? 0);
    const ownVariance = own[i] ?? Number.NaN;
    const read = residual[i] ?? Number.NaN;
    const total = ownVariance + variance;
    const off = read - Math.max(shift, floor[i] ?? Number.NEGATIVE_INFINITY);
    const wide =
      total > widthSigmas * widthSigmas * ownVariance ? outlierDensity(read, total) : (outlier[i] ?? 0);
    product *= ((1 - chanceFrac) * Math.exp((-off * off) / (2 * total))) / Math.sqrt(total) + wide + 1e-300;
    if (product < SMALLEST || product > LARGEST) {
      ln += Math.log(product);
      product = 1;
    }
  }
  return exponent * (ln + Math.log(product));
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
