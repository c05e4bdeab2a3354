import type { Choice, PriceLine } from '../../../lib/visit/choice';
import type { Run } from '../../../lib/visit/run';
import { SCHEMA_VERSION, type Visit } from '../../../lib/visit/visit';

/** An invented contractor and its invented price list; the ranges are those of consumer price guides 2024-2026. */
export const company = {
  name: 'Larkfield Heating & Air (invented)',
  phone: '555-0142',
  licence: 'INV-20417',
} as const;

/** Dollars; invented. */
export const prices = {
  labourUsdPerHour: 118,
  r22UsdPerLb: 145,
  r410aUsdPerLb: 78,
  r454bUsdPerLb: 92,
  r32UsdPerLb: 70,
  drierUsd: 85,
  pistonUsd: 28,
  permitUsd: 140,
  diagnosisUsd: 109,
} as const;

export const labour = (label: string, hours: number): PriceLine => ({
  kind: 'labour',
  label,
  amount: hours,
  unitPriceUsd: prices.labourUsdPerHour,
});

export const part = (label: string, usd: number, pieces = 1): PriceLine => ({
  kind: 'part',
  label,
  amount: pieces,
  unitPriceUsd: usd,
});

export const refrigerant = (name: string, lb: number, usdPerLb: number): PriceLine => ({
  kind: 'refrigerant',
  label: `${name}, weighed in`,
  amount: lb,
  unitPriceUsd: usdPerLb,
});

export const equipment = (label: string, usd: number): PriceLine => ({
  kind: 'equipment',
  label,
  amount: 1,
  unitPriceUsd: usd,
});

export const permit = (usd: number = prices.permitUsd): PriceLine => ({
  kind: 'permit',
  label: 'Mechanical permit',
  amount: 1,
  unitPriceUsd: usd,
});

export const tax = (taxFrac: number): PriceLine => ({ kind: 'tax', label: 'Sales tax', taxFrac });

export const leave: Choice = { id: 'leave', kind: 'leave', name: 'Leave as is', priceLines: [] };

const INVENTED_NOTE =
  'Invented visit: company, people, street and town do not exist, and the prices are made up inside published ranges. ' +
  'The readings were computed by a small cycle simulator with the fault imposed (scripts/synthesis), rounded as the instruments show them.';

/** What every invented visit shares. */
export function inventedVisit(
  parts: Omit<Visit, 'schemaVersion' | 'invented' | 'company' | 'assumptions'> & {
    readonly assumptions?: Visit['assumptions'];
  },
): Visit {
  return {
    schemaVersion: SCHEMA_VERSION,
    ...parts,
    invented: true,
    company,
    assumptions: parts.assumptions ?? [],
    note: parts.note === undefined ? INVENTED_NOTE : `${parts.note} ${INVENTED_NOTE}`,
  };
}

/** Readings a technician with gauges, clamps, a meter and an air probe comes back with. */
export const usualReadings = [
  'suctionPsig',
  'dischargePsig',
  'suctionLineF',
  'dischargeLineF',
  'liquidLineF',
  'outdoorAirF',
  'returnAirF',
  'supplyAirF',
  'lineV',
  'compressorA',
  'outdoorUnitA',
  'outdoorFanA',
] as const satisfies readonly (keyof Run)[];

export const grilleReadings = [
  'grilleAreaIn2',
  'grilleFreeAreaFrac',
  'grilleFaceFpm',
] as const satisfies readonly (keyof Run)[];

export const staticReadings = [
  'returnStaticInWc',
  'supplyStaticInWc',
  'filterDropInWc',
  'coilDropInWc',
] as const satisfies readonly (keyof Run)[];

export const heatRiseReadings = [
  'heatRiseReturnF',
  'heatRiseSupplyF',
  'heatRiseV',
  'heatRiseA',
] as const satisfies readonly (keyof Run)[];

export const capacitorReadings = [
  'compressorCapRatedUf',
  'compressorCapUf',
  'fanCapRatedUf',
  'fanCapUf',
] as const satisfies readonly (keyof Run)[];
