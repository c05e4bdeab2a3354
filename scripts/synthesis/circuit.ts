import type { Mode } from '../../lib/visit/run';
import type { Volumes } from './charge';
import type { Compressor } from './compressor';
import type { CondenserCoil } from './condenser';
import type { EvaporatorCoil } from './evaporator';
import type { Fluid } from './fluid';
import type { Metering } from './metering';
import type { Air } from './moist-air';
import type { UnitSpec } from './unit-spec';

/** What the solver looks for: dew temperatures of both sides, and suction enthalpy over that of saturated vapour. */
export type Unknowns = {
  readonly evaporatingF: number;
  readonly condensingF: number;
  readonly suctionOverVapourBtuLb: number;
};

/** The refrigerant circuit in one mode, with the coils in the parts they play there. */
export type Circuit = {
  readonly mode: Mode;
  readonly evaporator: EvaporatorCoil;
  readonly condenser: CondenserCoil;
  readonly metering: Metering;
  readonly volumes: Volumes;
  /** Charge that works in this mode; what an accumulator holds back is not counted. */
  readonly chargeLb: number;
  /** At the rating point. */
  readonly ratedFlowLbHr: number;
  readonly ratedPressureDifferencePsi: number;
  readonly ratedPowerW: number;
  readonly ratedCapacityBtuh: number;
  readonly ratedUnknowns: Unknowns;
  readonly ratedOperation: Operation;
};

/** A healthy unit with everything sized. */
export type SimulatedUnit = {
  readonly spec: UnitSpec;
  readonly fluid: Fluid;
  readonly compressor: Compressor;
  readonly indoorCfm: number;
  readonly outdoorCfm: number;
  readonly outdoorFanW: number;
  readonly cooling: Circuit;
  readonly heating?: Circuit;
};

/** Conditions and faults as the circuit feels them. All numbers, so that the solver can walk from one to another. */
export type Operation = {
  readonly outdoorAir: Air;
  readonly returnAir: Air;
  readonly indoorCfm: number;
  readonly outdoorCfm: number;
  readonly indoorCleanFrac: number;
  readonly outdoorCleanFrac: number;
  readonly chargeFrac: number;
  readonly blockedFrac: number;
  /** Pressure drop in the liquid line at the rated flow [psi]. */
  readonly liquidDropPsi: number;
  readonly airInRefrigerantPsi: number;
  readonly valveLeakFrac: number;
  readonly reversingLeakFrac: number;
  readonly capDeficitFrac: number;
};
