import { describe, expect, it } from 'vitest';
import type { Answer, Bars, Figure, Isolines } from '../../../src/engine/index.ts';
import { loadQuestion } from '../../../src/engine/index.ts';
import { niceLevels } from '../../../src/engine/levels.ts';
import { out } from '../made-question.ts';
import { asked } from './asked.ts';

const example = async (id: string, more = {}): Promise<Answer> => {
  const { question } = await loadQuestion(id);
  return asked(id, { ...question.example, ...more });
};

function figure<F extends Figure['f']>(answer: Answer, f: F, n = 0): Extract<Figure, { f: F }> {
  const found = answer.figures?.filter((one): one is Extract<Figure, { f: F }> => one.f === f)[n];
  if (!found) throw new Error(`${answer.question} has no such figure`);
  return found;
}

describe.each(['plate-under-pressure', 'plate-under-force'])('the field of %s', (id) => {
  it('has the deflection of the answer in its middle, and none at held edges', async () => {
    const answer = await example(id);
    const { x, y, values } = figure(answer, 'isolines') as Isolines;
    expect([x.at(-1), y.at(-1)]).toEqual([0.6, 0.4]);
    const middle = values[(y.length - 1) / 2]?.[(x.length - 1) / 2];
    expect((middle ?? 0) / out(answer, 'w').x).toBeCloseTo(1, 9);
    const held = values.flatMap((row) => [row[0] ?? 1, row.at(-1) ?? 1]);
    for (const w of held) expect(Math.abs(w)).toBeLessThan(1e-6 * out(answer, 'w').x);
  });

  it('is of nothing where the plate is not held', async () => {
    const free = { x0: 'free', xa: 'free', y0: 'free', yb: 'free' };
    expect((await example(id, free)).figures).toEqual([]);
  });
});

describe('designs of a floor', () => {
  const rows = async (n: number) =>
    (figure(await example('floor-options'), 'bars', n) as Bars).rows;

  it('are ranked by mass, each with the spread of its own cells', async () => {
    const ranked = await rows(0);
    const masses = ranked.map((r) => r.number?.x ?? Number.NaN);
    expect(masses).toEqual([...masses].sort((a, b) => a - b));
    const built = ranked.find((r) => r.word === 'as built');
    const answered = out(await example('floor-options'), 'mass');
    expect(built?.number?.x).toBeCloseTo(answered.x, 12);
    expect(Number(built?.number?.u) / Number(answered.u)).toBeCloseTo(1, 6);
  });

  it('are ranked by stiffness as the answer has it', async () => {
    const built = (await rows(1)).find((r) => r.word === 'as built');
    const answered = out(await example('floor-options'), 'D');
    expect(built?.number?.x).toBeCloseTo(answered.x, 9);
    expect(Number(built?.number?.u) / Number(answered.u)).toBeCloseTo(1, 6);
  });

  it('have bars with their spread for all that they are weighed by', async () => {
    const answer = await example('floor-options');
    const bars = (answer.figures ?? []).flatMap((f) => (f.f === 'bars' ? [f] : []));
    for (const title of ['Mass of', 'Bending', 'Shear', 'Mass of the designs for an area']) {
      const drawn = bars.find((f) => f.title.startsWith(title));
      expect(drawn?.rows).toHaveLength(4);
      for (const { number } of drawn?.rows ?? []) expect(Number(number?.u)).toBeGreaterThan(0);
    }
    const shear = bars.find((f) => f.title.startsWith('Shear'))?.rows;
    const built = shear?.find((r) => r.word === 'as built')?.number;
    const answered = out(answer, 'Gt');
    expect(built?.x).toBeCloseTo(answered.x, 3);
    expect(Number(built?.u) / Number(answered.u)).toBeCloseTo(1, 6);
  });

  it('that lack what they need have no bar', async () => {
    const { question } = await loadQuestion('floor-options');
    const designs = question.example.designs;
    if (typeof designs === 'string' || !designs) throw new Error('designs are rows');
    const answer = await example('floor-options', {
      designs: designs.map((row, i) => (i === 1 ? { ...row, density: '' } : row)),
    });
    const bars = figure(answer, 'bars') as Bars;
    expect(bars.rows.at(-1)).toEqual({ label: 'stamped aluminium' });
  });
});

describe('levels of a field', () => {
  it('are round numbers within it', () => {
    expect(niceLevels(0, 0.00055, 6, 1e-3)).toEqual([0.1, 0.2, 0.3, 0.4, 0.5].map((l) => l * 1e-3));
    expect(niceLevels(-2.4, 2.4, 5)).toEqual([-2, -1, 0, 1, 2]);
  });

  it('are none where all of it is one number', () => {
    expect(niceLevels(1, 1, 6)).toEqual([]);
  });
});
