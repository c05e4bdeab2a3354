/** Time of one call: the middle of several batches, and how far the batches spread. */
export type Timing = {
  readonly nsPerCall: number;
  /** Slowest batch over fastest batch; far above 1 means the machine was busy. */
  readonly spread: number;
};

const BATCHES = 9;

/** A batch must be long against the clock's own grain. */
const BATCH_MS = 60;

/** Uses every result, so that the engine cannot drop the work. */
let used = 0;

/**
 * Times a synchronous call.
 *
 * @param call gets the number of the call, gives a number that depends on its work
 */
export function timeCalls(call: (i: number) => number): Timing {
  const batch = (calls: number): number => {
    const from = performance.now();
    for (let i = 0; i < calls; i++) used += call(i);
    return performance.now() - from;
  };
  let calls = 1;
  // Doubling until a batch is long enough is the warm-up, too.
  while (batch(calls) < BATCH_MS) calls *= 2;
  return timingOf(Array.from({ length: BATCHES }, () => (batch(calls) * 1e6) / calls));
}

/**
 * Times an asynchronous call, one at a time.
 *
 * @param times calls that count; one more goes before them
 */
export async function timeAsync(call: () => Promise<number>, times: number): Promise<Timing> {
  const each: number[] = [];
  for (let i = -1; i < times; i++) {
    const from = performance.now();
    used += await call();
    if (i >= 0) each.push((performance.now() - from) * 1e6);
  }
  return timingOf(each);
}

function timingOf(ns: readonly number[]): Timing {
  if (!Number.isFinite(used)) throw new Error('a timed call gave no number: it would time a failure');
  const sorted = [...ns].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0;
  return { nsPerCall: middle, spread: (sorted.at(-1) ?? 0) / (sorted[0] ?? 1) };
}

/** A duration in the unit that reads best. */
export function durationText(ns: number): string {
  if (ns < 1e3) return `${ns.toPrecision(3)} ns`;
  if (ns < 1e6) return `${(ns / 1e3).toPrecision(3)} us`;
  if (ns < 1e9) return `${(ns / 1e6).toPrecision(3)} ms`;
  return `${(ns / 1e9).toPrecision(3)} s`;
}
