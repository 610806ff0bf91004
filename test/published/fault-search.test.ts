/**
 * JCGM 106:2012, clause 6 (from memory): knowledge after a measurement by Bayes' rule. The
 * question mass-faults ranks sets of slips by it. Here every single and double slip of a small
 * made-up record is tried, with the normal density written out anew by a general inverse, and the
 * probabilities must come out as the question's. Orthant probabilities of two correlated normal
 * variables are checked against 1/4 + asin ρ / 2π (Sheppard 1899, from memory).
 */
import { describe, expect, it } from 'vitest';
import type { Candidate } from '../../src/engine/mass/faults/candidate.ts';
import { findFaults } from '../../src/engine/mass/faults/find-faults.ts';
import type { MassRecord, MassRow } from '../../src/engine/mass/faults/mass-record.ts';
import { logNormalCdf, logWithin } from '../../src/engine/mass/faults/orthant.ts';
import { setUp } from '../../src/engine/mass/faults/set-up.ts';
import { normalQuantile } from '../../src/quantity/index.ts';

const form = (id: string, x: number, u: number) => ({ x, by: new Map([[id, u]]) });

const row = (number: string, kg: number, x: number, y: number): MassRow => ({
  ...{ number, label: number, name: `part ${number}`, group: number },
  mass: form(`m${number}`, kg, 0.01),
  at: [form(`x${number}`, x, 0.005), form(`y${number}`, y, 0.005), form(`z${number}`, 0.5, 0.005)],
  ...{ pieces: Number.NaN, instrument: '', written: '' },
});

const RIGHT = [
  ['A', 6.2, 0.1, 0],
  ['B', 11.4, 0.9, 0.3],
  ['C', 3.1, 1.7, -0.2],
  ['D', 8.6, 2.4, 0.1],
  ['E', 14.9, 1.2, -0.5],
] as const;

/** A record of which one row is wrong, against a whole weighed and placed rightly. */
function recordWith(wrong: string, kg: number): MassRecord {
  const sum = (arm: (of: (typeof RIGHT)[number]) => number) =>
    RIGHT.reduce((s, r) => s + r[1] * arm(r), 0);
  return {
    rows: RIGHT.map(([n, m, x, y]) => row(n, n === wrong ? kg : m, x, y)),
    modules: [],
    whole: {
      mass: form('W', sum(() => 1) + 0.21, 0.4),
      x: form('X', sum((r) => r[2]) - 0.3, 0.9),
      y: form('Y', sum((r) => r[3]) + 0.1, 0.4),
    },
    tares: [{ label: 'tote', kg: 1.35 }],
    joints: [],
  };
}

/** Inverse and determinant by Gauss and Jordan. */
function inverse(a: readonly (readonly number[])[]): { inv: number[][]; det: number } {
  const n = a.length;
  const m = a.map((r, i) => [...r, ...r.map((_, j) => (i === j ? 1 : 0))]);
  let det = 1;
  for (let i = 0; i < n; i++) {
    const pivot = m[i]?.[i] ?? Number.NaN;
    det *= pivot;
    m[i] = (m[i] ?? []).map((x) => x / pivot);
    for (let k = 0; k < n; k++) {
      const factor = m[k]?.[i] ?? 0;
      if (k !== i) m[k] = (m[k] ?? []).map((x, j) => x - factor * (m[i]?.[j] ?? 0));
    }
  }
  return { inv: m.map((r) => r.slice(n)), det };
}

/** Every set of up to two slips, with its unnormalised probability. */
function everySet(record: MassRecord): { set: readonly Candidate[]; weight: number }[] {
  const { candidates, scorer } = setUp(record);
  const { x, cov, of } = scorer.residuals;
  const { inv, det } = inverse(cov);
  const density = (r: readonly number[]) => {
    const chi2 = r.reduce(
      (s, a, i) => s + a * r.reduce((t, b, j) => t + b * (inv[i]?.[j] ?? 0), 0),
      0,
    );
    return Math.exp(-0.5 * chi2) / Math.sqrt((2 * Math.PI) ** r.length * det);
  };
  const left = (set: readonly Candidate[]) =>
    x.map((r, d) =>
      set.reduce(
        (s, c) => c.changes.reduce((t, ch) => t - ch.kg * (of[d]?.perKg[ch.row] ?? 0), s),
        r,
      ),
    );
  const weigh = (set: readonly Candidate[]) => ({
    set,
    weight: density(left(set)) * Math.exp(set.reduce((s, c) => s + c.odds, 0)),
  });
  const pairs = candidates.flatMap((a, i) =>
    candidates.slice(i + 1).flatMap((b) => {
      const rows = new Set(a.changes.map((c) => c.row));
      return b.changes.some((c) => rows.has(c.row)) ? [] : [[a, b]];
    }),
  );
  return [[], ...candidates.map((c) => [c]), ...pairs].map(weigh);
}

describe.each([
  ['D', 18.96],
  ['B', 25.13],
  ['E', 1.49],
])('row %s written as %f kg', (wrong, kg) => {
  const record = recordWith(wrong, kg);
  const all = everySet(record);
  const found = findFaults(setUp(record), () => undefined);

  const total = all.reduce((s, w) => s + w.weight, 0);
  const byRow = record.rows.map(
    (_, i) => all.reduce((s, w) => s + (w.set.some((c) => c.row === i) ? w.weight : 0), 0) / total,
  );

  it('is explained as it is when every set is tried', () => {
    const best = all.reduce((a, b) => (b.weight > a.weight ? b : a));
    expect(found.best.map((c) => [c.kind, c.row])).toEqual(best.set.map((c) => [c.kind, c.row]));
    expect(found.complete).toBe(true);
  });

  it('has the suspects that all sets give, likeliest first, the wrong row among the first', () => {
    const order = [...byRow.keys()].sort((a, b) => (byRow[b] ?? 0) - (byRow[a] ?? 0));
    const clear = order.filter((i) => (byRow[i] ?? 0) > 0.05);
    expect(found.suspects.slice(0, clear.length).map((s) => s.row)).toEqual(clear);
    expect(clear.slice(0, 2).map((i) => record.rows[i]?.number)).toContain(wrong);
  });

  it('has the probabilities that all sets give, within the catalogue', () => {
    for (const suspect of found.suspects.filter((s) => s.probability > 0.01)) {
      const within = suspect.probability / (1 - found.unexplained);
      expect(Math.abs(within - (byRow[suspect.row] ?? 0))).toBeLessThan(0.05);
    }
  });
});

describe('orthant probabilities', () => {
  const free = { low: 0, high: Number.POSITIVE_INFINITY };

  it.each([-0.8, -0.3, 0, 0.3, 0.8])('of two variables correlated by %f', (rho) => {
    const cov = [
      [1, rho],
      [rho, 1],
    ];
    const p = Math.exp(logWithin([0, 0], cov, [free, free]));
    expect(Math.abs(p - (0.25 + Math.asin(rho) / (2 * Math.PI)))).toBeLessThan(0.012);
  });

  it('of independent variables are exact, far tails too', () => {
    const cov = [
      [4, 0],
      [0, 9],
    ];
    const exact = logNormalCdf(1.5) + logNormalCdf(-40);
    expect(logWithin([3, -120], cov, [free, free])).toBeCloseTo(exact, 6);
  });

  it.each([0.001, 0.02, 0.3, 0.5, 0.9, 0.999])('ln Φ undoes the quantile of %f', (p) => {
    expect(Math.exp(logNormalCdf(normalQuantile(p)))).toBeCloseTo(p, 9);
  });
});
