import type { Matrix } from './small-matrix.ts';

const SQRT_2PI = Math.sqrt(2 * Math.PI);

/**
 * ln of the standard normal distribution function. Continued fraction in the lower tail and a
 * power series in the middle (Abramowitz and Stegun 26.2.14 and 26.2.10; from memory).
 */
export function logNormalCdf(z: number): number {
  if (z > 6) return -Math.exp(logUpperTail(z));
  if (z < -3) return logUpperTail(-z);
  let [term, sum] = [z, z];
  for (let k = 1; k < 80; k++) {
    term *= (z * z) / (2 * k + 1);
    sum += term;
  }
  return Math.log(0.5 + density(z) * sum);
}

const density = (z: number): number => Math.exp(-0.5 * z * z) / SQRT_2PI;

/** ln(1 − Φ(z)) for z of 3 or more. */
function logUpperTail(z: number): number {
  let fraction = z;
  for (let k = 60; k >= 1; k--) fraction = z + k / fraction;
  return -0.5 * z * z - Math.log(SQRT_2PI * fraction);
}

/** A range that a number is known to lie in. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/**
 * ln of the probability that a normal vector lies within bounds, one coordinate after the
 * other, each taken as normal with the moments that the earlier ones leave it (after the
 * method of Mendell and Elston 1974; from memory). Exact for one coordinate and for
 * independent ones.
 */
export function logWithin(mean: readonly number[], cov: Matrix, bounds: readonly Bounds[]): number {
  const m = [...mean];
  const c = cov.map((row) => [...row]);
  let total = 0;
  for (const [i, { low, high }] of bounds.entries()) {
    const sd = Math.sqrt(Math.max(c[i]?.[i] ?? 0, 1e-30));
    const [a, b] = [(low - (m[i] ?? 0)) / sd, (high - (m[i] ?? 0)) / sd];
    const { log, shift, shrink } = truncated(a, b);
    total += log;
    condition(m, c, i, sd, shift, shrink);
  }
  return total;
}

/** ln P(a < z < b) of a standard normal, and what being there does to its mean and variance. */
function truncated(a: number, b: number): { log: number; shift: number; shrink: number } {
  // On the far right, turned to the left tail, where logarithms keep their digits.
  if (a > 0) {
    const turned = truncated(-b, -a);
    return { ...turned, shift: -turned.shift };
  }
  const upper = logNormalCdf(b);
  const log = a === Number.NEGATIVE_INFINITY ? upper : logLess(upper, logNormalCdf(a));
  const at = (z: number) => (Number.isFinite(z) ? Math.exp(-0.5 * z * z - log) / SQRT_2PI : 0);
  const [fa, fb] = [at(a), at(b)];
  const shift = fa - fb;
  const bend = (Number.isFinite(a) ? a * fa : 0) - (Number.isFinite(b) ? b * fb : 0);
  return { log, shift, shrink: Math.min(1, Math.max(0, shift * shift - bend)) };
}

/** ln(eᵃ − eᵇ) for a > b. */
const logLess = (a: number, b: number): number =>
  a + Math.log(Math.max(-Math.expm1(b - a), Number.MIN_VALUE));

/** Moves the later coordinates to where the truncated one draws them. */
function condition(
  m: number[],
  c: number[][],
  i: number,
  sd: number,
  shift: number,
  shrink: number,
): void {
  for (let j = i + 1; j < m.length; j++) {
    const pull = (c[i]?.[j] ?? 0) / sd;
    m[j] = (m[j] ?? 0) + pull * shift;
    for (let k = i + 1; k < m.length; k++) {
      const row = c[j];
      if (row) row[k] = (row[k] ?? 0) - pull * ((c[i]?.[k] ?? 0) / sd) * shrink;
    }
  }
}
