import { describe, expect, it } from 'vitest';
import type { Answer, Drawing, DrawingShape } from '../../../src/engine/index.ts';
import { loadQuestion } from '../../../src/engine/index.ts';
import { out } from '../made-question.ts';
import { asked, codes } from './asked.ts';

const example = async (id: string, more = {}): Promise<Answer> => {
  const { question } = await loadQuestion(id);
  return asked(id, { ...question.example, ...more });
};

function drawing(answer: Answer): Drawing {
  const found = answer.figures?.find((f): f is Drawing => f.f === 'drawing');
  if (!found) throw new Error(`${answer.question} draws nothing`);
  return found;
}

type Shape<S extends DrawingShape['s']> = Extract<DrawingShape, { readonly s: S }>;
const shapes = <S extends DrawingShape['s']>(answer: Answer, s: S): Shape<S>[] =>
  drawing(answer).shapes.filter((shape): shape is Shape<S> => shape.s === s);

/** Area inside an odd number of rings that do not cross (shoelace). */
const areaOf = ({ rings: [outline = [], ...holes] }: Shape<'area'>): number => {
  const one = (ring: Shape<'area'>['rings'][number]): number =>
    Math.abs(
      ring.reduce((sum, [x, y], i) => {
        const [nx, ny] = ring[(i + 1) % ring.length] ?? [0, 0];
        return sum + (x * ny - nx * y) / 2;
      }, 0),
    );
  return holes.reduce((sum, hole) => sum - one(hole), one(outline));
};

const PROFILES = ['i', 'angle', 'bar', 'channel', 'hollow', 'standard-hollow', 'tube', 'polygon'];

describe.each(PROFILES)('the drawing of %s-section', (name) => {
  it('has the area of the answer, and its overall sizes', async () => {
    const answer = await example(`${name}-section`);
    const [body] = shapes(answer, 'area');
    // Chords of arcs are joined where they hardly turn.
    expect((body ? areaOf(body) : 0) / out(answer, 'area').x).toBeCloseTo(1, 2);
    expect(shapes(answer, 'dimension').map((d) => d.along)).toEqual(['x', 'y']);
  });
});

it('sizes are those of the profile, also where its corners are round', async () => {
  const size = ({ from, to }: Shape<'dimension'>) => Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [wide, high] = shapes(await example('hollow-section'), 'dimension').map(size);
  expect(wide).toBeCloseTo(0.04, 12);
  expect(high).toBeCloseTo(0.06, 12);
});

it('centroid and principal axes of an angle stand where the answer says', async () => {
  const answer = await example('angle-section');
  const [centroid] = shapes(answer, 'mark');
  expect(centroid?.at[0]).toBeCloseTo(out(answer, 'cy').x, 12);
  expect(centroid?.at[1]).toBeCloseTo(out(answer, 'cz').x, 12);
  const axis = shapes(answer, 'axis').find((a) => a.label === '1');
  expect(axis?.angle).toBeCloseTo(out(answer, 'angle').x, 12);
});

it('a doubly symmetric section has no other axes than its own', async () => {
  expect(shapes(await example('i-section'), 'axis').map((a) => a.label)).toEqual(['y', 'z']);
});

it('the shear centre of a channel stands behind its web, of open walls as answered', async () => {
  const centre = (a: Answer) => shapes(a, 'mark').find((m) => m.label === 'shear centre')?.at;
  const channel = await example('channel-section');
  expect(centre(channel)?.[0]).toBeCloseTo(out(channel, 'shearCentre').x, 12);
  const open = await example('open-section');
  expect(centre(open)?.[0]).toBeCloseTo(out(open, 'shearX').x, 12);
  expect(shapes(open, 'area').filter((s) => s.rings[0]?.length === 4)).toHaveLength(3);
});

it('nothing is drawn of a section that can not be, or lacks a size, and that is found once', async () => {
  const refused = await example('i-section', { tw: 'exactly 120 mm' });
  expect([refused.figures, codes(refused)]).toEqual([
    [],
    expect.arrayContaining(['no-such-section']),
  ]);
  const { h: _h, ...rest } = (await loadQuestion('i-section')).question.example;
  const missing = await asked('i-section', rest);
  expect(missing.figures).toEqual([]);
  expect(codes(missing)).not.toContain('figure-left-out');
});
