import type { ReadingName, Run } from '../../lib/visit/run';
import { calibrateUnit } from './calibrate';
import type { SimulatedUnit } from './circuit';
import type { CycleState } from './cycle-state';
import { asShown } from './instruments';
import { circuitOf, operationOf } from './operation';
import { type TrueReadings, trueReadings } from './readings';
import { steadyState } from './steady';
import type { Conditions, ImposedFault, UnitSpec } from './unit-spec';

/** What nobody on the visit can see: the state behind the readings. */
export type Truth = {
  /** Coil capacity, without blower heat [Btu/h]. */
  readonly capacityBtuh: number;
  readonly outdoorUnitW: number;
  readonly healthyCapacityBtuh: number;
  readonly healthyOutdoorUnitW: number;
  readonly capacityRatioToHealthy: number;
  readonly powerRatioToHealthy: number;
  readonly airflowCfm: number;
  readonly readings: TrueReadings;
  readonly healthyReadings: TrueReadings;
  readonly faults: readonly ImposedFault[];
};

export type SynthesisOptions = {
  readonly id?: string;
  readonly label?: string;
  /** Seed of the instruments' noise; left out = exact, only rounded. */
  readonly noiseSeed?: number;
  /** Readings taken; left out = all. */
  readonly keep?: readonly ReadingName[];
};

export type Synthesis = { readonly run: Run; readonly truth: Truth };

/**
 * Readings of a simulated unit with faults imposed, and the truth behind them.
 *
 * Independent of the diagnostics: only the published equations of state and the math folder are shared.
 * @param unitSpec unit, or one already sized by `calibrateUnit`
 * @param conditions where and in which mode
 * @param faults imposed faults; empty = healthy
 * @param options id, label, noise, which readings are taken
 * @throws invariant if a fault is so large that no steady state exists
 * Source: scripts/synthesis/data
 * Check: tests/synthesis/synthesise.test.ts
 */
export function synthesise(
  unitSpec: UnitSpec | SimulatedUnit,
  conditions: Conditions,
  faults: readonly ImposedFault[],
  options: SynthesisOptions = {},
): Synthesis {
  const unit = sized(unitSpec);
  const state = stateOf(unit, conditions, faults);
  const healthy = faults.length === 0 ? state : healthyStateOf(unit, conditions);
  const readings = trueReadings(unit, conditions, faults, state);
  const capacityBtuh = capacityOf(conditions, state);
  const healthyCapacityBtuh = capacityOf(conditions, healthy);
  const outdoorUnitW = state.compression.powerW + unit.outdoorFanW;
  const healthyOutdoorUnitW = healthy.compression.powerW + unit.outdoorFanW;
  return {
    run: runOf(conditions, readings, options),
    truth: {
      capacityBtuh,
      outdoorUnitW,
      healthyCapacityBtuh,
      healthyOutdoorUnitW,
      capacityRatioToHealthy: capacityBtuh / healthyCapacityBtuh,
      powerRatioToHealthy: outdoorUnitW / healthyOutdoorUnitW,
      airflowCfm: readings.airflowCfm ?? unit.indoorCfm,
      readings,
      healthyReadings: trueReadings(unit, conditions, [], healthy),
      faults,
    },
  };
}

const healthyStates = new WeakMap<SimulatedUnit, Map<string, CycleState>>();

/** The healthy state is asked for again with every fault, so it is kept. */
function healthyStateOf(unit: SimulatedUnit, conditions: Conditions): CycleState {
  const ofUnit = healthyStates.get(unit) ?? new Map<string, CycleState>();
  healthyStates.set(unit, ofUnit);
  const key = JSON.stringify(conditions);
  const known = ofUnit.get(key);
  if (known !== undefined) return known;
  const state = stateOf(unit, conditions, []);
  ofUnit.set(key, state);
  return state;
}

const sizedUnits = new Map<string, SimulatedUnit>();

function sized(unitSpec: UnitSpec | SimulatedUnit): SimulatedUnit {
  if (isSized(unitSpec)) return unitSpec;
  const key = JSON.stringify(unitSpec);
  const known = sizedUnits.get(key);
  if (known !== undefined) return known;
  const unit = calibrateUnit(unitSpec);
  sizedUnits.set(key, unit);
  return unit;
}

function isSized(unit: UnitSpec | SimulatedUnit): unit is SimulatedUnit {
  return typeof unit.compressor === 'object';
}

function stateOf(unit: SimulatedUnit, conditions: Conditions, faults: readonly ImposedFault[]): CycleState {
  return steadyState(unit, circuitOf(unit, conditions.mode), operationOf(unit, conditions, faults));
}

function capacityOf(conditions: Conditions, state: CycleState): number {
  return conditions.mode === 'cooling' ? state.evaporator.heatBtuh : state.condenser.heatBtuh;
}

const RUNNING_MINUTES = 20;

function runOf(conditions: Conditions, exact: TrueReadings, options: SynthesisOptions): Run {
  const kept = options.keep;
  const taken =
    kept === undefined
      ? exact
      : Object.fromEntries(Object.entries(exact).filter(([name]) => kept.includes(name as ReadingName)));
  return {
    id: options.id ?? conditions.mode,
    mode: conditions.mode,
    ...(options.label === undefined ? {} : { label: options.label }),
    runningMinutes: RUNNING_MINUTES,
    ...(conditions.electricHeatOn === undefined ? {} : { electricHeatOn: conditions.electricHeatOn }),
    ...asShown(taken, options.noiseSeed),
  };
}
