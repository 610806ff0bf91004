import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Aligned } from '../../src/engine/forms/aligned.ts';
import { FormMaker } from '../../src/engine/forms/form-maker.ts';
import { largestOf, rankedOf } from '../../src/engine/forms/largest.ts';
import { Multilinear } from '../../src/engine/forms/multilinear.ts';
import { Variables } from '../../src/engine/forms/variables.ts';
import { askStudy, loadAll } from '../../src/engine/index.ts';
import { partials } from '../../src/quantity/index.ts';
import { read, scalar, studyOf } from '../study/made-study.ts';
import { ask, formula, madeQuestion, number, out } from './made-question.ts';

const size = fc.double({ min: -5, max: 5, noNaN: true });

function formOf(cs: readonly number[], variables = new Variables()) {
  const form = new FormMaker(variables);
  cs.forEach((c, i) => {
    const spread = { s: 'normal', u: 1 } as const;
    const own = {
      id: `v${String(i).padStart(3, '0')}`,
      label: '',
      what: 'given',
      place: {},
    } as const;
    variables.contribute(form, { ...own, spread }, 0, c);
  });
  return form.done();
}

describe('largest contributions', () => {
  it('are the first of all when ranked, and what is left is counted', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(size, fc.constant(0))),
        fc.integer({ min: 1, max: 6 }),
        (cs, n) => {
          const form = formOf(cs);
          const ranked = rankedOf(form);
          const { top, others } = largestOf(form, n);
          expect(top.map(([, c]) => Math.abs(c))).toEqual(
            ranked.slice(0, n).map(([, c]) => Math.abs(c)),
          );
          expect(others.count).toBe(ranked.length - top.length);
          const rest = ranked.slice(n).reduce((sum, [, c]) => sum + c * c, 0);
          expect(others.variance).toBeCloseTo(rest, 9);
        },
      ),
    );
  });
});

describe('numbers over one list of variables', () => {
  it('have the covariances of their contributions, and combine by slopes', () => {
    const variables = new Variables();
    const [a, b] = [formOf([1, 2, 0], variables), formOf([0, 3, 4], variables)];
    const both = Aligned.of([a, b], variables);
    expect([both.covariance(0, 1), both.covariance(1, 0), both.covariance(1, 1)]).toEqual([
      6, 6, 25,
    ]);
    expect([...both.combined(7, [1, -1]).by]).toEqual([
      ['v000', 1],
      ['v001', -1],
      ['v002', -4],
    ]);
  });
});

describe('a sum of products', () => {
  const found = (f: (...x: number[]) => number, args: number) => Multilinear.of(f, args);

  it('is known by its corners, and has the slopes that differences give', () => {
    const f = (m = 0, y = 0, p = 0, c = 0, am = 0, ap = 0) => 3 + m * (y * p * am + c * ap) - 2 * c;
    const sum = found(f, 6);
    fc.assert(
      fc.property(fc.array(size, { minLength: 6, maxLength: 6 }), (xs) => {
        const into = { first: new Float64Array(6), second: new Float64Array(6) };
        expect(sum?.slopesInto(into, xs, f(...xs))).toBe(true);
        const { first } = partials(f, xs, [1, 1, 1, 1, 1, 1]);
        xs.forEach((_, i) => {
          expect(into.first[i]).toBeCloseTo(first[i] ?? 0, 6);
        });
      }),
    );
  });

  it.each<[string, (...x: number[]) => number, number]>([
    ['a square', (x = 0) => x * x, 1],
    ['a quotient', (x = 0, y = 0) => x / y, 2],
    ['a root', (x = 0) => Math.sqrt(x), 1],
    ['a distance', (x = 0, y = 0) => Math.abs(x - y), 2],
    ['a larger one', (x = 0, y = 0) => Math.max(x, y), 2],
    ['what is none at a corner', (x = 0, y = 0) => x * Math.log(y), 2],
  ])('is not %s', (_, f, args) => {
    expect(found(f, args)).toBeUndefined();
  });

  it('that bends out of sight of all probes is not followed where it has bent', () => {
    const f = (x = 0) => (x > 1000 ? 2 * x - 1000 : x);
    const into = { first: new Float64Array(1), second: new Float64Array(1) };
    expect(found(f, 1)?.slopesInto(into, [500], f(500))).toBe(true);
    expect(found(f, 1)?.slopesInto(into, [1500], f(1500))).toBe(false);
  });
});

describe('derivatives that a question supplies', () => {
  const view = studyOf(
    read('van', 'a', scalar('ratio', 2, 0.1)),
    read('van', 'b', scalar('ratio', 3, 0.2)),
  );
  const body = formula((a = 0, b = 0) => a ** 2 * b);
  if (body.body !== 'row') throw new Error('a row body expected');
  const of = (derivatives: ((...x: number[]) => number)[]) =>
    madeQuestion([number('a'), number('b')], {
      ...body,
      outputs: body.outputs.map((o) => ({ ...o, derivatives })),
    });

  it('are used as they are, and bend as they do', () => {
    const exact = out(ask(of([(a = 0, b = 0) => 2 * a * b, (a = 0) => a ** 2]), view), 'y');
    const taken = out(ask(madeQuestion([number('a'), number('b')], body), view), 'y');
    const first = (o: typeof exact) => o.linear.map(([, c]) => Math.abs(c));
    expect(first(exact)).toEqual([1.2, 0.8].map((x) => expect.closeTo(x, 12)));
    expect(first(taken)).toEqual(first(exact).map((x) => expect.closeTo(x, 6)));
    expect(exact.meanShift).toBeCloseTo(3 * 0.01, 9);
    const wrong = out(ask(of([() => 7, () => 0]), view), 'y');
    expect(wrong.u).toBeCloseTo(0.7, 12);
  });
});

describe('answers of one revision', () => {
  it('are worked out once, but not for other questions of the same id', async () => {
    const questions = await loadAll();
    const view = studyOf(read('van', 'a', scalar('ratio', 2, 0.1)));
    const roll = questions.get('mass-roll-up');
    if (!roll) throw new Error('no mass-roll-up');
    const again = { ...roll, title: 'another' };
    expect(askStudy(roll, questions, { view })).toBe(askStudy(roll, questions, { view }));
    expect(askStudy(again, questions, { view }).title).toBe('another');
  });
});
