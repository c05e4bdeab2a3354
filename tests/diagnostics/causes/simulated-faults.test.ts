import { describe, expect, it } from 'vitest';
import type { CauseId } from '@/lib/visit/cause';
import { calibrateUnit } from '@/scripts/synthesis/calibrate';
import { asShown } from '@/scripts/synthesis/instruments';
import { synthesise } from '@/scripts/synthesis/synthesise';
import type { Conditions } from '@/scripts/synthesis/unit-spec';
import '../support/matchers';
import { confusionTable, shareWithin } from './confusion';
import { rankedFrom } from './diagnosed';
import { faultPairs, heldOutUnits, simulate, visitTo, withoutOwnTests } from './simulated-faults';
import { judgedSimulations, simulatedSingles } from './single-faults-judged';

/**
 * A cycle simulator of the project's own, which knows nothing of the pattern table, imposes the fault; instruments add
 * their noise. Units, weather and seeds were not looked at while the table's sizes were chosen. A fault counts when it
 * moves capacity or power by 5 % (simulated-faults.ts). What is missed, and why: fixed metering that floods in heating
 * hides charge and a fouled coil from each other (no superheat, both lower the suction); a part restriction of the
 * liquid line of 2 F drop reads like one of the metering device.
 */
describe('faults imposed on simulated units', () => {
  const cases = simulatedSingles();
  const all = judgedSimulations(cases);
  const felt = all.filter((one) => one.felt);

  it('outside: single faults: first in at least 92 %, among the first two in at least 97 %', () => {
    const message = confusionTable(felt);
    expect(felt.length).toBeGreaterThan(300);
    expect(shareWithin(felt, 1), message).toBeGreaterThanOrEqual(0.92);
    expect(shareWithin(felt, 2), message).toBeGreaterThanOrEqual(0.97);
  });

  it('outside: the same without standing pressure and second suction clamp: 90 % first, 97 % among two', () => {
    const plain = judgedSimulations(withoutOwnTests(cases)).filter((one) => one.felt);
    const message = confusionTable(plain);
    expect(shareWithin(plain, 1), message).toBeGreaterThanOrEqual(0.9);
    expect(shareWithin(plain, 2), message).toBeGreaterThanOrEqual(0.97);
  });

  it('outside: with the cases too weak to feel, still 88 % first and 95 % among the first two', () => {
    expect(all.length).toBeGreaterThan(felt.length);
    expect(shareWithin(all, 1)).toBeGreaterThanOrEqual(0.88);
    expect(shareWithin(all, 2)).toBeGreaterThanOrEqual(0.95);
  });

  it.each([
    ['fixedOrifice cooling', 0.95, 0.97],
    ['fixedOrifice heating', 0.87, 0.95],
    ['txv cooling', 0.97, 0.98],
    ['txv heating', 0.92, 0.98],
  ])('outside: %s: first in at least %d, among the first two in at least %d', (group, first, two) => {
    const own = felt.filter((one) => one.group === group);
    expect(own.length).toBeGreaterThan(70);
    expect(shareWithin(own, 1), confusionTable(own)).toBeGreaterThanOrEqual(first);
    expect(shareWithin(own, 2), confusionTable(own)).toBeGreaterThanOrEqual(two);
  });

  it('outside: two faults at once: both among the first three in at least 75 %', () => {
    const pairs = judgedSimulations(
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
