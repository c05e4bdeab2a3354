import { invariant } from './invariant';

function horner(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = 0; i < coefficients.length; i += 1) sum = sum * x + (coefficients[i] as number);
  return sum;
}

const CDF_TOP = [
  0.0352624965998911, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
];
const CDF_BOTTOM = [
  0.0883883476483184, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674, 637.333633378831,
  793.826512519948, 440.413735824752,
];

/**
 * Standard normal distribution function.
 *
 * @param z  deviate, any finite number
 * @returns probability 0..1, absolute error below 1e-14; 0 or 1 beyond 37 sigma
 * @throws invariant if z is NaN
 * Source: Hart J. F. and others, Computer Approximations, 1968, in the form of West G., Better approximations to
 * cumulative normal functions, Wilmott Magazine, May 2005, 70-76; status memory
 * Check: tests/math/normal.test.ts
 */
export function normalCdf(z: number): number {
  invariant(!Number.isNaN(z), 'deviate is NaN');
  const x = Math.abs(z);
  if (x > 37) return z > 0 ? 1 : 0;
  const bell = Math.exp((-x * x) / 2);
  const tail =
    x < 7.07106781186547
      ? (bell * horner(CDF_TOP, x)) / horner(CDF_BOTTOM, x)
      : bell / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))))) / 2.5066282746310002;
  return z > 0 ? 1 - tail : tail;
}

const CENTRE_TOP = [
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
  1971.5909503065513, 133.14166789178438, 3.3871328727963665,
];
const CENTRE_BOTTOM = [
  5226.495278852546, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
  687.1870074920579, 42.31333070160091, 1,
];
const MIDDLE_TOP = [
  0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const MIDDLE_BOTTOM = [
  1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];
const FAR_TOP = [
  2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
  0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
];
const FAR_BOTTOM = [
  2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
  0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
];

/**
 * Inverse of the standard normal distribution function.
 *
 * @param p  probability, strictly between 0 and 1
 * @returns deviate, relative error about 1e-15
 * @throws invariant if p is not inside (0, 1)
 * Source: Wichura M. J., Algorithm AS 241, Applied Statistics 37(3) 1988, 477-484 (PPND16); status memory
 * Check: tests/math/normal.test.ts
 */
export function normalQuantile(p: number): number {
  // the message is made only when needed: writing out a number costs more than the quantile
  if (!(p > 0 && p < 1)) invariant(false, `probability ${p} is not inside (0, 1)`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * horner(CENTRE_TOP, r)) / horner(CENTRE_BOTTOM, r);
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const size =
    r <= 5
      ? horner(MIDDLE_TOP, r - 1.6) / horner(MIDDLE_BOTTOM, r - 1.6)
      : horner(FAR_TOP, r - 5) / horner(FAR_BOTTOM, r - 5);
  return q < 0 ? -size : size;
}
