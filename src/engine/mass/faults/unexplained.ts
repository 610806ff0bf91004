import { RATES } from './fault-rates.ts';
import { type MassRow, massOf } from './mass-record.ts';
import type { Scorer } from './scorer.ts';
import { cholesky, dot, logDeterminant, type Matrix, whitened } from './small-matrix.ts';

/** A fault of no known kind that acts in one direction, by an amount nobody knows. */
interface Direction {
  /** Effect of one standard deviation of it. */
  readonly effect: readonly number[];
  readonly rate: number;
}

/** Relative standard deviations of a mass that is wrong by anything. */
const WRONG_BY = [0.3, 1] as const;
/** Standard deviation of a position that is wrong, m, and of a scale's reading, kg. */
const MOVED_M = 1;
const AXES = ['x', 'y', 'z'] as const;
const MISREAD_KG = 10;
/** Standard deviations of the mass of a part that is in no row, kg. */
const UNLISTED_KG = [2, 8, 30] as const;
/** How the rate of what is not known is parted. */
const PARTED = { mass: 0.4, position: 0.25, scale: 0.2, unlisted: 0.15 } as const;

/**
 * How much more likely (ln) a rest becomes when a fault of no known kind may be in it: any mass
 * of one row wrong by anything, its position wrong, a scale misread, a part in no row. None fits
 * as sharply as a kind that is known; one of them fits nearly anything. Rests are taken as
 * whitened in the frame in which no part is on another.
 */
export class UnknownFault {
  /** Directions scaled so that half the square of a rest along one is its gain, and their base. */
  readonly #along: Float64Array;
  readonly #base: Float64Array;
  readonly #d: number;
  readonly #shapes: readonly { readonly factor: Matrix; readonly log: number }[];

  constructor(scorer: Scorer, rows: readonly MassRow[], isAlone: (row: number) => boolean) {
    const directions = directionsOf(scorer, rows, isAlone);
    this.#d = scorer.factor.length;
    this.#along = new Float64Array(directions.length * this.#d);
    this.#base = new Float64Array(directions.length);
    for (const [i, { effect, rate }] of directions.entries()) {
      const w = whitened(scorer.factor, effect);
      const grown = 1 + dot(w, w);
      this.#along.set(
        w.map((x) => x / Math.sqrt(grown)),
        i * this.#d,
      );
      this.#base[i] = Math.log(RATES.unexplained * rate) - 0.5 * Math.log(grown);
    }
    this.#shapes = UNLISTED_KG.map((kg) => {
      const factor = cholesky(inWhitened(scorer.factor, anywhere(scorer, rows, kg)));
      const log = Math.log((RATES.unexplained * PARTED.unlisted) / UNLISTED_KG.length);
      return { factor, log: log - 0.5 * logDeterminant(factor) };
    });
  }

  /** More than this it can not gain. */
  most(rest: readonly number[]): number {
    return Math.log(RATES.unexplained) + 0.5 * dot(rest, rest);
  }

  gain(rest: readonly number[]): number {
    const plain = 0.5 * dot(rest, rest);
    const logs: number[] = [];
    for (let i = 0; i < this.#base.length; i++)
      logs.push((this.#base[i] ?? 0) + this.#alongGain(i, rest));
    for (const { factor, log } of this.#shapes) {
      const left = whitened(factor, rest);
      logs.push(log + plain - 0.5 * dot(left, left));
    }
    return logSum(logs);
  }

  #alongGain(i: number, rest: readonly number[]): number {
    let sum = 0;
    for (let k = 0, at = i * this.#d; k < this.#d; k++, at++)
      sum += (this.#along[at] ?? 0) * (rest[k] ?? 0);
    return 0.5 * sum * sum;
  }
}

/** Every single thing that may be wrong by an amount, each with its share of the rate. */
function directionsOf(
  scorer: Scorer,
  rows: readonly MassRow[],
  isAlone: (row: number) => boolean,
): Direction[] {
  const { of, scales } = scorer.residuals;
  const weighed = [...rows.keys()].filter((i) => massOf(rows[i]) > 0);
  const alone = weighed.filter(isAlone);
  const placed = weighed.filter((i) => rows[i]?.at);
  const times = (v: readonly number[], k: number) => v.map((x) => k * x);
  const masses = alone.flatMap((i) =>
    WRONG_BY.map((s) => times(scorer.perKg(i), s * massOf(rows[i]))),
  );
  const positions = placed.flatMap((i) =>
    AXES.map((axis) => of.map((r) => (r.id === axis ? MOVED_M * massOf(rows[i]) : 0))),
  );
  const readings = scales.map((per) => times(per, MISREAD_KG));
  const shared = (effects: readonly number[][], rate: number) =>
    effects.map((effect): Direction => ({ effect, rate: rate / effects.length }));
  return [
    ...shared(masses, PARTED.mass),
    ...shared(positions, PARTED.position),
    ...shared(readings, PARTED.scale),
  ];
}

/** I + L⁻¹ cov L⁻ᵀ. */
function inWhitened(factor: Matrix, cov: Matrix): number[][] {
  const half = cov.map((row) => whitened(factor, row));
  const columns = half.map((_, j) =>
    whitened(
      factor,
      half.map((row) => row[j] ?? 0),
    ),
  );
  return columns.map((column, j) => column.map((x, i) => x + (i === j ? 1 : 0)));
}

/** ln Σ eˣ. */
function logSum(logs: readonly number[]): number {
  let top = Number.NEGATIVE_INFINITY;
  for (const x of logs) if (x > top) top = x;
  let sum = 0;
  // What is far below the largest adds nothing that counts.
  for (const x of logs) if (x > top - 30) sum += Math.exp(x - top);
  return top + Math.log(sum);
}

/** A mass that may sit wherever the parts of the vehicle do: second moments of what it adds. */
function anywhere({ residuals }: Scorer, rows: readonly MassRow[], kg: number): Matrix {
  const placed = [...rows.keys()].filter((i) => rows[i]?.at);
  return residuals.of.map((a) =>
    residuals.of.map((b) => {
      const sum = placed.reduce((s, i) => s + (a.perKg[i] ?? 0) * (b.perKg[i] ?? 0), 0);
      return (kg * kg * sum) / Math.max(1, placed.length);
    }),
  );
}
