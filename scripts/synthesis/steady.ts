import { invariant } from '../../lib/math/invariant';
import type { Circuit, Operation, SimulatedUnit, Unknowns } from './circuit';
import { type CycleState, cycleState } from './cycle-state';
import { airOf } from './moist-air';
import { solveThree, type Triple } from './solve-three';

/** Finest walk tried from the rating point to the operation asked for. */
const FINEST_STEPS = 128;

/**
 * Steady state of a unit under given conditions and faults.
 *
 * Tries a rule-of-thumb guess first; if that fails, walks from the rating point, where the state is known, to the
 * operation asked for, in as few steps as work.
 * @throws invariant if no steady state is found (a fault too large for the unit to run)
 * Check: tests/synthesis/cycle.test.ts
 */
export function steadyState(unit: SimulatedUnit, circuit: Circuit, operation: Operation): CycleState {
  const direct = fromGuess(unit, circuit, operation);
  if (direct !== undefined) return direct;
  for (let steps = 2; steps <= FINEST_STEPS; steps *= 4) {
    const found = walkTo(unit, circuit, operation, steps);
    if (found !== undefined) return found;
  }
  invariant(false, `no steady state: ${JSON.stringify({ spec: unit.spec, mode: circuit.mode, operation })}`);
}

/** How both dew temperatures follow the air, in F per F: enough for a first guess. */
const GUESS = {
  cooling: { lowByOutdoor: 0.1, lowByReturn: 0.35, highByOutdoor: 1, highByReturn: 0.1 },
  heating: { lowByOutdoor: 0.8, lowByReturn: 0, highByOutdoor: 0.35, highByReturn: 0.9 },
} as const;

function fromGuess(unit: SimulatedUnit, circuit: Circuit, operation: Operation): CycleState | undefined {
  const k = GUESS[circuit.mode];
  const outdoorFd = operation.outdoorAir.airF - circuit.ratedOperation.outdoorAir.airF;
  const returnFd = operation.returnAir.airF - circuit.ratedOperation.returnAir.airF;
  const rated = circuit.ratedUnknowns;
  const start: Triple = [
    rated.evaporatingF + k.lowByOutdoor * outdoorFd + k.lowByReturn * returnFd,
    rated.condensingF + k.highByOutdoor * outdoorFd + k.highByReturn * returnFd,
    rated.suctionOverVapourBtuLb,
  ];
  const misses = (x: Triple): Triple => cycleState(unit, circuit, operation, unknowns(x)).misses;
  const solution = solveThree(misses, start);
  return solution.kind === 'solved' ? cycleState(unit, circuit, operation, unknowns(solution.at)) : undefined;
}

function walkTo(
  unit: SimulatedUnit,
  circuit: Circuit,
  operation: Operation,
  steps: number,
): CycleState | undefined {
  let at = triple(circuit.ratedUnknowns);
  let before = at;
  for (let i = 1; i <= steps; i += 1) {
    const here = between(circuit.ratedOperation, operation, i / steps);
    const misses = (x: Triple): Triple => cycleState(unit, circuit, here, unknowns(x)).misses;
    const ahead: Triple = [2 * at[0] - before[0], 2 * at[1] - before[1], 2 * at[2] - before[2]];
    let solution = solveThree(misses, i === 1 ? at : ahead);
    if (solution.kind === 'stuck') solution = solveThree(misses, at);
    if (solution.kind === 'stuck') return undefined;
    before = at;
    at = solution.at;
  }
  return cycleState(unit, circuit, operation, unknowns(at));
}

function triple(u: Unknowns): Triple {
  return [u.evaporatingF, u.condensingF, u.suctionOverVapourBtuLb];
}

function unknowns(x: Triple): Unknowns {
  return { evaporatingF: x[0], condensingF: x[1], suctionOverVapourBtuLb: x[2] };
}

function between(from: Operation, to: Operation, share: number): Operation {
  const mix = (a: number, b: number): number => (share === 1 ? b : a + share * (b - a));
  const air = (a: Operation['outdoorAir'], b: Operation['outdoorAir']) =>
    airOf(mix(a.airF, b.airF), mix(a.humidityRatio, b.humidityRatio), mix(a.psia, b.psia));
  return {
    outdoorAir: air(from.outdoorAir, to.outdoorAir),
    returnAir: air(from.returnAir, to.returnAir),
    indoorCfm: mix(from.indoorCfm, to.indoorCfm),
    outdoorCfm: mix(from.outdoorCfm, to.outdoorCfm),
    indoorCleanFrac: mix(from.indoorCleanFrac, to.indoorCleanFrac),
    outdoorCleanFrac: mix(from.outdoorCleanFrac, to.outdoorCleanFrac),
    chargeFrac: mix(from.chargeFrac, to.chargeFrac),
    blockedFrac: mix(from.blockedFrac, to.blockedFrac),
    liquidDropPsi: mix(from.liquidDropPsi, to.liquidDropPsi),
    airInRefrigerantPsi: mix(from.airInRefrigerantPsi, to.airInRefrigerantPsi),
    valveLeakFrac: mix(from.valveLeakFrac, to.valveLeakFrac),
    reversingLeakFrac: mix(from.reversingLeakFrac, to.reversingLeakFrac),
    capDeficitFrac: mix(from.capDeficitFrac, to.capDeficitFrac),
  };
}
