import { describe, expect, it } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { demoVisits } from '../../scripts/synthesis/demo/demo-visits';

const ends = new Map(
  demoVisits().map((visit) => {
    const { comparison } = appraise(visit);
    const lowest = comparison.choices.find((choice) => choice.id === comparison.lowestTotalId);
    return [visit.id, { kind: lowest?.kind, same: comparison.aboutTheSameIds.length }] as const;
  }),
);

describe('how the invented visits end', () => {
  it('wiring: leaving, repairing and replacing each cost least somewhere, as each story is meant', () => {
    expect(ends.get('healthy')?.kind).toBe('leave');
    expect(ends.get('low-charge')?.kind).toBe('repair');
    expect(ends.get('short-stay')?.kind).toBe('repair');
    expect(ends.get('end-of-life')?.kind).toBe('replace');
  });

  it('wiring: three readings leave everything open', () => {
    expect(ends.get('few-readings')?.same).toBeGreaterThanOrEqual(2);
  });

  it('wiring: no visit is left out', () => {
    expect(ends.size).toBe(9);
  });
});
