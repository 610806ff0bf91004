import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Spread } from '../../src/quantity/index.ts';
import { type Entry, fold, type RateBook, type RateCell } from '../../src/study/index.ts';
import { ask, askRegistered, formula, madeQuestion, number, out } from '../engine/made-question.ts';
import {
  MadeStudy,
  mass,
  node,
  point,
  read,
  scalar,
  studyOf,
  studyPut,
  text,
} from '../study/made-study.ts';

const RUNS = { numRuns: 60 };
const value = fc.double({ min: 0.5, max: 100, noNaN: true });
const u = fc.double({ min: 0.001, max: 0.5, noNaN: true });
const xAndY = (x: number, ux: number, y: number, uy: number) =>
  studyOf(read('van', 'x', scalar('ratio', x, ux)), read('van', 'y', scalar('ratio', y, uy)));
const two = [number('x'), number('y')];
/** The same reading as two inputs. */
const twice = [
  number('x'),
  number('again', 'ratio', '1', { find: (at) => at.number(at.subject, 'x') }),
];

describe('spread through formulas', () => {
  it('of x − x is none, of x / x is none, of x + x is twice that of x', () => {
    fc.assert(
      fc.property(value, u, (x, ux) => {
        const view = xAndY(x, ux, 1, 1);
        const of = (f: (a: number, b: number) => number) =>
          out(ask(madeQuestion(twice, formula(f as (...v: number[]) => number)), view), 'y');
        expect(of((a, b) => a - b).u).toBeLessThan(1e-9 * ux);
        expect(of((a, b) => a / b).u).toBeLessThan(1e-5 * (ux / x));
        expect(Number(of((a, b) => a + b).u) / ux).toBeCloseTo(2, 7);
      }),
      RUNS,
    );
  });

  it('is that of the law of propagation', () => {
    fc.assert(
      fc.property(value, u, value, u, (x, ux, y, uy) => {
        const of = (f: (a: number, b: number) => number) =>
          Number(
            out(
              ask(madeQuestion(two, formula(f as (...v: number[]) => number)), xAndY(x, ux, y, uy)),
              'y',
            ).u,
          );
        expect(of((a, b) => a - b) / Math.hypot(ux, uy)).toBeCloseTo(1, 5);
        expect(of((a, b) => a * b) / Math.hypot(ux * y, x * uy)).toBeCloseTo(1, 5);
        expect(of((a, b) => a / b) / Math.hypot(ux / y, (x * uy) / y ** 2)).toBeCloseTo(1, 5);
        expect(of((a) => Math.sqrt(a)) / (ux / (2 * Math.sqrt(x)))).toBeCloseTo(1, 5);
      }),
      RUNS,
    );
  });

  it('has the second-order terms of a product and a square in closed form', () => {
    fc.assert(
      fc.property(value, u, value, u, (x, ux, y, uy) => {
        const square = madeQuestion(
          two,
          formula((a) => (a ?? 0) ** 2),
        );
        expect(out(ask(square, xAndY(x, ux, y, uy)), 'y').meanShift / ux ** 2).toBeCloseTo(1, 3);
        const wide = studyOf(
          read('van', 'x', scalar('ratio', 0.1, ux)),
          read('van', 'y', scalar('ratio', 0.1, uy + 1)),
        );
        const product = madeQuestion(
          two,
          formula((a, b) => (a ?? 0) * (b ?? 0)),
        );
        const exact = Math.hypot(0.1 * (uy + 1), 0.1 * ux, ux * (uy + 1));
        const found = out(ask(product, wide), 'y');
        if (found.secondOrderU !== undefined) expect(found.secondOrderU / exact).toBeCloseTo(1, 4);
        else expect(Number(found.u) / exact).toBeGreaterThan(0.95);
      }),
      RUNS,
    );
  });
});

describe('a sum over parts', () => {
  const parts = fc.array(fc.tuple(value, u), { minLength: 2, maxLength: 12 });

  it('has the same digits whatever the order in which they were taken down', () => {
    const shuffled = parts.chain((ps) =>
      fc.shuffledSubarray([...ps.keys()], { minLength: ps.length }).map((order) => ({ ps, order })),
    );
    fc.assert(
      fc.asyncProperty(shuffled, async ({ ps, order }) => {
        const made = new MadeStudy();
        made.act([studyPut(), node('van', null, 'vehicle')]);
        const entries = ps.map(([m, um], i): Entry[] => [
          node(`p${i}`, 'van'),
          read(`p${i}`, 'mass', mass(m, um), { id: `m${i}` }),
          read(`p${i}`, 'position', point([m / 7, um, -m], um / 3), { id: `x${i}` }),
        ]);
        const straight = entries.map((e) => made.act(e));
        const other = new MadeStudy();
        other.act([studyPut(), node('van', null, 'vehicle')]);
        for (const i of order) other.act(entries[i] ?? []);
        const answers = [
          await askRegistered('mass-roll-up', made.view),
          await askRegistered('mass-roll-up', other.view),
          await askRegistered(
            'mass-roll-up',
            fold(made.study, [...straight, ...made.changes].reverse()),
          ),
        ];
        const digits = answers.map((a) =>
          ['mass', 'x', 'y', 'z'].map((o) => [out(a, o).x, out(a, o).u]),
        );
        expect(digits[1]).toEqual(digits[0]);
        expect(digits[2]).toEqual(digits[0]);
      }),
      { numRuns: 25 },
    );
  });

  it('of its modules is the sum of the whole', async () => {
    const view = studyOf(
      ...[
        node('a1', 'van', 'assembly'),
        node('a2', 'van', 'assembly'),
        node('a3', 'a2', 'assembly'),
      ],
      ...[1, 2, 3, 4].flatMap((i) => [
        node(`p${i}`, i < 3 ? 'a1' : i < 4 ? 'a2' : 'a3'),
        read(`p${i}`, 'mass', mass(i * 1.1, 0.1 * i)),
      ]),
    );
    const of = async (subject?: string) =>
      out(await askRegistered('mass-roll-up', view, subject), 'mass');
    const [all, a1, a2, a3] = [await of(), await of('a1'), await of('a2'), await of('a3')];
    expect(a1.x + a2.x).toBeCloseTo(all.x, 12);
    expect(Math.hypot(Number(a1.u), Number(a2.u))).toBeCloseTo(Number(all.u), 12);
    expect(a3.x).toBeCloseTo(4.4, 12);
  });
});

describe('what readings share', () => {
  const cause = (id: string, what: 'gain' | 'frame', spread: Spread): Entry => ({
    ...{ v: 1, e: 'cause.put' },
    cause: { id, what, kind: what === 'gain' ? 'ratio' : 'length', label: id, spread },
  });
  const weighed = (n: number, causes: readonly { cause: string; effect: number }[], own = 0.01) =>
    Array.from({ length: n }, (_, i) => [
      node(`p${i}`, 'van'),
      read(`p${i}`, 'mass', mass(2, own), { causes }),
    ]).flat();

  it('the gain of a scale adds up over its readings and cancels in a ratio of them', async () => {
    const gain = cause('gain', 'gain', { s: 'normal', u: 0.001 });
    const view = studyOf(gain, ...weighed(100, [{ cause: 'gain', effect: 2 }]));
    const total = out(await askRegistered('mass-roll-up', view), 'mass');
    expect(total.u).toBeCloseTo(Math.hypot(200 * 0.001, 0.01 * 10), 9);
    const ratio = madeQuestion(
      ['p0', 'p1'].map((id) => number(id, 'mass', 'kg', { find: (at) => at.number(id, 'mass') })),
      formula((a, b) => (a ?? 0) / (b ?? 1)),
    );
    expect(out(ask(ratio, view), 'y').u).toBeCloseTo(Math.hypot(0.005, 0.005), 7);
  });

  it('an offset of the frame moves the centre of gravity by itself, whatever the masses', async () => {
    const frame = cause('frame', 'frame', { s: 'normal', u: 0.004 });
    const causes = [{ cause: 'frame', effect: 1 }];
    const placed = [1, 5, 30].flatMap((m, i) => [
      node(`p${i}`, 'van'),
      read(`p${i}`, 'mass', mass(m, { s: 'exact' })),
      read(`p${i}`, 'position', point([i, 0, 0], 0), { causes }),
    ]);
    const x = out(await askRegistered('mass-roll-up', studyOf(frame, ...placed)), 'x');
    expect(x.u).toBeCloseTo(0.004, 9);
    expect(x.linear.map(([id]) => id)).toEqual(['frame']);
  });

  it('a cause that no one has put down, or of unknown spread, leaves the answer incomplete', async () => {
    for (const entries of [[], [cause('gain', 'gain', { s: 'unknown' })]]) {
      const view = studyOf(...entries, ...weighed(2, [{ cause: 'gain', effect: 2 }]));
      const total = out(await askRegistered('mass-roll-up', view), 'mass');
      expect(total.u).toBe('incomplete');
      expect(total.unknownSpread.length).toBeGreaterThan(0);
    }
  });

  it('a rate that prices a thousand parts does not average out', async () => {
    const made = new MadeStudy();
    const parts = Array.from({ length: 1000 }, (_, i) => [
      node(`p${String(i).padStart(4, '0')}`, 'van'),
      read(`p${String(i).padStart(4, '0')}`, 'mass', mass(1, 0.01)),
      read(`p${String(i).padStart(4, '0')}`, 'material', text('steel sheet'), { how: 'seen' }),
      read(`p${String(i).padStart(4, '0')}`, 'process', text('stamp'), { how: 'seen' }),
    ]).flat();
    made.act([
      studyPut(),
      node('van', null, 'vehicle'),
      { v: 1, e: 'rates.put', book: BOOK },
      ...parts,
    ]);
    const answer = await askRegistered('part-cost', made.view);
    const material = out(answer, 'material');
    expect(material.x).toBeCloseTo(2000, 9);
    // 10 % of the price, shared by all; the scale's own errors average out.
    expect(material.u).toBeCloseTo(Math.hypot(200, 2 * 0.01 * Math.sqrt(1000)), 6);
    expect(material.linear[0]).toEqual(['rate:steel', expect.closeTo(200, 6)]);
  });
});

function rate(id: string, x: number, kind: 'moneyPerMass' | 'ratio', ux: number): RateCell {
  const name = id.split('/')[1] ?? id;
  return {
    ...{ cause: name, id, words: id, kind, x, source: 'invented', how: 'supplied' },
    ...{ spread: { s: 'normal', u: ux }, match: [name] },
  };
}

const BOOK: RateBook = {
  ...{ id: 'b1', version: 'R1', region: 'none', date: '2026-01-01', currency: 'u' },
  ...{ volumePerYear: 60_000, years: 5, invented: true },
  cells: [
    rate('material/steel', 2, 'moneyPerMass', 0.2),
    rate('process/stamp', 1, 'moneyPerMass', 0.1),
    rate('factor/overhead', 1.2, 'ratio', 0.01),
  ],
};
