import { gaussPoints } from './gauss-points.ts';
import { type Square, square } from './symmetric-eigen.ts';

/** How an edge of a plate is held. */
export type Edge = 'clamped' | 'supported' | 'free';

/** Power with which a deflection must grow from an edge. */
const GROWTH: Readonly<Record<Edge, number>> = { free: 0, supported: 1, clamped: 2 };

/** Deflection, slope and curvature of each function of a strip at one place, by ξ. */
export type Triplet = readonly [f: Float64Array, d1: Float64Array, d2: Float64Array];

/**
 * Functions across a plate between two edges, on ξ = −1 … 1: Jacobi polynomials times what each
 * edge asks of a deflection, (1 + ξ)ᵖ (1 − ξ)^q with p, q = 0 free, 1 supported, 2 clamped.
 * They are orthonormal, so the mass matrix of a plate is that of its area.
 */
export interface StripFunctions {
  readonly count: number;
  /** Highest power of ξ among them. */
  readonly degree: number;
  readonly at: (xi: number) => Triplet;
  /** ∫ of the r-th derivative of the one times the s-th of the other, by rows. */
  readonly integral: (r: 0 | 1 | 2, s: 0 | 1 | 2) => Square;
  /** Mean of each function between two places. */
  readonly mean: (from: number, to: number) => Float64Array;
}

/** Jacobi polynomials P₀ … Pₙ₋₁ with the exponents α at +1 and β at −1. */
function jacobi(n: number, alpha: number, beta: number, x: number): Float64Array {
  const p = new Float64Array(n);
  if (n > 0) p[0] = 1;
  if (n > 1) p[1] = alpha + 1 + ((alpha + beta + 2) * (x - 1)) / 2;
  for (let k = 2; k < n; k++) {
    const c = 2 * k + alpha + beta;
    const front = (c - 1) * (c * (c - 2) * x + alpha * alpha - beta * beta);
    const back = 2 * (k + alpha - 1) * (k + beta - 1) * c;
    p[k] =
      (front * (p[k - 1] ?? 0) - back * (p[k - 2] ?? 0)) / (2 * k * (k + alpha + beta) * (c - 2));
  }
  return p;
}

/** The polynomials with their first and second derivatives. */
function jacobiTriplet(n: number, alpha: number, beta: number, x: number): Triplet {
  const [d1, d2] = [new Float64Array(n), new Float64Array(n)];
  const once = jacobi(n, alpha + 1, beta + 1, x);
  const twice = jacobi(n, alpha + 2, beta + 2, x);
  for (let k = 1; k < n; k++) {
    const c = (k + alpha + beta + 1) / 2;
    d1[k] = c * (once[k - 1] ?? 0);
    if (k > 1) d2[k] = ((c * (k + alpha + beta + 2)) / 2) * (twice[k - 2] ?? 0);
  }
  return [jacobi(n, alpha, beta, x), d1, d2];
}

/** (1 + ξ)ᵖ (1 − ξ)^q and its derivatives. */
function envelope(p: number, q: number, x: number): readonly [number, number, number] {
  const power = (base: number, e: number) => (e < 0 ? 0 : base ** e);
  const [u, v] = [1 + x, 1 - x];
  const [u0, u1, u2] = [power(u, p), p * power(u, p - 1), p * (p - 1) * power(u, p - 2)];
  const [v0, v1, v2] = [power(v, q), -q * power(v, q - 1), q * (q - 1) * power(v, q - 2)];
  return [u0 * v0, u1 * v0 + u0 * v1, u2 * v0 + 2 * u1 * v1 + u0 * v2];
}

function triplet(count: number, p: number, q: number, x: number): Triplet {
  const [e0, e1, e2] = envelope(p, q, x);
  const [f, g, h] = jacobiTriplet(count, 2 * q, 2 * p, x);
  return [
    f.map((fk) => e0 * fk),
    f.map((fk, k) => e1 * fk + e0 * (g[k] ?? 0)),
    f.map((fk, k) => e2 * fk + 2 * e1 * (g[k] ?? 0) + e0 * (h[k] ?? 0)),
  ];
}

/** Share of its neighbours on the diagonal below which an integral is the rounding of zero. */
const NOTHING = 1e-11;

/** The functions between a lower and an upper edge. */
export function stripFunctions(lower: Edge, upper: Edge, count: number): StripFunctions {
  const [p, q] = [GROWTH[lower], GROWTH[upper]];
  const points = gaussPoints(count + 4);
  const raw = points.map(({ x }) => triplet(count, p, q, x));
  const norm = new Float64Array(count);
  for (const [i, { weight }] of points.entries())
    for (let k = 0; k < count; k++) norm[k] = (norm[k] ?? 0) + weight * (raw[i]?.[0][k] ?? 0) ** 2;
  const scaled = (t: Triplet): Triplet => {
    const by = (v: Float64Array) => v.map((x, k) => x / Math.sqrt(norm[k] ?? 1));
    return [by(t[0]), by(t[1]), by(t[2])];
  };
  const values = raw.map(scaled);
  const at = (xi: number) => scaled(triplet(count, p, q, xi));
  return {
    count,
    degree: count - 1 + p + q,
    at,
    integral: (r, s) => {
      const out = square(count);
      for (const [i, { weight }] of points.entries())
        addProduct(out, weight, values[i]?.[r] ?? norm, values[i]?.[s] ?? norm);
      return withoutRounding(out);
    },
    mean: (from, to) => {
      const sum = new Float64Array(count);
      for (const { x, weight } of points)
        for (const [k, f] of at(from + ((x + 1) / 2) * (to - from))[0].entries())
          sum[k] = (sum[k] ?? 0) + (weight / 2) * f;
      return sum;
    },
  };
}

function addProduct({ n, at }: Square, weight: number, f: Float64Array, g: Float64Array): void {
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      at[i * n + j] = (at[i * n + j] ?? 0) + weight * (f[i] ?? 0) * (g[j] ?? 0);
}

/** Sets to zero what parity makes zero, so that even and odd deflections come apart. */
function withoutRounding({ n, at }: Square): Square {
  let most = 0;
  for (const x of at) most = Math.max(most, Math.abs(x));
  return { n, at: at.map((x) => (Math.abs(x) < NOTHING * most ? 0 : x)) };
}
