import type { Findings, Flag } from '@/lib/diagnostics/findings';
import type { EnergyResult, EnergyScenario, EnergyYear } from '@/lib/energy/energy-result';
import type { CauseChances } from '@/lib/energy/recovery';
import type { CauseId } from '@/lib/visit/cause';
import type { Choice, Financing, LeaveChoice, RepairChoice, ReplaceChoice } from '@/lib/visit/choice';
import type { Visit } from '@/lib/visit/visit';

/** A year of energy of which only the cost matters here. */
function year(costUsd: number): EnergyYear {
  return {
    heatingCompressorKwh: 0,
    stripHeatKwh: 0,
    coolingKwh: 0,
    blowerKwh: 0,
    standbyKwh: 0,
    totalKwh: costUsd / 0.16,
    costUsd,
    heatDeliveredBtu: 0,
    coolingDeliveredBtu: 0,
    unmetHours: 0,
    unmetHeatingHours: 0,
    unmetCoolingHours: 0,
    unmetBtu: 0,
    co2Lb: 0,
    byMonth: [],
  };
}

export type Costs = {
  readonly likely: number;
  readonly mild?: number;
  readonly severe?: number;
  readonly recoveryLow?: number;
  readonly recoveryHigh?: number;
  readonly loadLow?: number;
  readonly loadHigh?: number;
  readonly ratedLow?: number;
  readonly ratedHigh?: number;
};

function scenario(id: string, costs: Costs): EnergyScenario {
  const { likely, mild = likely, severe = likely, recoveryLow, recoveryHigh } = costs;
  const { loadLow, loadHigh, ratedLow, ratedHigh } = costs;
  return {
    id,
    likely: year(likely),
    mild: year(mild),
    severe: year(severe),
    ...(recoveryLow === undefined ? {} : { recoveryLow: year(recoveryLow) }),
    ...(recoveryHigh === undefined ? {} : { recoveryHigh: year(recoveryHigh) }),
    ...(loadLow === undefined ? {} : { loadLow: year(loadLow) }),
    ...(loadHigh === undefined ? {} : { loadHigh: year(loadHigh) }),
    ...(ratedLow === undefined ? {} : { ratedLow: year(ratedLow) }),
    ...(ratedHigh === undefined ? {} : { ratedHigh: year(ratedHigh) }),
    costUsd: { low: mild, likely, high: severe },
    totalKwh: { low: mild, likely, high: severe },
    balance: [],
  };
}

/** Yearly energy written down by hand: id -> cost of a year. */
export function energyOf(
  costs: Readonly<Record<string, Costs>>,
  over: Partial<EnergyResult> = {},
): EnergyResult {
  return {
    scenarios: Object.entries(costs).map(([id, c]) => scenario(id, c)),
    climateName: 'by hand',
    load: {
      heatingBtuhAtDesign: 36_000,
      heatingDesignF: 20,
      heatingBalanceF: 60,
      coolingBtuhAtDesign: 30_000,
      coolingDesignF: 95,
      coolingBalanceF: 68,
      basis: 'bill',
      source: 'by hand',
    },
    priceUsdPerKwh: 0.16,
    priceBasis: 'bill',
    assumptions: [],
    notes: [],
    ...over,
  };
}

export function findingsOf(cause?: CauseId, flags: readonly Flag[] = []): Findings {
  return {
    runs: [],
    flags,
    loss: {},
    ...(cause === undefined ? {} : { suspectedCause: { cause, saidBy: 'technician' } }),
    wouldNarrow: [],
  };
}

export const hotDischarge: Flag = { code: 'dischargeHot', severity: 'danger', readings: ['dischargeLineF'] };

export const leave: LeaveChoice = { kind: 'leave', id: 'leave', name: 'Leave as is', priceLines: [] };

export const drier: RepairChoice = {
  kind: 'repair',
  id: 'drier',
  name: 'New filter-drier and charge',
  actions: ['filterDrierAndRecharge'],
  priceLines: [
    { kind: 'labour', label: 'Labour', amount: 3.5, unitPriceUsd: 135 },
    { kind: 'part', label: 'Filter-drier', amount: 1, unitPriceUsd: 48.9 },
    { kind: 'refrigerant', label: 'Refrigerant', amount: 4.2, unitPriceUsd: 68.75 },
    { kind: 'tax', label: 'Sales tax', taxFrac: 0.0775 },
  ],
};

export const orifice: RepairChoice = {
  kind: 'repair',
  id: 'orifice',
  name: 'Clean the orifice',
  actions: ['meteringOrificeCleaning'],
  addresses: 'meteringRestriction',
  priceLines: [{ kind: 'labour', label: 'Labour', amount: 3, unitPriceUsd: 135 }],
};

export const loan = {
  kind: 'levelLoan',
  rateFracPerYear: 0.0899,
  termMonths: 84,
  downPaymentUsd: 1000,
  feeUsd: 150,
} as const satisfies Financing;

export const single: ReplaceChoice = {
  kind: 'replace',
  id: 'single',
  name: 'Single-speed heat pump',
  unitKind: 'heatPump',
  tier: 'singleSpeed',
  nominalTons: 3,
  ratings: {},
  priceLines: [
    { kind: 'equipment', label: 'Equipment', amount: 1, unitPriceUsd: 6240 },
    { kind: 'labour', label: 'Labour', amount: 18, unitPriceUsd: 110 },
    { kind: 'tax', label: 'Sales tax', taxFrac: 0.0775 },
    { kind: 'permit', label: 'Permit', amount: 1, unitPriceUsd: 145 },
  ],
  financing: loan,
};

export const variable: ReplaceChoice = {
  ...single,
  id: 'variable',
  name: 'Variable-speed heat pump',
  tier: 'variableSpeed',
  priceLines: [{ kind: 'equipment', label: 'Installed', amount: 1, unitPriceUsd: 14_250 }],
  financing: { kind: 'cash' },
  rebates: [
    { label: 'Utility', amountUsd: 600, firstDate: '2026-01-01', lastDate: '2026-12-31' },
    { label: 'State', amountUsd: 1500, paidAfterMonths: 7 },
    { label: 'Old credit', amountUsd: 2000, lastDate: '2025-12-31' },
  ],
};

export const allChoices: Choice[] = [variable, drier, leave, single, orifice];

/** An old heat pump with a clogged orifice; all choices; a stay of ten years. */
export function exampleVisit(over: Partial<Visit> = {}): Visit {
  return {
    schemaVersion: 1,
    id: 'example',
    invented: true,
    visitDate: '2026-11-03',
    site: { stayYears: 10 },
    unit: { kind: 'heatPump', nominalTons: 3, manufactureYear: 2011 },
    runs: [],
    observations: [],
    assumptions: [],
    choices: allChoices,
    ...over,
  };
}

export const exampleCosts: Readonly<Record<string, Costs>> = {
  healthy: { likely: 1450 },
  asFound: { likely: 1890, mild: 1640, severe: 2180 },
  leave: { likely: 1890, mild: 1640, severe: 2180 },
  drier: { likely: 1520, mild: 1490, severe: 1600, recoveryLow: 1650, recoveryHigh: 1460 },
  orifice: { likely: 1510, mild: 1485, severe: 1580, recoveryLow: 1700, recoveryHigh: 1455 },
  single: { likely: 1180 },
  variable: { likely: 940 },
};

export function exampleInput(over: Partial<Visit> = {}, cause: CauseId = 'meteringRestriction') {
  return { visit: exampleVisit(over), findings: findingsOf(cause), energy: energyOf(exampleCosts) };
}

/** What the readings might say: causes with their chances, adding up to 1. */
export function chancesOf(...causes: readonly [CauseId, number][]): CauseChances {
  const sure = { low: 1, likely: 1, high: 1 };
  return {
    basis: 'readings',
    causes: causes.map(([cause, frac]) => ({ cause, frac })),
    explainedFrac: sure,
  };
}
