import data from './data/speed-ratios.json';
import procedures from './data/test-procedure.json';
import { speedCoolingRating, speedHeatingRating } from './speed-rating';
import type { Speed, SpeedTable } from './speed-table';
import {
  blowerRatio,
  lowSpeedLimits,
  type SolvedSpeeds,
  type SpeedCooling,
  type SpeedHeating,
  solvedSpeeds,
  wattsOf,
} from './two-speed';

type Point = { readonly capacityBtuh: number; readonly cop: number };

/**
 * Cooling of a variable-speed unit from SEER2, EER2 and its nominal capacity: the efficiency of the lowest speed is
 * solved so that SEER2 comes back.
 *
 * @returns net points at 82 F and 95 F for the lowest, nominal and highest speed
 * Outside the COP limits of data/speed-ratios.json: held there and marked.
 * Source: ratios of RESNET HERS Addendum 82, data/speed-ratios.json, status read
 * Check: tests/diagnostics/healthy-unit/speed-ratings.test.ts
 */
export function variableSpeedCooling(rating: SpeedCooling): SolvedSpeeds {
  const loadFactor = rating.kind === 'heatPump' ? procedures.coolingVariableSpeedFactor : 1;
  const row = data.variableSpeed.cooling;
  const cop95 = rating.eer2BtuPerWh / procedures.btuhPerW.value;
  const cop82Max = cop95 * row.eirFullPerMax95 * row.eir95PerEir82Max;
  return solvedSpeeds(lowSpeedLimits(cop82Max), rating.seer2BtuPerWh, (cop82Low) => {
    const table = variableSpeedCoolingTable(rating, cop82Low);
    const cyclicFrac = data.cyclicFrac.variableSpeed;
    return { table, rating: speedCoolingRating(table, cyclicFrac, rating.cooling95Btuh, loadFactor) };
  });
}

/** Points of a variable-speed unit in cooling for a given COP of its lowest speed at 82 F. */
export function variableSpeedCoolingTable(rating: SpeedCooling, cop82Low: number): SpeedTable {
  const row = data.variableSpeed.cooling;
  const full95 = { capacityBtuh: rating.cooling95Btuh, cop: rating.eer2BtuPerWh / procedures.btuhPerW.value };
  const max95 = {
    capacityBtuh: full95.capacityBtuh / row.qFullPerMax95,
    cop: full95.cop * row.eirFullPerMax95,
  };
  const max82 = {
    capacityBtuh: max95.capacityBtuh / row.q95PerQ82Max,
    cop: max95.cop * row.eir95PerEir82Max,
  };
  const minPerFull = (row.qMin95Intercept + row.qMin95Slope * (max82.cop / cop82Low)) / row.qFullPerMax95;
  const min95 = {
    capacityBtuh: full95.capacityBtuh * minPerFull,
    cop: cop82Low / row.eir95PerEir82Min,
  };
  const min82 = { capacityBtuh: min95.capacityBtuh / row.q95PerQ82Min, cop: cop82Low };
  const full82 = between(full95, { min: min95, max: max95 }, { min: min82, max: max82 });
  return {
    outdoorF: [82, 95],
    speeds: [
      speedOf([min82, min95], minPerFull),
      speedOf([full82, full95], 1),
      speedOf([max82, max95], 1 / row.qFullPerMax95),
    ],
    mixing: 'modulate',
    nominal: 1,
    ratedBlowerW: rating.ratedBlowerW,
    lowF: data.range.coolingOutdoorF[0] ?? 0,
    highF: data.range.coolingOutdoorF[1] ?? 0,
  };
}

/**
 * Heating of a variable-speed heat pump from HSPF2 and its capacities: its efficiency at 47 F is solved so that HSPF2
 * comes back.
 *
 * @returns net, frost-free points at the cut-out, 5 F, 17 F and 47 F for the lowest, nominal and highest speed
 * Outside the COP limits of data/speed-ratios.json: held there and marked.
 * Source: ratios of RESNET HERS Addendum 82, data/speed-ratios.json, status read
 * Check: tests/diagnostics/healthy-unit/speed-ratings.test.ts
 */
export function variableSpeedHeating(rating: SpeedHeating): SolvedSpeeds {
  return solvedSpeeds(data.copLimits.full47F, rating.hspf2BtuPerWh, (cop47) => {
    const table = variableSpeedHeatingTable(rating, cop47);
    const { cooling95Btuh, cutOutF } = rating;
    const cyclicFrac = data.cyclicFrac.variableSpeed;
    const input = { cyclicFrac, cooling95Btuh, cutOutF, variableSpeed: true };
    return { table, rating: speedHeatingRating(table, input) };
  });
}

/** Points of a variable-speed heat pump in heating for a given COP at 47 F and nominal speed. */
export function variableSpeedHeatingTable(rating: SpeedHeating, cop47: number): SpeedTable {
  const row = data.variableSpeed.heating;
  const q17PerQ47 = (rating.heating17Btuh ?? row.q17PerQ47 * rating.heating47Btuh) / rating.heating47Btuh;
  const full47 = { capacityBtuh: rating.heating47Btuh, cop: cop47 };
  const max47 = {
    capacityBtuh: full47.capacityBtuh / row.qFullPerMax47,
    cop: cop47 * row.eirFullPerMax47,
  };
  const min47 = { capacityBtuh: max47.capacityBtuh * row.qMinPerMax47, cop: max47.cop / row.eirMinPerMax47 };
  const full17 = { capacityBtuh: full47.capacityBtuh * q17PerQ47, cop: cop47 / row.eir17PerEir47Full };
  const max17 = {
    capacityBtuh: full17.capacityBtuh / row.qFullPerMax17,
    cop: full17.cop * row.eirFullPerMax17,
  };
  const min17 = { capacityBtuh: max17.capacityBtuh * row.qMinPerMax17, cop: max17.cop / row.eirMinPerMax17 };
  const max5 = { capacityBtuh: max17.capacityBtuh * row.q5PerQ17Max, cop: max17.cop / row.eir5PerEir17Max };
  const full5 = { capacityBtuh: max5.capacityBtuh * row.qFullPerMax5, cop: max5.cop / row.eirFullPerMax5 };
  const min5 = { capacityBtuh: max5.capacityBtuh * row.qMinPerMax5, cop: max5.cop / row.eirMinPerMax5 };
  const coldF = Math.min(rating.cutOutF, 4);
  const cold = (at5: Point, slopePerF: number): Point => ({
    capacityBtuh: at5.capacityBtuh / (1 - slopePerF * (5 - coldF)),
    cop: at5.cop * (1 - row.copSlopeColdPerF * (5 - coldF)),
  });
  const maxCold = cold(max5, row.qSlopeColdMaxPerF);
  const minCold = cold(min5, row.qSlopeColdMinPerF);
  const fullCold = between(full5, { min: min5, max: max5 }, { min: minCold, max: maxCold });
  return {
    outdoorF: [coldF, 5, 17, 47],
    speeds: [
      speedOf([minCold, min5, min17, min47], row.qMinPerMax47 / row.qFullPerMax47),
      speedOf([fullCold, full5, full17, full47], 1),
      speedOf([maxCold, max5, max17, max47], 1 / row.qFullPerMax47),
    ],
    mixing: 'modulate',
    nominal: 1,
    ratedBlowerW: rating.ratedBlowerW,
    lowF: coldF,
    highF: data.range.heatingHighF,
  };
}

type Ends = { readonly min: Point; readonly max: Point };

/** Nominal speed at another temperature: as far between lowest and highest as at the known one. */
function between(full: Point, from: Ends, to: Ends): Point {
  const share = (at: (p: Point) => number): number => {
    const span = at(from.max) - at(from.min);
    return span === 0 ? 0 : (at(full) - at(from.min)) / span;
  };
  const capacity = (p: Point): number => p.capacityBtuh;
  const power = (p: Point): number => wattsOf(p.capacityBtuh, p.cop);
  const mix = (at: (p: Point) => number): number => at(to.min) + share(at) * (at(to.max) - at(to.min));
  const capacityBtuh = mix(capacity);
  return { capacityBtuh, cop: capacityBtuh / procedures.btuhPerW.value / mix(power) };
}

function speedOf(points: readonly Point[], airflowRatio: number): Speed {
  return {
    netCapacityBtuh: points.map((p) => p.capacityBtuh),
    netPowerW: points.map((p) => wattsOf(p.capacityBtuh, p.cop)),
    blowerRatio: blowerRatio(airflowRatio),
  };
}
