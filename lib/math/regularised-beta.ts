import { invariant } from './invariant';

const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

/**
 * Natural logarithm of the gamma function.
 *
 * @param x  > 0
 * @returns ln gamma(x), relative error of gamma about 1e-14
 * @throws invariant if x <= 0
 * Source: Lanczos C., SIAM J. Numer. Anal. B 1 1964, 86-96, with g = 7 and 9 terms (P. Godfrey's values);
 * status memory
 * Check: tests/math/distributions.test.ts
 */
export function logGamma(x: number): number {
  invariant(x > 0, `logGamma(${x})`);
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  let sum = 0.9999999999998099;
  LANCZOS.forEach((coefficient, i) => {
    sum += coefficient / (z + i + 1);
  });
  const t = z + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/**
 * Distribution function and density of the beta distribution.
 *
 * @param x  0..1
 * @param a  first shape, > 0
 * @param b  second shape, > 0
 * @returns value 0..1 (regularised incomplete beta function) and density
 * @throws invariant if an argument is out of range
 * Source: continued fraction of NIST Digital Library of Mathematical Functions, 8.17.22, status memory
 * Check: tests/math/distributions.test.ts
 */
export function regularisedBeta(
  x: number,
  a: number,
  b: number,
): { readonly value: number; readonly density: number } {
  invariant(x >= 0 && x <= 1 && a > 0 && b > 0, `regularisedBeta(${x}, ${a}, ${b})`);
  if (x === 0 || x === 1) return { value: x, density: 0 };
  const logFront = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  const front = Math.exp(logFront);
  const value =
    x < (a + 1) / (a + b + 2)
      ? (front * betaFraction(x, a, b)) / a
      : 1 - (front * betaFraction(1 - x, b, a)) / b;
  return { value, density: front / (x * (1 - x)) };
}

/** Modified Lentz evaluation of the continued fraction. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const away = (value: number): number => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m <= 300; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    const factor = d * c;
    result *= factor;
    if (Math.abs(factor - 1) < 1e-15) return result;
  }
  return result;
}
