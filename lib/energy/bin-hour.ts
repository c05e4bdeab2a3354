import procedure from '../diagnostics/healthy-unit/data/test-procedure.json';
import {
  type CompressorStep,
  type Mixing,
  off,
  type Running,
  type RunSettings,
  runSteps,
} from '../diagnostics/healthy-unit/run-steps';

const BTUH_PER_W = procedure.btuhPerW.value;

/** Means over one hour at one outdoor temperature. Heat: load = compressor + strips + unmet. */
export type HeatingHour = {
  readonly outdoorW: number;
  readonly stripW: number;
  readonly blowerW: number;
  readonly runningFrac: number;
  /** From the compressor, blower heat included [Btu/h]. */
  readonly compressorBtuh: number;
  readonly stripBtuh: number;
  readonly unmetBtuh: number;
};

export type HeatingHourInput = {
  readonly loadBtuh: number;
  /** Lowest speed first; none = compressor off. */
  readonly steps: readonly CompressorStep[];
  readonly stripW: number;
  /** Blower while strips run without the compressor [W]. */
  readonly stripBlowerW: number;
  readonly cyclicFrac: number;
  /** How a unit of several speeds works between two of them; left out = it shares the hour. */
  readonly mixing?: Mixing;
};

/**
 * One hour of heating: the compressor carries what it can, strips the rest up to their size, the remainder is
 * unmet.
 *
 * @param input  load, speeds, strips, cyclic coefficient
 * @returns mean powers [W] and heat flows [Btu/h] over the hour
 * Source: part-load factor and speed sharing of AHRI 210/240, status secondary; strips at 3.412 Btu/h per watt
 * Check: tests/energy/bin-hour.test.ts
 */
export function heatingHour(input: HeatingHourInput): HeatingHour {
  const { loadBtuh, steps, stripW } = input;
  if (loadBtuh <= 0) return idleHeating;
  if (steps.length === 0) return stripsAlone(input);
  const running = runSteps(steps, loadBtuh, settingsOf(input, 1));
  const open = loadBtuh - running.deliveredBtuh;
  const stripBtuh = Math.min(open, BTUH_PER_W * stripW);
  return {
    outdoorW: running.outdoorW,
    stripW: stripBtuh / BTUH_PER_W,
    blowerW: running.blowerW,
    runningFrac: running.runningFrac,
    compressorBtuh: running.deliveredBtuh,
    stripBtuh,
    unmetBtuh: open - stripBtuh,
  };
}

function settingsOf(
  input: { readonly cyclicFrac: number; readonly mixing?: Mixing },
  blowerSign: 1 | -1,
): RunSettings {
  return { cyclicFrac: input.cyclicFrac, mixing: input.mixing ?? 'share', blowerSign };
}

/** No heating asked for. */
export const idleHeating: HeatingHour = {
  outdoorW: 0,
  stripW: 0,
  blowerW: 0,
  runningFrac: 0,
  compressorBtuh: 0,
  stripBtuh: 0,
  unmetBtuh: 0,
};

/** Strips with the blower, compressor off: blower heat counts as strip heat. */
function stripsAlone(input: HeatingHourInput): HeatingHour {
  const { loadBtuh, stripW, stripBlowerW } = input;
  const fullBtuh = stripW > 0 ? BTUH_PER_W * (stripW + stripBlowerW) : 0;
  const share = fullBtuh > 0 ? Math.min(1, loadBtuh / fullBtuh) : 0;
  const stripBtuh = share === 1 ? fullBtuh : Math.min(loadBtuh, share * fullBtuh);
  return {
    ...idleHeating,
    stripW: share * stripW,
    blowerW: share * stripBlowerW,
    stripBtuh,
    unmetBtuh: loadBtuh - stripBtuh,
  };
}

export type CoolingHour = Running & { readonly unmetBtuh: number };

export type CoolingHourInput = {
  readonly loadBtuh: number;
  /** Lowest speed first, at least one. */
  readonly steps: readonly CompressorStep[];
  readonly cyclicFrac: number;
  /** How a unit of several speeds works between two of them; left out = it shares the hour. */
  readonly mixing?: Mixing;
};

/**
 * One hour of cooling; blower heat is taken off the capacity, what capacity cannot carry is unmet.
 *
 * @param input  load, speeds, cyclic coefficient
 * @returns mean powers [W] and heat flows [Btu/h] over the hour
 * Source: part-load factor and speed sharing of AHRI 210/240, status secondary
 * Check: tests/energy/bin-hour.test.ts
 */
export function coolingHour(input: CoolingHourInput): CoolingHour {
  if (input.loadBtuh <= 0) return { ...off, unmetBtuh: 0 };
  const running = runSteps(input.steps, input.loadBtuh, settingsOf(input, -1));
  return {
    outdoorW: running.outdoorW,
    blowerW: running.blowerW,
    runningFrac: running.runningFrac,
    deliveredBtuh: running.deliveredBtuh,
    unmetBtuh: input.loadBtuh - running.deliveredBtuh,
  };
}
