import procedure from './data/test-procedure.json';

const BTUH_PER_W = procedure.btuhPerW.value;

/** One speed of the compressor at one outdoor temperature, losses applied. */
export type CompressorStep = {
  /** At the coil, blower heat not counted [Btu/h]. */
  readonly grossBtuh: number;
  readonly outdoorW: number;
  readonly blowerW: number;
};

/** Means over one hour of the compressor with its blower. */
export type Running = {
  readonly outdoorW: number;
  readonly blowerW: number;
  /** Share of the hour the compressor runs, cycling loss included. */
  readonly runningFrac: number;
  readonly deliveredBtuh: number;
};

/** Between two speeds a compressor shares the hour (two speeds), or runs at a speed between (variable speed). */
export type Mixing = 'share' | 'modulate';

export type RunSettings = {
  /** Cyclic degradation below the lowest speed, 0..1. */
  readonly cyclicFrac: number;
  readonly mixing: Mixing;
  /** +1 where blower heat helps (heating), -1 where it hinders (cooling). */
  readonly blowerSign: 1 | -1;
};

/** The compressor at rest. */
export const off: Running = { outdoorW: 0, blowerW: 0, runningFrac: 0, deliveredBtuh: 0 };

/**
 * A compressor against a load for an hour. Below its lowest speed it cycles: running share = load factor /
 * (1 - Cd (1 - load factor)). Between two speeds it shares the hour between them, or its efficiency lies between
 * theirs in proportion to the load. Above the highest it runs on.
 *
 * @param steps  lowest speed first; none = off
 * @param loadBtuh  > 0
 * @param settings  cycling, mixing, sign of blower heat
 * @returns mean powers [W], running share, heat or cold delivered [Btu/h]
 * Source: AHRI 210/240 as carried by open libraries, status secondary; efficiency in proportion to the load is the
 * 2023 rule for variable speed, from memory
 * Check: tests/energy/bin-hour.test.ts
 */
export function runSteps(steps: readonly CompressorStep[], loadBtuh: number, settings: RunSettings): Running {
  let below: CompressorStep | undefined;
  let belowBtuh = 0;
  for (const step of steps) {
    const netBtuh = Math.max(0, step.grossBtuh + settings.blowerSign * BTUH_PER_W * step.blowerW);
    if (loadBtuh <= netBtuh) {
      if (below === undefined) return cycled(step, loadBtuh, netBtuh, settings.cyclicFrac);
      const share = (loadBtuh - belowBtuh) / (netBtuh - belowBtuh);
      const blowerW = below.blowerW + share * (step.blowerW - below.blowerW);
      const low = below.outdoorW + below.blowerW;
      const high = step.outdoorW + step.blowerW;
      const totalW =
        settings.mixing === 'share'
          ? low + share * (high - low)
          : modulated({ btuh: belowBtuh, w: low }, { btuh: netBtuh, w: high }, loadBtuh);
      return { outdoorW: totalW - blowerW, blowerW, runningFrac: 1, deliveredBtuh: loadBtuh };
    }
    below = step;
    belowBtuh = netBtuh;
  }
  if (below === undefined) return off;
  return { outdoorW: below.outdoorW, blowerW: below.blowerW, runningFrac: 1, deliveredBtuh: belowBtuh };
}

type Output = { readonly btuh: number; readonly w: number };

/** Power at a load between two speeds, efficiency in proportion to the load; never below the lower speed's power. */
function modulated(low: Output, high: Output, loadBtuh: number): number {
  if (low.w <= 0 || high.w <= 0 || low.btuh <= 0) return high.w;
  const share = (loadBtuh - low.btuh) / (high.btuh - low.btuh);
  const btuhPerW = low.btuh / low.w + share * (high.btuh / high.w - low.btuh / low.w);
  return Math.max(low.w, loadBtuh / btuhPerW);
}

function cycled(step: CompressorStep, loadBtuh: number, netBtuh: number, cyclicFrac: number): Running {
  const loadFactor = loadBtuh / netBtuh;
  const runningFrac = loadFactor / (1 - cyclicFrac * (1 - loadFactor));
  return {
    outdoorW: runningFrac * step.outdoorW,
    blowerW: runningFrac * step.blowerW,
    runningFrac,
    deliveredBtuh: loadBtuh,
  };
}
