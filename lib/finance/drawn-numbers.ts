import { randomStream } from '../math/random';

/** The last seed and number of draws, with the columns drawn for them: whatever is simulated next most likely asks for the same. */
let keptFor = '';
const kept = new Map<string, Float64Array>();

/**
 * Random numbers of one name, drawn once for a seed and a number of draws and then kept: the next simulation of a draft
 * with one figure changed needs the very same.
 *
 * @param kind   standard normal deviates, or uniform in (0, 1)
 * @param key    name of the stream
 * @param draws  length of the column
 * @param seed   whole number
 * @returns the column, shared: to be read only
 * Check: tests/finance/drawn-numbers.test.ts
 */
export function drawnNumbers(
  kind: 'normal' | 'uniform',
  key: string,
  draws: number,
  seed: number,
): Float64Array {
  const asked = `${seed} ${draws}`;
  if (asked !== keptFor) {
    kept.clear();
    keptFor = asked;
  }
  const name = `${kind} ${key}`;
  const before = kept.get(name);
  if (before !== undefined) return before;
  const stream = randomStream(seed, key);
  const column = new Float64Array(draws);
  for (let n = 0; n < draws; n += 1) column[n] = kind === 'normal' ? stream.normal() : stream.uniform();
  kept.set(name, column);
  return column;
}
