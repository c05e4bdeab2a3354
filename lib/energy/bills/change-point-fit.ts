import { invariant } from '../../math/invariant';
import settings from '../data/bill-rules.json';
import type { BillPoint, ChangePointFit, ChangePointKind } from './change-point-model';
import { studentQuantile } from './student-quantile';

const PARAMETERS: Readonly<Record<ChangePointKind, number>> = {
  '1P': 1,
  '2P': 2,
  '3PH': 3,
  '3PC': 3,
  '4P': 4,
  '5P': 5,
};

/** Sums over the points of one regressor; change point in F, or none. */
type Column = {
  readonly changeF?: number;
  readonly mean: number;
  readonly ss: number;
  readonly sy: number;
  /** Points on the bent side. */
  readonly count: number;
};

type Columns = { readonly heating: readonly Column[]; readonly cooling: readonly Column[] };

const none: Column = { mean: 0, ss: 0, sy: 0, count: 0 };

type Candidate = {
  readonly heating: Column;
  readonly cooling: Column;
  readonly heatingSlope: number;
  readonly coolingSlope: number;
  readonly sse: number;
  /** Of the slopes and the base, per unit of residual variance. */
  readonly heatingVar: number;
  readonly coolingVar: number;
  readonly baseVar: number;
};

/**
 * Best fit of one kind of change-point line: every pair of change points on the grid is solved by ordinary least
 * squares, the smallest squared error wins.
 *
 * @param points  billing periods; every one counts the same
 * @param kind    2P to 5P, or the plain mean (1P)
 * @returns the fit, or undefined if there are too few points (n <= p), or none with non-negative slopes and
 *   enough periods beyond each change point
 * Change points: data/bill-rules.json `grid`, 0.1 F steps.
 * Source: method of the ASHRAE inverse modelling toolkit (RP-1050), equations from memory; statistics with n - p as
 * in ASHRAE Guideline 14, memory
 * Check: tests/energy/bills/change-point-fit.test.ts
 */
export function fitChangePoint(
  points: readonly BillPoint[],
  kind: ChangePointKind,
): ChangePointFit | undefined {
  const n = points.length;
  if (n <= PARAMETERS[kind]) return undefined;
  const meanY = points.reduce((sum, q) => sum + q.kwhPerDay, 0) / n;
  const syy = points.reduce((sum, q) => sum + (q.kwhPerDay - meanY) ** 2, 0);
  const columns = columnsOf(points, kind, meanY);
  let best: { readonly heating: Column; readonly cooling: Column } | undefined;
  let least = Number.POSITIVE_INFINITY;
  eachPair(columns, kind, (heating, cooling) => {
    const sse = errorOf(n, syy, heating, cooling, kind === '2P');
    if (sse < least) {
      least = sse;
      best = { heating, cooling };
    }
  });
  return best === undefined ? undefined : statistics({ points, kind, meanY, syy, columns }, best);
}

/**
 * The kind that fits best for its number of parameters: highest adjusted R2; among equals the simpler one.
 *
 * @param points  billing periods
 * @param kinds   kinds to try
 * @returns undefined if none can be fitted
 * Check: tests/energy/bills/change-point-fit.test.ts
 */
export function bestChangePoint(
  points: readonly BillPoint[],
  kinds: readonly ChangePointKind[] = ['1P', '3PH', '3PC', '4P', '5P'],
): ChangePointFit | undefined {
  const fits = kinds.flatMap((kind) => fitChangePoint(points, kind) ?? []).sort((a, b) => a.p - b.p);
  return fits.reduce<ChangePointFit | undefined>(
    (best, fit) => (best === undefined || fit.adjustedR2 > best.adjustedR2 + 1e-9 ? fit : best),
    undefined,
  );
}

/** Columns a kind may take: bent ones on the grid of change points with enough periods beyond, or a plain one. */
function columnsOf(points: readonly BillPoint[], kind: ChangePointKind, meanY: number): Columns {
  if (kind === '1P') return { heating: [none], cooling: [none] };
  if (kind === '2P') return { heating: [none], cooling: [columnOf(points, meanY, (t) => t)] };
  const { lowF, highF, stepF, leastPeriodsBeyond } = settings.grid;
  const steps = Math.round((highF - lowF) / stepF);
  const grid = Array.from({ length: steps + 1 }, (_, i) => Math.round((lowF + i * stepF) * 10) / 10);
  const enough = (c: Column): boolean => c.count >= leastPeriodsBeyond;
  const heating = grid.map((f) => bentColumn(points, meanY, f, (t) => Math.max(0, f - t))).filter(enough);
  const cooling = grid.map((f) => bentColumn(points, meanY, f, (t) => Math.max(0, t - f))).filter(enough);
  return { heating: kind === '3PC' ? [none] : heating, cooling: kind === '3PH' ? [none] : cooling };
}

/** Every pair of columns a kind allows: 4P bends both ways at one point, 5P heating first. Columns rise. */
function eachPair(
  columns: Columns,
  kind: ChangePointKind,
  visit: (heating: Column, cooling: Column) => void,
): void {
  for (const heating of columns.heating) {
    const h = heating.changeF ?? 0;
    for (let i = columns.cooling.length - 1; i >= 0; i -= 1) {
      const cooling = columns.cooling[i] ?? none;
      const c = cooling.changeF ?? h;
      if (c < h) break;
      if (kind !== '4P' || c === h) visit(heating, cooling);
    }
  }
}

function bentColumn(
  points: readonly BillPoint[],
  meanY: number,
  changeF: number,
  bend: (meanF: number) => number,
): Column {
  return { ...columnOf(points, meanY, bend), changeF };
}

function columnOf(points: readonly BillPoint[], meanY: number, value: (meanF: number) => number): Column {
  let sum = 0;
  let count = 0;
  for (const q of points) {
    const x = value(q.meanF);
    sum += x;
    if (x > 0) count += 1;
  }
  const mean = sum / points.length;
  let ss = 0;
  let sy = 0;
  for (const q of points) {
    const x = value(q.meanF) - mean;
    ss += x * x;
    sy += x * (q.kwhPerDay - meanY);
  }
  return { mean, ss, sy, count };
}

/** Squared error of a pair; infinite where a slope would be negative (a plain line may slope either way). */
function errorOf(n: number, syy: number, heating: Column, cooling: Column, anySlope: boolean): number {
  const cross = -n * heating.mean * cooling.mean;
  let heatingSlope = 0;
  let coolingSlope = 0;
  if (heating.ss > 0 && cooling.ss > 0) {
    const det = heating.ss * cooling.ss - cross * cross;
    heatingSlope = (heating.sy * cooling.ss - cooling.sy * cross) / det;
    coolingSlope = (cooling.sy * heating.ss - heating.sy * cross) / det;
  } else if (heating.ss > 0) heatingSlope = heating.sy / heating.ss;
  else if (cooling.ss > 0) coolingSlope = cooling.sy / cooling.ss;
  if (!anySlope && (heatingSlope < 0 || coolingSlope < 0)) return Number.POSITIVE_INFINITY;
  return Math.max(0, syy - heatingSlope * heating.sy - coolingSlope * cooling.sy);
}

/** Least squares for at most two columns that are never both non-zero in one point (heating ends where cooling begins). */
function candidate(n: number, syy: number, heating: Column, cooling: Column): Candidate {
  const cross = -n * heating.mean * cooling.mean;
  const det = heating.ss * cooling.ss - cross * cross;
  let heatingSlope = 0;
  let coolingSlope = 0;
  let heatingVar = 0;
  let coolingVar = 0;
  let covariance = 0;
  if (heating.ss > 0 && cooling.ss > 0) {
    heatingSlope = (heating.sy * cooling.ss - cooling.sy * cross) / det;
    coolingSlope = (cooling.sy * heating.ss - heating.sy * cross) / det;
    heatingVar = cooling.ss / det;
    coolingVar = heating.ss / det;
    covariance = -cross / det;
  } else if (heating.ss > 0) {
    heatingSlope = heating.sy / heating.ss;
    heatingVar = 1 / heating.ss;
  } else if (cooling.ss > 0) {
    coolingSlope = cooling.sy / cooling.ss;
    coolingVar = 1 / cooling.ss;
  }
  const baseVar =
    1 / n +
    heating.mean ** 2 * heatingVar +
    cooling.mean ** 2 * coolingVar +
    2 * heating.mean * cooling.mean * covariance;
  const sse = Math.max(0, syy - heatingSlope * heating.sy - coolingSlope * cooling.sy);
  return { heating, cooling, heatingSlope, coolingSlope, sse, heatingVar, coolingVar, baseVar };
}

type Problem = {
  readonly points: readonly BillPoint[];
  readonly kind: ChangePointKind;
  readonly meanY: number;
  readonly syy: number;
  readonly columns: Columns;
};

function statistics(
  problem: Problem,
  pair: { readonly heating: Column; readonly cooling: Column },
): ChangePointFit {
  const { points, kind, meanY, syy } = problem;
  const n = points.length;
  const p = PARAMETERS[kind];
  const best = candidate(n, syy, pair.heating, pair.cooling);
  const line = kind === '2P';
  const base = baseOf(best, meanY);
  let sse = 0;
  let bias = 0;
  for (const q of points) {
    const heat = best.heating.changeF === undefined ? 0 : Math.max(0, best.heating.changeF - q.meanF);
    const cool = best.cooling.changeF === undefined ? 0 : Math.max(0, q.meanF - best.cooling.changeF);
    const bent = line ? best.coolingSlope * q.meanF : best.heatingSlope * heat + best.coolingSlope * cool;
    const residual = q.kwhPerDay - base - bent;
    sse += residual ** 2;
    bias += residual;
  }
  invariant(Number.isFinite(sse), 'change-point fit is not finite');
  const rmse = Math.sqrt(sse / (n - p));
  const r2 = syy > 0 ? 1 - sse / syy : 1;
  return {
    kind,
    n,
    p,
    baseKwhPerDay: base,
    heatingKwhPerDayF: best.heatingSlope,
    coolingKwhPerDayF: line ? 0 : best.coolingSlope,
    lineKwhPerDayF: line ? best.coolingSlope : 0,
    ...(best.heating.changeF === undefined ? {} : { heatingChangeF: best.heating.changeF }),
    ...(best.cooling.changeF === undefined ? {} : { coolingChangeF: best.cooling.changeF }),
    sse,
    rmseKwhPerDay: rmse,
    cvRmseFrac: meanY > 0 ? rmse / meanY : 0,
    nmbeFrac: meanY > 0 ? bias / ((n - p) * meanY) : 0,
    r2,
    adjustedR2: syy > 0 ? 1 - sse / (n - p) / (syy / (n - 1)) : 1,
    intervals: intervalsOf(problem, best, n - p),
  };
}

function baseOf(c: Candidate, meanY: number): number {
  return meanY - c.heatingSlope * c.heating.mean - c.coolingSlope * c.cooling.mean;
}

/** Widest reach of each parameter over all pairs whose error a t-bound cannot tell from the best. */
function intervalsOf(problem: Problem, best: Candidate, degrees: number): ChangePointFit['intervals'] {
  const { points, kind, meanY, syy, columns } = problem;
  const t = studentQuantile(settings.intervalTailFrac.value, degrees);
  const limit = best.sse + (t * t * best.sse) / degrees;
  const base = wide();
  const heatingSlope = wide();
  const coolingSlope = wide();
  const heatingChange = wide();
  const coolingChange = wide();
  eachPair(columns, kind, (heating, cooling) => {
    if (errorOf(points.length, syy, heating, cooling, kind === '2P') > limit) return;
    const c = candidate(points.length, syy, heating, cooling);
    // what is left of the bound once this pair's own error is taken off
    const left = Math.max(0, limit - c.sse);
    stretch(base, baseOf(c, meanY), Math.sqrt(left * c.baseVar));
    stretch(heatingSlope, c.heatingSlope, Math.sqrt(left * c.heatingVar));
    stretch(coolingSlope, c.coolingSlope, Math.sqrt(left * c.coolingVar));
    if (heating.changeF !== undefined) stretch(heatingChange, heating.changeF, 0);
    if (cooling.changeF !== undefined) stretch(coolingChange, cooling.changeF, 0);
  });
  const heats = best.heating.changeF !== undefined;
  const cools = best.cooling.changeF !== undefined;
  return {
    baseKwhPerDay: base,
    ...(heats ? { heatingKwhPerDayF: heatingSlope, heatingChangeF: heatingChange } : {}),
    ...(cools ? { coolingKwhPerDayF: coolingSlope, coolingChangeF: coolingChange } : {}),
  };
}

function wide(): { low: number; high: number } {
  return { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
}

function stretch(interval: { low: number; high: number }, value: number, half: number): void {
  interval.low = Math.min(interval.low, value - half);
  interval.high = Math.max(interval.high, value + half);
}
