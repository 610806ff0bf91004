import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Answer,
  askStudy,
  askWritten,
  compareAll,
  compareOutputs,
  comparePairs,
  FALSE_DIFFERENT,
  type Question,
} from '../../src/engine/index.ts';
import { normalQuantile } from '../../src/quantity/index.ts';
import {
  type Entry,
  fold,
  type Refusal,
  RefusalError,
  type StudyView,
} from '../../src/study/index.ts';
import { MadeStudy, mass, node, read, sameNumbers, scalar, studyPut } from '../study/made-study.ts';
import { formula, madeQuestion, number } from './made-question.ts';

/** A price read from one node, a mass from the subject: what alternatives share is the price. */
const cost = madeQuestion(
  [
    number('m', 'mass', 'kg', { find: (at) => at.number(at.subject, 'mass') }),
    number('p', 'moneyPerMass', '{u}/kg', { find: (at) => at.number('van', 'price') }),
  ],
  formula((m = 0, p = 0) => m * p, { kind: 'money', unit: '{u}' }),
);

const weighed = (a: number, b: number, u: number): Entry[] => [
  node('a', 'van'),
  node('b', 'van'),
  read('van', 'price', scalar('moneyPerMass', 2, 0.2)),
  read('a', 'mass', mass(a, u)),
  read('b', 'mass', mass(b, u)),
];

let studies = 0;
function study(entries: readonly Entry[], condition = 'kerb', title?: string): StudyView {
  const made = new MadeStudy(++studies);
  made.act([
    studyPut(condition),
    ...(title === undefined ? [] : ([{ v: 1, e: 'study.put', set: { title } }] as Entry[])),
    node('van', null, 'vehicle'),
    ...entries,
  ]);
  return fold(title ?? made.study, made.changes);
}

const of = (q: Question, view: StudyView, subject: string): Answer =>
  askStudy(q, new Map([[q.id, q]]), { view, subject });

function refusals(act: () => unknown): readonly Refusal[] {
  try {
    act();
  } catch (error) {
    if (error instanceof RefusalError) return error.refusals;
    throw error;
  }
  return [];
}

describe('two alternatives that share their rates', () => {
  it('print the interval of the difference, narrower than that of independent ones', () => {
    const view = study(weighed(10, 9, 0.05));
    const c = compareOutputs(of(cost, view, 'a'), of(cost, view, 'b'), 'y');
    // 0.2 of the price acts on the one kilogram between them; each mass by itself.
    expect(c.d).toBeCloseTo(2, 9);
    expect(c.u).toBeCloseTo(Math.hypot(0.2 * 1, 2 * 0.05, 2 * 0.05), 7);
    expect(c.independentU).toBeCloseTo(Math.hypot(0.2 * 10, 0.2 * 9, 2 * 0.05, 2 * 0.05), 7);
    expect(c.correlation).toBeGreaterThan(0.99);
    expect(c.decision).toMatchObject({ word: 'different', direction: 'dearer' });
    expect(c.decision?.rule).toContain('different beyond 2 u');
    expect(c.shared).toMatchObject([{ a: expect.closeTo(2, 6), left: expect.closeTo(0.2, 6) }]);
  });

  it('state no direction that is not proven, and always the difference with its sign', () => {
    const word = (b: number) => {
      const view = study(weighed(10, b, 0.05));
      const { d, decision } = compareOutputs(of(cost, view, 'a'), of(cost, view, 'b'), 'y');
      return [Math.sign(d), decision?.word, decision?.direction];
    };
    expect(word(10.4)).toEqual([-1, 'different', 'cheaper']);
    expect(word(10.1)).toEqual([-1, 'indicated', undefined]);
    expect(word(10.01)).toEqual([-1, 'not distinguishable', undefined]);
  });

  it('of x and x differ by nothing, with no spread', () => {
    const view = study(weighed(10, 9, 0.05));
    const answer = of(cost, view, 'a');
    expect(compareOutputs(answer, answer, 'y')).toMatchObject({
      ...{ d: 0, u: 0, decision: { word: 'not distinguishable' } },
    });
  });
});

describe('two designs under one formula', () => {
  const method = madeQuestion(
    [number('m', 'mass', 'kg', { find: (at) => at.number(at.subject, 'mass') })],
    formula((m = 0) => m, { kind: 'mass', unit: 'kg' }),
    { modelError: { y: { relative: 0.15, sharedFraction: 0.5 } } },
  );
  const compared = (a: number, b: number) => {
    const view = study([
      node('a', 'van'),
      node('b', 'van'),
      read('a', 'mass', mass(a, { s: 'exact' })),
      read('b', 'mass', mass(b, { s: 'exact' })),
    ]);
    return compareOutputs(of(method, view, 'a'), of(method, view, 'b'), 'y');
  };
  /** Half of the variance acts on the difference, half on each by itself. */
  const expected = (a: number, b: number) =>
    0.15 * Math.sqrt(0.5) * Math.hypot(a - b, Math.hypot(a, b));

  it('become different when they are far enough apart, and not before', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 500, noNaN: true }), (b) => {
        const c = compared(100, b);
        const u = expected(100, b);
        expect(Number(c.u) / u).toBeCloseTo(1, 9);
        expect(c.decision?.word === 'different').toBe(Math.abs(100 - b) > 2 * u);
      }),
    );
  });

  it('in two studies have errors of their own, whatever their numbers', () => {
    const entries = (m: number): Entry[] => [
      node('a', 'van'),
      read('a', 'mass', mass(m, { s: 'exact' })),
    ];
    const [one, other] = [study(entries(100), 'kerb', 'one'), study(entries(100), 'kerb', 'other')];
    const c = compareOutputs(of(method, one, 'a'), of(method, other, 'a'), 'y');
    expect(c.u).toBeCloseTo(expected(100, 100), 9);
  });
});

describe('specimens and designs', () => {
  const compared = (more: Parameters<typeof compareOutputs>[3]) => {
    const view = study(weighed(10, 9, 0.05));
    return compareOutputs(of(cost, view, 'a'), of(cost, view, 'b'), 'y', more);
  };

  it('a comparison says which, and adds the scatter of units for designs only', () => {
    expect(compared({})).toMatchObject({ about: 'these specimens' });
    expect(compared({}).scatter).toBeUndefined();
    const c = compared({ about: 'the designs' });
    expect(c.about).toBe('the designs');
    expect(c.u).toBeCloseTo(Math.hypot(Number(compared({}).u), 0.01 * 20, 0.01 * 18), 9);
    expect(c.scatter).toMatchObject({ how: 'guessed', relative: 0.01 });
  });

  it('a stated scatter takes the place of the table’s, and may change the word', () => {
    const stated = { how: 'supplied', source: 'client', absolute: 1.5 } as const;
    const c = compared({ about: 'the designs', scatter: { money: stated } });
    expect(c.u).toBeCloseTo(Math.hypot(Number(compared({}).u), 1.5, 1.5), 9);
    expect(compared({ about: 'the designs' }).decision?.word).toBe('different');
    expect(c.decision?.word).toBe('not distinguishable');
  });

  it('without a known scatter there is no word about designs', () => {
    const place = madeQuestion(
      [number('x', 'length', 'mm', { find: (at) => at.number(at.subject, 'at') })],
      formula((x = 0) => x, { kind: 'length', unit: 'mm' }),
    );
    const view = study([
      node('a', 'van'),
      node('b', 'van'),
      read('a', 'at', scalar('length', 1, 0.001)),
      read('b', 'at', scalar('length', 2, 0.001)),
    ]);
    const pair = [of(place, view, 'a'), of(place, view, 'b')] as const;
    expect(compareOutputs(...pair, 'y').decision?.word).toBe('different');
    const c = compareOutputs(...pair, 'y', { about: 'the designs' });
    expect(c).toMatchObject({ u: 'incomplete', d: -1 });
    expect(c.decision).toBeUndefined();
    expect(c.lacks).toHaveLength(1);
  });
});

describe('values given without a study', () => {
  const given = (m: string) => askWritten(cost, { m, p: '2 ± 0.2 {u}/kg' });

  it('share nothing unless it is said', () => {
    const [a, b] = [given('10 ± 0.1 kg'), given('9 ± 0.1 kg')];
    const independent = compareOutputs(a, b, 'y');
    expect(independent.u).toBeCloseTo(Math.hypot(0.2 * 10, 0.2 * 9, 0.2, 0.2), 7);
    const shared = compareOutputs(a, b, 'y', { shares: ['p'] });
    expect(shared.u).toBeCloseTo(Math.hypot(0.2, 0.2, 0.2), 7);
  });
});

describe('what is not complete, and what is unlike', () => {
  it('an incomplete side gives no word, and says what is lacking', () => {
    const view = study([...weighed(10, 9, 0.05), node('c', 'van'), read('c', 'mass', mass(8))]);
    const c = compareOutputs(of(cost, view, 'a'), of(cost, view, 'c'), 'y');
    expect(c).toMatchObject({ u: 'incomplete', d: expect.closeTo(4, 9) });
    expect(c.decision).toBeUndefined();
    expect(c.lacks).toMatchObject([{ property: 'mass' }]);
  });

  it('conditions are refused with both named', () => {
    const at = (condition: string) => {
      const view = study(
        [
          node('a', 'van'),
          read('van', 'price', scalar('moneyPerMass', 2, 0.2), { condition }),
          read('a', 'mass', mass(10, 0.1), { condition }),
        ],
        condition,
      );
      return of(cost, view, 'a');
    };
    const [refusal] = refusals(() => compareOutputs(at('kerb'), at('dry'), 'y'));
    expect(refusal?.code).toBe('unlike-conditions');
    expect(refusal?.why).toContain('"kerb"');
    expect(refusal?.why).toContain('"dry"');
  });

  it('so are answers to different questions, and outputs that are not there', () => {
    const view = study(weighed(10, 9, 0.05));
    const answer = of(cost, view, 'a');
    const other = of({ ...cost, id: 'another' }, view, 'a');
    expect(refusals(() => compareOutputs(answer, other, 'y'))).toMatchObject([
      { code: 'bad-call' },
    ]);
    expect(refusals(() => compareOutputs(answer, answer, 'z'))).toMatchObject([
      { code: 'no-answer', next: 'It has: y.' },
    ]);
  });
});

describe('many comparisons', () => {
  it('say how many chance alone would call different', () => {
    const view = study(weighed(10, 9, 0.05));
    const pair = [of(cost, view, 'a'), of(cost, view, 'b')] as const;
    expect(compareAll(...pair).words).toBe('');
    const table = comparePairs(
      Array.from({ length: 40 }, () => pair),
      'y',
    );
    expect(table.falseDifferent).toBeCloseTo(40 * FALSE_DIFFERENT, 9);
    expect(table.words).toContain('Of 40 comparisons chance alone would call about 1.8');
  });

  it('of equal things are called different as often as it says', () => {
    const random = sameNumbers(5);
    const normal = () => normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, random())));
    const asked = madeQuestion(
      [number('a', 'mass', 'kg')],
      formula((a = 0) => a, { kind: 'mass', unit: 'kg' }),
    );
    const measured = () => askWritten(asked, { a: `${10 + 0.1 * normal()} ± 0.1 kg` });
    const n = 2000;
    const table = comparePairs(
      Array.from({ length: n }, () => [measured(), measured()] as const),
      'y',
    );
    const called = table.comparisons.filter((c) => c.decision?.word === 'different').length;
    // Three standard deviations of a count of n with this probability.
    expect(Math.abs(called - table.falseDifferent)).toBeLessThan(
      3 * Math.sqrt(n * FALSE_DIFFERENT),
    );
  });
});
