import { invariant } from './invariant';
import { normalQuantile } from './normal';

/**
 * A stream of pseudo-random numbers. The only stateful thing here: each call moves the stream on by one.
 * `uint32` and `uniform` are integer arithmetic and exact divisions, so they agree bit for bit on every engine;
 * `normal` uses one logarithm in its tails (beyond +/-1.44 sigma), where engines may differ in the last bit.
 */
export type RandomStream = {
  /** whole number 0 .. 2^32 - 1 */
  readonly uint32: () => number;
  /** open interval (0, 1), 52 random bits: never exactly 0 or 1 */
  readonly uniform: () => number;
  /** standard normal deviate by the inverse of its distribution function: one uniform per deviate */
  readonly normal: () => number;
  /** whole number 0 .. n - 1, n >= 1 */
  readonly below: (n: number) => number;
};

/**
 * Named sub-stream of a seed: the same seed and key give the same numbers, whatever other streams were used.
 *
 * @param seed  whole number, taken modulo 2^32
 * @param key   name of the sub-stream, for instance the id of an assumption
 * @returns a fresh stream at its start
 * @throws invariant if the seed is not a safe integer
 * Source: generator sfc32, C. Doty-Humphrey, PractRand 0.94 (public domain), status memory; mixing of seed and key
 * by FNV-1a and the MurmurHash3 finaliser (A. Appleby, public domain), status memory
 * Check: tests/math/random.test.ts
 */
export function randomStream(seed: number, key: string): RandomStream {
  invariant(Number.isSafeInteger(seed), `seed ${seed} is not a whole number`);
  let a = hashKey(seed, key, 0x9e3779b9);
  let b = hashKey(seed, key, 0x243f6a88);
  let c = hashKey(seed, key, 0xb7e15162);
  let counter = 1;
  const uint32 = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  };
  for (let i = 0; i < 15; i += 1) uint32();
  const uniform = (): number => {
    const high = uint32() >>> 6;
    const low = uint32() >>> 6;
    return (high * 67108864 + low + 0.5) / 4503599627370496;
  };
  const below = (n: number): number => {
    invariant(Number.isSafeInteger(n) && n >= 1, `below(${n})`);
    return Math.floor(uniform() * n);
  };
  return { uint32, uniform, normal: () => normalQuantile(uniform()), below };
}

function hashKey(seed: number, key: string, salt: number): number {
  let hash = mixBits(0x811c9dc5 ^ salt);
  hash = mixBits(hash ^ (seed | 0));
  hash = mixBits(hash ^ Math.floor(seed / 4294967296));
  for (let i = 0; i < key.length; i += 1) hash = Math.imul(hash ^ key.charCodeAt(i), 0x01000193);
  return mixBits(hash ^ key.length);
}

function mixBits(word: number): number {
  let h = word | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
