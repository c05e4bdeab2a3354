import { describe, expect, it } from 'vitest';
import { isTarget, judged } from '@/lib/diagnostics/targets/build-target';

const part = { id: 'x', value: 10, low: 8, high: 12, unit: 'Fd', source: 's', status: 'read' };

describe('verdict', () => {
  it.each([
    [7.99, 'below'],
    [8, 'within'],
    [12, 'within'],
    [12.01, 'above'],
  ] as const)('identity: %f against 8..12 is %s', (reading, verdict) => {
    expect(judged(part, reading)).toMatchObject({ reading, verdict });
  });

  it('identity: rounding in the last digit does not put a limit outside', () => {
    expect(judged({ ...part, low: -0.1 }, (4.5 - 5) / 5).verdict).toBe('within');
    expect(judged({ ...part, low: 0, high: 0.3 }, 0.1 + 0.2).verdict).toBe('within');
  });

  it('identity: no reading, no verdict', () => {
    expect(judged(part, undefined)).toEqual(part);
  });

  it('identity: a missing rule is not a target', () => {
    expect(isTarget({ id: 'x', note: { code: 'noTargetDash' } })).toBe(false);
    expect(isTarget(part)).toBe(true);
  });
});
