import { describe, expect, it } from 'vitest';
import { grilleGrossArea } from '@/lib/diagnostics/derived/air-side';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { grilleMeasuring } from '@/lib/diagnostics/measuring/grille';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

describe('grille traverse', () => {
  // One point for each 6 x 6 in, at least 9: common practice, no source.
  it.each([
    [undefined, 9],
    [200, 9],
    [400, 12],
    [600, 17],
    [3_000, 60],
  ])('identity: a grille of %s in2 asks for %d points', (grilleAreaIn2, points) => {
    const run = { mode: 'cooling', ...(grilleAreaIn2 === undefined ? {} : { grilleAreaIn2 }) } as const;
    expect(grilleMeasuring(contextOfRun(run)).advisedCount).toBe(points);
  });

  // Sample standard deviation of 2, 4, 4, 4, 5, 5, 7, 9: sqrt(32 / 7) = 2.138 (textbook example), status memory.
  it('outside: mean and spread of the points are those of a sample', () => {
    const grilleFacePointsFpm = [200, 400, 400, 400, 500, 500, 700, 900];
    const { traverse } = grilleMeasuring(contextOfRun({ mode: 'cooling', grilleFacePointsFpm }));
    expect(traverse).toMatchObject({
      pointCount: 8,
      meanFpm: 500,
      lowestFpm: 200,
      highestFpm: 900,
      uneven: true,
    });
    expect(traverse?.spreadFpm).toBeCloseToWithin(213.8, 0.05);
  });

  // 450 fpm: grille maker's engineering data, return sizing page, status read.
  it('outside: faster than 450 fpm is more than a filter grille is made for', () => {
    const of = (fpm: number) =>
      grilleMeasuring(contextOfRun({ mode: 'cooling', grilleFacePointsFpm: [fpm, fpm] })).traverse;
    expect(of(450)).toMatchObject({ fast: false, uneven: false });
    expect(of(451)).toMatchObject({ fast: true });
  });

  it('identity: one point has no spread, and points beat a typed mean', () => {
    const context = contextOfRun({ mode: 'cooling', grilleFacePointsFpm: [300], grilleFaceFpm: 400 });
    const found = grilleMeasuring(context);
    expect(found.meanIgnored).toBe(true);
    expect(found.traverse).toEqual({
      pointCount: 1,
      meanFpm: 300,
      lowestFpm: 300,
      highestFpm: 300,
      uneven: false,
      fast: false,
    });
  });

  it('identity: width x height is the gross area, and a typed area beats it', () => {
    const sides = { mode: 'cooling', grilleWidthIn: 20, grilleHeightIn: 20 } as const;
    expect(grilleGrossArea(contextOfRun(sides))?.value).toBe(400);
    expect(grilleGrossArea(contextOfRun({ ...sides, grilleAreaIn2: 380 }))).toBeUndefined();
    const airflow = (part: object) =>
      derivedById(
        deriveRun(contextOfRun({ ...sides, grilleFreeAreaFrac: 0.7, grilleFaceFpm: 500, ...part })),
        'airflowGrilleCfm',
      )?.value;
    // 500 fpm x 400 in2 x 0.70 / 144
    expect(airflow({})).toBeCloseToWithin(972.2, 0.1);
    expect(airflow({ grilleAreaIn2: 380 })).toBeCloseToWithin(923.6, 0.1);
  });

  it('identity: the free-area factor is the typed one, else the assumption with its source', () => {
    const typed = grilleMeasuring(contextOfRun({ mode: 'cooling', grilleFreeAreaFrac: 0.85 }));
    expect(typed).toMatchObject({ freeAreaFrac: 0.85, freeAreaBasis: 'measured' });
    const assumed = grilleMeasuring(contextOfRun({ mode: 'cooling' }));
    expect(assumed).toMatchObject({ freeAreaFrac: 0.7, freeAreaBasis: 'assumed' });
    expect(assumed.freeAreaSource).toContain('no source');
  });
});
