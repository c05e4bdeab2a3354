import type { CompressorStep } from '../diagnostics/healthy-unit/run-steps';
import { invariant } from '../math/invariant';
import { coolingHour, heatingHour } from './bin-hour';
import { MONTHS } from './climate-model';
import defaults from './data/load-defaults.json';
import type { EnergyYear } from './energy-result';
import { type Furnace, type FurnaceHour, fuelCo2LbPerMmbtu, withFurnace } from './furnace';
import { coolingLoadBtuh, type HouseLoad, heatingLoadBtuh } from './house-load';
import type { Pricing } from './tariff/pricing';
import type { UnitBins } from './unit-bins';

/** Ratios to the healthy unit; 1 = nothing lost. */
export type LossRatios = {
  readonly coolingCapacity: number;
  readonly coolingPower: number;
  readonly heatingCapacity: number;
  readonly heatingPower: number;
};

export const noLoss: LossRatios = {
  coolingCapacity: 1,
  coolingPower: 1,
  heatingCapacity: 1,
  heatingPower: 1,
};

/** The house, its weather and its prices: the same for every scenario. */
export type YearContext = {
  readonly load: HouseLoad;
  /** The same house asking for less and for more, where its need was assumed; left out where bills set it. */
  readonly loadEnds?: { readonly low: HouseLoad; readonly high: HouseLoad };
  /** The unit has to heat the house as well. */
  readonly heats: boolean;
  /** Hours, length 12 x bins, month-major. */
  readonly monthBinHours: Float64Array;
  readonly pricing: Pricing;
  readonly co2LbPerKwh: number;
};

/** Mean powers and flows of one hour in one bin. */
type BinMeans = {
  readonly heatingW: number;
  readonly stripW: number;
  readonly coolingW: number;
  readonly blowerW: number;
  readonly standbyW: number;
  readonly fuelBtuh: number;
  readonly heatBtuh: number;
  readonly coolBtuh: number;
  readonly unmetBtuh: number;
  readonly unmet: boolean;
};

/**
 * One year of one unit in this house: each bin is solved once and weighted by its hours, month by month.
 *
 * @param bins     full-speed performance per bin
 * @param ratios   loss per mode; capacity ratios > 0, power ratios > 0
 * @param context  load, hours, pricing, emission factor
 * @returns kWh by use, cost [USD] of energy alone, fuel included (fixed charges apart), unmet hours, CO2 [lb]
 * @throws invariant if a ratio is not positive
 * Source: bin method with the part-load factor of AHRI 210/240; status secondary
 * Check: tests/energy/unit-year.test.ts
 */
export function unitYear(bins: UnitBins, ratios: LossRatios, context: YearContext): EnergyYear {
  for (const ratio of Object.values(ratios)) invariant(ratio > 0, `loss ratio ${ratio}`);
  const means = bins.binF.map((_, i) => binMeans(bins, i, ratios, context));
  const total = emptyTotals();
  const byMonth: EnergyYear['byMonth'][number][] = [];
  for (let month = 0; month < MONTHS; month += 1) {
    const part = emptyTotals();
    means.forEach((mean, bin) => {
      const hours = context.monthBinHours[month * means.length + bin] ?? 0;
      if (hours > 0) addHours(part, mean, hours);
    });
    byMonth.push({
      heatingKwh: part.heatingKwh,
      stripKwh: part.stripKwh,
      coolingKwh: part.coolingKwh,
      otherKwh: part.blowerKwh + part.standbyKwh,
      costUsd:
        monthCostUsd(context.pricing, month, means, kwhOf(part)) + part.fuelBtu * fuelUsdPerBtu(bins.furnace),
    });
    addTotals(total, part);
  }
  const totalKwh = kwhOf(total);
  return {
    heatingCompressorKwh: total.heatingKwh,
    stripHeatKwh: total.stripKwh,
    coolingKwh: total.coolingKwh,
    blowerKwh: total.blowerKwh,
    standbyKwh: total.standbyKwh,
    totalKwh,
    costUsd: byMonth.reduce((sum, month) => sum + month.costUsd, 0),
    heatDeliveredBtu: total.heatBtu,
    coolingDeliveredBtu: total.coolBtu,
    unmetHours: total.unmetHours,
    unmetBtu: total.unmetBtu,
    co2Lb: totalKwh * context.co2LbPerKwh + total.fuelBtu * fuelCo2LbPerBtu(bins.furnace),
    ...(bins.furnace === undefined
      ? {}
      : { fuelBtu: total.fuelBtu, fuelCostUsd: total.fuelBtu * fuelUsdPerBtu(bins.furnace) }),
    byMonth,
  };
}

/**
 * Heating in one bin, losses applied; the compressor rests at or below its cut-out.
 *
 * Check: tests/energy/unit-year.test.ts
 */
export function heatingInBin(
  bins: UnitBins,
  bin: number,
  ratios: LossRatios,
  load: HouseLoad,
): FurnaceHour & { readonly loadBtuh: number } {
  const { unit, furnace } = bins;
  const loadBtuh = heatingLoadBtuh(load, bins.binF[bin] ?? 0);
  const hour = heatingHour({
    loadBtuh,
    steps: lossy(bins.heating[bin] ?? [], ratios.heatingCapacity, ratios.heatingPower),
    stripW: furnace === undefined ? unit.stripKw * 1000 : 0,
    stripBlowerW: unit.blowerW,
    cyclicFrac: unit.heating?.cyclicFrac ?? 0,
    mixing: unit.heating?.speeds?.mixing ?? 'share',
  });
  if (furnace === undefined) return { ...hour, furnaceBtuh: 0, fuelBtuh: 0, loadBtuh };
  return { ...withFurnace(hour, furnace, unit.blowerW), loadBtuh };
}

/** Speeds with a loss: less at the coil, more at the outdoor unit, the blower as it was. */
export function lossy(steps: readonly CompressorStep[], capacity: number, power: number): CompressorStep[] {
  return steps.map((step) => ({
    grossBtuh: step.grossBtuh * capacity,
    outdoorW: step.outdoorW * power,
    blowerW: step.blowerW,
  }));
}

function binMeans(bins: UnitBins, bin: number, ratios: LossRatios, context: YearContext): BinMeans {
  const outdoorF = bins.binF[bin] ?? 0;
  const { unit } = bins;
  const cooling = coolingHour({
    loadBtuh: coolingLoadBtuh(context.load, outdoorF),
    steps: lossy(bins.cooling[bin] ?? [], ratios.coolingCapacity, ratios.coolingPower),
    cyclicFrac: unit.cooling.cyclicFrac,
    mixing: unit.cooling.speeds?.mixing ?? 'share',
  });
  const heating = context.heats ? heatingInBin(bins, bin, ratios, context.load) : undefined;
  const running = Math.min(1, cooling.runningFrac + (heating?.runningFrac ?? 0));
  const loadBtuh = cooling.deliveredBtuh + cooling.unmetBtuh + (heating?.loadBtuh ?? 0);
  const unmetBtuh = cooling.unmetBtuh + (heating?.unmetBtuh ?? 0);
  return {
    heatingW: heating?.outdoorW ?? 0,
    stripW: heating?.stripW ?? 0,
    coolingW: cooling.outdoorW,
    blowerW: cooling.blowerW + (heating?.blowerW ?? 0),
    standbyW: outdoorF < unit.crankcaseBelowF ? unit.crankcaseW * (1 - running) : 0,
    fuelBtuh: heating?.fuelBtuh ?? 0,
    heatBtuh: heating === undefined ? 0 : heating.compressorBtuh + heating.stripBtuh + heating.furnaceBtuh,
    coolBtuh: cooling.deliveredBtuh,
    unmetBtuh,
    unmet: unmetBtuh > defaults.unmetShareFrac.value * loadBtuh,
  };
}

const BTU_PER_MMBTU = 1_000_000;

function fuelUsdPerBtu(furnace: Furnace | undefined): number {
  return furnace === undefined ? 0 : furnace.usdPerMmbtu / BTU_PER_MMBTU;
}

function fuelCo2LbPerBtu(furnace: Furnace | undefined): number {
  return furnace === undefined ? 0 : fuelCo2LbPerMmbtu(furnace.fuel) / BTU_PER_MMBTU;
}

function monthCostUsd(pricing: Pricing, month: number, means: readonly BinMeans[], kwh: number): number {
  if (pricing.kind === 'byAmount') return pricing.monthUsd(month, kwh);
  let usd = 0;
  means.forEach((mean, bin) => {
    const kw = (mean.heatingW + mean.stripW + mean.coolingW + mean.blowerW + mean.standbyW) / 1000;
    usd += kw * (pricing.usdPerKwByMonthBin[month * means.length + bin] ?? 0);
  });
  return usd;
}

type Totals = {
  heatingKwh: number;
  stripKwh: number;
  coolingKwh: number;
  blowerKwh: number;
  standbyKwh: number;
  fuelBtu: number;
  heatBtu: number;
  coolBtu: number;
  unmetBtu: number;
  unmetHours: number;
};

function emptyTotals(): Totals {
  return {
    heatingKwh: 0,
    stripKwh: 0,
    coolingKwh: 0,
    blowerKwh: 0,
    standbyKwh: 0,
    fuelBtu: 0,
    heatBtu: 0,
    coolBtu: 0,
    unmetBtu: 0,
    unmetHours: 0,
  };
}

function addHours(total: Totals, mean: BinMeans, hours: number): void {
  const kiloHours = hours / 1000;
  total.heatingKwh += mean.heatingW * kiloHours;
  total.stripKwh += mean.stripW * kiloHours;
  total.coolingKwh += mean.coolingW * kiloHours;
  total.blowerKwh += mean.blowerW * kiloHours;
  total.standbyKwh += mean.standbyW * kiloHours;
  total.fuelBtu += mean.fuelBtuh * hours;
  total.heatBtu += mean.heatBtuh * hours;
  total.coolBtu += mean.coolBtuh * hours;
  total.unmetBtu += mean.unmetBtuh * hours;
  if (mean.unmet) total.unmetHours += hours;
}

function addTotals(total: Totals, part: Totals): void {
  for (const key of Object.keys(total) as (keyof Totals)[]) total[key] += part[key];
}

function kwhOf(t: Totals): number {
  return t.heatingKwh + t.stripKwh + t.coolingKwh + t.blowerKwh + t.standbyKwh;
}
