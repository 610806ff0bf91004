import { describe, expect, it } from 'vitest';
import type { Spread, Value } from '../../src/quantity/index.ts';
import { mass, node, point, read, scalar, studyOf } from '../study/made-study.ts';
import { ask, askRegistered, formula, madeQuestion, number, out } from './made-question.ts';

const readings = (...spreads: (Spread | number | undefined)[]) =>
  studyOf(...spreads.map((s, i) => read('van', 'abc'[i] ?? '', scalar('ratio', i + 1, s))));
const inputs = ['a', 'b', 'c'].map((name) => number(name));

describe('a spread that is not known', () => {
  const gap = madeQuestion(
    inputs,
    formula((a, b, _c) => (a ?? 0) - (b ?? 0), { decides: 'difference' }),
  );

  it('leaves the answer incomplete, without a decision word, and is named', () => {
    const answer = ask(gap, readings(0.1, undefined, 0.1));
    const y = out(answer, 'y');
    expect(y).toMatchObject({ x: -1, u: 'incomplete', missing: [] });
    expect(y.knownU).toBeCloseTo(0.1, 9);
    expect(y.decision).toBeUndefined();
    expect(y.unknownSpread).toEqual([{ subject: 'VAN name of van', property: 'b' }]);
    expect(answer.findings).toMatchObject([{ code: 'spread-unknown', level: 'gap' }]);
  });

  it('of a number that the formula does not take leaves it whole', () => {
    const y = out(ask(gap, readings(0.1, 0.1, undefined)), 'y');
    expect(y.u).toBeCloseTo(Math.hypot(0.1, 0.1), 9);
    expect(y.decision?.word).toBe('different');
  });

  it('is something else than none', () => {
    const y = out(ask(gap, readings({ s: 'exact' }, { s: 'exact' }, 0.1)), 'y');
    expect([y.u, y.dof, y.linear, y.decision?.word]).toEqual([0, null, [], 'different']);
  });

  it.each<[string, Spread]>([
    ['is negative', { s: 'normal', u: -0.1 }],
    ['is NaN', { s: 'rectangular', half: Number.NaN }],
    ['has its limits the wrong way round', { s: 'triangular', low: 3, high: 1 }],
    ['comes from one repeat', { s: 'repeats', xs: [2] }],
  ])('is what is left of one that %s', (_, spread) => {
    const y = out(ask(gap, readings(0.1, spread, 0.1)), 'y');
    expect(y.u).toBe('incomplete');
    expect(y.knownU).toBeCloseTo(0.1, 9);
    expect(y.unknownSpread.map((p) => p.property)).toEqual(['b']);
  });

  it('of a position leaves the centre of gravity incomplete, not the mass', async () => {
    const impossible: Value = { ...point([1, 2, 3]), ...{ cov: [-1, 0, 0, 0, 1, 0, 0, 0, 1] } };
    for (const position of [point([1, 2, 3]), impossible]) {
      const view = studyOf(
        node('p1', 'van'),
        read('p1', 'mass', mass(2, 0.1)),
        read('p1', 'position', position),
      );
      const answer = await askRegistered('mass-roll-up', view);
      expect(out(answer, 'mass').u).toBeCloseTo(0.1, 9);
      expect(out(answer, 'x')).toMatchObject({ x: 1, u: 'incomplete', missing: [] });
    }
  });
});

describe('kinds of spread', () => {
  const y = (spread: Spread) =>
    out(
      ask(
        madeQuestion(
          inputs,
          formula((a) => a ?? 0),
        ),
        readings(spread),
      ),
      'y',
    );

  it.each<[string, Spread, number]>([
    ['rectangular', { s: 'rectangular', half: 0.3 }, 0.3 / Math.sqrt(3)],
    ['arcsine', { s: 'arcsine', half: 0.3 }, 0.3 / Math.SQRT2],
    ['triangular', { s: 'triangular', low: 0.7, high: 1.3 }, 0.3 / Math.sqrt(6)],
    ['repeats', { s: 'repeats', xs: [0.9, 1, 1.1] }, 0.1 / Math.sqrt(3)],
  ])('%s', (_, spread, u) => {
    expect(y(spread).u).toBeCloseTo(u, 9);
  });

  it('repeats bring their degrees of freedom', () => {
    expect(y({ s: 'repeats', xs: [0.9, 1, 1.1] }).dof).toBeCloseTo(2, 9);
    expect(y({ s: 'rectangular', half: 1 }).dof).toBeNull();
  });

  it('a leaning triangle shifts the mean, and is doubted when it dominates', () => {
    const price = y({ s: 'triangular', low: 0.9, high: 1.6 });
    expect(price.meanShift).toBeCloseTo((0.9 + 1 + 1.6) / 3 - 1, 9);
    expect(price.doubts.join()).toContain('one triangular input');
  });
});

describe('correlated coordinates', () => {
  it('keep their covariance in a distance', () => {
    const [v, c] = [4e-6, 3e-6];
    const value: Value = {
      ...point([1, 2, 3]),
      ...{ cov: [v, c, 0, c, v, 0, 0, 0, v] },
    };
    const along = (name: string, component: 0 | 1 | 2) =>
      number(name, 'length', 'm', { find: (at) => at.number('p1', 'position', component) });
    const question = madeQuestion(
      [along('y', 1), along('x', 0), along('z', 2)],
      formula((y, x, z) => (y ?? 0) - (x ?? 0) + 0 * (z ?? 0)),
    );
    const view = studyOf(node('p1', 'van'), read('p1', 'position', value));
    expect(Number(out(ask(question, view), 'y').u) ** 2).toBeCloseTo(2 * v - 2 * c, 12);
  });
});

describe('the error of a method', () => {
  const withError = (sharedFraction: number) =>
    madeQuestion(
      inputs,
      formula((a) => a ?? 0, { kind: 'mass', unit: 'g' }),
      {
        modelError: { y: { absolute: 200, sharedFraction } },
      },
    );

  it('adds to the spread, in the unit of the output, one part shared and one its own', () => {
    const y = out(ask(withError(0.25), readings(0.1)), 'y');
    expect(y.u).toBeCloseTo(Math.hypot(0.1, 0.2), 9);
    const parts = Object.fromEntries(y.linear);
    expect(parts['model:made-up/y']).toBeCloseTo(0.1, 9);
    expect(parts['model:made-up/y/study-1/van']).toBeCloseTo(0.2 * Math.sqrt(0.75), 9);
  });

  it('may be relative to the result', () => {
    const relative = madeQuestion(
      inputs,
      formula((a) => -2 * (a ?? 0)),
      {
        modelError: { y: { relative: 0.1, sharedFraction: 1 } },
      },
    );
    expect(out(ask(relative, readings({ s: 'exact' })), 'y').u).toBeCloseTo(0.2, 9);
  });
});

describe('bounds and ranges', () => {
  const bounded = (x: number) =>
    ask(
      madeQuestion(
        [number('a', 'length', 'mm', { range: [10, 20], bounds: { above: 0, below: 100 } })],
        formula((a) => 1 / (a ?? 0)),
      ),
      studyOf(read('van', 'a', scalar('length', x, 0.0001))),
    );

  it('a value outside the plausible range is found, with the range, and counts', () => {
    const answer = bounded(0.025);
    expect(out(answer, 'y').x).toBeCloseTo(40, 9);
    expect(answer.findings).toMatchObject([
      { code: 'outside-plausible-range', level: 'doubt', value: '25 mm' },
    ]);
    expect(answer.findings[0]?.what).toContain('10 to 20 mm');
  });

  it('at the ends of the range is not found', () => {
    expect(bounded(0.01).findings).toEqual([]);
    expect(bounded(0.02).findings).toEqual([]);
  });

  it.each([0, -0.01, 0.1, 0.2])(
    'a value of %f m outside its bounds counts as missing, and says why',
    (x) => {
      const answer = bounded(x);
      expect(answer.outs).toEqual({});
      const gap = answer.findings.find((f) => f.code === 'missing');
      expect(gap?.what).toMatch(/must be (above 0|below 100) mm/);
    },
  );
});
