import { describe, expect, test } from 'vitest';
import { firstAssumptions, fitPageOne, fitPageTwo } from '@/components/pdf/fit';
import { heightsOf } from '@/components/pdf/measure';

/** A layout of blocks with the heights given, as the PDF library would hand it over. */
function heights(blocks: Record<string, number>) {
  const children = Object.entries(blocks).map(([id, height]) => ({
    type: 'VIEW',
    props: { id },
    box: { height },
  }));
  return heightsOf({ type: 'DOCUMENT', children: [{ type: 'PAGE', box: { height: 792 }, children }] });
}

const rows = (count: number, height: number, prefix: string) =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [`${prefix}${i}`, height]));

const pageTwo = {
  'two-full-head': 16,
  'two-full-signature': 84,
  'two-left-readings': 30,
  'two-readings-full': 200,
  'two-readings-short': 100,
  'two-left-counts': 30,
  'two-left-assumptions': 40,
  'two-right-financing': 250,
  'two-right-cautions': 200,
  'two-move-left-excluded': 60,
  'two-move-right-excluded': 80,
  'two-move-left-surer': 40,
  'two-move-right-surer': 50,
  ...rows(20, 24, 'two-assumption-'),
  ...rows(20, 24, 'two-source-'),
};

describe('fitPageOne', () => {
  test('identity: spare height goes to chart and gaps, within their limits', () => {
    const tight = fitPageOne(heights({ 'one-a': 300, 'one-b': 380 }), 700);
    expect(tight?.gap).toBeGreaterThanOrEqual(3);
    expect(tight?.chartHeight).toBeGreaterThanOrEqual(50);
    const roomy = fitPageOne(heights({ 'one-a': 200 }), 700);
    expect(roomy).toEqual({ chartHeight: 96, gap: 12 });
  });

  test('property: what is chosen never needs more than the room', () => {
    const counts = Array.from({ length: 60 }, (_, i) => 400 + i * 5);
    const chosen = counts.map((height) => ({ height, fit: fitPageOne(heights({ 'one-a': height }), 700) }));
    const fitting = chosen.filter(({ fit }) => fit !== undefined);
    expect(fitting.length).toBe(58);
    const over = fitting.filter(
      ({ height, fit }) => height + (fit?.chartHeight ?? 0) - 50 + 5 * (fit?.gap ?? 0) > 700.001,
    );
    expect(over).toEqual([]);
  });

  test('identity: too high is told', () => {
    expect(fitPageOne(heights({ 'one-a': 690 }), 700)).toBeUndefined();
  });
});

describe('fitPageTwo', () => {
  test('identity: with room enough everything is printed', () => {
    const fit = fitPageTwo(
      heights({ ...pageTwo, 'two-also-0': 30, ...rows(3, 12, 'two-doubt-left-') }),
      3000,
      3,
    );
    expect(fit).toMatchObject({
      readings: ['full'],
      alsoRead: true,
      assumptionRows: 20,
      sources: 20,
      doubts: 3,
    });
  });

  test('identity: when rows take too much, normal readings become a sentence before assumptions are given up', () => {
    const fit = fitPageTwo(heights(pageTwo), 620, firstAssumptions);
    expect(fit?.readings).toEqual(['short']);
    expect(fit?.assumptionRows).toBeGreaterThanOrEqual(firstAssumptions);
    expect(fit?.sources).toBeGreaterThanOrEqual(firstAssumptions);
  });

  test('identity: a section moves left when the right column is full', () => {
    const right = fitPageTwo(heights(pageTwo), 700, 3);
    const left = fitPageTwo(heights({ ...pageTwo, 'two-right-cautions': 330 }), 700, 3);
    expect([right?.excluded, left?.excluded]).toEqual([['right'], ['left']]);
  });

  test('identity: doubts stand right only when the first few fit there', () => {
    const doubts = {
      'two-head-left-doubts': 15,
      'two-head-right-doubts': 15,
      ...rows(9, 12, 'two-doubt-left-'),
      ...rows(9, 14, 'two-doubt-right-'),
    };
    const roomy = fitPageTwo(heights({ ...pageTwo, ...doubts }), 800, 3);
    const tight = fitPageTwo(heights({ ...pageTwo, ...doubts }), 710, 3);
    expect([roomy?.doubtsIn, tight?.doubtsIn]).toEqual([['right'], ['left']]);
    expect(roomy?.doubts).toBeLessThanOrEqual(9);
    expect(roomy?.doubts).toBeGreaterThanOrEqual(4);
  });

  test('regression: a full page two keeps the heading of the doubts, which counts what is left out', () => {
    const doubts = {
      'two-head-left-doubts': 26,
      'two-head-right-doubts': 26,
      ...rows(9, 12, 'two-doubt-left-'),
    };
    const blocks = { ...pageTwo, ...doubts, ...rows(9, 14, 'two-doubt-right-') };
    const rooms = Array.from({ length: 120 }, (_, i) => 560 + i);
    const bare = rooms.findIndex((room) => fitPageTwo(heights(pageTwo), room, 3) !== undefined);
    const kept = rooms.findIndex((room) => fitPageTwo(heights(blocks), room, 3) !== undefined);
    expect(bare).toBeGreaterThan(0);
    // Heading (26), its gap (3) and the first doubt (12) are found room for before anything is printed.
    expect(kept).toBe(bare + 41);
    expect(fitPageTwo(heights(blocks), rooms[kept] ?? 0, 3)).toMatchObject({ doubts: 1, doubtsIn: ['left'] });
    // As a last resort no doubt is printed, yet the heading with the count is: here the left column is the tight one.
    const narrow = {
      'two-right-financing': 20,
      'two-right-cautions': 20,
      ...rows(9, 400, 'two-doubt-right-'),
    };
    const low = Array.from({ length: 160 }, (_, i) => 280 + i);
    const leastRoom = (more: Record<string, number>) =>
      low.findIndex((room) => fitPageTwo(heights({ ...pageTwo, ...more, ...narrow }), room, 0) !== undefined);
    expect(leastRoom({})).toBeGreaterThan(0);
    expect(leastRoom({ ...doubts, ...rows(9, 12, 'two-doubt-left-') })).toBe(leastRoom({}) + 29);
  });

  test('identity: too high is told', () => {
    expect(fitPageTwo(heights(pageTwo), 500, 0)).toBeUndefined();
    expect(fitPageTwo(heights(pageTwo), 560, firstAssumptions)).toBeUndefined();
  });
});
