import { describe, expect, it } from 'vitest';
import {
  askWritten,
  type Bars,
  type Body,
  type Figure,
  type InputSpec,
  loadQuestion,
} from '../../src/engine/index.ts';
import { mass, node, read, scalar, studyOf } from '../study/made-study.ts';
import { ask, askRegistered, formula, madeQuestion, number } from './made-question.ts';

const inputs: readonly InputSpec[] = [number('a'), number('b')];
const view = studyOf(
  read('van', 'a', scalar('ratio', 10, 0.2), { id: 'a' }),
  read('van', 'b', scalar('ratio', 9, 0.1), { id: 'b' }),
);
const output = { symbol: 'y', kind: 'ratio', unit: '1', shown: '' } as const;
const balance: Body = {
  body: 'row',
  outputs: [
    { ...output, name: 'a', meaning: 'this side', of: (a) => a },
    { ...output, name: 'b', meaning: 'that side', of: (_a, b) => b },
    { ...output, name: 'd', meaning: 'the gap', decides: 'difference', of: (a, b) => a - b },
  ],
};
const bars = (figure: Figure | undefined): Bars => {
  if (figure?.f !== 'bars') throw new Error(`${figure?.f ?? 'nothing'} is drawn`);
  return figure;
};

describe('results that decide', () => {
  it('are drawn as a balance where two results differ by them', () => {
    const [drawn, more] = ask(madeQuestion(inputs, balance), view).figures ?? [];
    expect(more).toBeUndefined();
    expect(bars(drawn)).toMatchObject({
      title: 'Balance: the gap',
      from: 'nearest',
      rows: [
        { label: 'this side', number: { x: 10, u: 0.2 } },
        { label: 'that side', number: { x: 9, u: 0.1 } },
      ],
      gap: { of: 0, less: 1, number: { x: 1 } },
    });
    expect(bars(drawn).gap?.number.u).toBeCloseTo(Math.hypot(0.2, 0.1), 9);
  });

  it('are drawn against zero where nothing balances', () => {
    const margin = formula((a, b) => a - b, { decides: 'margin' });
    const [drawn] = ask(madeQuestion(inputs, margin), view).figures ?? [];
    expect(bars(drawn)).toMatchObject({
      from: 'zero',
      rows: [{ label: 'what comes out', number: { x: 1 } }],
    });
  });

  it('are not drawn where no spread could be seen', () => {
    const far = formula((a) => 1000 + a / 1000, { decides: 'margin' });
    expect(ask(madeQuestion(inputs, far), view).figures).toEqual([]);
  });

  it('say what they lack where they are not complete', () => {
    const open = studyOf(
      read('van', 'a', scalar('ratio', 10, 0.2), { id: 'a' }),
      read('van', 'b', scalar('ratio', 9, { s: 'unknown' }), { id: 'b' }),
    );
    const margin = formula((a, b) => a - b, { decides: 'margin' });
    const [drawn] = ask(madeQuestion(inputs, margin), open).figures ?? [];
    expect(bars(drawn).rows[0]).toMatchObject({
      number: { u: 'incomplete', knownU: 0.2 },
      word: 'spread of 1 not known',
    });
  });

  it('and others are not drawn of themselves', () => {
    expect(
      ask(
        madeQuestion(
          inputs,
          formula((a, b) => a - b),
        ),
        view,
      ).figures,
    ).toEqual([]);
  });
});

describe('sums of groups', () => {
  const van = studyOf(
    node('a1', 'van', 'assembly'),
    node('a2', 'van', 'assembly'),
    node('p1', 'a1'),
    node('p2', 'a2'),
    node('p3', 'a2'),
    read('p1', 'mass', mass(10, 0.1)),
    read('p2', 'mass', mass(20, 0.2)),
  );

  it('are drawn the largest first, with what is missing said', async () => {
    const [drawn, more] = (await askRegistered('mass-roll-up', van)).figures ?? [];
    expect(more).toBeUndefined();
    const { title, rows } = bars(drawn);
    expect(title).toBe('Mass of the parts, by assembly');
    expect(rows).toEqual([
      {
        label: 'A2 name of a2',
        number: { x: 20, u: 'incomplete', knownU: 0.2 },
        word: '1 missing',
      },
      { label: 'A1 name of a1', number: { x: 10, u: 0.1 } },
    ]);
  });

  it('leave out groups that have none of it for certain, and are not drawn where none has', async () => {
    const joined = (row: Record<string, string>) => ({ count: '4', weld: 'exactly 0 m', ...row });
    const nothing = {
      spot: 'exactly 0',
      rivet: 'exactly 0',
      bead: 'exactly 0 m',
      adhesive: 'exactly 0 g',
    };
    const { question } = await loadQuestion('seam-census');
    const { figures } = askWritten(question, {
      joints: [
        joined({ ...nothing, kind: 'friction stir weld seam', weld: '1.46 ± 0.01 m' }),
        joined({ ...nothing, kind: 'bolt' }),
      ],
    });
    expect(figures?.map((f) => f.title)).toEqual(['Length of weld, by kind']);
    expect(bars(figures?.[0]).rows.map((r) => r.label)).toEqual(['friction stir weld seam']);
  });
});

describe('modules that were weighed in one piece', () => {
  it('are drawn with the gap to their parts: 750.4 less 750.2 kg in the example', async () => {
    const { question } = await loadQuestion('mass-balance');
    const [drawn] = askWritten(question, question.example).figures ?? [];
    const [row] = bars(drawn).rows;
    expect(row?.number?.x).toBeCloseTo(0.2, 9);
    expect(row?.number?.u).toBeCloseTo(Math.hypot(0.3, 0.3), 9);
    expect(row?.word).toBe('not distinguishable');
  });

  it('are drawn as balances: parts and scale on one scale, and the gap between them', async () => {
    const { question } = await loadQuestion('mass-balance');
    const { figures = [] } = askWritten(question, question.example);
    const balance = bars(figures.find((f) => f.title.startsWith('Balance of')));
    expect(balance.rows.map((r) => r.number?.x)).toEqual([750.4, 750.2]);
    expect(balance.gap).toMatchObject({ of: 0, less: 1, word: 'not distinguishable' });
  });

  it('stand before what decides, moments together on one scale', async () => {
    const { question } = await loadQuestion('mass-balance');
    const titles = askWritten(question, question.example).figures?.map((f) => f.title);
    expect(titles?.slice(1)).toEqual([
      'Balance of modules 1',
      'Gaps in force at their places, from the side',
      'Gap in moments about the centre of gravity by the scales, in plan',
      'Gap in force, parts less scales, against zero',
      'Results that decide, against zero, in kg·m',
    ]);
  });
});

describe("a question's own figures", () => {
  const drawing = (x: number): Figure => ({
    f: 'drawing',
    title: 'A line',
    alt: 'A line from the origin.',
    kind: 'length',
    unit: 'mm',
    shapes: [
      {
        s: 'line',
        points: [
          [0, 0],
          [x, 1],
        ],
        line: 'continuous',
      },
    ],
  });
  const drawnBy = (figures: NonNullable<ReturnType<typeof madeQuestion>['figures']>) =>
    ask(
      madeQuestion(
        inputs,
        formula((a, b) => a + b),
        { figures },
      ),
      view,
    );

  it('are made of its inputs and results', () => {
    const { figures, findings } = drawnBy((x, outs) => [
      drawing((x.scalars.a ?? 0) + (outs.y?.x ?? 0)),
    ]);
    expect(figures).toEqual([drawing(29)]);
    expect(findings).toEqual([]);
  });

  it('with a number that is none are left out, and found', () => {
    const { figures, findings } = drawnBy(() => [drawing(Number.NaN), drawing(1)]);
    expect(figures).toEqual([drawing(1)]);
    expect(findings).toMatchObject([{ code: 'figure-left-out', place: { property: 'A line' } }]);
  });

  it('may come from a look at the spreads', () => {
    const q = madeQuestion(
      inputs,
      formula((a, b) => a + b),
      { look: ({ scalars: { a } }) => ({ figures: [drawing(a && 'form' in a ? a.form.x : 0)] }) },
    );
    expect(ask(q, view).figures).toEqual([drawing(10)]);
  });

  it('that throw are a defect', () => {
    const broken = () =>
      drawnBy(() => {
        throw new TypeError('no such side');
      });
    expect(broken).toThrow('no such side');
  });
});
