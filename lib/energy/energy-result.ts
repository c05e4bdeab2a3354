import type { Estimate } from '../math/estimate';
import type { Basis } from '../visit/basis';
import type { CauseId } from '../visit/cause';
import type { Fuel, Tariff } from '../visit/tariff';
import type { Saying } from '../visit/wording';
import type { BillUse } from './bills/bill-use';
import type { EmissionFactor } from './emission-factor';

/** Energy and cost of one year of one unit in this house. */
export type EnergyTotals = {
  readonly heatingCompressorKwh: number;
  readonly stripHeatKwh: number;
  readonly coolingKwh: number;
  readonly blowerKwh: number;
  /** Crankcase heater, controls: drawn whether or not it runs. */
  readonly standbyKwh: number;
  readonly totalKwh: number;
  readonly costUsd: number;
  readonly heatDeliveredBtu: number;
  readonly coolingDeliveredBtu: number;
  /** Hours in which the house asks for more than the unit and its strips can give. */
  readonly unmetHours: number;
  readonly unmetHeatingHours: number;
  readonly unmetCoolingHours: number;
  readonly unmetBtu: number;
  /** At the grid factor chosen, fuel included. */
  readonly co2Lb: number;
  /** With a furnace behind the heat pump: fuel burnt and its cost, which `costUsd` holds too. */
  readonly fuelBtu?: number;
  readonly fuelCostUsd?: number;
};

/** One month of a year; `costUsd` holds electricity and fuel, fixed charges apart. */
export type EnergyMonth = {
  readonly heatingKwh: number;
  readonly stripKwh: number;
  readonly coolingKwh: number;
  readonly blowerKwh: number;
  readonly standbyKwh: number;
  readonly fuelBtu?: number;
  readonly costUsd: number;
};

/** A year with its months, length 12, January first. */
export type EnergyYear = EnergyTotals & { readonly byMonth: readonly EnergyMonth[] };

/** One line of the balance-point chart: output at an outdoor temperature, heating only. */
export type BalancePoint = {
  readonly outdoorF: number;
  readonly loadBtuh: number;
  readonly capacityBtuh: number;
  readonly stripBtuh: number;
  /** Only with a furnace behind the heat pump. */
  readonly furnaceBtuh?: number;
  readonly hours: number;
};

/** Cost of a year at the ends of what is uncertain [USD]; an end left out does not vary. */
export type CostEnds = {
  readonly likely: number;
  readonly mild: number;
  readonly severe: number;
  readonly recoveryLow?: number;
  readonly recoveryHigh?: number;
  readonly loadLow?: number;
  readonly loadHigh?: number;
  readonly ratedLow?: number;
  readonly ratedHigh?: number;
};

/** A repair that works, under one of the causes it treats. */
export type CauseRecovery = {
  /** Left out = whatever the repair is meant for. */
  readonly cause?: CauseId;
  /** Chance that this cause is at work. */
  readonly frac: number;
  /** Share of the log loss given back. */
  readonly recoveredFrac: Estimate;
  readonly costUsd: CostEnds;
};

/** A unit as it would run for a year: healthy, as found, or after a choice. */
export type EnergyScenario = {
  readonly id: string;
  /** At the likely loss. */
  readonly likely: EnergyYear;
  /** At the mild and the severe end of the loss (and of what a repair gives back); equal to likely where nothing varies. */
  readonly mild: EnergyTotals;
  readonly severe: EnergyTotals;
  /** Repairs only: at the likely loss, when the repair gives back less or more than likely. */
  readonly recoveryLow?: EnergyTotals;
  readonly recoveryHigh?: EnergyTotals;
  /** With the likely unit where what was assumed about house and running asks for less or more. */
  readonly loadLow?: EnergyTotals;
  readonly loadHigh?: EnergyTotals;
  /** New units only: drawing less or more power than their rating makes likely. */
  readonly ratedLow?: EnergyTotals;
  readonly ratedHigh?: EnergyTotals;
  /** Repairs only: the cost under each cause it treats; the scenario itself is their mean. */
  readonly byCause?: readonly CauseRecovery[];
  /** Repairs only: chance that it meets a cause it treats. */
  readonly meetsCauseFrac?: number;
  readonly costUsd: Estimate;
  readonly totalKwh: Estimate;
  /** Carbon dioxide of the likely year at both grid factors, fuel included [lb]. */
  readonly co2Lb?: { readonly marginal: number; readonly average: number };
  readonly balance: readonly BalancePoint[];
  /** Below this outdoor temperature strip heat must help; absent for cooling-only units. */
  readonly balancePointF?: number;
};

export type EnergyAssumption = {
  readonly name: string;
  readonly value: string;
  /** Ends of its range, worded like the value; left out where none is known. */
  readonly low?: string;
  readonly high?: string;
  readonly basis: Basis;
  readonly source: string;
};

/** Which price of electricity was used, and what one kilowatt-hour more or less costs by it. */
export type PriceUsed = {
  readonly kind: Tariff['kind'];
  readonly basis: Basis;
  readonly source: string;
  /** What the unit as found pays for a kilowatt-hour on average, the rest of the house paid first [USD/kWh]. */
  readonly averageUsdPerKwh: number;
  /** What it saves with one kilowatt-hour less in each hour it runs: a saving is worth this [USD/kWh]. */
  readonly marginalUsdPerKwh: number;
  /** No choice saves it [USD]. */
  readonly fixedUsdPerMonth?: number;
  readonly fuels: readonly {
    readonly fuel: Fuel;
    readonly usdPerMmbtu: number;
    readonly basis: Basis;
    readonly source: string;
  }[];
};

/** Yearly energy of every scenario in this house, climate and tariff. */
export type EnergyResult = {
  readonly scenarios: readonly EnergyScenario[];
  readonly climateName: string;
  readonly load: {
    readonly heatingBtuhAtDesign: number;
    readonly heatingDesignF: number;
    readonly heatingBalanceF: number;
    readonly coolingBtuhAtDesign: number;
    readonly coolingDesignF: number;
    readonly coolingBalanceF: number;
    readonly basis: Basis;
    readonly source: string;
  };
  readonly priceUsdPerKwh: number;
  readonly priceBasis: Basis;
  /** Price behind every cost; left out in results stored before it was told apart. */
  readonly price?: PriceUsed;
  /** Both grid factors, and which of them `co2Lb` of a year goes by. */
  readonly co2?: {
    readonly used: EmissionFactor['kind'];
    readonly marginal: EmissionFactor;
    readonly average: EmissionFactor;
  };
  readonly assumptions: readonly EnergyAssumption[];
  /** When bills were given: their split and how far it can be relied on. */
  readonly bills?: BillUse;
  readonly notes: readonly Saying[];
};
