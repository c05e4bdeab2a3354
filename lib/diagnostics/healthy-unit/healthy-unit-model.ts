import type { Basis } from '../../visit/basis';
import type { BlowerKind, UnitKind } from '../../visit/unit';
import type { Saying } from '../../visit/wording';
import type { CurveName } from './performance-curve';
import type { Procedure } from './seasonal-rating';
import type { SpeedTable } from './speed-table';

export type Tier = 'singleSpeed' | 'twoSpeed' | 'variableSpeed';

/** One figure the model rests on, with where it came from. */
export type UnitFact = {
  /** What it is ("coolingSeasonalRating"); words under `fact.<name>` in wording/en.json. */
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
  readonly basis: Basis;
  readonly source: string;
  readonly status: string;
};

/** Bends a curve between two outdoor temperatures so that both rated points are met; held outside them. */
export type Tilt = { readonly fromF: number; readonly toF: number; readonly lnAtTo: number };

/** One mode of the healthy unit: gross coil capacity and outdoor-unit power on a published curve. */
export type ModePerformance = {
  readonly curve: CurveName;
  /** Gross capacity at the rating point (95 F, or 47 F in heating) [Btu/h]. */
  readonly grossCapacityBtuh: number;
  /** Compressor and outdoor fan at the rating point [W]. */
  readonly outdoorUnitW: number;
  /** Cyclic degradation, used both to solve the rating and to run the year. */
  readonly cyclicFrac: number;
  readonly capacityTilt?: Tilt;
  readonly powerTilt?: Tilt;
  readonly procedure: Procedure;
  /** SEER, SEER2, HSPF or HSPF2, by `procedure` [Btu/Wh]. */
  readonly seasonalBtuPerWh: number;
  readonly basis: Basis;
  /** Units of several speeds; the curve then only carries indoor conditions. */
  readonly speeds?: SpeedTable;
  /** How well the model knows this unit: standard deviations of ln capacity and ln power. */
  readonly sdLnCapacity: number;
  readonly sdLnPower: number;
};

/** The unit as it would perform with nothing wrong; plain data. */
export type HealthyUnit = {
  readonly kind: UnitKind;
  readonly tier: Tier;
  readonly nominalTons: number;
  /** Net cooling capacity at 95 F [Btu/h]; load lines hang on it. */
  readonly cooling95Btuh: number;
  readonly cooling: ModePerformance;
  /** Heat pumps only. */
  readonly heating?: ModePerformance;
  readonly airflowCfm: number;
  readonly blower: BlowerKind;
  /** At healthy airflow in this house [W]. */
  readonly blowerW: number;
  /** Electric heat installed; 0 if none [kW]. */
  readonly stripKw: number;
  /** Compressor does not heat at or below this outdoor temperature [F]. */
  readonly cutOutF: number;
  readonly crankcaseW: number;
  readonly crankcaseBelowF: number;
  readonly facts: readonly UnitFact[];
  readonly notes: readonly Saying[];
};
