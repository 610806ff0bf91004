import { describe, expect, it } from 'vitest';
import { askWritten, type Body, type InputSpec, loadQuestion } from '../../src/engine/index.ts';
import { node, read, scalar, studyOf } from '../study/made-study.ts';
import { ask, askRegistered, madeQuestion, number, out } from './made-question.ts';

const solve = (f: (x: Readonly<Record<string, number>>) => number): Body => ({
  body: 'solve',
  outputs: [
    { name: 'y', symbol: 'y', kind: 'ratio', unit: '1', meaning: 'what comes out', shown: 'y = f' },
  ],
  solve: ({ scalars }) => ({ outputs: { y: f(scalars) } }),
});
const ab: readonly InputSpec[] = [number('a'), number('b')];
const view = (a: number, ua: number, b: number, ub: number) =>
  studyOf(
    read('van', 'a', scalar('ratio', a, ua), { id: 'a' }),
    read('van', 'b', scalar('ratio', b, ub), { id: 'b' }),
  );

describe('derivatives of a structured body', () => {
  const exact: readonly (readonly [string, (a: number, b: number) => number, [number, number]])[] =
    [
      ['a product', (a, b) => a * b, [5, 2]],
      ['a quotient', (a, b) => a / b, [1 / 5, -2 / 25]],
      ['a sine', (a, b) => Math.sin(a) * b, [5 * Math.cos(2), Math.sin(2)]],
      ['a power', (a, b) => a ** b, [5 * 2 ** 4, 2 ** 5 * Math.log(2)]],
    ];
  it.each(exact)('of %s are the exact ones', (_, f, [da, db]) => {
    const question = madeQuestion(
      ab,
      solve(({ a = 0, b = 0 }) => f(a, b)),
    );
    const y = out(ask(question, view(2, 0.01, 5, 0.02)), 'y');
    const parts = Object.fromEntries(y.linear);
    expect((parts.a ?? 0) / (0.01 * da)).toBeCloseTo(1, 7);
    expect((parts.b ?? 0) / (0.02 * db)).toBeCloseTo(1, 7);
    expect(Number(y.u) / Math.hypot(0.01 * da, 0.02 * db)).toBeCloseTo(1, 7);
  });

  it('have the second-order term of a square', () => {
    const question = madeQuestion(
      ab,
      solve(({ a = 0 }) => a * a),
    );
    const y = out(ask(question, view(2, 0.1, 5, 0.02)), 'y');
    expect(y.meanShift).toBeCloseTo(0.01, 9);
    expect(y.linear.map(([id]) => id)).toEqual(['a']);
  });

  it('shift everything that shares a variable at once: x − x has no spread', () => {
    const twice = [
      number('a'),
      number('b', 'ratio', '1', { find: (at) => at.number(at.subject, 'a') }),
    ];
    const of = (f: (a: number, b: number) => number) =>
      out(
        ask(
          madeQuestion(
            twice,
            solve(({ a = 0, b = 0 }) => f(a, b)),
          ),
          view(2, 0.1, 5, 0.02),
        ),
        'y',
      );
    expect(of((a, b) => a - b).u).toBe(0);
    expect(of((a, b) => a + b).u).toBeCloseTo(0.2, 12);
  });
});

describe('height by axle lift', () => {
  it('has the exact derivatives of h = L b / m + r', async () => {
    const { question } = await loadQuestion('cg-height-axle-lift');
    const answer = askWritten(question, question.example);
    const parts = Object.fromEntries(out(answer, 'height').linear);
    const [L, m] = [2.7, 1640];
    const t = [5, 10, 15].map((deg) => Math.tan((deg * Math.PI) / 180));
    const gains = [12.754, 25.705, 39.061];
    const tt = t.reduce((sum, x) => sum + x * x, 0);
    const b = t.reduce((sum, x, i) => sum + x * (gains[i] ?? 0), 0) / tt;
    expect(parts['given:radius']).toBeCloseTo(0.003, 12);
    expect(parts['given:mass']).toBeCloseTo((-L * b) / m ** 2, 9);
    expect(parts['given:wheelbase']).toBeCloseTo((0.002 * b) / m, 9);
    t.forEach((tan, i) => {
      expect(parts[`given:lifts.${i + 1}.gain`]).toBeCloseTo((0.5 * L * tan) / tt / m, 9);
      const perAngle = (1 + tan * tan) * (((gains[i] ?? 0) - 2 * b * tan) / tt);
      const u = (0.1 * Math.PI) / 180;
      expect(parts[`given:lifts.${i + 1}.angle`]).toBeCloseTo((u * L * perAngle) / m, 8);
    });
  });

  it('is found from the trials of a study; a lift without its load leaves no height, and is named', async () => {
    const loads = ['FL', 'FR', 'RL', 'RR'].map((c) =>
      read('van', `cornerLoad.${c}`, scalar('mass', 410, 0.5)),
    );
    const sizes = [
      read('van', 'wheelbase', scalar('length', 2.7, 0.002)),
      read('van', 'tyreRadius', scalar('length', 0.31, 0.003)),
    ];
    const lift = (id: string, degrees: number) => [
      node(id, 'van', 'trial'),
      read(id, 'liftAngle', scalar('angle', (degrees * Math.PI) / 180, 0.002)),
    ];
    const gain = (id: string, kg: number) => read(id, 'frontLoadGain', scalar('mass', kg, 0.7));
    const common = [...loads, ...sizes, ...lift('t1', 5), gain('t1', 12.754), ...lift('t2', 10)];
    const whole = await askRegistered(
      'cg-height-axle-lift',
      studyOf(...common, gain('t2', 25.705), node('weighing', 'van', 'trial')),
    );
    expect(out(whole, 'height').x).toBeCloseTo(0.55, 5);
    expect(whole.findings.map((f) => f.code)).toEqual(['few-lift-angles']);
    const partial = await askRegistered('cg-height-axle-lift', studyOf(...common));
    expect(partial.outs.height).toBeUndefined();
    expect(partial.findings.filter((f) => f.code === 'missing').map((f) => f.place)).toEqual([
      { subject: 'T2 name of t2', property: 'frontLoadGain' },
    ]);
  });
});
