import { evaluatePolynomial } from '../../math/polynomial-fit';
import {
  type Axis,
  axisBetween,
  isobarCoordinate,
  isobarOffset,
  isobarShare,
  pressureDepth,
} from './table-coordinates';
import type { CurveData, TableData } from './table-format';

/** Where the fitted functions are read: arrays packed for speed, axes worked out once. */
export type LoadedTable = {
  readonly data: TableData;
  readonly depth: Axis;
  readonly dew: LoadedCurve;
  readonly bubble: LoadedCurve;
  readonly vapour: {
    readonly enthalpy: Float64Array;
    readonly entropy: Float64Array;
    readonly compressibility: Float64Array;
  };
  readonly liquidEnthalpy: Float64Array;
};

export type LoadedCurve = {
  readonly temperatureF: Float64Array;
  readonly lnPsia: Float64Array;
  readonly root: Axis;
};

/**
 * Packs a stored table. Everything below trusts its arguments; properties.ts refuses what lies outside.
 * Check: tests/diagnostics/refrigerant/tables.test.ts
 */
export function loadTable(data: TableData): LoadedTable {
  const endPsia = data.end.psia;
  const curve = (stored: CurveData): LoadedCurve => ({
    temperatureF: Float64Array.from(stored.temperatureF),
    lnPsia: Float64Array.from(stored.lnPsia),
    root: axisBetween(Math.sqrt(data.end.f - stored.lowF), Math.sqrt(data.end.f - stored.highF)),
  });
  const dew = curve(data.dew);
  return {
    data,
    depth: axisBetween(pressureDepth(data.fit.lowPsia, endPsia), pressureDepth(data.fit.highPsia, endPsia)),
    dew,
    bubble: data.bubble === undefined ? dew : curve(data.bubble),
    vapour: {
      enthalpy: Float64Array.from(data.vapour.enthalpyBtuLb),
      entropy: Float64Array.from(data.vapour.entropyBtuLbR),
      compressibility: Float64Array.from(data.vapour.compressibility),
    },
    liquidEnthalpy: Float64Array.from(data.liquid.enthalpyBtuLb),
  };
}

/** Pressure coordinate -1..1 of every curve and patch of the table. */
export function pressureCoordinate(table: LoadedTable, psia: number): number {
  return (pressureDepth(psia, table.data.end.psia) - table.depth.middle) / table.depth.half;
}

/** Saturation temperature [F] at a pressure coordinate. */
export function curveF(curve: LoadedCurve, u: number): number {
  return evaluatePolynomial(curve.temperatureF, u);
}

/** Saturation pressure [psia] at a temperature [F]. */
export function curvePsia(table: LoadedTable, curve: LoadedCurve, temperatureF: number): number {
  const root = (Math.sqrt(table.data.end.f - temperatureF) - curve.root.middle) / curve.root.half;
  return Math.exp(evaluatePolynomial(curve.lnPsia, root));
}

/** An isobar of a patch: from saturation (`nearF`, share 0) to the patch's far edge (`farF`, share 1). */
export type Isobar = {
  readonly u: number;
  readonly nearF: number;
  readonly farF: number;
  readonly offset: number;
};

/** Isobar in superheated vapour. */
export function vapourIsobar(table: LoadedTable, psia: number): Isobar {
  const u = pressureCoordinate(table, psia);
  const { data } = table;
  return {
    u,
    nearF: curveF(table.dew, u),
    farF: data.range.vapourHighF,
    offset: isobarOffset(psia, data.end.psia, data.vapour.spacing),
  };
}

/** Isobar in subcooled liquid. */
export function liquidIsobar(table: LoadedTable, psia: number): Isobar {
  const u = pressureCoordinate(table, psia);
  const { data } = table;
  return {
    u,
    nearF: curveF(table.bubble, u),
    farF: data.range.liquidLowF,
    offset: isobarOffset(psia, data.end.psia, data.liquid.spacing),
  };
}

/** Coordinate along an isobar at a temperature [F]. */
export function coordinateAtF(isobar: Isobar, temperatureF: number): number {
  return isobarCoordinate((temperatureF - isobar.nearF) / (isobar.farF - isobar.nearF), isobar.offset);
}

/** Temperature [F] at a coordinate along an isobar. */
export function fAtCoordinate(isobar: Isobar, v: number): number {
  return isobar.nearF + (isobar.farF - isobar.nearF) * isobarShare(v, isobar.offset);
}

/** Patch value at both coordinates: Horner in v over blocks of powers of u. */
export function patchAt(coefficients: Float64Array, u: number, v: number): number {
  let sum = 0;
  for (let block = 56; block >= 0; block -= 8) sum = sum * v + blockAt(coefficients, block, u);
  return sum;
}

/** One block of eight rising powers of u, paired so that the products need not wait for each other. */
function blockAt(c: Float64Array, block: number, u: number): number {
  const u2 = u * u;
  const low = (at(c, block + 3) * u + at(c, block + 2)) * u2 + (at(c, block + 1) * u + at(c, block));
  const high = (at(c, block + 7) * u + at(c, block + 6)) * u2 + (at(c, block + 5) * u + at(c, block + 4));
  return high * u2 * u2 + low;
}

function at(coefficients: Float64Array, i: number): number {
  return coefficients[i] as number;
}

const alongIsobar = new Float64Array(8);
/** How far beyond the isobar's ends a value is still followed; callers decide by temperature what to accept. */
const SLACK = 0.05;

/**
 * Coordinate at which a rising patch property takes a value on one isobar: Newton steps inside a bracket.
 *
 * @param coefficients  patch that rises with v
 * @param u  pressure coordinate
 * @param value  wanted value
 * @returns coordinate, -Infinity or Infinity when the value lies below or above the isobar and its slack
 */
export function coordinateOfValue(coefficients: Float64Array, u: number, value: number): number {
  for (let j = 0; j < 8; j += 1) alongIsobar[j] = blockAt(coefficients, 8 * j, u);
  let low = -1 - SLACK;
  let high = 1 + SLACK;
  if (value < blockAt(alongIsobar, 0, low)) return Number.NEGATIVE_INFINITY;
  if (value > blockAt(alongIsobar, 0, high)) return Number.POSITIVE_INFINITY;
  let v = 0;
  for (let i = 0; i < 60; i += 1) {
    let sum = 0;
    let slope = 0;
    for (let j = 7; j >= 0; j -= 1) {
      slope = slope * v + sum;
      sum = sum * v + (alongIsobar[j] as number);
    }
    const miss = sum - value;
    if (miss > 0) high = v;
    else low = v;
    const newton = v - miss / slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - v) < 1e-11) return next;
    v = next;
  }
  return v;
}
