import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import type { CompressorStep } from '../diagnostics/healthy-unit/run-steps';
import { type SteadyState, speedSteps } from '../diagnostics/healthy-unit/steady-state';
import type { Unit } from '../visit/unit';
import type { Furnace } from './furnace';
import type { HouseLoad } from './house-load';

/** What a healthy unit can do in each temperature bin, at each of its speeds; computed once, scaled by losses. */
export type UnitBins = {
  readonly unit: HealthyUnit;
  readonly binF: readonly number[];
  /** Per bin, lowest speed first, frost averaged in; empty for cooling-only units and at or below the cut-out. */
  readonly heating: readonly (readonly CompressorStep[])[];
  readonly cooling: readonly (readonly CompressorStep[])[];
  /** Electric heat not locked out, per bin [kW]; 0 with a furnace. */
  readonly stripKw: readonly number[];
  /** Heats below its switch-over temperature, in place of strips. */
  readonly furnace?: Furnace;
};

/**
 * Performance in each bin at the rooms' conditions.
 *
 * @param unit  healthy unit
 * @param binF  bin temperatures [F]
 * @param load  room conditions
 * @param backUp  furnace that takes over in the cold; stages of the electric heat, if known
 * Check: tests/energy/unit-year.test.ts
 */
export function unitBins(
  unit: HealthyUnit,
  binF: readonly number[],
  load: HouseLoad,
  backUp: BackUp = {},
): UnitBins {
  const { furnace } = backUp;
  const lowestF = Math.max(unit.cutOutF, furnace?.switchOverF ?? unit.cutOutF);
  return {
    ...(furnace === undefined ? {} : { furnace }),
    unit,
    binF,
    stripKw: binF.map((outdoorF) =>
      furnace === undefined ? stripKwAt(unit.stripKw, backUp.stages, outdoorF) : 0,
    ),
    heating: binF.map((outdoorF) => (outdoorF <= lowestF ? [] : heatingSteps(unit, outdoorF, load))),
    cooling: binF.map((outdoorF) => {
      const indoorWetBulbF = load.coolingRoomWetBulbF;
      return speedSteps(unit, { mode: 'cooling', outdoorF, indoorWetBulbF, frost: 'none' }).map(stepOf);
    }),
  };
}

/** What helps the compressor in the cold besides plain electric heat. */
export type BackUp = {
  readonly furnace?: Furnace | undefined;
  readonly stages?: Unit['electricHeatStages'];
};

/** Electric heat whose stages are not locked out at an outdoor temperature [kW]. */
function stripKwAt(stripKw: number, stages: BackUp['stages'], outdoorF: number): number {
  if (stages === undefined) return stripKw;
  return stages.reduce(
    (sum, s) => sum + (s.lockOutAboveF === undefined || outdoorF <= s.lockOutAboveF ? s.sizeKw : 0),
    0,
  );
}

/**
 * Speeds in heating at one outdoor temperature; none where the compressor rests or the unit does not heat.
 *
 * Check: tests/energy/balance-points.test.ts
 */
export function heatingSteps(unit: HealthyUnit, outdoorF: number, load: HouseLoad): CompressorStep[] {
  if (unit.heating === undefined || outdoorF <= unit.cutOutF) return [];
  const indoorF = load.heatingRoomF;
  return speedSteps(unit, { mode: 'heating', outdoorF, indoorF, frost: 'smooth' }).map(stepOf);
}

function stepOf(state: SteadyState): CompressorStep {
  return { grossBtuh: state.capacityBtuh, outdoorW: state.outdoorUnitW, blowerW: state.blowerW };
}
