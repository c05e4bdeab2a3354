import { describe, expect, it } from 'vitest';
import { severityOf, severityScale } from '@/lib/diagnostics/fault-effects/severity';
import en from '@/lib/diagnostics/fault-effects/wording/en.json';
import { CauseId } from '@/lib/visit/cause';

describe('wiring: severity scale', () => {
  it.each(CauseId.options)('%s: rising levels, a meaning in words, a source', (cause) => {
    const { mild, moderate, severe, meaning, source, status } = severityScale(cause);
    expect(0 < mild && mild < moderate && moderate < severe).toBe(true);
    expect(Object.keys(en)).toContain(meaning.code);
    expect(source.length * status.length).toBeGreaterThan(0);
  });

  it('identity: each level of the scale has its own word, at its borders too', () => {
    const faults = CauseId.options.filter((cause) => cause !== 'none');
    expect(faults).toHaveLength(11);
    for (const cause of faults) {
      const { mild, moderate, severe } = severityScale(cause);
      expect([0, mild, moderate, severe, 2 * severe].map((level) => severityOf(cause, level))).toEqual([
        'slight',
        'mild',
        'moderate',
        'severe',
        'severe',
      ]);
      const borders = [mild / 2, (mild + moderate) / 2, (moderate + severe) / 2];
      expect(borders.map((level) => severityOf(cause, level))).toEqual(['mild', 'moderate', 'severe']);
      expect(borders.map((level) => severityOf(cause, level - 1e-9))).toEqual(['slight', 'mild', 'moderate']);
    }
  });
});
