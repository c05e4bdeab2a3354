import split from '../data/target-split.json';
import superheat from '../data/target-superheat.json';
import { type GapTable, type GapTableValue, gapTableValue } from './gap-table';

const superheatTable: GapTable = {
  rows: superheat.outdoorF,
  columns: superheat.wetBulbF,
  cells: superheat.superheatFd,
};
const splitTable: GapTable = { rows: split.dryBulbF, columns: split.wetBulbF, cells: split.splitFd };

/**
 * Target suction superheat of a unit with fixed metering, in cooling.
 *
 * @param outdoorF  outdoor dry bulb [F], 55..115
 * @param returnWetBulbF  wet bulb of the return air [F], 50..76
 * @returns [F difference], bilinear between tabulated points; `none` outside the table and where it has a dash
 * (target below 5 F: too hot and dry for a charge test)
 * Source: data/target-superheat.json, status memory, checked against makers' tables that were read
 * Check: tests/diagnostics/targets/target-superheat.test.ts
 */
export function targetSuperheatFd(outdoorF: number, returnWetBulbF: number): GapTableValue {
  return gapTableValue(superheatTable, outdoorF, returnWetBulbF);
}

/**
 * Target temperature split in cooling: return less supply dry bulb.
 *
 * @param returnF  return dry bulb [F], 70..84
 * @param returnWetBulbF  return wet bulb [F], 50..76
 * @returns [F difference]; `none` outside the table and where it has a dash
 * Source: data/target-split.json, status memory
 * Check: tests/diagnostics/targets/target-superheat.test.ts
 */
export function targetSplitFd(returnF: number, returnWetBulbF: number): GapTableValue {
  return gapTableValue(splitTable, returnF, returnWetBulbF);
}
