import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapTableValue } from '@/lib/diagnostics/targets/gap-table';
import { targetSplitFd, targetSuperheatFd } from '@/lib/diagnostics/targets/target-superheat';
import tables from '../../reference/field-tables.json';
import '../support/matchers';

type Rows = Readonly<Record<string, readonly (number | null)[]>>;
type Cell = { readonly row: number; readonly column: number; readonly expected: number | null };

function cells(data: Rows, columns: readonly number[]): Cell[] {
  return Object.entries(data).flatMap(([row, values]) =>
    columns.map((column, j) => ({ row: Number(row), column, expected: values[j] ?? null })),
  );
}

const superheat = cells(tables.target_superheat_t24.data, tables.target_superheat_t24.wet_bulb_f);
const maker = cells(tables.target_superheat_maker.data, tables.target_superheat_maker.wet_bulb_f);
const split = cells(tables.target_temp_split_t24.data, tables.target_temp_split_t24.wet_bulb_f);

describe('regulatory target superheat (California Energy Commission, RA3.2; recalled, see its status)', () => {
  it('outside: every tabulated point, dash for dash', () => {
    const wrong = superheat.filter(({ row, column, expected }) => {
      const found = targetSuperheatFd(row, column);
      return expected === null
        ? found.kind !== 'none' || found.why !== 'dash'
        : found.kind !== 'value' || Math.abs(found.value - expected) > 1e-9;
    });
    expect(superheat).toHaveLength(61 * 27);
    expect(superheat.filter((cell) => cell.expected === null).length).toBeGreaterThan(500);
    expect(wrong).toEqual([]);
  });

  // Table common to three makers' installation instructions, read. Makers differ among themselves by 1-2 F in a few
  // cells, hence 1.6 F at worst; on average 0.5 F.
  it("outside: within 1.6 F of the makers' charging table, 0.5 F on average; dashes agree but for three cells", () => {
    const both = maker.flatMap(({ row, column, expected }) => {
      const found = targetSuperheatFd(row, column);
      return expected !== null && found.kind === 'value' ? [found.value - expected] : [];
    });
    const dashes = maker.filter(({ row, column, expected }) => {
      const isDash = targetSuperheatFd(row, column).kind === 'none';
      return isDash !== (expected === null);
    });
    expect(both).toHaveLength(115);
    expect(Math.max(...both.map(Math.abs))).toBeLessThanOrEqual(1.6);
    expect(Math.abs(both.reduce((sum, d) => sum + d, 0) / both.length)).toBeLessThan(0.5);
    expect(dashes.map((cell) => cell.expected)).toEqual([5, 5, 5]);
  });

  // A trade page's chart, read: 66 F wet bulb and 90 F outdoors give 13 F; read to the degree.
  it('outside: 66 F wet bulb at 90 F outdoors is 13 F', () => {
    const found = targetSuperheatFd(90, 66);
    expect(found.kind === 'value' ? found.value : undefined).toBeCloseToWithin(13, 0.5);
  });

  // Trade estimate (3 WB - 80 - DB) / 2, read; its error against the table is -6.4 to +3.1 F, mean -0.42 F.
  it('outside: the trade estimate misses the table by -6.4 to +3.1 F, -0.42 F on average', () => {
    const misses = superheat.flatMap(({ row, column, expected }) =>
      expected === null ? [] : [(3 * column - 80 - row) / 2 - expected],
    );
    expect(misses).toHaveLength(1_054);
    expect(Math.min(...misses)).toBeCloseToWithin(-6.4, 0.06);
    expect(Math.max(...misses)).toBeCloseToWithin(3.1, 0.06);
    expect(misses.reduce((sum, d) => sum + d, 0) / misses.length).toBeCloseToWithin(-0.42, 0.006);
  });

  it('identity: limits are inside, a hair beyond is outside and says on which side', () => {
    expect(targetSuperheatFd(55, 60).kind).toBe('value');
    expect(targetSuperheatFd(54.99, 60)).toEqual({ kind: 'none', why: 'rowBelow' });
    expect(targetSuperheatFd(115, 76).kind).toBe('value');
    expect(targetSuperheatFd(115.01, 76)).toEqual({ kind: 'none', why: 'rowAbove' });
    expect(targetSuperheatFd(60, 49.99)).toEqual({ kind: 'none', why: 'columnBelow' });
    expect(targetSuperheatFd(60, 76.01)).toEqual({ kind: 'none', why: 'columnAbove' });
  });

  it('identity: a target beside a dash stands at its own point and is gone between', () => {
    // 95 F outdoors: 64 F wet bulb is tabulated, 63 F is a dash
    expect(targetSuperheatFd(95, 64).kind).toBe('value');
    expect(targetSuperheatFd(95, 63.5)).toEqual({ kind: 'none', why: 'dash' });
  });

  it('property: hotter outdoors never raises the target, more humid air never lowers it', () => {
    const valueOr = (outdoorF: number, wetF: number, other: number) => {
      const found = targetSuperheatFd(outdoorF, wetF);
      return found.kind === 'value' ? found.value : other;
    };
    fc.assert(
      fc.property(
        fc.double({ min: 55, max: 114, noNaN: true }),
        fc.double({ min: 50, max: 75, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (outdoorF, wetF, step) => {
          const base = valueOr(outdoorF, wetF, 0);
          // 0.15 F of slack: cells are printed to 0.1 F
          expect(valueOr(outdoorF + step, wetF, 0)).toBeLessThanOrEqual(base + 0.15);
          expect(valueOr(outdoorF, wetF + step, 1e9)).toBeGreaterThanOrEqual(base - 0.15);
        },
      ),
      { seed: 21, numRuns: 300 },
    );
  });
});

describe('regulatory temperature split (California Energy Commission, RA3.2-3, 2008; recalled, see its status)', () => {
  it('outside: every tabulated point, dash for dash', () => {
    const wrong = split.filter(({ row, column, expected }) => {
      const found = targetSplitFd(row, column);
      return expected === null
        ? found.kind !== 'none'
        : found.kind !== 'value' || Math.abs(found.value - expected) > 1e-9;
    });
    expect(split).toHaveLength(15 * 27);
    expect(split.filter((cell) => cell.expected !== null)).toHaveLength(357);
    expect(wrong).toEqual([]);
  });

  it('outside: all cells lie on one quadratic surface within 0.06 F, so a mistyped cell would show', () => {
    const fit = tables.target_temp_split_t24.fit;
    const misses = split.flatMap(({ row, column, expected }) => {
      if (expected === null) return [];
      const x = (column - 63) / 10;
      const y = (row - 77) / 10;
      return [
        Math.abs(
          fit.c0 + fit.y * y + fit.x * x + fit.x2 * x * x + fit.xy * x * y + fit.x3 * x ** 3 - expected,
        ),
      ];
    });
    expect(misses).toHaveLength(357);
    expect(Math.max(...misses)).toBeLessThan(0.06);
  });

  it('identity: outside 70-84 F and 50-76 F there is no target', () => {
    expect(targetSplitFd(69.9, 60).kind).toBe('none');
    expect(targetSplitFd(84.1, 60).kind).toBe('none');
    expect(targetSplitFd(75, 76.1).kind).toBe('none');
    expect(targetSplitFd(75, 62.5).kind).toBe('value');
  });
});

describe('a table with dashes', () => {
  const table = {
    rows: [0, 10],
    columns: [0, 10],
    cells: [
      [0, 10],
      [20, null],
    ],
  };

  it('identity: bilinear inside, a dash only where it counts', () => {
    expect(gapTableValue(table, 5, 0)).toEqual({ kind: 'value', value: 10 });
    expect(gapTableValue(table, 0, 5)).toEqual({ kind: 'value', value: 5 });
    expect(gapTableValue(table, 10, 0)).toEqual({ kind: 'value', value: 20 });
    expect(gapTableValue(table, 1, 1)).toEqual({ kind: 'none', why: 'dash' });
  });
});
