import { invariant } from './invariant';

/**
 * Polynomial through a smooth function at the Chebyshev points of -1..1, as coefficients of rising powers.
 *
 * @param f  function on -1..1
 * @param degree  whole number 0..16; power coefficients lose digits beyond
 * @returns degree + 1 coefficients, constant first, for `evaluatePolynomial`
 * @throws invariant if the degree is out of range or f gives a number that is not finite
 * Source: Mason J. C., Handscomb D. C., Chebyshev Polynomials, CRC 2003, ch. 6, status memory
 * Check: tests/math/polynomial-fit.test.ts
 */
export function fitPolynomial(f: (u: number) => number, degree: number): Float64Array {
  const nodes = chebyshevNodes(degree);
  const values = nodes.map(f);
  const waves = nodes.map((_, k) => {
    const sum = values.reduce((total, value, i) => total + value * cosineAt(k, i, degree), 0);
    return (sum * (k === 0 ? 1 : 2)) / nodes.length;
  });
  invariant(waves.every(Number.isFinite), 'fitted function is not finite');
  return powersFromChebyshev(waves);
}

/**
 * Polynomial in two variables through a smooth function on the square -1..1 by -1..1.
 *
 * @param f  function of (u, v)
 * @param degreeU  degree in u, 0..16
 * @param degreeV  degree in v, 0..16
 * @returns (degreeV + 1) * (degreeU + 1) coefficients; block j holds the rising powers of u that multiply v^j
 * @throws invariant as `fitPolynomial`
 * Check: tests/math/polynomial-fit.test.ts
 */
export function fitPolynomial2(
  f: (u: number, v: number) => number,
  degreeU: number,
  degreeV: number,
): Float64Array {
  const columns = chebyshevNodes(degreeU).map((u) => fitPolynomial((v) => f(u, v), degreeV));
  const result = new Float64Array((degreeV + 1) * (degreeU + 1));
  for (let j = 0; j <= degreeV; j += 1) {
    const waves = columns.map((_, k) => {
      const sum = columns.reduce((total, column, i) => total + (column[j] ?? 0) * cosineAt(k, i, degreeU), 0);
      return (sum * (k === 0 ? 1 : 2)) / columns.length;
    });
    result.set(powersFromChebyshev(waves), j * (degreeU + 1));
  }
  return result;
}

/**
 * Value of a polynomial given by rising powers.
 *
 * @param coefficients  constant first
 * @param u  point
 * Check: tests/math/polynomial-fit.test.ts
 */
export function evaluatePolynomial(coefficients: Float64Array, u: number): number {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k -= 1) sum = sum * u + (coefficients[k] as number);
  return sum;
}

function chebyshevNodes(degree: number): number[] {
  invariant(Number.isInteger(degree) && degree >= 0 && degree <= 16, `degree ${degree}`);
  return Array.from({ length: degree + 1 }, (_, i) => cosineAt(1, i, degree));
}

/** Value at node i of the Chebyshev polynomial of order k. */
function cosineAt(k: number, i: number, degree: number): number {
  return Math.cos((Math.PI * k * (i + 0.5)) / (degree + 1));
}

function powersFromChebyshev(waves: readonly number[]): Float64Array {
  const size = waves.length;
  const result = new Float64Array(size);
  let before = new Float64Array(size);
  let current = new Float64Array(size);
  before[0] = 1;
  if (size > 1) current[1] = 1;
  waves.forEach((wave, k) => {
    const order = k === 0 ? before : current;
    order.forEach((power, i) => {
      result[i] = (result[i] ?? 0) + wave * power;
    });
    if (k === 0) return;
    const next = new Float64Array(size);
    next.forEach((_, i) => {
      next[i] = 2 * (current[i - 1] ?? 0) - (before[i] ?? 0);
    });
    before = current;
    current = next;
  });
  return result;
}
