import { describe, expect, it } from 'vitest';
import { Variables } from '../../../src/engine/forms/variables.ts';
import { askStudy, loadQuestion, sampleStudy } from '../../../src/engine/index.ts';
import { Draws } from '../../../src/engine/monte-carlo/draws.ts';
import { Random } from '../../../src/engine/monte-carlo/random.ts';
import { sobolColumn } from '../../../src/engine/monte-carlo/sobol.ts';
import { shortestInterval, symmetricInterval } from '../../../src/engine/monte-carlo/summary.ts';
import { toleranceOf } from '../../../src/engine/monte-carlo/tolerance.ts';
import { mass, node, read, studyOf } from '../../study/made-study.ts';
import { formula, number } from '../made-question.ts';
import { finished, normal, rectangular, sampledOf } from './sampled-of.ts';

describe('random numbers', () => {
  it('are those of the generator’s published start 1, 2, 3, 4 (from memory)', () => {
    const random = new Random(1, 2, 3, 4);
    const first = Array.from({ length: 4 }, () => random.bits());
    expect(first).toEqual([11520, 0, 5927040, 70819200]);
  });

  it('put numbers in an order in which each stands once', () => {
    const order = Random.of(7).permutation(1000);
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: 1000 }, (_, i) => i));
    expect([...order]).not.toEqual([...Random.of(8).permutation(1000)]);
  });
});

describe('Sobol’ points', () => {
  it('begin as the published table has them', () => {
    // Joe and Kuo (2008): the first points of three dimensions, in Gray code order.
    const unit = (d: number) => [...sobolColumn(d, 8)].map((x) => x / 2 ** 32);
    expect(unit(0)).toEqual([0, 0.5, 0.75, 0.25, 0.375, 0.875, 0.625, 0.125]);
    expect(unit(1)).toEqual([0, 0.5, 0.25, 0.75, 0.375, 0.875, 0.125, 0.625]);
    expect(unit(2)).toEqual([0, 0.5, 0.25, 0.75, 0.625, 0.125, 0.875, 0.375]);
  });

  it('have one point in each of 2ⁿ equal steps, in every dimension', () => {
    for (let d = 0; d < 32; d++) {
      const steps = new Set([...sobolColumn(d, 1024, 0x5bd1e995)].map((x) => x >>> 22));
      expect(steps.size).toBe(1024);
    }
  });
});

describe('intervals', () => {
  const xs = Float64Array.from({ length: 100 }, (_, i) => i + 1);

  it('span as many samples as JCGM 101:2008, 7.7 says', () => {
    // M = 100, p = 0.95: q = 95, r = ⌊(100 − 95 + 1)/2⌋ = 3, from y(3) to y(98).
    expect(symmetricInterval(xs, 0.95)).toEqual({ low: 3, high: 98 });
    const lean = Float64Array.from(xs, (x) => x * x);
    expect(shortestInterval(lean, 0.95)).toEqual({ low: 1, high: 96 * 96 });
  });

  it('have half of the last digit of u as their tolerance (7.9.2, example: 0.000 35 has ½ 10⁻⁵)', () => {
    expect(toleranceOf(0.00035, 2)).toBeCloseTo(0.5e-5, 12);
    expect(toleranceOf(2, 1)).toBeCloseTo(0.5, 12);
    expect(toleranceOf(9.96, 2)).toBeCloseTo(0.5, 12);
  });
});

describe('a run', () => {
  const product = [number('a'), number('b')] as const;
  const values = [
    [10, normal(1)],
    [5, rectangular(1)],
  ] as const;

  it('has the same digits for the same seed, others for another', () => {
    const run = (seed: number) =>
      sampledOf(
        product,
        formula((a, b) => a * b),
        values,
        { seed, samples: 10_000 },
      );
    expect(run(3)).toEqual(run(3));
    expect(run(3).outs[0]?.u).not.toBe(run(4).outs[0]?.u);
  });

  it('goes on until mean, spread and ends have settled, and says so', () => {
    const settled = sampledOf(
      product,
      formula((a, b) => a * b),
      values,
      { digits: 1 },
    );
    expect(settled.settled).toBe(true);
    expect(settled.samples).toBeLessThan(200_000);
    const short = sampledOf(
      product,
      formula((a, b) => a * b),
      values,
      { samples: 10_000 },
    );
    expect(short.settled).toBe(false);
  });

  it('of x − x has no spread, of what cancels only what is left', () => {
    const same = sampledOf(
      product,
      formula((a) => a - a),
      values,
      { samples: 10_000 },
    );
    expect(same.outs).toEqual([]);
  });

  it('counts the samples in which a result is no number, and leaves them out', () => {
    const root = sampledOf([number('a')], formula(Math.sqrt), [[0.5, normal(1)]], {
      samples: 10_000,
    });
    // P(x < 0) for N(0.5, 1) is 0.3085.
    expect(root.outs[0]?.none).toBeCloseTo(0.3085, 2);
    expect(root.outs[0]?.mean).toBeGreaterThan(0);
  });

  it('finds what is nothing to first order: the square of 0 ± 1 has mean 1 and u √2', () => {
    const square = sampledOf(
      [number('a')],
      formula((a) => a * a),
      [[0, normal(1)]],
      {
        samples: 100_000,
      },
    );
    expect(square.outs[0]?.mean).toBeCloseTo(1, 2);
    expect(square.outs[0]?.u).toBeCloseTo(Math.SQRT2, 1);
    expect(square.outs[0]?.validated.holds).toBe(false);
  });
});

describe('a sum over parts', async () => {
  const { question, questions } = await loadQuestion('mass-roll-up');
  const ids = Array.from({ length: 400 }, (_, i) => `p${i}`);
  const study = (order: readonly string[]) =>
    studyOf(
      ...order.map((id) => node(id, 'van')),
      ...order.map((id) =>
        read(id, 'mass', mass(1 + Number(id.slice(1)) / 100, 0.1), { id: `r ${id}` }),
      ),
    );
  const view = study(ids);

  it('has the linear mean and spread where it is linear, by pooled columns too', () => {
    const linear = askStudy(question, questions, { view }).outs.mass;
    const sampled = finished(sampleStudy(question, questions, { view }, { samples: 50_000 }));
    const own = sampled.outs.find((o) => o.name === 'mass');
    expect(linear?.knownU).toBeCloseTo(0.1 * 20, 12);
    expect(Math.abs((own?.mean ?? 0) - (linear?.x ?? 0))).toBeLessThan(0.02);
    expect(Math.abs((own?.u ?? 0) / 2 - 1)).toBeLessThan(0.02);
    expect(own?.validated.holds).toBe(true);
  });

  it('has the same digits whatever the order in which the parts were taken down', () => {
    const run = (order: readonly string[]) =>
      finished(sampleStudy(question, questions, { view: study(order) }, { samples: 10_000 })).outs;
    expect(run(ids)).toEqual(run([...ids].reverse()));
  });
});

describe('pooled columns make no false correlation', () => {
  const SIZE = 2000;
  const COUNT = 3000;
  const variables = new Variables();
  const numbers = Array.from({ length: COUNT }, (_, i) =>
    variables.put({
      ...{ id: `v${i}`, label: '', what: 'reading', spread: normal(1), u: 1 },
      ...{ shift: 0, dof: null, place: {} },
    }),
  );
  const drawn = (seed: number) =>
    new Draws({ variables, leading: [], count: COUNT, seed, size: SIZE });
  const column = (draws: Draws, number: number) => {
    const made = new Float64Array(SIZE);
    draws.addTo(made, number, 1);
    return made;
  };
  const correlation = (a: Float64Array, b: Float64Array) =>
    a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0) / SIZE;

  it('between pairs: as small as between columns of their own, 1/√n', () => {
    const draws = drawn(1);
    const columns = numbers.slice(0, 300).map((n) => column(draws, n));
    const found = columns.flatMap((a, i) => columns.slice(i + 1).map((b) => correlation(a, b)));
    const mean = found.reduce((a, b) => a + b, 0) / found.length;
    const size = Math.sqrt(found.reduce((a, r) => a + r * r, 0) / found.length);
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(SIZE * found.length));
    expect(Math.abs(size * Math.sqrt(SIZE) - 1)).toBeLessThan(0.03);
  });

  it('in the spread of a sum of all: right on average, and no noisier than fresh numbers', () => {
    const ratios = Array.from({ length: 60 }, (_, seed) => {
      const draws = drawn(seed + 1);
      const sum = new Float64Array(SIZE);
      for (const n of numbers) draws.addTo(sum, n, 1);
      return correlation(sum, sum) / COUNT;
    });
    const mean = ratios.reduce((a, b) => a + b, 0) / ratios.length;
    const noise = Math.sqrt(ratios.reduce((a, r) => a + (r - mean) ** 2, 0) / (ratios.length - 1));
    // A variance from n fresh samples scatters by √(2/n): 0.0316.
    const fresh = Math.sqrt(2 / SIZE);
    expect(Math.abs(mean - 1)).toBeLessThan((4 * fresh) / Math.sqrt(ratios.length));
    expect(noise).toBeLessThan(1.4 * fresh);
  });

  it('nor when a shared variable and many of their own meet', () => {
    const shared = numbers[0] ?? 0;
    const draws = new Draws({ variables, leading: [shared], count: COUNT, seed: 5, size: SIZE });
    const sum = new Float64Array(SIZE);
    for (const n of numbers.slice(1)) draws.addTo(sum, n, 1);
    const r = correlation(sum, column(draws, shared)) / Math.sqrt(COUNT);
    expect(Math.abs(r)).toBeLessThan(4 / Math.sqrt(SIZE));
  });
});
