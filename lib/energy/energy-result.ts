import type { Estimate } from '../math/estimate';
import type { Basis } from '../visit/basis';
import type { CauseId } from '../visit/cause';
import type { Saying } from '../visit/wording';
import type { BillUse } from './bills/bill-use';

/** Energy and cost of one year of one unit in this house. */
export type EnergyYear = {
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
  readonly unmetBtu: number;
  readonly co2Lb: number;
  /** With a furnace behind the heat pump: fuel burnt and its cost, which `costUsd` holds too. */
  readonly fuelBtu?: number;
  readonly fuelCostUsd?: number;
  /** Length 12, January first. */
  readonly byMonth: readonly {
    readonly heatingKwh: number;
    readonly stripKwh: number;
    readonly coolingKwh: number;
    readonly otherKwh: number;
    readonly costUsd: number;
  }[];
};

/** One line of the balance-point chart: output at an outdoor temperature, heating only. */
export type BalancePoint = {
  readonly outdoorF: number;
  readonly loadBtuh: number;
  readonly capacityBtuh: number;
  readonly stripBtuh: number;
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
  readonly mild: EnergyYear;
  readonly severe: EnergyYear;
  /** Repairs only: at the likely loss, when the repair gives back less or more than likely. */
  readonly recoveryLow?: EnergyYear;
  readonly recoveryHigh?: EnergyYear;
  /** With the likely unit in a house that asks for less or more; left out where bills set the load. */
  readonly loadLow?: EnergyYear;
  readonly loadHigh?: EnergyYear;
  /** New units only: drawing less or more power than their rating makes likely. */
  readonly ratedLow?: EnergyYear;
  readonly ratedHigh?: EnergyYear;
  /** Repairs only: the cost under each cause it treats; the scenario itself is their mean. */
  readonly byCause?: readonly CauseRecovery[];
  /** Repairs only: chance that it meets a cause it treats. */
  readonly meetsCauseFrac?: number;
  readonly costUsd: Estimate;
  readonly totalKwh: Estimate;
  readonly balance: readonly BalancePoint[];
  /** Below this outdoor temperature strip heat must help; absent for cooling-only units. */
  readonly balancePointF?: number;
};

export type EnergyAssumption = {
  readonly name: string;
  readonly value: string;
  readonly basis: Basis;
  readonly source: string;
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
  readonly assumptions: readonly EnergyAssumption[];
  /** When bills were given: their split and how far it can be relied on. */
  readonly bills?: BillUse;
  readonly notes: readonly Saying[];
};
