/**
 * Sensitivity indices of two published test functions. Ishigami and Homma (1990), a = 7, b = 0.1:
 * V 13.8446, first order 0.3139, 0.4424, 0, total 0.5576, 0.4424, 0.2437 (closed forms from
 * memory, recomputed). The g-function of Sobol' (Saltelli and Sobol' 1995), a = 0, 1, 4.5, 9, 99,
 * 99, 99, 99: Vᵢ = 1/(3 (1 + aᵢ)²), V = Π(1 + Vᵢ) − 1, total Vᵢ Π(others)/V (textbook formula).
 */
import { expect, it } from 'vitest';
import { sampleStudy } from '../../src/engine/index.ts';
import { formula, madeQuestion, number } from '../engine/made-question.ts';
import { finished, rectangular } from '../engine/monte-carlo/sampled-of.ts';
import { read, studyOf } from '../study/made-study.ts';

function indices(f: (...x: number[]) => number, count: number, x: number, half: number) {
  const names = Array.from({ length: count }, (_, i) => `x${i + 1}`);
  const question = madeQuestion(
    names.map((name) => number(name)),
    formula(f),
  );
  const view = studyOf(
    ...names.map((name) =>
      read('van', name, { t: 'scalar', kind: 'ratio', x, spread: rectangular(half) }),
    ),
  );
  const run = sampleStudy(
    question,
    new Map([[question.id, question]]),
    { view },
    { samples: 10_000, indices: true },
  );
  const influences = finished(run).outs[0]?.influences ?? [];
  return names.map((name) => {
    const own = influences.find((i) => i.variable?.of?.property === name);
    if (!own) throw new Error(`no index of ${name}`);
    return own;
  });
}

it('Ishigami', () => {
  const f = (a: number, b: number, c: number) =>
    Math.sin(a) + 7 * Math.sin(b) ** 2 + 0.1 * c ** 4 * Math.sin(a);
  const found = indices(f as (...x: number[]) => number, 3, 0, Math.PI);
  const first = [0.313905, 0.442411, 0];
  const total = [0.557589, 0.442411, 0.243684];
  for (const [i, own] of found.entries()) {
    expect(Math.abs(own.first - (first[i] ?? 0))).toBeLessThan(0.02);
    expect(Math.abs(own.total - (total[i] ?? 0))).toBeLessThan(0.02);
  }
});

it('g-function', () => {
  const as = [0, 1, 4.5, 9, 99, 99, 99, 99];
  const g = (...x: number[]) =>
    x.reduce((p, xi, i) => (p * (Math.abs(4 * xi - 2) + (as[i] ?? 0))) / (1 + (as[i] ?? 0)), 1);
  const vs = as.map((a) => 1 / (3 * (1 + a) ** 2));
  const all = vs.reduce((p, v) => p * (1 + v), 1);
  const found = indices(g, as.length, 0.5, 0.5);
  for (const [i, own] of found.entries()) {
    const v = vs[i] ?? 0;
    expect(Math.abs(own.first - v / (all - 1))).toBeLessThan(0.02);
    expect(Math.abs(own.total - (v * all) / (1 + v) / (all - 1))).toBeLessThan(0.02);
  }
});
