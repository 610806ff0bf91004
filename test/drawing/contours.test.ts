import { describe, expect, it } from 'vitest';
import { contourLines, type Grid } from '../../src/drawing/contours.ts';

const steps = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);

const gridOf = (of: (x: number, y: number) => number, count: number): Grid => {
  const x = steps(-2, 2, count);
  const y = steps(-1, 1, count);
  return { x, y, values: y.map((b) => x.map((a) => of(a, b))) };
};

describe('lines of equal value', () => {
  it('of a slope are straight, across the whole field, and exact', () => {
    const lines = contourLines(
      gridOf((x, y) => 3 * x + y, 8),
      1,
    );
    expect(lines).toHaveLength(1);
    for (const [x, y] of lines[0] ?? []) expect(3 * x + y).toBeCloseTo(1, 12);
    const ends = [lines[0]?.[0], lines[0]?.at(-1)].map((p) => Math.abs(p?.[1] ?? 0));
    expect(ends).toEqual([1, 1]);
  });

  it('of the distance from a point are circles, closed, of the circle’s length (π d)', () => {
    const lines = contourLines(gridOf(Math.hypot, 80), 0.7);
    expect(lines).toHaveLength(1);
    const [ring = []] = lines;
    expect(ring[0]).toEqual(ring.at(-1));
    for (const [x, y] of ring) expect(Math.hypot(x, y)).toBeCloseTo(0.7, 2);
    const length = ring.reduce((sum, [x, y], i) => {
      const [px, py] = ring[i - 1] ?? [x, y];
      return sum + Math.hypot(x - px, y - py);
    }, 0);
    expect(length / (Math.PI * 1.4)).toBeCloseTo(1, 3);
  });

  it('come apart as the level rises through a saddle, and never meet', () => {
    const saddle = gridOf((x, y) => x * x - y * y, 31);
    const sides = (level: number) =>
      contourLines(saddle, level).map((l) => new Set(l.map(([x, y]) => [x > 0, y > 0].join())));
    // Below zero the lines lie above and below the middle, over it to its left and right.
    expect(sides(-0.2).map((s) => s.has('true,true') && s.has('true,false'))).toEqual([
      false,
      false,
    ]);
    expect(sides(0.2).map((s) => s.has('true,true') && s.has('false,true'))).toEqual([
      false,
      false,
    ]);
  });

  it('use every crossing once, in a field with nothing smooth in it', () => {
    let state = 7;
    const random = gridOf(() => {
      state = (state * 16807) % 2147483647;
      return state / 2147483647;
    }, 20);
    const points = contourLines(random, 0.5).flatMap((l) =>
      same(l[0], l.at(-1)) ? l.slice(1) : l,
    );
    expect(new Set(points.map((p) => p.join())).size).toBe(points.length);
    expect(points.length).toBe(crossings(random, 0.5));
  });

  it('are none where the field does not reach the level', () => {
    expect(contourLines(gridOf(Math.hypot, 8), 9)).toEqual([]);
  });
});

const same = (a: readonly number[] | undefined, b: readonly number[] | undefined): boolean =>
  a?.join() === b?.join();

/** Neighbours along rows and columns that lie on two sides of a level. */
function crossings({ values }: Grid, level: number): number {
  let count = 0;
  values.forEach((row, j) => {
    row.forEach((v, i) => {
      const here = v >= level;
      if (i + 1 < row.length && here !== (row[i + 1] ?? 0) >= level) count++;
      const below = values[j + 1]?.[i];
      if (below !== undefined && here !== below >= level) count++;
    });
  });
  return count;
}
