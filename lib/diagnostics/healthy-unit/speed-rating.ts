import { invariant } from '../../math/invariant';
import procedure from './data/test-procedure.json';
import { type CompressorStep, runSteps } from './run-steps';
import { frostTest, procedureHeatingPoint, type TestPoint } from './seasonal-rating';
import { type Speed, type SpeedTable, speedPoint } from './speed-table';

/**
 * SEER2 of a unit of several speeds: the load line of the procedure in its eight bins.
 *
 * @param table  net points; blower included, so none is added
 * @param cyclicFrac  applies below the lowest speed only
 * @param cooling95Btuh  net capacity the load line hangs on [Btu/h]
 * @param loadFactor  0.93 for variable-speed heat pumps, 1 otherwise
 * @returns [Btu/Wh]
 * Source: AHRI 210/240-2023 as carried by open libraries, status secondary; 0.93 from memory
 * Check: tests/diagnostics/healthy-unit/speed-ratings.test.ts
 */
export function speedCoolingRating(
  table: SpeedTable,
  cyclicFrac: number,
  cooling95Btuh: number,
  loadFactor: number,
): number {
  const { coolingBinF, coolingBinFrac, coolingZeroLoadF, coolingDesignF, coolingSizingFactor } = procedure;
  let delivered = 0;
  let energy = 0;
  coolingBinF.forEach((outdoorF, i) => {
    const share = (outdoorF - coolingZeroLoadF) / (coolingDesignF - coolingZeroLoadF);
    const loadBtuh = (loadFactor * share * cooling95Btuh) / coolingSizingFactor;
    const steps = table.speeds.map((speed) => stepOf(pointAt(table, speed, outdoorF)));
    const hour = runSteps(steps, loadBtuh, { cyclicFrac, mixing: table.mixing, blowerSign: -1 });
    delivered += (coolingBinFrac[i] ?? 0) * hour.deliveredBtuh;
    energy += (coolingBinFrac[i] ?? 0) * hour.outdoorW;
  });
  invariant(energy > 0, 'seasonal cooling energy is 0');
  return delivered / energy;
}

export type SpeedHeatingInput = {
  readonly cyclicFrac: number;
  /** Net; the load line hangs on it [Btu/h]. */
  readonly cooling95Btuh: number;
  readonly cutOutF: number;
  readonly variableSpeed: boolean;
};

/**
 * HSPF2 of a heat pump of several speeds in region IV; frost by the procedure's step between 17 F and 45 F.
 *
 * @returns [Btu/Wh]
 * Source: AHRI 210/240-2023 as carried by open libraries, status secondary
 * Check: tests/diagnostics/healthy-unit/speed-ratings.test.ts
 */
export function speedHeatingRating(table: SpeedTable, input: SpeedHeatingInput): number {
  const { outdoorDesignF, newer } = procedure.regions.IV;
  const slope = input.variableSpeed ? newer.slopeCVariableSpeed : newer.slopeC;
  let load = 0;
  let energy = 0;
  procedure.heatingBinF.forEach((outdoorF, i) => {
    const share = Math.max(0, (newer.zeroLoadF - outdoorF) / (newer.zeroLoadF - outdoorDesignF));
    const loadBtuh = share * slope * input.cooling95Btuh;
    if (loadBtuh === 0) return;
    const running = outdoorF > input.cutOutF;
    const steps = running ? table.speeds.map((speed) => stepOf(frostedAt(table, speed, outdoorF))) : [];
    const hour = runSteps(steps, loadBtuh, {
      cyclicFrac: input.cyclicFrac,
      mixing: table.mixing,
      blowerSign: 1,
    });
    const resistanceW = (loadBtuh - hour.deliveredBtuh) / procedure.btuhPerW.value;
    load += (newer.binFrac[i] ?? 0) * loadBtuh;
    energy += (newer.binFrac[i] ?? 0) * (hour.outdoorW + resistanceW);
  });
  invariant(energy > 0, 'seasonal heating energy is 0');
  return load / energy;
}

function frostedAt(table: SpeedTable, speed: Speed, outdoorF: number): TestPoint {
  const { low, high } = procedure.capacityStepF;
  if (outdoorF <= low || outdoorF >= high) return pointAt(table, speed, outdoorF);
  const at17 = pointAt(table, speed, 17);
  const at47 = pointAt(table, speed, 47);
  return procedureHeatingPoint({ at17, at47, at35: frostTest(at47, at17) }, outdoorF);
}

function pointAt(table: SpeedTable, speed: Speed, outdoorF: number): TestPoint {
  const { netCapacityBtuh, netPowerW } = speedPoint(table, speed, outdoorF);
  return { capacityBtuh: netCapacityBtuh, powerW: netPowerW };
}

function stepOf(point: TestPoint): CompressorStep {
  return { grossBtuh: point.capacityBtuh, outdoorW: point.powerW, blowerW: 0 };
}
