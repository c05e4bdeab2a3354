import { invariant } from '../math/invariant';
import { type BinMeans, binMeans } from './bin-means';
import { MONTHS } from './climate-model';
import type { EnergyMonth, EnergyTotals, EnergyYear } from './energy-result';
import { type Furnace, fuelCo2LbPerMmbtu } from './furnace';
import type { LossRatios } from './loss-ratios';
import type { Pricing } from './tariff/pricing';
import type { UnitBins } from './unit-bins';
import type { YearContext } from './year-context';

/**
 * One year of one unit in this house, month by month: each bin is solved once and weighted by its hours.
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
  const means = meansOf(bins, ratios, context);
  const byMonth = Array.from({ length: MONTHS }, (_, month): EnergyMonth => {
    const part = emptySums();
    means.forEach((mean, bin) => {
      const hours = context.monthBinHours[month * means.length + bin] ?? 0;
      if (hours > 0) addHours(part, mean, hours);
    });
    return {
      heatingKwh: part.heatingKwh,
      stripKwh: part.stripKwh,
      coolingKwh: part.coolingKwh,
      blowerKwh: part.blowerKwh,
      standbyKwh: part.standbyKwh,
      ...(bins.furnace === undefined ? {} : { fuelBtu: part.fuelBtu }),
      costUsd: monthCostUsd(context.pricing, month, means, kwhOf(part)) + fuelUsd(part, bins.furnace),
    };
  });
  return { ...totals(means, bins, context), byMonth };
}

/**
 * The same year without its months; several times faster, for the ends of ranges.
 *
 * @returns the same totals as `unitYear`
 * @throws invariant if a ratio is not positive
 * Check: tests/energy/unit-year.test.ts
 */
export function unitTotals(bins: UnitBins, ratios: LossRatios, context: YearContext): EnergyTotals {
  return totals(meansOf(bins, ratios, context), bins, context);
}

function totals(means: readonly BinMeans[], bins: UnitBins, context: YearContext): EnergyTotals {
  const { pricing, monthBinHours } = context;
  const total = emptySums();
  const count = means.length;
  const monthKwh = new Float64Array(MONTHS);
  let costUsd = 0;
  means.forEach((mean, bin) => {
    const kw = kwOf(mean);
    let hours = 0;
    for (let month = 0; month < MONTHS; month += 1) {
      const here = monthBinHours[month * count + bin] ?? 0;
      hours += here;
      if (pricing.kind === 'byHour') costUsd += kw * (pricing.usdPerKwByMonthBin[month * count + bin] ?? 0);
      else monthKwh[month] = (monthKwh[month] ?? 0) + kw * here;
    }
    if (hours > 0) addHours(total, mean, hours);
  });
  if (pricing.kind === 'byAmount') {
    monthKwh.forEach((kwh, month) => {
      costUsd += pricing.monthUsd(month, kwh);
    });
  }
  return totalsOf(total, costUsd + fuelUsd(total, bins.furnace), bins, context);
}

function meansOf(bins: UnitBins, ratios: LossRatios, context: YearContext): BinMeans[] {
  for (const ratio of Object.values(ratios)) invariant(ratio > 0, `loss ratio ${ratio}`);
  return bins.binF.map((_, i) => binMeans(bins, i, ratios, context));
}

function totalsOf(total: Sums, costUsd: number, bins: UnitBins, context: YearContext): EnergyTotals {
  const totalKwh = kwhOf(total);
  return {
    heatingCompressorKwh: total.heatingKwh,
    stripHeatKwh: total.stripKwh,
    coolingKwh: total.coolingKwh,
    blowerKwh: total.blowerKwh,
    standbyKwh: total.standbyKwh,
    totalKwh,
    costUsd,
    heatDeliveredBtu: total.heatBtu,
    coolingDeliveredBtu: total.coolBtu,
    unmetHours: total.unmetHours,
    unmetHeatingHours: total.unmetHeatingHours,
    unmetCoolingHours: total.unmetCoolingHours,
    unmetBtu: total.unmetBtu,
    co2Lb: totalKwh * context.co2LbPerKwh + total.fuelBtu * fuelCo2LbPerBtu(bins.furnace),
    ...(bins.furnace === undefined
      ? {}
      : { fuelBtu: total.fuelBtu, fuelCostUsd: fuelUsd(total, bins.furnace) }),
  };
}

const BTU_PER_MMBTU = 1_000_000;

function fuelUsd(sums: Sums, furnace: Furnace | undefined): number {
  return furnace === undefined ? 0 : (sums.fuelBtu * furnace.usdPerMmbtu) / BTU_PER_MMBTU;
}

function fuelCo2LbPerBtu(furnace: Furnace | undefined): number {
  return furnace === undefined ? 0 : fuelCo2LbPerMmbtu(furnace.fuel) / BTU_PER_MMBTU;
}

function kwOf(mean: BinMeans): number {
  return (mean.heatingW + mean.stripW + mean.coolingW + mean.blowerW + mean.standbyW) / 1000;
}

function monthCostUsd(pricing: Pricing, month: number, means: readonly BinMeans[], kwh: number): number {
  if (pricing.kind === 'byAmount') return pricing.monthUsd(month, kwh);
  let usd = 0;
  means.forEach((mean, bin) => {
    usd += kwOf(mean) * (pricing.usdPerKwByMonthBin[month * means.length + bin] ?? 0);
  });
  return usd;
}

type Sums = {
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
  unmetHeatingHours: number;
  unmetCoolingHours: number;
};

function emptySums(): Sums {
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
    unmetHeatingHours: 0,
    unmetCoolingHours: 0,
  };
}

function addHours(sums: Sums, mean: BinMeans, hours: number): void {
  const kiloHours = hours / 1000;
  sums.heatingKwh += mean.heatingW * kiloHours;
  sums.stripKwh += mean.stripW * kiloHours;
  sums.coolingKwh += mean.coolingW * kiloHours;
  sums.blowerKwh += mean.blowerW * kiloHours;
  sums.standbyKwh += mean.standbyW * kiloHours;
  sums.fuelBtu += mean.fuelBtuh * hours;
  sums.heatBtu += mean.heatBtuh * hours;
  sums.coolBtu += mean.coolBtuh * hours;
  sums.unmetBtu += mean.unmetBtuh * hours;
  if (mean.unmetHeating || mean.unmetCooling) sums.unmetHours += hours;
  if (mean.unmetHeating) sums.unmetHeatingHours += hours;
  if (mean.unmetCooling) sums.unmetCoolingHours += hours;
}

function kwhOf(s: Sums): number {
  return s.heatingKwh + s.stripKwh + s.coolingKwh + s.blowerKwh + s.standbyKwh;
}
