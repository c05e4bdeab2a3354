import { type Look, makeLook } from './look';
import { type Heights, heightsBetween } from './measure';

/** A size of type with its roomiest and its tightest distance of lines; from the usual one to the last resort. */
const sizes = [
  { scale: 1, roomiest: 1.18, tightest: 1.04 },
  { scale: 0.92, roomiest: 1.06, tightest: 1.06 },
  { scale: 0.84, roomiest: 1.06, tightest: 1.06 },
  { scale: 0.76, roomiest: 1.04, tightest: 1.04 },
  { scale: 0.68, roomiest: 1.02, tightest: 1.02 },
] as const;
const smallest = { scale: 0.68, lineHeight: 1.02 } as const;
/** Steps in which the distance of lines is tried between roomiest and tightest. */
const lineSteps = 7;

/** How a page is set: its type, and how much of it is printed. */
export type Setting<Fit> = { readonly look: Look; readonly fit: Fit };

/** Heights of a page's blocks when everything is shown in a look. */
export type MeasurePage = (look: Look) => Promise<Heights>;

/** The look for a page that nothing makes fit. */
export function smallestLook(families: string[]): Look {
  return makeLook(families, smallest.scale, smallest.lineHeight);
}

/**
 * The roomiest look in which a page fits. Lines break alike in every distance of lines, so that heights between two
 * measured distances lie on a straight line: a size is laid out twice at most.
 *
 * @param families  of letters
 * @param measure   lays the page out; asked for the same look once only when it remembers
 * @param fullSize  true when no smaller type than the usual may be taken
 * @param fitOf     the setting for heights, or `undefined` when they are too much
 */
export async function roomiestSetting<Fit>(
  families: string[],
  measure: MeasurePage,
  fullSize: boolean,
  fitOf: (heights: Heights) => Fit | undefined,
): Promise<Setting<Fit> | undefined> {
  for (const { scale, roomiest, tightest } of fullSize ? sizes.slice(0, 1) : sizes) {
    const look = makeLook(families, scale, roomiest);
    const roomy = await measure(look);
    const fit = fitOf(roomy);
    if (fit !== undefined) return { look, fit };
    if (tightest === roomiest) continue;
    const tight = await measure(makeLook(families, scale, tightest));
    for (let step = 1; step <= lineSteps; step++) {
      const share = step / lineSteps;
      const closer = fitOf(heightsBetween(roomy, tight, share));
      if (closer === undefined) continue;
      return { look: makeLook(families, scale, roomiest + (tightest - roomiest) * share), fit: closer };
    }
  }
  return undefined;
}
