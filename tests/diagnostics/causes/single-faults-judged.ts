import type { Judged } from './confusion';
import { rankedFrom } from './diagnosed';
import { type Simulated, simulate, singleFaults } from './simulated-faults';

/** First seed of the cases that are reported; sizes and priors were chosen on seeds from 700,000 and other units. */
export const REPORTED_SEED = 100;

export type JudgedSimulation = Judged & Pick<Simulated, 'name' | 'group' | 'felt'>;

/** Every single fault on every held-out unit, one draw of instrument noise each. */
export function simulatedSingles(firstSeed = REPORTED_SEED): readonly Simulated[] {
  return simulate(
    singleFaults.map(([cause, faults]) => [cause, faults, false]),
    firstSeed,
  );
}

/** Diagnosed cases: causes by falling chance beside the truth. */
export function judgedSimulations(cases: readonly Simulated[]): readonly JudgedSimulation[] {
  return cases.map(({ name, group, felt, truth, visit }) => ({
    name,
    group,
    felt,
    truth,
    order: rankedFrom(visit).map(({ cause }) => cause),
  }));
}
