import { describe, expect, it } from 'vitest';
import data from '@/lib/energy/data/repair-effects.json';
import { repairEffect, repairTreats } from '@/lib/energy/repair-effect';
import words from '@/lib/energy/wording/en.json';
import { CauseId } from '@/lib/visit/cause';
import { RepairAction, type RepairChoice } from '@/lib/visit/choice';

const phrases: Readonly<Record<string, string>> = words;
const repair = (change: Partial<RepairChoice> = {}): RepairChoice => ({
  kind: 'repair',
  id: 'repair',
  name: 'Clean the orifice',
  priceLines: [],
  actions: ['meteringOrificeCleaning'],
  ...change,
});

describe('property: the table of repairs', () => {
  it('knows every action and only causes of the schema, in rising order within 0..1', () => {
    expect(Object.keys(data.actions).sort()).toEqual([...RepairAction.options].sort());
    const rows = Object.values(data.actions).flatMap((cures) => Object.entries(cures));
    expect(rows.length).toBeGreaterThan(15);
    const wrong = rows.filter(
      ([cause, share]) =>
        !CauseId.safeParse(cause).success ||
        !(0 <= share.low && share.low <= share.likely && share.likely <= share.high && share.high <= 1),
    );
    expect(wrong).toEqual([]);
  });

  it('every cause but none can be treated by some action', () => {
    const treated = new Set(Object.values(data.actions).flatMap((cures) => Object.keys(cures)));
    const left = CauseId.options.filter((cause) => !treated.has(cause));
    expect(left).toEqual(['none', 'supplementaryHeatFault']);
  });
});

describe('wiring: what a repair gives back', () => {
  it('its table share when it treats the suspected cause', () => {
    const effect = repairEffect(repair(), 'meteringRestriction');
    expect(effect.recoveredFrac).toEqual(data.actions.meteringOrificeCleaning.meteringRestriction);
    expect(effect.notes).toEqual([]);
  });

  it('nothing when it treats another cause, even with figures of its own, and says so', () => {
    const own = { low: 0.5, likely: 0.6, high: 0.7 };
    const effect = repairEffect(repair({ lossRecoveredFrac: own }), 'lowCharge');
    expect(effect.recoveredFrac).toEqual({ low: 0, likely: 0, high: 0 });
    expect(phrases[effect.notes[0]?.code ?? '']).toBeDefined();
  });

  it('nothing when it is aimed at another cause than the suspected one, or when none is suspected', () => {
    const aimed = repair({ addresses: 'meteringRestriction' });
    for (const suspected of ['lowCharge', 'none'] as const) {
      expect(repairEffect(aimed, suspected).recoveredFrac, suspected).toEqual({ low: 0, likely: 0, high: 0 });
    }
  });

  it('the cause it is aimed at where nobody suspects one; its own figures win over the table', () => {
    const own = { low: 0.5, likely: 0.6, high: 0.7 };
    const aimed = repair({ addresses: 'meteringRestriction', lossRecoveredFrac: own });
    expect(repairEffect(aimed, undefined)).toMatchObject({
      cause: 'meteringRestriction',
      recoveredFrac: own,
      notes: [],
    });
  });

  it('with no cause named the actions are taken to meet their own, with a note', () => {
    const effect = repairEffect(repair(), undefined);
    expect(effect.recoveredFrac.likely).toBe(0.9);
    expect(effect.notes[0]?.code).toBe('repairCauseUnnamed');
    expect(phrases.repairCauseUnnamed).toBeDefined();
  });

  it('of several actions the best one counts', () => {
    const both = repair({ actions: ['filterDrierAndRecharge', 'leakRepairAndRecharge'] });
    expect(repairEffect(both, 'lowCharge').recoveredFrac).toEqual(
      data.actions.leakRepairAndRecharge.lowCharge,
    );
    expect(repairTreats(both, 'nonCondensables')).toBe(true);
    expect(repairTreats(both, 'outdoorCoilFouled')).toBe(false);
  });
});
