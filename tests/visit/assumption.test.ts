import { expect, it } from 'vitest';
import { resolveAssumption } from '@/lib/visit/assumption';
import { assumptionKeys } from '@/lib/visit/assumption-keys';

it('wiring: every default is ordered, finite and has unit, label, source and status', () => {
  expect(assumptionKeys.length).toBeGreaterThan(20);
  for (const key of assumptionKeys) {
    const a = resolveAssumption([], key);
    expect(a.low <= a.likely && a.likely <= a.high, key).toBe(true);
    expect([a.low, a.likely, a.high].every(Number.isFinite), key).toBe(true);
    expect(a.source.length, key).toBeGreaterThan(10);
    expect(['read', 'secondary', 'memory', 'computed', 'assumption'], key).toContain(a.status);
    expect(a).toMatchObject({ key, basis: 'assumed', setBy: 'keepworth' });
  }
});

it("wiring: the visit's own value wins and keeps who set it", () => {
  const own = {
    key: 'shellLossFrac' as const,
    low: 0.05,
    likely: 0.06,
    high: 0.07,
    source: 'blanketed compressor',
  };
  expect(resolveAssumption([own], 'shellLossFrac')).toMatchObject({
    likely: 0.06,
    setBy: 'visit',
    source: 'blanketed compressor',
  });
});
