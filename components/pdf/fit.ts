import type { Heights } from './measure';

/** How tightly page one is set; type keeps its size. [pt] */
export type PageOneFit = { readonly gap: number; readonly chartHeight: number };

/** How much of the evidence page two prints; what is left out is counted on the page. */
export type PageTwoFit = {
  /** True while heights are measured: everything is shown, in both columns where it may stand in either. */
  readonly measuring: boolean;
  readonly gap: number;
  readonly readings: readonly ReadingsForm[];
  readonly alsoRead: boolean;
  readonly assumptionRows: number;
  /** Rows from the first whose source is printed. */
  readonly sources: number;
  readonly doubts: number;
  /** Which column the movable sections stand in. */
  readonly excluded: readonly Column[];
  readonly surer: readonly Column[];
  readonly doubtsIn: readonly Column[];
};
export type Column = 'left' | 'right';
/** A row for every reading, or rows for what is off and a sentence for the rest. */
export type ReadingsForm = 'full' | 'short';

const chartHeight = { least: 50, most: 96 } as const;
const gap = { least: 3, most: 12 } as const;
/** Gaps between the blocks of page one, and between the full-width blocks of page two. */
const pageOneGaps = 5;
const pageTwoGaps = 3;
export const firstAssumptions = 3;
const firstDoubts = 4;
/** Doubts that come before anything else: a contradiction is the first of them. */
const surestDoubts = 1;
/** Share of the spare height of page one that the chart gets. */
const chartShare = 0.6;

/** Everything shown, movable sections in both columns, no air: the state in which heights are measured. */
export const measuringFits: readonly [PageOneFit, PageTwoFit] = [
  { gap: 0, chartHeight: chartHeight.least },
  {
    measuring: true,
    gap: 0,
    readings: ['full', 'short'],
    alsoRead: true,
    assumptionRows: Number.POSITIVE_INFINITY,
    sources: Number.POSITIVE_INFINITY,
    doubts: Number.POSITIVE_INFINITY,
    excluded: ['left', 'right'],
    surer: ['left', 'right'],
    doubtsIn: ['left', 'right'],
  },
];

/** For a sheet that nothing makes fit: the least of everything. */
export const tightestFits: readonly [PageOneFit, PageTwoFit] = [
  { gap: gap.least, chartHeight: chartHeight.least },
  {
    measuring: false,
    gap: gap.least,
    readings: ['short'],
    alsoRead: false,
    assumptionRows: 0,
    sources: 0,
    doubts: 0,
    excluded: ['right'],
    surer: ['left'],
    doubtsIn: ['left'],
  },
];

/**
 * Spreads what is left of page one over the chart and the gaps.
 *
 * @param heights  of the blocks, measured with `measuringFits`
 * @param room     height of the page's content [pt]
 * @returns the setting, or `undefined` when even the tightest is too high
 */
export function fitPageOne(heights: Heights, room: number): PageOneFit | undefined {
  const spare = room - heights.sum('one-') - pageOneGaps * gap.least;
  if (spare < 0) return undefined;
  const height = Math.min(chartHeight.most, chartHeight.least + spare * chartShare);
  const rest = spare - (height - chartHeight.least);
  return { chartHeight: height, gap: Math.min(gap.most, gap.least + rest / pageOneGaps) };
}

type Kind = 'row' | 'source' | 'doubt' | 'also';
type Piece = { readonly kind: Kind; readonly height: number };

/**
 * Chooses how much evidence page two prints: the first assumptions with their sources and a few doubts come first,
 * then the other assumptions, the readings without a target, the other sources, as far as they fit.
 *
 * @param heights  of the blocks, measured with `measuringFits`
 * @param room     height of the page's content [pt]
 * @param least    how many of the first assumptions must find room together with their sources
 * @returns the setting, or `undefined` when that is too high
 */
export function fitPageTwo(heights: Heights, room: number, least: number): PageTwoFit | undefined {
  return fitWith('full', heights, room, least) ?? fitWith('short', heights, room, least);
}

function fitWith(form: ReadingsForm, heights: Heights, room: number, least: number): PageTwoFit | undefined {
  const columns = room - heights.sum('two-full-') - pageTwoGaps * gap.least;
  const right = columns - heights.sum('two-right-') - gap.least * heights.count('two-right-');
  const left =
    columns -
    heights.sum('two-left-') -
    heights.of(`two-readings-${form}`) -
    gap.least * heights.count('two-left-');
  const places = placeMovable(heights, left, right);
  if (places === undefined) return undefined;
  const doubtsLeft = places.doubtsRight === 0;
  // The doubts' heading with the count of what is left out always has its room.
  const head = doubtsLeft && heights.count('two-doubt-left-') > 0 ? headOfDoubts(heights, 'left') : 0;
  if (head > places.spareLeft) return undefined;
  const taken = takePieces(piecesInOrder(heights, doubtsLeft), places.spareLeft - head);
  const wanted = Math.min(least, heights.count('two-assumption-'));
  const wantedDoubts = doubtsLeft ? Math.min(least, surestDoubts, heights.count('two-doubt-left-')) : 0;
  if (taken.row < wanted || taken.source < wanted || taken.doubt < wantedDoubts) return undefined;
  return {
    measuring: false,
    gap: gap.least,
    readings: [form],
    alsoRead: taken.also > 0,
    assumptionRows: taken.row,
    sources: taken.source,
    doubts: doubtsLeft ? taken.doubt : places.doubtsRight,
    excluded: [places.excluded],
    surer: [places.surer],
    doubtsIn: [doubtsLeft ? 'left' : 'right'],
  };
}

type Places = {
  readonly excluded: Column;
  readonly surer: Column;
  /** How many doubts stand in the right column; none = they share the left one with the assumptions. */
  readonly doubtsRight: number;
  readonly spareLeft: number;
};

/** Movable sections go to the right column as long as there is room, else to the left. */
function placeMovable(heights: Heights, left: number, right: number): Places | undefined {
  let spareLeft = left;
  let spareRight = right;
  const place = (name: 'excluded' | 'surer'): Column => {
    const atRight = heights.of(`two-move-right-${name}`) + gap.least;
    if (atRight <= spareRight) {
      spareRight -= atRight;
      return 'right';
    }
    spareLeft -= heights.of(`two-move-left-${name}`) + gap.least;
    return 'left';
  };
  const places = { excluded: place('excluded'), surer: place('surer') };
  if (spareLeft < 0 || spareRight < 0) return undefined;
  return { ...places, doubtsRight: doubtsThatFit(heights, spareRight), spareLeft };
}

/** Doubts of the right column: as many as fit, but none if not even the first few do. */
function doubtsThatFit(heights: Heights, room: number): number {
  const list = heights.list('two-doubt-right-');
  let spare = room - headOfDoubts(heights, 'right');
  let count = 0;
  for (const height of list) {
    if (height > spare) break;
    spare -= height;
    count++;
  }
  return count >= Math.min(firstDoubts, list.length) ? count : 0;
}

function headOfDoubts(heights: Heights, column: Column): number {
  return heights.of(`two-head-${column}-doubts`) + gap.least;
}

function piecesInOrder(heights: Heights, withDoubts: boolean): Piece[] {
  const of = (kind: Kind, list: readonly number[]): Piece[] => list.map((height) => ({ kind, height }));
  const rows = of('row', heights.list('two-assumption-'));
  const sources = of('source', heights.list('two-source-'));
  const doubts = withDoubts ? of('doubt', heights.list('two-doubt-left-')) : [];
  return [
    ...doubts.slice(0, surestDoubts),
    ...rows.slice(0, firstAssumptions),
    ...sources.slice(0, firstAssumptions),
    ...doubts.slice(surestDoubts, firstDoubts),
    ...rows.slice(firstAssumptions),
    { kind: 'also', height: heights.sum('two-also-') },
    ...sources.slice(firstAssumptions),
    ...doubts.slice(firstDoubts),
  ];
}

/** Takes pieces in order while they fit; a kind that once did not fit is closed, so that rows are the first ones. */
function takePieces(pieces: readonly Piece[], room: number): Record<Kind, number> {
  const taken: Record<Kind, number> = { row: 0, source: 0, doubt: 0, also: 0 };
  const closed = new Set<Kind>();
  let spare = room;
  for (const { kind, height } of pieces) {
    if (closed.has(kind) || height > spare) {
      closed.add(kind);
      continue;
    }
    spare -= height;
    taken[kind]++;
  }
  return taken;
}
