import { findRoot } from '../../math/brent';
import type { UnitKind } from '../../visit/unit';
import data from './data/speed-ratios.json';
import procedures from './data/test-procedure.json';
import { speedCoolingRating, speedHeatingRating } from './speed-rating';
import type { SpeedTable } from './speed-table';

export type SpeedCooling = {
  readonly cooling95Btuh: number;
  readonly seer2BtuPerWh: number;
  readonly eer2BtuPerWh: number;
  readonly ratedBlowerW: number;
  readonly kind: UnitKind;
};

export type SpeedHeating = {
  readonly heating47Btuh: number;
  readonly heating17Btuh?: number;
  readonly hspf2BtuPerWh: number;
  readonly ratedBlowerW: number;
  readonly cutOutF: number;
  /** Net; the load line hangs on it [Btu/h]. */
  readonly cooling95Btuh: number;
};

export type SolvedSpeeds = {
  readonly table: SpeedTable;
  /** No believable efficiency gives the rating: the nearest was taken. */
  readonly outOfReach: boolean;
};

/**
 * Cooling of a two-speed unit from SEER2, EER2 and its nominal capacity: the efficiency of the low speed is solved so
 * that SEER2 comes back.
 *
 * @returns net points at 82 F and 95 F for both speeds
 * Outside the COP limits of data/speed-ratios.json: held there and marked.
 * Source: ratios of RESNET HERS Addendum 82, data/speed-ratios.json, status read
 * Check: tests/diagnostics/healthy-unit/speed-ratings.test.ts
 */
export function twoSpeedCooling(rating: SpeedCooling): SolvedSpeeds {
  const cop82 = (rating.eer2BtuPerWh / procedures.btuhPerW.value) * data.twoSpeed.cooling.eir95PerEir82;
  return solvedSpeeds(lowSpeedLimits(cop82), rating.seer2BtuPerWh, (cop82Low) => {
    const table = twoSpeedCoolingTable(rating, cop82Low);
    return { table, rating: speedCoolingRating(table, data.cyclicFrac.twoSpeed, rating.cooling95Btuh, 1) };
  });
}

/** Points of a two-speed unit in cooling for a given COP of its low speed at 82 F. */
export function twoSpeedCoolingTable(rating: SpeedCooling, cop82Low: number): SpeedTable {
  const row = data.twoSpeed.cooling;
  const capacity95 = rating.cooling95Btuh;
  const capacity82 = capacity95 / row.q95PerQ82;
  const cop95 = rating.eer2BtuPerWh / procedures.btuhPerW.value;
  const low95 = row.qMinPerFull * capacity95;
  const low82 = row.qMinPerFull * capacity82;
  return {
    outdoorF: [82, 95],
    speeds: [
      {
        netCapacityBtuh: [low82, low95],
        netPowerW: [wattsOf(low82, cop82Low), wattsOf(low95, cop82Low / row.eir95PerEir82)],
        blowerRatio: blowerRatio(row.qMinPerFull),
      },
      {
        netCapacityBtuh: [capacity82, capacity95],
        netPowerW: [wattsOf(capacity82, cop95 * row.eir95PerEir82), wattsOf(capacity95, cop95)],
        blowerRatio: 1,
      },
    ],
    mixing: 'share',
    nominal: 1,
    ratedBlowerW: rating.ratedBlowerW,
    lowF: data.range.coolingOutdoorF[0] ?? 0,
    highF: data.range.coolingOutdoorF[1] ?? 0,
  };
}

/**
 * Heating of a two-speed heat pump from HSPF2 and its capacities: its efficiency at 47 F is solved so that HSPF2
 * comes back.
 *
 * @returns net, frost-free points at 17 F and 47 F for both speeds
 * Outside the COP limits of data/speed-ratios.json: held there and marked.
 * Source: ratios of RESNET HERS Addendum 82, data/speed-ratios.json, status read
 * Check: tests/diagnostics/healthy-unit/speed-ratings.test.ts
 */
export function twoSpeedHeating(rating: SpeedHeating): SolvedSpeeds {
  return solvedSpeeds(data.copLimits.full47F, rating.hspf2BtuPerWh, (cop47) => {
    const table = twoSpeedHeatingTable(rating, cop47);
    const { cooling95Btuh, cutOutF } = rating;
    const cyclicFrac = data.cyclicFrac.twoSpeed;
    const input = { cyclicFrac, cooling95Btuh, cutOutF, variableSpeed: false };
    return { table, rating: speedHeatingRating(table, input) };
  });
}

/** Points of a two-speed heat pump in heating for a given COP at 47 F and full speed. */
export function twoSpeedHeatingTable(rating: SpeedHeating, cop47: number): SpeedTable {
  const row = data.twoSpeed.heating;
  const full47 = rating.heating47Btuh;
  const full17 = rating.heating17Btuh ?? row.q17PerQ47 * full47;
  const cop17 = cop47 / row.eir17PerEir47;
  const low17 = row.qMinPerFull * full17;
  const low47 = row.qMinPerFull * full47;
  return {
    outdoorF: [17, 47],
    speeds: [
      {
        netCapacityBtuh: [low17, low47],
        netPowerW: [wattsOf(low17, cop17 / row.eirMinPerFull), wattsOf(low47, cop47 / row.eirMinPerFull)],
        blowerRatio: blowerRatio(row.qMinPerFull),
      },
      {
        netCapacityBtuh: [full17, full47],
        netPowerW: [wattsOf(full17, cop17), wattsOf(full47, cop47)],
        blowerRatio: 1,
      },
    ],
    mixing: 'share',
    nominal: 1,
    ratedBlowerW: rating.ratedBlowerW,
    lowF: Math.min(rating.cutOutF, 16),
    highF: data.range.heatingHighF,
  };
}

/** COPs believed of the lowest speed at 82 F, from that of the highest. */
export function lowSpeedLimits(cop82High: number): { readonly least: number; readonly most: number } {
  const { least, most } = data.copLimits.lowPerFull82F;
  return { least: least * cop82High, most: most * cop82High };
}

/** Finds the COP whose points rate as wanted; held at the limits if none does. */
export function solvedSpeeds(
  limits: { readonly least: number; readonly most: number },
  wanted: number,
  at: (cop: number) => { readonly table: SpeedTable; readonly rating: number },
): SolvedSpeeds {
  const root = findRoot((cop) => at(cop).rating - wanted, limits.least, limits.most, 1e-9);
  if (root.kind === 'root') return { table: at(root.x).table, outOfReach: false };
  const tooLow = at(limits.most).rating < wanted;
  return { table: at(tooLow ? limits.most : limits.least).table, outOfReach: true };
}

/** Net power [W] of a net capacity [Btu/h] at a COP. */
export function wattsOf(capacityBtuh: number, cop: number): number {
  return capacityBtuh / procedures.btuhPerW.value / cop;
}

/** Blower power at a share of the nominal airflow, over that at nominal airflow. */
export function blowerRatio(airflowRatio: number): number {
  return airflowRatio ** data.blowerExponent.value;
}
