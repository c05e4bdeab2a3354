import procedures from './data/test-procedure.json';
import defaults from './data/unit-defaults.json';
import type { Tilt } from './healthy-unit-model';
import { type CurveName, curvePoint } from './performance-curve';
import { ratedBlowerW } from './rated-blower';
import type { Procedure } from './seasonal-rating';

export type CoolingRating = {
  readonly curve: CurveName;
  readonly procedure: Procedure;
  /** SEER or SEER2 [Btu/Wh]. */
  readonly seasonalBtuPerWh: number;
  /** EER or EER2 of the same procedure, if known [Btu/Wh]. */
  readonly at95BtuPerWh?: number;
  /** Net, at 95 F outdoor and 67 F wet bulb [Btu/h]. */
  readonly cooling95Btuh: number;
  readonly airflowCfm: number;
  readonly cyclicFrac: number;
};

export type SolvedCooling = {
  readonly grossCapacityBtuh: number;
  readonly outdoorUnitW: number;
  readonly powerTilt?: Tilt;
  /** EER and SEER could not both be met on a believable curve: SEER was kept. */
  readonly ratingsDisagree: boolean;
  /** No believable power gives the seasonal rating: the least believable one was taken. */
  readonly outOfReach: boolean;
};

/**
 * Rated points of a single-speed unit, solved backwards from SEER (and EER) with the procedure's own blower.
 *
 * @param rating  seasonal rating, capacity, curve and cyclic coefficient
 * @returns gross capacity [Btu/h] and outdoor-unit power [W] at 95 F; with an EER the curve is bent between 82 F
 *   and 95 F so that both ratings hold
 * Outside data/unit-defaults.json `tiltLimitLn`: the bend is held at the limit, SEER kept, `ratingsDisagree` set.
 * A COP above `copLimits.coolingMost` is held there and marked `outOfReach`.
 * Source: AHRI 210/240-2017 eq. 11.56 turned round; status secondary
 * Check: tests/diagnostics/healthy-unit/solve-ratings.test.ts
 */
export function solveCooling(rating: CoolingRating): SolvedCooling {
  const blowerW = ratedBlowerW('cooling', rating);
  const blowerBtuh = procedures.btuhPerW.value * blowerW;
  const grossCapacityBtuh = rating.cooling95Btuh + blowerBtuh;
  const at82 = curvePoint(rating.curve, 67, 82);
  const net82Btuh = grossCapacityBtuh * at82.capacityRatio - blowerBtuh;
  const eer82 = rating.seasonalBtuPerWh / (1 - 0.5 * rating.cyclicFrac);
  const wanted82W = net82Btuh / eer82 - blowerW;
  const power82W = Math.max(wanted82W, leastPowerW(grossCapacityBtuh * at82.capacityRatio));
  const outOfReach = power82W > wanted82W;
  const untilted95W = power82W / (at82.capacityRatio * at82.eirRatio);
  if (rating.at95BtuPerWh === undefined) {
    return { grossCapacityBtuh, outdoorUnitW: untilted95W, ratingsDisagree: false, outOfReach };
  }
  const wanted95W = Math.max(
    rating.cooling95Btuh / rating.at95BtuPerWh - blowerW,
    leastPowerW(grossCapacityBtuh),
  );
  const limit = defaults.tiltLimitLn.coolingPower;
  const wantedLn = Math.log(untilted95W / wanted95W);
  const lnAtTo = Math.min(limit, Math.max(-limit, wantedLn));
  return {
    grossCapacityBtuh,
    outdoorUnitW: untilted95W / Math.exp(lnAtTo),
    powerTilt: { fromF: 95, toF: 82, lnAtTo },
    ratingsDisagree: lnAtTo !== wantedLn,
    outOfReach,
  };
}

/** Power at the best COP any such unit is believed to have. */
function leastPowerW(grossBtuh: number): number {
  return grossBtuh / procedures.btuhPerW.value / defaults.copLimits.coolingMost;
}
