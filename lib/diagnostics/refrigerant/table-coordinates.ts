/**
 * Coordinates in which properties are smooth up to near the critical point, each running over -1..1.
 * Along a saturation curve properties bend like the square root of the distance to the critical point, and along
 * an isobar like the square root of the distance to the end of the metastable branch, which lies beyond saturation
 * by about (1 - p/pc)^1.5; both square roots are taken out here so that short polynomials suffice.
 * Check: tests/diagnostics/refrigerant/tables.test.ts
 */
export type Axis = { readonly middle: number; readonly half: number };

/** Axis on which `low` maps to -1 and `high` to 1. */
export function axisBetween(low: number, high: number): Axis {
  return { middle: (low + high) / 2, half: (high - low) / 2 };
}

/** Depth of a pressure below the end of the saturation curves: sqrt(ln(end/p)), 0 at the end. */
export function pressureDepth(psia: number, endPsia: number): number {
  return Math.sqrt(Math.log(endPsia / psia));
}

/** Pressure at a depth: inverse of `pressureDepth`. */
export function psiaAtDepth(depth: number, endPsia: number): number {
  return endPsia * Math.exp(-depth * depth);
}

/**
 * How far beyond saturation the square root along an isobar starts, as a share of the isobar's length.
 *
 * @param psia     pressure [psia], below endPsia
 * @param endPsia  end of the saturation curves [psia]
 * @param spacing  factor chosen per patch by table generation
 */
export function isobarOffset(psia: number, endPsia: number, spacing: number): number {
  const left = 1 - psia / endPsia;
  return spacing * left * Math.sqrt(left);
}

/** Coordinate -1..1 along an isobar for the share 0..1 of the way from saturation to the far end. */
export function isobarCoordinate(share: number, offset: number): number {
  const start = Math.sqrt(offset);
  return (2 * (Math.sqrt(share + offset) - start)) / (Math.sqrt(1 + offset) - start) - 1;
}

/** Share 0..1 of the way from saturation to the far end: inverse of `isobarCoordinate`. */
export function isobarShare(coordinate: number, offset: number): number {
  const start = Math.sqrt(offset);
  const root = start + ((Math.sqrt(1 + offset) - start) * (coordinate + 1)) / 2;
  return root * root - offset;
}
