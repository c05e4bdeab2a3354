import procedure from '../diagnostics/healthy-unit/data/test-procedure.json';

const BTUH_PER_W = procedure.btuhPerW.value;

/** Means over one hour at one outdoor temperature. Heat: load = compressor + strips + blower heat + unmet. */
export type HeatingHour = {
  readonly outdoorW: number;
  readonly stripW: number;
  readonly blowerW: number;
  /** Share of the hour the compressor runs, cycling loss included. */
  readonly runningFrac: number;
  /** From the compressor, blower heat included [Btu/h]. */
  readonly compressorBtuh: number;
  readonly stripBtuh: number;
  readonly unmetBtuh: number;
};

export type HeatingHourInput = {
  readonly loadBtuh: number;
  /** Gross capacity and outdoor-unit power at full speed, losses applied; capacity 0 = compressor off. */
  readonly grossBtuh: number;
  readonly outdoorW: number;
  readonly blowerW: number;
  readonly stripW: number;
  readonly cyclicFrac: number;
};

/**
 * One hour of heating: the compressor carries what it can, strips the rest up to their size, the remainder is
 * unmet. Below full load the compressor cycles: running share = load factor / (1 - Cd (1 - load factor)).
 *
 * @param input  load, capacity, powers, cyclic coefficient
 * @returns mean powers [W] and heat flows [Btu/h] over the hour
 * Source: part-load factor of AHRI 210/240, status secondary; strips at 3.412 Btu/h per watt
 * Check: tests/energy/bin-hour.test.ts
 */
export function heatingHour(input: HeatingHourInput): HeatingHour {
  const { loadBtuh, grossBtuh, outdoorW, blowerW, stripW, cyclicFrac } = input;
  const blowerBtuh = BTUH_PER_W * blowerW;
  if (loadBtuh <= 0) return idleHeating;
  if (grossBtuh <= 0) return stripsAlone(loadBtuh, blowerW, blowerBtuh, stripW);
  const netBtuh = grossBtuh + blowerBtuh;
  const loadFactor = Math.min(1, loadBtuh / netBtuh);
  const runningFrac = loadFactor / (1 - cyclicFrac * (1 - loadFactor));
  const compressorBtuh = loadFactor === 1 ? netBtuh : loadBtuh;
  const open = loadBtuh - compressorBtuh;
  const stripBtuh = Math.min(open, BTUH_PER_W * stripW);
  return {
    outdoorW: runningFrac * outdoorW,
    stripW: stripBtuh / BTUH_PER_W,
    blowerW: runningFrac * blowerW,
    runningFrac,
    compressorBtuh,
    stripBtuh,
    unmetBtuh: open - stripBtuh,
  };
}

const idleHeating: HeatingHour = {
  outdoorW: 0,
  stripW: 0,
  blowerW: 0,
  runningFrac: 0,
  compressorBtuh: 0,
  stripBtuh: 0,
  unmetBtuh: 0,
};

/** Strips with the blower, compressor off: blower heat counts as strip heat. */
function stripsAlone(loadBtuh: number, blowerW: number, blowerBtuh: number, stripW: number): HeatingHour {
  const fullBtuh = stripW > 0 ? BTUH_PER_W * stripW + blowerBtuh : 0;
  const share = fullBtuh > 0 ? Math.min(1, loadBtuh / fullBtuh) : 0;
  const stripBtuh = share === 1 ? fullBtuh : Math.min(loadBtuh, share * fullBtuh);
  return {
    ...idleHeating,
    stripW: share * stripW,
    blowerW: share * blowerW,
    stripBtuh,
    unmetBtuh: loadBtuh - stripBtuh,
  };
}

export type CoolingHour = {
  readonly outdoorW: number;
  readonly blowerW: number;
  readonly runningFrac: number;
  readonly deliveredBtuh: number;
  readonly unmetBtuh: number;
};

export type CoolingHourInput = {
  readonly loadBtuh: number;
  readonly grossBtuh: number;
  readonly outdoorW: number;
  readonly blowerW: number;
  readonly cyclicFrac: number;
};

/**
 * One hour of cooling; blower heat is taken off the capacity, what capacity cannot carry is unmet.
 *
 * @param input  load, capacity, powers, cyclic coefficient
 * @returns mean powers [W] and heat flows [Btu/h] over the hour
 * Source: part-load factor of AHRI 210/240, status secondary
 * Check: tests/energy/bin-hour.test.ts
 */
export function coolingHour(input: CoolingHourInput): CoolingHour {
  const { loadBtuh, grossBtuh, outdoorW, blowerW, cyclicFrac } = input;
  if (loadBtuh <= 0) return { outdoorW: 0, blowerW: 0, runningFrac: 0, deliveredBtuh: 0, unmetBtuh: 0 };
  const netBtuh = Math.max(0, grossBtuh - BTUH_PER_W * blowerW);
  const loadFactor = netBtuh > loadBtuh ? loadBtuh / netBtuh : 1;
  const runningFrac = loadFactor / (1 - cyclicFrac * (1 - loadFactor));
  const deliveredBtuh = loadFactor === 1 ? Math.min(netBtuh, loadBtuh) : loadBtuh;
  return {
    outdoorW: runningFrac * outdoorW,
    blowerW: runningFrac * blowerW,
    runningFrac,
    deliveredBtuh,
    unmetBtuh: loadBtuh - deliveredBtuh,
  };
}
