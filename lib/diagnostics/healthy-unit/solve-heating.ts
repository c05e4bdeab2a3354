import { findRoot } from '../../math/brent';
import procedures from './data/test-procedure.json';
import defaults from './data/unit-defaults.json';
import type { Tilt } from './healthy-unit-model';
import { curvePoint } from './performance-curve';
import { ratedBlowerW } from './rated-blower';
import { frostTest, type HeatingTests, type Procedure, seasonalHeatingRating } from './seasonal-rating';

export type HeatingRating = {
  readonly procedure: Procedure;
  /** HSPF or HSPF2, region IV [Btu/Wh]. */
  readonly seasonalBtuPerWh: number;
  /** Net, at 47 F [Btu/h]. */
  readonly heating47Btuh: number;
  /** Net, at 17 F, if known [Btu/h]. */
  readonly heating17Btuh?: number;
  /** Net, at 95 F: the newer procedure's load line hangs on it [Btu/h]. */
  readonly cooling95Btuh: number;
  readonly airflowCfm: number;
  readonly cyclicFrac: number;
  readonly cutOutF: number;
};

export type SolvedHeating = {
  readonly grossCapacityBtuh: number;
  readonly outdoorUnitW: number;
  readonly capacityTilt?: Tilt;
  /** Rated 17 F capacity bends the curve further than is believable: held at the limit. */
  readonly ratingsDisagree: boolean;
  /** No believable power gives the rating with this capacity: the nearest was taken. */
  readonly outOfReach: boolean;
};

/**
 * Rated points of a heat pump in heating, solved backwards from HSPF by its own procedure: load line, bins, frost
 * line, region IV, the procedure's blower, the same cyclic coefficient as the year uses.
 *
 * @param rating  seasonal rating and capacities
 * @returns gross capacity [Btu/h] and outdoor-unit power [W] at 47 F
 * Outside the COP limits of data/unit-defaults.json, or with less capacity than the blower heats: held there and
 * marked `outOfReach`.
 * Source: AHRI 210/240-2017 and -2023 eqs 11.109-11.127 turned round; status secondary
 * Check: tests/diagnostics/healthy-unit/solve-ratings.test.ts
 */
export function solveHeating(rating: HeatingRating): SolvedHeating {
  const blowerW = ratedBlowerW('heating', rating);
  const blowerBtuh = procedures.btuhPerW.value * blowerW;
  const wantedGrossBtuh = rating.heating47Btuh - blowerBtuh;
  const grossCapacityBtuh = Math.max(wantedGrossBtuh, rating.heating47Btuh * defaults.leastGrossFrac.value);
  const at17 = curvePoint('heatPumpHeating', 70, 17);
  const tilt = capacityTilt(rating.heating17Btuh, grossCapacityBtuh * at17.capacityRatio, blowerBtuh);
  const gross17Btuh = grossCapacityBtuh * at17.capacityRatio * Math.exp(tilt.lnAtTo);
  const testsAt = (outdoorUnitW: number): HeatingTests => {
    const point47 = { capacityBtuh: rating.heating47Btuh, powerW: outdoorUnitW + blowerW };
    const point17 = {
      capacityBtuh: gross17Btuh + blowerBtuh,
      powerW: outdoorUnitW * at17.capacityRatio * at17.eirRatio + blowerW,
    };
    return { at47: point47, at35: frostTest(point47, point17), at17: point17 };
  };
  const miss = (outdoorUnitW: number): number =>
    seasonalHeatingRating({
      procedure: rating.procedure,
      region: 'IV',
      tests: testsAt(outdoorUnitW),
      cooling95Btuh: rating.cooling95Btuh,
      cyclicFrac: rating.cyclicFrac,
      cutOutF: rating.cutOutF,
      cutInF: rating.cutOutF,
    }).ratingBtuPerWh - rating.seasonalBtuPerWh;
  const least = grossCapacityBtuh / procedures.btuhPerW.value / defaults.copLimits.heatingMost;
  const most = grossCapacityBtuh / procedures.btuhPerW.value / defaults.copLimits.heatingLeast;
  const root = findRoot(miss, least, most, 1e-9);
  const outdoorUnitW = root.kind === 'root' ? root.x : miss(least) < 0 ? least : most;
  return {
    grossCapacityBtuh,
    outdoorUnitW,
    ...(tilt.lnAtTo === 0 ? {} : { capacityTilt: { fromF: 47, toF: 17, lnAtTo: tilt.lnAtTo } }),
    ratingsDisagree: tilt.held,
    outOfReach: root.kind !== 'root' || grossCapacityBtuh > wantedGrossBtuh,
  };
}

function capacityTilt(
  heating17Btuh: number | undefined,
  curve17Btuh: number,
  blowerBtuh: number,
): { readonly lnAtTo: number; readonly held: boolean } {
  if (heating17Btuh === undefined) return { lnAtTo: 0, held: false };
  const limit = defaults.tiltLimitLn.heatingCapacity;
  const gross17Btuh = heating17Btuh - blowerBtuh;
  const wanted = gross17Btuh > 0 ? Math.log(gross17Btuh / curve17Btuh) : -limit;
  const lnAtTo = Math.min(limit, Math.max(-limit, wanted));
  return { lnAtTo, held: lnAtTo !== wanted };
}
