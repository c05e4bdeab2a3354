import type { UnitKind } from '../../visit/unit';
import data from './data/minimum-standards.json';

export type DefaultRatings = {
  readonly seerBtuPerWh?: number;
  readonly hspfBtuPerWh?: number;
  readonly seer2BtuPerWh?: number;
  readonly hspf2BtuPerWh?: number;
  readonly source: string;
  readonly status: string;
};

type Row = {
  readonly fromYear: number;
  readonly kind: string;
  readonly region: string;
  readonly size: string;
  readonly seerBtuPerWh?: number;
  readonly hspfBtuPerWh?: number;
  readonly seer2BtuPerWh?: number;
  readonly hspf2BtuPerWh?: number;
  readonly status: string;
};

/**
 * Ratings of a split unit nobody has papers for: the federal minimum in force when it was made. Many units were
 * sold at the minimum, few below it, so this is the cautious end.
 *
 * @param kind  heat pump or air conditioner
 * @param year  year of manufacture
 * @param cooling95Btuh  cooling capacity, which decides the size class of 2023 [Btu/h]
 * @param stateCode  two-letter state; unknown counts as the north, whose minimum is lowest
 * @returns ratings of the one procedure in force, with source and status
 * Before 1992: straight line through rough shipment averages, held at its ends.
 * Source: 10 CFR 430.32(c); status in each row (memory to 2006, secondary from 2015)
 * Check: tests/diagnostics/healthy-unit/default-ratings.test.ts
 */
export function defaultRatings(
  kind: UnitKind,
  year: number,
  cooling95Btuh: number,
  stateCode?: string,
): DefaultRatings {
  const rows: readonly Row[] = data.rows;
  const region = regionOf(stateCode);
  const size = cooling95Btuh < 45_000 ? 'below45k' : 'from45k';
  const applies = rows.filter(
    (row) =>
      row.kind === kind &&
      row.fromYear <= year &&
      (row.region === 'any' || row.region === region) &&
      (row.size === 'any' || row.size === size),
  );
  const newest = applies.reduce<Row | undefined>(
    (best, row) => (best === undefined || row.fromYear >= best.fromYear ? row : best),
    undefined,
  );
  return newest === undefined ? beforeStandards(kind, year) : ratingsOf(newest);
}

function ratingsOf(row: Row): DefaultRatings {
  return {
    ...(row.seerBtuPerWh === undefined ? {} : { seerBtuPerWh: row.seerBtuPerWh }),
    ...(row.hspfBtuPerWh === undefined ? {} : { hspfBtuPerWh: row.hspfBtuPerWh }),
    ...(row.seer2BtuPerWh === undefined ? {} : { seer2BtuPerWh: row.seer2BtuPerWh }),
    ...(row.hspf2BtuPerWh === undefined ? {} : { hspf2BtuPerWh: row.hspf2BtuPerWh }),
    source: `${data.source}; minimum in force from ${row.fromYear}`,
    status: row.status,
  };
}

function beforeStandards(kind: UnitKind, year: number): DefaultRatings {
  const [first, last] = data.before;
  const a = first ?? { year: 0, seerBtuPerWh: 0, hspfBtuPerWh: 0 };
  const b = last ?? a;
  const t = Math.min(1, Math.max(0, (year - a.year) / (b.year - a.year)));
  const seerBtuPerWh = a.seerBtuPerWh + t * (b.seerBtuPerWh - a.seerBtuPerWh);
  const hspfBtuPerWh = a.hspfBtuPerWh + t * (b.hspfBtuPerWh - a.hspfBtuPerWh);
  return {
    seerBtuPerWh,
    ...(kind === 'heatPump' ? { hspfBtuPerWh } : {}),
    source: data.beforeSource,
    status: data.beforeStatus,
  };
}

/** Region of the efficiency standards a state lies in; unknown counts as north. */
function regionOf(stateCode: string | undefined): 'north' | 'southeast' | 'southwest' {
  if (stateCode === undefined) return 'north';
  if (data.regionStates.southeast.includes(stateCode)) return 'southeast';
  return data.regionStates.southwest.includes(stateCode) ? 'southwest' : 'north';
}
