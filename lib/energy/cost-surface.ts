import { Z_10_90 } from '../math/estimate';
import { invariant } from '../math/invariant';
import { binMeans } from './bin-means';
import { MONTHS } from './climate-model';
import { coolingLoadBtuh, heatingLoadBtuh } from './house-load';
import { type LossRatios, noLoss } from './loss-ratios';
import type { Pricing } from './tariff/pricing';
import type { UnitBins } from './unit-bins';
import type { HouseModel, YearContext } from './year-context';

/** Smallest and largest value a surface is made for. */
export type Reach = { readonly from: number; readonly to: number };

/** How far the capacity (natural logarithm of its ratio) and the power (ratio) of a mode may go. */
export type ModeReach = { readonly lnCapacity: Reach; readonly power: Reach };

/**
 * Nodes of the need of the house: three for each piece, its ends and its middle. Pieces end where a balance temperature
 * crosses a bin, since there the cost has a corner which no parabola may cross.
 */
export type NeedAxis = {
  /** Ends of the pieces, rising standard normal deviates; one more than there are pieces. */
  readonly ends: Float64Array;
};

/** What one mode adds to the year, ready to be read at any capacity, power and need of the house. */
export type ModeSurface = {
  readonly need: NeedAxis;
  readonly lnCapacityFrom: number;
  readonly lnCapacityTo: number;
  /** Nodes of the capacity. */
  readonly count: number;
  readonly powerFrom: number;
  readonly powerTo: number;
  /**
   * Coefficients of 1, p and p x p in the power ratio p; index ((need x count + node) x parts + part) x 3 + degree, the
   * nodes of the need being the ends of its pieces and their middles, rising.
   */
  readonly values: Float64Array;
};

/**
 * A year of one unit in this house over what is uncertain about it. It has one part, dollars, where prices go by the
 * hour; under tiers twelve parts, the kWh of each month, and one for the dollars of fuel, since there only the sum of
 * both modes has a price.
 */
export type CostSurface = {
  readonly parts: number;
  /** Standby with neither mode running, by part. */
  readonly base: Float64Array;
  readonly heating: ModeSurface;
  readonly cooling: ModeSurface;
  readonly pricing: Pricing;
};

/** Where a column of draws reads a surface; every column of one length. */
export type SurfacePlaces = {
  readonly heatingLnCapacity: Float64Array;
  readonly heatingPower: Float64Array;
  readonly coolingLnCapacity: Float64Array;
  readonly coolingPower: Float64Array;
  /** Need of the house and running, as a standard normal deviate. */
  readonly needZ: Float64Array;
};

/** Draws of the need reach as far as this; what lies beyond takes the edge (6 in 100,000). */
const NEED_MOST_Z = 4;
/**
 * A piece of the need is no wider than this, in standard deviations: the cost bends wherever strips begin to help in a
 * bin of many hours. Where the capacity is known its nodes are saved and the need can have more.
 */
const NEED_PIECE_Z = { capacityVaries: 0.4, capacityKnown: 0.125 };
/** Nodes of the capacity lie no further apart than this, as a natural logarithm. */
const LN_CAPACITY_STEP = 0.03;
const DEGREES = 3;

/**
 * House and running at a deviate of what was assumed about them: its ends are the 10 and 90 % points, and every part
 * goes straight through them.
 *
 * @param z  standard normal deviate; +/-1.28 gives the ends themselves
 * Load slopes and the losses of cycling and frost stay at or above 0.
 * Check: tests/energy/cost-surface.test.ts
 */
export function houseAt(context: YearContext, z: number): HouseModel {
  const end = z < 0 ? context.ends?.low : context.ends?.high;
  if (end === undefined || z === 0) return context;
  const share = Math.abs(z) / Z_10_90;
  const between = (likely: number, far: number): number => likely + share * (far - likely);
  const { load } = context;
  const loss = (key: 'cyclicRatio' | 'frostRatio'): number =>
    Math.max(0, between(context[key] ?? 1, end[key] ?? 1));
  return {
    load: {
      ...load,
      heatingBtuhPerF: Math.max(0, between(load.heatingBtuhPerF, end.load.heatingBtuhPerF)),
      heatingBalanceF: between(load.heatingBalanceF, end.load.heatingBalanceF),
      coolingBtuhPerF: Math.max(0, between(load.coolingBtuhPerF, end.load.coolingBtuhPerF)),
      coolingBalanceF: between(load.coolingBalanceF, end.load.coolingBalanceF),
    },
    cyclicRatio: loss('cyclicRatio'),
    frostRatio: loss('frostRatio'),
  };
}

/**
 * Works a unit's year out over a grid once, so that tens of thousands of draws only read it.
 *
 * @param bins     full-speed performance of the unit with nothing wrong
 * @param reach    how far either mode may go; a reach of no width takes one node
 * @param context  house, hours, prices
 * @returns the surface; heating and cooling add up, since no hour has both but for standby
 * Straight between nodes of ln capacity; a parabola in the power ratio, exact where two speeds share the hour; parabolas
 * in the need of the house on either side of the middle.
 * Source: bin method of `unitTotals`; the interpolation is ours
 * Check: tests/energy/cost-surface.test.ts: under 0.5 % from the full calculation wherever draws reach
 */
export function costSurface(
  bins: UnitBins,
  reach: { readonly heating: ModeReach; readonly cooling: ModeReach },
  context: YearContext,
): CostSurface {
  const weights = weightsOf(bins, context);
  const { parts } = weights;
  const standbyKw = bins.binF.map((outdoorF) =>
    outdoorF < bins.unit.crankcaseBelowF ? bins.unit.crankcaseW / 1000 : 0,
  );
  const base = new Float64Array(parts);
  standbyKw.forEach((kw, bin) => {
    for (let part = 0; part < weights.powered; part += 1)
      base[part] = (base[part] as number) + kw * weightAt(weights, part, bin);
  });
  const surface = (mode: 'heating' | 'cooling'): ModeSurface => {
    const { lnCapacity, power } = reach[mode];
    const width = lnCapacity.to - lnCapacity.from;
    const count = width > 0 ? Math.ceil(width / LN_CAPACITY_STEP) + 1 : 1;
    const need = needAxis(
      bins.binF,
      context,
      mode,
      NEED_PIECE_Z[count > 1 ? 'capacityVaries' : 'capacityKnown'],
    );
    const nodes = nodesOf(need);
    const values = new Float64Array(nodes.length * count * parts * DEGREES);
    const houses = nodes.map((z) => onlyMode({ ...context, ...houseAt(context, z) }, mode));
    // between speeds that share the hour the power counts straight, and one place tells all
    const bent = bins.unit[mode]?.speeds?.mixing === 'modulate';
    const powers = bent && power.to > power.from ? placesIn(power, 3) : [1];
    const years = powers.map(() => ({ outdoor: new Float64Array(parts), rest: new Float64Array(parts) }));
    for (let node = 0, at = 0; node < nodes.length * count; node += 1) {
      const house = houses[Math.floor(node / count)] as YearContext;
      const share = count > 1 ? (node % count) / (count - 1) : 0;
      const capacity = Math.exp(lnCapacity.from + share * width);
      powers.forEach((p, k) => {
        fillYear(years[k] as ModeYear, bins, ratiosOf(mode, capacity, p), house, weights, standbyKw);
      });
      for (let part = 0; part < parts; part += 1, at += DEGREES) {
        const [first] = years as [ModeYear];
        values[at] = first.rest[part] as number;
        values[at + 1] = first.outdoor[part] as number;
        if (powers.length > 1) setParabola(values, at, powers, years, part);
      }
    }
    return {
      need,
      lnCapacityFrom: lnCapacity.from,
      lnCapacityTo: lnCapacity.to,
      count,
      powerFrom: power.from,
      powerTo: power.to,
      values,
    };
  };
  return { parts, base, heating: surface('heating'), cooling: surface('cooling'), pricing: context.pricing };
}

/**
 * Yearly cost of many draws.
 *
 * @param surface  as from `costSurface`
 * @param at       where each draw reads it; places beyond its reach read its edge
 * @returns cost of a year in prices of the visit [USD]
 * Check: tests/energy/cost-surface.test.ts
 */
export function surfaceCosts(surface: CostSurface, at: SurfacePlaces): Float64Array {
  const draws = at.needZ.length;
  const { parts, base, pricing } = surface;
  const sums = new Float64Array(draws * parts);
  for (let k = 0, n = 0; n < draws; n += 1)
    for (let part = 0; part < parts; part += 1, k += 1) sums[k] = base[part] as number;
  addMode(sums, parts, surface.heating, at.heatingLnCapacity, at.heatingPower, at.needZ);
  addMode(sums, parts, surface.cooling, at.coolingLnCapacity, at.coolingPower, at.needZ);
  if (pricing.kind === 'byHour') return sums;
  const usd = new Float64Array(draws);
  for (let n = 0; n < draws; n += 1) {
    let sum = sums[n * parts + MONTHS] as number;
    for (let month = 0; month < MONTHS; month += 1)
      sum += pricing.monthUsd(month, Math.max(0, sums[n * parts + month] as number));
    usd[n] = sum;
  }
  return usd;
}

function addMode(
  sums: Float64Array,
  parts: number,
  { need, lnCapacityFrom, lnCapacityTo, count, powerFrom, powerTo, values }: ModeSurface,
  lnCapacity: Float64Array,
  power: Float64Array,
  needZ: Float64Array,
): void {
  const perNeed = count * parts * DEGREES;
  const perNode = count > 1 ? parts * DEGREES : 0;
  const scale = count > 1 ? (count - 1) / (lnCapacityTo - lnCapacityFrom) : 0;
  const { ends } = need;
  const last = ends.length - 2;
  for (let n = 0; n < needZ.length; n += 1) {
    const z = Math.min(NEED_MOST_Z, Math.max(-NEED_MOST_Z, needZ[n] as number));
    let piece = 0;
    while (piece < last && z > (ends[piece + 1] as number)) piece += 1;
    const a = ends[piece] as number;
    const c = ends[piece + 1] as number;
    const b = (a + c) / 2;
    const wa = ((z - b) * (z - c)) / ((a - b) * (a - c));
    const wb = ((z - a) * (z - c)) / ((b - a) * (b - c));
    const wc = 1 - wa - wb;
    const place = Math.min(count - 1, Math.max(0, ((lnCapacity[n] as number) - lnCapacityFrom) * scale));
    const cell = Math.min(Math.max(0, count - 2), Math.floor(place));
    const t = place - cell;
    const p = Math.min(powerTo, Math.max(powerFrom, power[n] as number));
    let i = 2 * piece * perNeed + cell * perNode;
    for (let part = 0; part < parts; part += 1, i += DEGREES) {
      let sum = 0;
      for (let k = 0, j = i; k < 3; k += 1, j += perNeed) {
        const low = (values[j] as number) + p * ((values[j + 1] as number) + p * (values[j + 2] as number));
        const h = j + perNode;
        const high = (values[h] as number) + p * ((values[h + 1] as number) + p * (values[h + 2] as number));
        sum += (k === 0 ? wa : k === 1 ? wb : wc) * (low + t * (high - low));
      }
      const at = n * parts + part;
      sums[at] = (sums[at] as number) + sum;
    }
  }
}

/** Corners of the cost: the likely house, balance temperatures at a bin, losses or slopes that reach 0. */
function needAxis(
  binF: readonly number[],
  context: YearContext,
  mode: 'heating' | 'cooling',
  widestZ: number,
): NeedAxis {
  if (context.ends === undefined) return { ends: Float64Array.of(-NEED_MOST_Z, NEED_MOST_Z) };
  const corners = [-NEED_MOST_Z, 0, NEED_MOST_Z];
  for (const side of [-NEED_MOST_Z, NEED_MOST_Z]) {
    const far = houseAt(context, side);
    const [from, to] =
      mode === 'heating'
        ? [context.load.heatingBalanceF, far.load.heatingBalanceF]
        : [context.load.coolingBalanceF, far.load.coolingBalanceF];
    for (const outdoorF of binF) {
      const share = (outdoorF - from) / (to - from);
      if (share > 0 && share < 1) corners.push(side * share);
    }
  }
  corners.push(...zeroes(context));
  corners.sort((a, b) => a - b);
  const ends = [-NEED_MOST_Z];
  for (const corner of corners) {
    const from = ends[ends.length - 1] as number;
    const pieces = Math.ceil((corner - from) / widestZ - 1e-9);
    for (let k = 1; k <= pieces; k += 1)
      ends.push(k === pieces ? corner : from + (k * (corner - from)) / pieces);
  }
  return { ends: Float64Array.from(ends) };
}

/** Deviates at which a slope or a loss is held at 0. */
function zeroes(context: YearContext): number[] {
  const ends = [
    { end: context.ends?.low, sign: -1 },
    { end: context.ends?.high, sign: 1 },
  ];
  return ends.flatMap(({ end, sign }) => {
    if (end === undefined) return [];
    const pairs = [
      [context.load.heatingBtuhPerF, end.load.heatingBtuhPerF],
      [context.load.coolingBtuhPerF, end.load.coolingBtuhPerF],
      [context.cyclicRatio ?? 1, end.cyclicRatio ?? 1],
      [context.frostRatio ?? 1, end.frostRatio ?? 1],
    ] as const;
    return pairs.flatMap(([likely, far]) => {
      const z = (sign * Z_10_90 * likely) / (likely - far);
      return z * sign > 0 && Math.abs(z) < NEED_MOST_Z ? [z] : [];
    });
  });
}

function nodesOf({ ends }: NeedAxis): number[] {
  return Array.from(ends).flatMap((end, i) => {
    const next = ends[i + 1];
    return next === undefined ? [end] : [end, (end + next) / 2];
  });
}

/** Equally spaced places, ends included. */
function placesIn({ from, to }: Reach, count: number): number[] {
  return Array.from({ length: count }, (_, k) => from + (k / (count - 1)) * (to - from));
}

/** By part and bin: what a steady kilowatt adds to a part, and what a steady Btu/h of fuel adds to the last one. */
type Weights = {
  readonly parts: number;
  /** Parts that electricity adds to. */
  readonly powered: number;
  readonly perKw: Float64Array;
  readonly usdPerFuelBtuh: Float64Array;
};

function weightsOf(bins: UnitBins, { pricing, monthBinHours }: YearContext): Weights {
  const count = bins.binF.length;
  invariant(monthBinHours.length === MONTHS * count, `${monthBinHours.length} hours for ${count} bins`);
  const fuelUsd = (bins.furnace?.usdPerMmbtu ?? 0) / BTU_PER_MMBTU;
  const overMonths = (values: Float64Array, bin: number): number => {
    let sum = 0;
    for (let month = 0; month < MONTHS; month += 1) sum += values[month * count + bin] as number;
    return sum;
  };
  const usdPerFuelBtuh = Float64Array.from(
    { length: count },
    (_, bin) => fuelUsd * overMonths(monthBinHours, bin),
  );
  if (pricing.kind === 'byAmount')
    return { parts: MONTHS + 1, powered: MONTHS, perKw: monthBinHours, usdPerFuelBtuh };
  const perKw = Float64Array.from({ length: count }, (_, bin) => overMonths(pricing.usdPerKwByMonthBin, bin));
  return { parts: 1, powered: 1, perKw, usdPerFuelBtuh };
}

const BTU_PER_MMBTU = 1_000_000;

function weightAt({ perKw, usdPerFuelBtuh }: Weights, part: number, bin: number): number {
  return perKw[part * usdPerFuelBtuh.length + bin] as number;
}

/** The house with one mode alone. */
function onlyMode(context: YearContext, mode: 'heating' | 'cooling'): YearContext {
  if (mode === 'cooling') return { ...context, heats: false };
  return { ...context, load: { ...context.load, coolingBtuhPerF: 0 } };
}

function ratiosOf(mode: 'heating' | 'cooling', capacity: number, power: number): LossRatios {
  return mode === 'heating'
    ? { ...noLoss, heatingCapacity: capacity, heatingPower: power }
    : { ...noLoss, coolingCapacity: capacity, coolingPower: power };
}

/** What a mode adds to each part of a year: its outdoor unit, and all else beyond standby with nothing running. */
type ModeYear = { readonly outdoor: Float64Array; readonly rest: Float64Array };

function fillYear(
  { outdoor, rest }: ModeYear,
  bins: UnitBins,
  ratios: LossRatios,
  house: YearContext,
  weights: Weights,
  standbyKw: readonly number[],
): void {
  outdoor.fill(0);
  rest.fill(0);
  const { parts, powered, perKw, usdPerFuelBtuh } = weights;
  const count = standbyKw.length;
  for (let bin = 0; bin < count; bin += 1) {
    const outdoorF = bins.binF[bin] as number;
    // a bin in which the mode rests adds nothing, and there are many
    const load = house.heats ? heatingLoadBtuh(house.load, outdoorF) : coolingLoadBtuh(house.load, outdoorF);
    if (load <= 0) continue;
    const mean = binMeans(bins, bin, ratios, house);
    const outdoorKw = (mean.heatingW + mean.coolingW) / 1000;
    const restKw = (mean.stripW + mean.blowerW + mean.standbyW) / 1000 - (standbyKw[bin] as number);
    for (let part = 0; part < powered; part += 1) {
      const weight = perKw[part * count + bin] as number;
      outdoor[part] = (outdoor[part] as number) + outdoorKw * weight;
      rest[part] = (rest[part] as number) + restKw * weight;
    }
    rest[parts - 1] = (rest[parts - 1] as number) + mean.fuelBtuh * (usdPerFuelBtuh[bin] as number);
  }
}

/** Coefficients of the parabola through a part of three years at equally spaced powers. */
function setParabola(
  values: Float64Array,
  at: number,
  powers: readonly number[],
  years: readonly ModeYear[],
  part: number,
): void {
  const [y0 = 0, y1 = 0, y2 = 0] = years.map(
    (year) => (year.outdoor[part] as number) + (year.rest[part] as number),
  );
  const [x0 = 0, x1 = 0] = powers;
  const h = x1 - x0;
  const bend = (y2 - 2 * y1 + y0) / (2 * h * h);
  const slope = (y2 - y0) / (2 * h);
  values[at] = y1 - slope * x1 + bend * x1 * x1;
  values[at + 1] = slope - 2 * bend * x1;
  values[at + 2] = bend;
}
