import { describe, expect, it } from 'vitest';
import type { CauseId } from '@/lib/visit/cause';
import { calibrateUnit } from '@/scripts/synthesis/calibrate';
import { asShown } from '@/scripts/synthesis/instruments';
import { synthesise } from '@/scripts/synthesis/synthesise';
import type { Conditions } from '@/scripts/synthesis/unit-spec';
import '../support/matchers';
import { confusionTable, type Judged, shareWithin } from './confusion';
import { rankedFrom } from './diagnosed';
import {
  faultPairs,
  heldOutUnits,
  type Simulated,
  simulate,
  singleFaults,
  visitTo,
} from './simulated-faults';

function judge(cases: readonly Simulated[]): readonly Judged[] {
  return cases.map(({ truth, visit }) => ({ truth, order: rankedFrom(visit).map(({ cause }) => cause) }));
}

/**
 * A cycle simulator of the project's own, which knows nothing of the pattern table, imposes the fault; instruments add
 * their noise. Units and weather were not looked at while the table's sizes were chosen. What is missed, and why:
 * fixed metering that floods in heating hides compressor, reversing valve and charge (no superheat, no heat balance);
 * a valve hides a restriction until it is fully open; air in the circuit and a fouled coil, compressor and reversing
 * valve share their picture and need the test their entry names.
 */
describe('faults imposed on simulated units', () => {
  const simulated = simulate(
    singleFaults.map(([cause, faults]) => [cause, faults, false]),
    100,
  );
  const singles = judge(simulated);

  it('outside: single faults: first in at least 78 %, among the first two in at least 90 %', () => {
    const message = confusionTable(singles);
    expect(singles.length).toBeGreaterThan(300);
    expect(shareWithin(singles, 1), message).toBeGreaterThanOrEqual(0.78);
    expect(shareWithin(singles, 2), message).toBeGreaterThanOrEqual(0.9);
  });

  it('outside: with an expansion valve in cooling: first in at least 88 %, among the first two in 97 %', () => {
    const own = singles.filter((_, i) => simulated[i]?.name.includes('txv cooling'));
    expect(own.length).toBeGreaterThan(70);
    expect(shareWithin(own, 1), confusionTable(own)).toBeGreaterThanOrEqual(0.88);
    expect(shareWithin(own, 2), confusionTable(own)).toBeGreaterThanOrEqual(0.97);
  });

  it('outside: two faults at once: both among the first three in at least 75 %', () => {
    const pairs = judge(
      simulate(
        faultPairs.map(([causes, faults]) => [causes, faults, true]),
        9_000,
      ),
    );
    expect(pairs.length).toBeGreaterThan(90);
    expect(shareWithin(pairs, 3), confusionTable(pairs)).toBeGreaterThanOrEqual(0.75);
  });
});

describe('healthy simulated units stay healthy', () => {
  const DRAWS = 25;
  const cooling = [70, 80, 90, 99, 107].map(
    (outdoorF, i): Conditions => ({
      mode: 'cooling',
      outdoorF,
      returnF: 73 + i,
      returnWetBulbF: 61 + 1.5 * i,
    }),
  );
  const heating = [21, 30, 40, 51, 61].map(
    (outdoorF, i): Conditions => ({ mode: 'heating', outdoorF, returnF: 67 + i }),
  );

  it('outside: 1,000 noisy draws over 70-107 F and 21-61 F: no fault found or below 30 % in 95 %', () => {
    let seed = 50_000;
    const tops: { readonly name: string; readonly first: CauseId; readonly chance: number }[] = [];
    for (const spec of heldOutUnits) {
      const unit = calibrateUnit(spec);
      for (const conditions of [...cooling, ...heating]) {
        const { run, truth } = synthesise(unit, conditions, []);
        for (let k = 0; k < DRAWS; k += 1) {
          seed += 1;
          const order = rankedFrom(visitTo(spec, { ...run, ...asShown(truth.readings, seed) }));
          const worst = order.find(({ cause }) => cause !== 'none');
          tops.push({
            name: `${spec.refrigerant} ${spec.metering} ${conditions.mode} ${conditions.outdoorF} F: ${worst?.cause}`,
            first: order[0]?.cause ?? 'none',
            chance: worst?.chance ?? 0,
          });
        }
      }
    }
    const alarms = tops.filter(({ first, chance }) => first !== 'none' && chance >= 0.3);
    expect(tops).toHaveLength(1_000);
    expect(
      alarms.length / tops.length,
      [...new Set(alarms.map(({ name }) => name))].join('\n'),
    ).toBeLessThanOrEqual(0.05);
  });
});
