import { faceVelocity, freeAreaFactor, grilleArea } from '../derived/air-side';
import type { RunContext } from '../run-context';
import data from './data/measuring.json';
import type { GrilleMeasuring, Traverse } from './measuring';

/**
 * What the grille traverse stands on, and its points so far.
 *
 * @param context  run with its unit and site
 * @returns how many points are advised for the grille, its free-area factor, and mean and spread of the points
 * Source: data/measuring.json (number of points: common practice, no source)
 * Check: tests/diagnostics/measuring/grille.test.ts
 */
export function grilleMeasuring(context: RunContext): GrilleMeasuring {
  const area = grilleArea(context);
  const factor = freeAreaFactor(context);
  const traverse = traverseOf(context);
  return {
    advisedCount: advisedPoints(area?.value),
    ...(area === undefined ? {} : { areaIn2: area.value }),
    freeAreaFrac: factor.value,
    freeAreaSdFrac: factor.sd,
    freeAreaBasis: factor.basis,
    ...(factor.source === undefined ? {} : { freeAreaSource: factor.source }),
    ...(traverse === undefined ? {} : { traverse }),
    meanIgnored: traverse !== undefined && context.run.grilleFaceFpm !== undefined,
  };
}

/** Points advised for a grille of so many square inches; without an area the least. */
function advisedPoints(areaIn2: number | undefined): number {
  const { inchesPerPoint, leastPoints, mostPoints } = data.traverse;
  const bySize = areaIn2 === undefined ? 0 : Math.ceil(areaIn2 / inchesPerPoint.value ** 2);
  return Math.min(mostPoints.value, Math.max(leastPoints.value, bySize));
}

function traverseOf(context: RunContext): Traverse | undefined {
  const points = context.run.grilleFacePointsFpm;
  const mean = faceVelocity(context);
  if (points === undefined || points.length === 0 || mean === undefined) return undefined;
  const { unevenFrac, filterGrilleFpm } = data.traverse;
  const meanFpm = mean.value;
  const squares = points.reduce((sum, point) => sum + (point - meanFpm) ** 2, 0);
  const spreadFpm = points.length > 1 ? Math.sqrt(squares / (points.length - 1)) : undefined;
  const spreadFrac = spreadFpm === undefined || meanFpm <= 0 ? undefined : spreadFpm / meanFpm;
  return {
    pointCount: points.length,
    meanFpm,
    ...(spreadFpm === undefined ? {} : { spreadFpm }),
    ...(spreadFrac === undefined ? {} : { spreadFrac }),
    lowestFpm: Math.min(...points),
    highestFpm: Math.max(...points),
    uneven: spreadFrac !== undefined && spreadFrac > unevenFrac.value,
    fast: meanFpm > filterGrilleFpm.value,
  };
}
