import { frostFactor } from '../diagnostics/healthy-unit/performance-curve';
import { type CompressorStep, off } from '../diagnostics/healthy-unit/run-steps';
import { coolingHour, heatingHour, idleHeating } from './bin-hour';
import defaults from './data/load-defaults.json';
import { type FurnaceHour, withFurnace } from './furnace';
import { coolingLoadBtuh, heatingLoadBtuh } from './house-load';
import type { LossRatios } from './loss-ratios';
import type { UnitBins } from './unit-bins';
import type { HouseModel, YearContext } from './year-context';

/** Mean powers and flows of one hour in one bin. */
export type BinMeans = {
  readonly heatingW: number;
  readonly stripW: number;
  readonly coolingW: number;
  readonly blowerW: number;
  readonly standbyW: number;
  readonly fuelBtuh: number;
  readonly heatBtuh: number;
  readonly coolBtuh: number;
  readonly unmetBtuh: number;
  /** More than a small share of the load stays open. */
  readonly unmetHeating: boolean;
  readonly unmetCooling: boolean;
};

/**
 * One hour in one bin, heating and cooling together.
 *
 * Check: tests/energy/unit-year.test.ts
 */
export function binMeans(bins: UnitBins, bin: number, ratios: LossRatios, context: YearContext): BinMeans {
  const outdoorF = bins.binF[bin] ?? 0;
  const { unit } = bins;
  const coolingBtuh = coolingLoadBtuh(context.load, outdoorF);
  const cooling =
    coolingBtuh <= 0
      ? idleCooling
      : coolingHour({
          loadBtuh: coolingBtuh,
          steps: lossy(bins.cooling[bin] ?? [], ratios.coolingCapacity, ratios.coolingPower),
          cyclicFrac: cyclicFrac(unit.cooling.cyclicFrac, context),
          mixing: unit.cooling.speeds?.mixing ?? 'share',
        });
  const heating = context.heats ? heatingInBin(bins, bin, ratios, context) : undefined;
  const running = Math.min(1, cooling.runningFrac + (heating?.runningFrac ?? 0));
  const open = defaults.unmetShareFrac.value;
  const heatOpenBtuh = heating?.unmetBtuh ?? 0;
  return {
    heatingW: heating?.outdoorW ?? 0,
    stripW: heating?.stripW ?? 0,
    coolingW: cooling.outdoorW,
    blowerW: cooling.blowerW + (heating?.blowerW ?? 0),
    standbyW: outdoorF < unit.crankcaseBelowF ? unit.crankcaseW * (1 - running) : 0,
    fuelBtuh: heating?.fuelBtuh ?? 0,
    heatBtuh: heating === undefined ? 0 : heating.compressorBtuh + heating.stripBtuh + heating.furnaceBtuh,
    coolBtuh: cooling.deliveredBtuh,
    unmetBtuh: cooling.unmetBtuh + heatOpenBtuh,
    unmetHeating: heatOpenBtuh > open * (heating?.loadBtuh ?? 0),
    unmetCooling: cooling.unmetBtuh > open * coolingBtuh,
  };
}

/**
 * Heating in one bin, losses applied; the compressor rests at or below its cut-out, strips work in the stages that are
 * not locked out.
 *
 * Check: tests/energy/unit-year.test.ts
 */
export function heatingInBin(
  bins: UnitBins,
  bin: number,
  ratios: LossRatios,
  model: HouseModel,
): FurnaceHour & { readonly loadBtuh: number } {
  const { unit, furnace } = bins;
  const outdoorF = bins.binF[bin] ?? 0;
  const loadBtuh = heatingLoadBtuh(model.load, outdoorF);
  if (loadBtuh <= 0) return idleInBin;
  const hour = heatingHour({
    loadBtuh,
    steps: heatingStepsOf(bins.heating[bin] ?? [], outdoorF, ratios, model),
    stripW: (bins.stripKw[bin] ?? 0) * 1000,
    stripBlowerW: unit.blowerW,
    cyclicFrac: cyclicFrac(unit.heating?.cyclicFrac ?? 0, model),
    mixing: unit.heating?.speeds?.mixing ?? 'share',
  });
  const behind = furnace === undefined ? undefined : withFurnace(hour, furnace, unit.blowerW);
  const whole = behind ?? hour;
  // spelt out: spreading objects here is most of the time of a year
  return {
    outdoorW: whole.outdoorW,
    stripW: whole.stripW,
    blowerW: whole.blowerW,
    runningFrac: whole.runningFrac,
    compressorBtuh: whole.compressorBtuh,
    stripBtuh: whole.stripBtuh,
    unmetBtuh: whole.unmetBtuh,
    furnaceBtuh: behind?.furnaceBtuh ?? 0,
    fuelBtuh: behind?.fuelBtuh ?? 0,
    loadBtuh,
  };
}

const idleCooling = { ...off, unmetBtuh: 0 };
const idleInBin = { ...idleHeating, furnaceBtuh: 0, fuelBtuh: 0, loadBtuh: 0 };

/**
 * Speeds in heating with the loss and with what frost takes more or less than the model says.
 *
 * Check: tests/energy/unit-year.test.ts
 */
export function heatingStepsOf(
  steps: readonly CompressorStep[],
  outdoorF: number,
  ratios: LossRatios,
  model: HouseModel,
): readonly CompressorStep[] {
  const k = model.frostRatio ?? 1;
  if (k === 1) return lossy(steps, ratios.heatingCapacity, ratios.heatingPower);
  const frost = frostFactor(outdoorF);
  const moved = (factor: number): number => (1 - k * (1 - factor)) / factor;
  return lossy(
    steps,
    ratios.heatingCapacity * moved(frost.capacityRatio),
    ratios.heatingPower * moved(frost.powerRatio),
  );
}

/** Speeds with a loss: less at the coil, more at the outdoor unit, the blower as it was. */
export function lossy(
  steps: readonly CompressorStep[],
  capacity: number,
  power: number,
): readonly CompressorStep[] {
  if (capacity === 1 && power === 1) return steps;
  return steps.map((step) => ({
    grossBtuh: step.grossBtuh * capacity,
    outdoorW: step.outdoorW * power,
    blowerW: step.blowerW,
  }));
}

function cyclicFrac(rated: number, model: HouseModel): number {
  return Math.min(1, rated * (model.cyclicRatio ?? 1));
}
