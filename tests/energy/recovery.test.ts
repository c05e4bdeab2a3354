import { describe, expect, it } from 'vitest';
import type { CauseFinding, CausesFound, Findings, Loss } from '@/lib/diagnostics/findings';
import beliefs from '@/lib/energy/data/cause-beliefs.json';
import data from '@/lib/energy/data/repair-effects.json';
import { causeChances, recoveriesOf, repairTreats, successFrac } from '@/lib/energy/recovery';
import { CauseId } from '@/lib/visit/cause';
import { RepairAction, type RepairChoice } from '@/lib/visit/choice';

const repair = (change: Partial<RepairChoice> = {}): RepairChoice => ({
  kind: 'repair',
  id: 'repair',
  name: 'Clean the orifice',
  priceLines: [],
  actions: ['meteringOrificeCleaning'],
  ...change,
});

function found(chances: Partial<Record<CauseId, number>>, verdict: CausesFound['verdict'] = 'found') {
  const { none = 0, ...causes } = chances;
  return {
    verdict,
    noFaultProbability: none,
    causes: Object.entries(causes).map(
      ([cause, probability]) => ({ cause, probability }) as unknown as CauseFinding,
    ),
    nextReadings: [],
    byRun: [],
    resolved: [],
    comparisons: [],
    notes: [],
  } satisfies CausesFound;
}

function lossWith(shares: Partial<Record<CauseId, number>>): Findings['loss'] {
  const list = Object.entries(shares).map(([cause, shareFrac]) => ({ cause: cause as CauseId, shareFrac }));
  return { cooling: { shares: list } as unknown as Loss };
}

const technician = (cause: CauseId) => ({ suspectedCause: { cause, saidBy: 'technician' as const } });
const fracs = (chances: ReturnType<typeof causeChances>) =>
  Object.fromEntries(chances.causes.map((c) => [c.cause ?? 'any', c.frac]));

describe('property: the table of repairs', () => {
  it('knows every action and only causes of the schema, in rising order within 0..1', () => {
    expect(Object.keys(data.actions).sort()).toEqual([...RepairAction.options].sort());
    expect(Object.keys(data.difficulty.actions).sort()).toEqual([...RepairAction.options].sort());
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

describe('property: chances of the cause behind the loss', () => {
  const causes = found({ meteringRestriction: 0.9, lowCharge: 0.3, none: 0.05 });
  const loss = lossWith({ meteringRestriction: 0.6, lowCharge: 0.15 });

  it('add up to one and follow the shares of the loss, the chance of no fault apart', () => {
    const chances = causeChances({ causes, loss });
    expect(chances.basis).toBe('readings');
    // by hand: 0.95 of all worlds have a fault, four fifths of them by the loss of the first cause
    expect(fracs(chances).meteringRestriction).toBeCloseTo(0.95 * 0.8, 12);
    expect(fracs(chances).lowCharge).toBeCloseTo(0.95 * 0.2, 12);
    expect(fracs(chances).none).toBeCloseTo(0.05, 12);
    const explained = 0.75 / 0.95;
    expect(chances.explainedFrac.low).toBeCloseTo(explained, 12);
    const { likely } = beliefs.values.unexplainedToCause;
    expect(chances.explainedFrac.likely).toBeCloseTo(explained + (1 - explained) * likely, 12);
  });

  it('the suspicion multiplies the odds of its cause by the stated ratio, and no more', () => {
    const odds = (f: Record<string, number>) => (f.lowCharge ?? 0) / (f.meteringRestriction ?? 1);
    const without = fracs(causeChances({ causes, loss }));
    const suspected = fracs(causeChances({ causes, loss, ...technician('lowCharge') }));
    expect(odds(suspected) / odds(without)).toBeCloseTo(beliefs.values.suspicionRatio.value, 9);
    const stray = fracs(causeChances({ causes, loss, ...technician('overcharge') }));
    expect(stray.overcharge).toBeGreaterThan(0);
    expect(stray.overcharge).toBeLessThan(0.05);
    expect(Object.values(stray).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  it('with too few readings the suspicion stands alone; without one every repair meets its own cause', () => {
    const few = found({ none: 0.2 }, 'tooFewReadings');
    expect(causeChances({ causes: few, loss: {}, ...technician('lowCharge') })).toMatchObject({
      basis: 'suspicion',
      causes: [{ cause: 'lowCharge', frac: 1 }],
    });
    expect(causeChances({ causes: few, loss: {} })).toMatchObject({
      basis: 'unnamed',
      causes: [{ frac: 1 }],
    });
  });

  it('no fault found and nothing suspected is a chance of nothing wrong', () => {
    const none = causeChances({ causes: found({ none: 0.8 }, 'noFaultFound'), loss: {} });
    expect(none.causes).toEqual([{ cause: 'none', frac: 1 }]);
  });
});

describe('property: what a repair gives back', () => {
  const chances = causeChances({
    causes: found({ meteringRestriction: 0.7, lowCharge: 0.3 }),
    loss: lossWith({ meteringRestriction: 0.7, lowCharge: 0.3 }),
  });

  it('on average the share of the loss its cause explains, times what the action cures of it', () => {
    const back = recoveriesOf(repair(), chances);
    expect(back.map((r) => r.cause)).toEqual(['meteringRestriction']);
    const mean = back.reduce((sum, r) => sum + r.frac * r.recoveredFrac.likely, 0);
    expect(mean).toBeCloseTo(0.7 * data.actions.meteringOrificeCleaning.meteringRestriction.likely, 12);
  });

  it('a bundle meets every cause that one of its actions treats', () => {
    const bundle = repair({ actions: ['meteringOrificeCleaning', 'leakRepairAndRecharge'] });
    expect(recoveriesOf(bundle, chances).reduce((sum, r) => sum + r.frac, 0)).toBeCloseTo(1, 12);
    expect(recoveriesOf(repair({ actions: ['compressor'] }), chances)).toEqual([]);
  });

  it('of several actions for one cause the best one counts, but blockages of the air come off one by one', () => {
    const low = causeChances({ loss: {}, ...technician('lowCharge') });
    const both = repair({ actions: ['filterDrierAndRecharge', 'leakRepairAndRecharge'] });
    expect(recoveriesOf(both, low)[0]?.recoveredFrac).toEqual(data.actions.leakRepairAndRecharge.lowCharge);
    const air = causeChances({ loss: {}, ...technician('lowIndoorAirflow') });
    const two = repair({ actions: ['openRegisters', 'indoorCoilCleaning'] });
    expect(recoveriesOf(two, air)[0]?.recoveredFrac.likely).toBeCloseTo(1 - 0.5 * 0.4, 12);
    const twice = repair({ actions: ['openRegisters', 'openRegisters'] });
    expect(recoveriesOf(twice, air)[0]?.recoveredFrac.likely).toBeCloseTo(0.5, 12);
  });

  it('its own figures win over the table, but only where it treats the cause', () => {
    const own = { low: 0.5, likely: 0.6, high: 0.7 };
    const suspicion = causeChances({ loss: {}, ...technician('meteringRestriction') });
    expect(recoveriesOf(repair({ lossRecoveredFrac: own }), suspicion)[0]?.recoveredFrac).toEqual(own);
    const other = causeChances({ loss: {}, ...technician('lowCharge') });
    expect(recoveriesOf(repair({ lossRecoveredFrac: own }), other)).toEqual([]);
  });

  it('with no cause named it meets what it is meant for', () => {
    const unnamed = causeChances({ loss: {} });
    expect(recoveriesOf(repair(), unnamed)).toEqual([
      { frac: 1, recoveredFrac: data.actions.meteringOrificeCleaning.meteringRestriction },
    ]);
    expect(recoveriesOf(repair({ addresses: 'lowCharge' }), unnamed)).toEqual([]);
    expect(repairTreats(repair(), undefined)).toBe(true);
  });
});

it('property: a simple job cures more often than the assumption says, one aimed elsewhere never', () => {
  const capacitor = repair({ actions: ['runCapacitor'] });
  expect(successFrac(capacitor, 'runCapacitorWeak', 'readings', 0.85)).toBeGreaterThan(0.95);
  expect(successFrac(capacitor, 'runCapacitorWeak', 'suspicion', 0.85)).toBe(0.85);
  expect(successFrac(capacitor, 'lowCharge', 'readings', 0.85)).toBe(0);
  expect(successFrac(repair(), 'meteringRestriction', 'readings', 1)).toBe(1);
  expect(successFrac(repair(), 'meteringRestriction', 'readings', 0)).toBe(0);
});
