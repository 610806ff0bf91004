import type { Candidate } from './candidate.ts';
import { type MassRow, massOf } from './mass-record.ts';
import { type Bounds, logWithin } from './orthant.ts';
import type { Residuals } from './residuals.ts';
import { cholesky, dot, logDeterminant, type Matrix, plusOuter, whitened } from './small-matrix.ts';

/** What is thought of the mass of a part that has no reading. */
export interface MissingMass {
  readonly row: number;
  /** Mean and standard deviation before the sums are looked at, kg; never below zero. */
  readonly kg: number;
  readonly u: number;
}

/** How well a set of faults explains the residuals. */
export interface Score {
  /** ln of prior odds and likelihood, up to a constant of the record. */
  readonly log: number;
  /** The part of it that keeps the missing masses within their bounds: 0 where nothing presses. */
  readonly within: number;
  /** What the faults leave of the residuals, in standard units of all that is not known. */
  readonly rest: readonly number[];
  /** What the sums leave for each part without a reading, kg, with its spread. */
  readonly missing: readonly { readonly kg: number; readonly u: number }[];
}

/** With more parts than this without a reading their bounds say next to nothing. */
const MOST_BOUNDED = 24;

/** Where the masses without a reading come into the residuals, and what follows from it. */
export interface Frame {
  readonly columns: readonly (readonly number[])[];
  readonly factor: Matrix;
  readonly logDet: number;
  /** Residuals less what the missing masses are thought to be, whitened. */
  readonly start: readonly number[];
  /** Whitened columns times the variances, and the covariance of the missing masses left. */
  readonly pull: readonly (readonly number[])[];
  readonly cov: Matrix;
}

/**
 * Scores sets of faults by Bayes' rule: the product of their prior odds, times the normal density
 * of what they leave of the residuals. Masses without a reading are integrated over: normal, not
 * below zero, and where they are on another part not above what that one weighed.
 */
export class Scorer {
  readonly residuals: Residuals;
  readonly missing: readonly MissingMass[];
  readonly #rows: readonly MassRow[];
  readonly #perKg: readonly (readonly number[])[];
  readonly #plain: Frame;
  /** Frames in which some parts are on others. */
  readonly #frames = new Map<string, Frame>();
  /** ln of how likely the bounds hold before the sums are looked at: the zero of `within`. */
  readonly #boundsAtFirst: number;

  constructor(residuals: Residuals, rows: readonly MassRow[], missing: readonly MissingMass[]) {
    this.residuals = residuals;
    this.missing = missing;
    this.#rows = rows;
    this.#perKg = rows.map((_, i) => residuals.of.map((r) => r.perKg[i] ?? 0));
    this.#plain = this.#frameOf(missing.map((m) => this.perKg(m.row).map((x) => -x)));
    this.#boundsAtFirst = logWithin(
      missing.map((m) => m.kg),
      missing.map((m, i) => missing.map((_, j) => (i === j ? m.u * m.u : 0))),
      this.#boundsOf([]),
    );
  }

  /** Factor of the covariance of all that is not known, when no part is still on another. */
  get factor(): Matrix {
    return this.#plain.factor;
  }

  /** What a kilogram too many in a row adds to each residual. */
  perKg(row: number): readonly number[] {
    return this.#perKg[row] ?? [];
  }

  /** What a candidate adds to each residual; an absorbed part's mass is not in it. */
  effectOf(candidate: Candidate): number[] {
    return this.residuals.of.map((_, d) =>
      candidate.changes.reduce((sum, c) => sum + c.kg * (this.perKg(c.row)[d] ?? 0), 0),
    );
  }

  score(set: readonly Candidate[]): Score {
    const frame = this.frameFor(set);
    const taken = this.residuals.x.map(() => 0);
    for (const candidate of set)
      for (const { row, kg } of candidate.changes)
        for (const [d, per] of this.perKg(row).entries()) taken[d] = (taken[d] ?? 0) + kg * per;
    const explained = whitened(frame.factor, taken);
    const rest = frame.start.map((x, d) => x - (explained[d] ?? 0));
    return this.scoreOf(set, frame, rest);
  }

  /** The score of a set that is known to leave a rest, whitened in the set's own frame. */
  scoreOf(set: readonly Candidate[], frame: Frame, rest: readonly number[]): Score {
    let odds = 0;
    for (const { odds: own } of set) odds += own;
    const missing = this.#missingMasses(frame, rest);
    const within = missing.length > MOST_BOUNDED ? 0 : this.#within(set, frame, missing);
    return {
      log: odds - 0.5 * dot(rest, rest) - 0.5 * frame.logDet + within,
      within,
      rest,
      missing,
    };
  }

  /** Each missing mass lightens its own place; one that is on another part weighs there. */
  frameFor(set: readonly Candidate[]): Frame {
    const absorbed = set.filter((c) => c.kind === 'absorbed');
    if (absorbed.length === 0) return this.#plain;
    const key = absorbed.map((c) => `${c.other}>${c.row}`).join(' ');
    const frame = this.#frames.get(key) ?? this.#frameWith(absorbed);
    this.#frames.set(key, frame);
    return frame;
  }

  #frameWith(absorbed: readonly Candidate[]): Frame {
    return this.#frameOf(
      this.#plain.columns.map((column, j) => {
        const host = absorbed.find((c) => c.other === this.missing[j]?.row);
        return host ? column.map((x, d) => x + (this.perKg(host.row)[d] ?? 0)) : column;
      }),
    );
  }

  #frameOf(columns: Frame['columns']): Frame {
    const u2 = this.missing.map((m) => m.u * m.u);
    const { cov: noise, x } = this.residuals;
    const free = columns.map((column, j) => ({ column, weight: u2[j] ?? 0 }));
    const factor = cholesky(plusOuter(noise, free));
    const less = x.map((r, d) =>
      columns.reduce((s, c, j) => s - (this.missing[j]?.kg ?? 0) * (c[d] ?? 0), r),
    );
    const pull = columns.map((c, j) => whitened(factor, c).map((w) => w * (u2[j] ?? 0)));
    const cov = pull.map((a, i) => pull.map((b, j) => (i === j ? (u2[i] ?? 0) : 0) - dot(a, b)));
    return {
      columns,
      factor,
      logDet: logDeterminant(factor),
      start: whitened(factor, less),
      pull,
      cov,
    };
  }

  #missingMasses({ pull, cov }: Frame, rest: readonly number[]): Score['missing'] {
    return pull.map((w, j) => ({
      kg: (this.missing[j]?.kg ?? 0) + dot(w, rest),
      u: Math.sqrt(Math.max(0, cov[j]?.[j] ?? 0)),
    }));
  }

  #within(set: readonly Candidate[], { cov }: Frame, missing: Score['missing']): number {
    if (missing.length === 0) return 0;
    const mean = missing.map((m) => m.kg);
    return logWithin(mean, cov, this.#boundsOf(set)) - this.#boundsAtFirst;
  }

  #boundsOf(set: readonly Candidate[]): Bounds[] {
    return this.missing.map(({ row }) => {
      const host = set.find((c) => c.kind === 'absorbed' && c.other === row);
      return { low: 0, high: host ? massOf(this.#rows[host.row]) : Number.POSITIVE_INFINITY };
    });
  }
}
