import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { staticBudget } from '@/lib/diagnostics/measuring/static-budget';
import type { Run } from '@/lib/visit/run';
import type { Unit } from '@/lib/visit/unit';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

function budget(part: Partial<Run>, unit: Partial<Unit> = {}) {
  return staticBudget(contextOfRun({ mode: 'cooling', ...part }, unit));
}

const whole = {
  returnStaticInWc: -0.4,
  supplyStaticInWc: 0.35,
  filterDropInWc: 0.25,
  coilDropInWc: 0.2,
} as const;

function amounts(found: ReturnType<typeof staticBudget>) {
  return found?.parts.map(({ id, inWc }) => [id, Math.round(inWc * 1_000) / 1_000]);
}

describe('static-pressure budget', () => {
  it('identity: filter out of the return, coil out of the side it lies in; the parts make the total', () => {
    const found = budget(whole, { coilCountedIn: 'supplyStatic' });
    expect(amounts(found)).toEqual([
      ['returnDucts', 0.15],
      ['filter', 0.25],
      ['coil', 0.2],
      ['supplyDucts', 0.15],
    ]);
    expect(found).toMatchObject({ totalInWc: 0.75, largest: 'filter' });
    expect(found?.parts.reduce((sum, { shareFrac }) => sum + (shareFrac ?? 0), 0)).toBeCloseToWithin(1, 1e-9);
    const before = budget({ ...whole, returnStaticInWc: -0.6 }, { coilCountedIn: 'returnStatic' });
    expect(amounts(before)).toEqual([
      ['returnDucts', 0.15],
      ['filter', 0.25],
      ['coil', 0.2],
      ['supplyDucts', 0.35],
    ]);
  });

  // Web duct-design guides, three agree, status read: clean 1-in filter 0.05-0.10, dirty 0.15-0.30; wet coil 0.15-0.30,
  // dirty 0.5; supply duct 0.1-0.2; return duct 0.05-0.15.
  it('outside: usual drops stay within, dirty ones are above', () => {
    const verdicts = (part: Partial<Run>) =>
      Object.fromEntries(
        budget({ ...whole, ...part }, { coilCountedIn: 'supplyStatic' })?.parts.map((p) => [
          p.id,
          p.verdict,
        ]) ?? [],
      );
    expect(verdicts({ returnStaticInWc: -0.2, filterDropInWc: 0.1 })).toEqual({
      returnDucts: 'within',
      filter: 'within',
      coil: 'within',
      supplyDucts: 'within',
    });
    expect(verdicts({ supplyStaticInWc: 0.9, coilDropInWc: 0.5 })).toMatchObject({
      filter: 'above',
      coil: 'above',
      supplyDucts: 'above',
    });
  });

  // 0.5 in. w.c. is what most blowers are rated at, 0.3-0.7 accepted in the field (trade training articles), status read.
  it.each([
    [0.25, {}, 'within'],
    [0.26, {}, 'overRated'],
    [0.46, {}, 'overLimit'],
    [0.46, { ratedStaticInWc: 0.8 }, 'within'],
    [0.6, { ratedStaticInWc: 0.8 }, 'overLimit'],
  ] as const)('outside: 0.25 and %d in. w.c. with %o is %s', (supplyStaticInWc, unit, verdict) => {
    expect(budget({ returnStaticInWc: -0.25, supplyStaticInWc }, unit)?.verdict).toBe(verdict);
  });

  it('identity: a coil that nobody placed stands apart and is asked for', () => {
    const found = budget(whole);
    expect(found).toMatchObject({ doubt: 'coilUnplaced', coilApart: { id: 'coil', inWc: 0.2 } });
    expect(amounts(found)).toEqual([
      ['returnDucts', 0.15],
      ['filter', 0.25],
      ['supplySide', 0.35],
    ]);
    expect(budget(whole, { coilCountedIn: 'neither' })?.doubt).toBeUndefined();
  });

  it('identity: a drop larger than its side is a doubt, and the side stays whole', () => {
    const filter = budget({ returnStaticInWc: -0.2, supplyStaticInWc: 0.3, filterDropInWc: 0.4 });
    expect(filter).toMatchObject({ doubt: 'filterBeyondReturn', totalInWc: 0.5 });
    expect(amounts(filter)).toEqual([
      ['returnSide', 0.2],
      ['supplyDucts', 0.3],
    ]);
    const coil = budget({ ...whole, supplyStaticInWc: 0.1 }, { coilCountedIn: 'supplyStatic' });
    expect(coil?.doubt).toBe('coilBeyondSupply');
    // 0.01 more than its side is within the manometer's 0.02 of each
    const close = budget({ returnStaticInWc: -0.2, supplyStaticInWc: 0.3, filterDropInWc: 0.21 });
    expect(close?.doubt).toBeUndefined();
    expect(amounts(close)).toEqual([
      ['returnDucts', 0],
      ['filter', 0.21],
      ['supplyDucts', 0.3],
    ]);
  });

  it('identity: without the filter drop the return side stays whole; without a side there is no total', () => {
    expect(amounts(budget({ returnStaticInWc: -0.4, supplyStaticInWc: 0.3 }))).toEqual([
      ['returnSide', 0.4],
      ['supplyDucts', 0.3],
    ]);
    const one = budget({ filterDropInWc: 0.3 });
    expect([one?.totalInWc, one?.verdict, one?.largest]).toEqual([undefined, undefined, undefined]);
    expect(one?.parts).toMatchObject([{ id: 'filter', verdict: 'above' }]);
    expect(budget({})).toBeUndefined();
  });

  it('property: parts are never negative, and make the total unless a drop outgrows its side', () => {
    const inWc = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(
      fc.property(inWc(1), inWc(1), inWc(0.5), inWc(0.5), (back, supply, filter, coil) => {
        const found = budget(
          {
            returnStaticInWc: -back,
            supplyStaticInWc: supply,
            filterDropInWc: Math.min(filter, back),
            coilDropInWc: Math.min(coil, supply),
          },
          { coilCountedIn: 'supplyStatic' },
        );
        const sum = found?.parts.reduce((total, part) => total + part.inWc, 0) ?? Number.NaN;
        expect(found?.parts.every((part) => part.inWc >= 0)).toBe(true);
        expect(sum).toBeCloseToWithin(found?.totalInWc ?? -1, 1e-9);
      }),
      { seed: 31, numRuns: 200 },
    );
  });
});
