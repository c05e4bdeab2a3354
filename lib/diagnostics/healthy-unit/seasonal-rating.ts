import { invariant } from '../../math/invariant';
import data from './data/test-procedure.json';
import { frostFactor } from './performance-curve';

/** Test procedure behind a rating: older = SEER, EER, HSPF; newer = SEER2, EER2, HSPF2. Never mixed. */
export type Procedure = 'older' | 'newer';
export type Region = keyof typeof data.regions;

/** Net capacity and total power of one rating test, indoor blower included. */
export type TestPoint = { readonly capacityBtuh: number; readonly powerW: number };

export type HeatingTests = {
  readonly at47: TestPoint;
  readonly at35: TestPoint;
  readonly at17: TestPoint;
};

/**
 * SEER or SEER2 of a single-speed unit.
 *
 * @param at82 net capacity [Btu/h] and power [W] of the 82 F test (B), indoor 80 F / 67 F wet bulb
 * @param cyclicFrac cyclic degradation coefficient, 0..1
 * @returns seasonal efficiency [Btu/Wh]; both procedures share the formula, only the test conditions differ
 * @throws invariant if power is not positive
 * Source: AHRI 210/240-2017 eq. 11.56 and -2023 as carried by open libraries; status secondary
 * Check: tests/diagnostics/healthy-unit/seasonal-rating.test.ts
 */
export function seasonalCoolingRating(at82: TestPoint, cyclicFrac: number): number {
  invariant(at82.powerW > 0, `power ${at82.powerW} W at 82 F`);
  return (1 - 0.5 * cyclicFrac) * (at82.capacityBtuh / at82.powerW);
}

/**
 * Net capacity and power on the procedure's own lines, frost included between 17 F and 45 F: hence the step at
 * 45 F. For ratings only; yearly energy uses the smooth frost factor instead.
 *
 * @param tests net points at 47 F, 35 F (frosting) and 17 F
 * @param outdoorF outdoor dry bulb [F]
 * Source: Appendix M / M1, as carried by open libraries; status secondary
 * Check: tests/diagnostics/healthy-unit/seasonal-rating.test.ts
 */
export function procedureHeatingPoint(tests: HeatingTests, outdoorF: number): TestPoint {
  const frosting = outdoorF > data.capacityStepF.low && outdoorF < data.capacityStepF.high;
  const upper = frosting ? tests.at35 : tests.at47;
  const share = (outdoorF - 17) / ((frosting ? 35 : 47) - 17);
  return {
    capacityBtuh: tests.at17.capacityBtuh + share * (upper.capacityBtuh - tests.at17.capacityBtuh),
    powerW: tests.at17.powerW + share * (upper.powerW - tests.at17.powerW),
  };
}

/**
 * The 35 F frosting test when only 47 F and 17 F are published: the steady line between them, with the frost factor
 * that the yearly energy uses too.
 *
 * Source: RESNET Addendum 82 (frost factor), which reproduces that body's own table of COP against HSPF2
 * Check: tests/diagnostics/healthy-unit/speed-ratings.test.ts
 */
export function frostTest(at47: TestPoint, at17: TestPoint): TestPoint {
  const factor = frostFactor(35);
  const weight47 = (35 - 17) / (47 - 17);
  return {
    capacityBtuh:
      factor.capacityRatio * (at17.capacityBtuh + weight47 * (at47.capacityBtuh - at17.capacityBtuh)),
    powerW: factor.powerRatio * (at17.powerW + weight47 * (at47.powerW - at17.powerW)),
  };
}

export type HeatingRatingBin = {
  readonly outdoorF: number;
  readonly binFrac: number;
  readonly loadBtuh: number;
  readonly capacityBtuh: number;
  readonly powerW: number;
  readonly loadFactor: number;
  readonly partLoadFactor: number;
  readonly runningShare: number;
  readonly compressorW: number;
  readonly resistanceW: number;
};

export type HeatingRatingInput = {
  readonly procedure: Procedure;
  readonly region: Region;
  readonly tests: HeatingTests;
  /** Newer procedure: the load line hangs on the 95 F cooling capacity, net [Btu/h]. */
  readonly cooling95Btuh: number;
  readonly cyclicFrac: number;
  /** Compressor off at or below `cutOutF`, back on above `cutInF`. */
  readonly cutOutF: number;
  readonly cutInF: number;
  readonly variableSpeed?: boolean;
  /** Older procedure: round the design requirement to the standard list (default), or take it as given. */
  readonly designRequirementBtuh?: number;
};

/**
 * Design heating requirement of the older procedure: smallest one, rounded to the standard list.
 *
 * @param heating47Btuh net 47 F capacity [Btu/h]
 * @param region climate region; V has its own rule
 * Source: Appendix M, as carried by open libraries (16 values); status secondary
 * Check: tests/diagnostics/healthy-unit/seasonal-rating.test.ts
 */
export function designRequirementBtuh(heating47Btuh: number, region: Region): number {
  const span = data.zeroLoadOlderF - data.regions[region].outdoorDesignF;
  const raw = region === 'V' ? heating47Btuh : (heating47Btuh * span) / data.designRequirementSpanOlderF;
  return data.standardDesignRequirementBtuh.reduce((best, v) =>
    Math.abs(v - raw) < Math.abs(best - raw) ? v : best,
  );
}

/**
 * HSPF or HSPF2 of a single-speed heat pump, with its table bin by bin.
 *
 * @param input tests, region, cyclic coefficient, cut-out; see the type
 * @returns rating [Btu/Wh] and one row per temperature bin (per hour in that bin, before weighting)
 * @throws invariant if no energy is used at all
 * Source: AHRI 210/240-2017 and -2023 eqs 11.109-11.127 as carried by open libraries; status secondary
 * Check: tests/diagnostics/healthy-unit/seasonal-rating.test.ts
 */
export function seasonalHeatingRating(input: HeatingRatingInput): {
  readonly ratingBtuPerWh: number;
  readonly bins: readonly HeatingRatingBin[];
} {
  const fractions = data.regions[input.region][input.procedure].binFrac;
  const bins = data.heatingBinF.map((outdoorF, i) => ratingBin(input, outdoorF, fractions[i] ?? 0));
  let load = 0;
  let energy = 0;
  for (const bin of bins) {
    load += bin.binFrac * bin.loadBtuh;
    energy += bin.binFrac * (bin.compressorW + bin.resistanceW);
  }
  invariant(energy > 0, 'seasonal heating energy is 0');
  return { ratingBtuPerWh: (load / energy) * data.demandDefrostCredit.value, bins };
}

function ratingBin(input: HeatingRatingInput, outdoorF: number, binFrac: number): HeatingRatingBin {
  const loadBtuh = ratingLoadBtuh(input, outdoorF);
  const { capacityBtuh, powerW } = procedureHeatingPoint(input.tests, outdoorF);
  const loadFactor = capacityBtuh > 0 ? Math.min(1, loadBtuh / capacityBtuh) : 1;
  const partLoadFactor = 1 - input.cyclicFrac * (1 - loadFactor);
  const runningShare = shareRunning(input, outdoorF, capacityBtuh, powerW);
  const delivered = loadFactor * capacityBtuh * runningShare;
  return {
    outdoorF,
    binFrac,
    loadBtuh,
    capacityBtuh,
    powerW,
    loadFactor,
    partLoadFactor,
    runningShare,
    compressorW: (loadFactor * powerW * runningShare) / partLoadFactor,
    resistanceW: Math.max(0, loadBtuh - delivered) / data.btuhPerW.value,
  };
}

function shareRunning(
  input: HeatingRatingInput,
  outdoorF: number,
  capacityBtuh: number,
  powerW: number,
): number {
  if (outdoorF <= input.cutOutF || capacityBtuh < data.btuhPerW.value * powerW) return 0;
  return outdoorF <= input.cutInF ? 0.5 : 1;
}

function ratingLoadBtuh(input: HeatingRatingInput, outdoorF: number): number {
  const region = data.regions[input.region];
  if (input.procedure === 'older') {
    const requirement =
      input.designRequirementBtuh ?? designRequirementBtuh(input.tests.at47.capacityBtuh, input.region);
    const share = (data.zeroLoadOlderF - outdoorF) / (data.zeroLoadOlderF - region.outdoorDesignF);
    return share * data.agreementFactorOlder * requirement;
  }
  const { zeroLoadF, slopeC, slopeCVariableSpeed } = region.newer;
  const slope = input.variableSpeed === true ? slopeCVariableSpeed : slopeC;
  const share = (zeroLoadF - outdoorF) / (zeroLoadF - region.outdoorDesignF);
  return Math.max(0, share) * slope * input.cooling95Btuh;
}
