import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../src/engine/index.ts';
import { asked, exactly } from './asked.ts';

type Pair = readonly [x: number, y: number];
const points = (line: string, pairs: readonly Pair[]) =>
  pairs.map(([x, y]) => ({ line, x: `exactly ${x}`, y: `exactly ${y}` }));
const polygon = (...rows: readonly { line: string; x: string; y: string }[][]) =>
  asked('polygon-section', { points: rows.flat() });
const reason = (answer: Answer) => answer.findings.find((f) => f.code === 'no-such-section');

const SQUARE: readonly Pair[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const small = (x: number, y: number): readonly Pair[] => [
  [x, y],
  [x + 2, y],
  [x + 2, y + 2],
  [x, y + 2],
];

describe('a section as traced is refused with a reason', () => {
  it.each([
    [
      'crosses itself',
      [
        points('outline', [
          [0, 0],
          [10, 10],
          [10, 0],
          [0, 10],
        ]),
      ],
      /crosses itself: the edge after point 1 and the edge after point 3/,
    ],
    [
      'touches itself',
      [
        points('outline', [
          [0, 0],
          [10, 0],
          [10, 10],
          [5, 0],
          [0, 10],
        ]),
      ],
      /crosses itself/,
    ],
    [
      'has two points',
      [
        points('outline', [
          [0, 0],
          [10, 0],
        ]),
      ],
      /2 points/,
    ],
    [
      'lies on a line',
      [
        points('outline', [
          [0, 0],
          [10, 0],
          [20, 0],
        ]),
      ],
      /crosses itself|no area/,
    ],
    [
      'has a hole outside',
      [points('outline', SQUARE), points('a', small(12, 3))],
      /hole 1 is not inside/,
    ],
    [
      'has a hole through its edge',
      [points('outline', SQUARE), points('a', small(9, 3))],
      /hole 1 is not inside/,
    ],
    [
      'has holes in one another',
      [points('outline', SQUARE), points('a', small(3, 3)), points('b', small(4, 4))],
      /hole 2 overlaps hole 1/,
    ],
  ] as const)('when it %s', async (_name, rows, words) => {
    const answer = await polygon(...rows);
    expect(answer.outs).toEqual({});
    expect(reason(answer)?.what).toMatch(words);
    expect(reason(answer)?.next).not.toBe('');
  });
});

describe('sizes that make no section are refused with a reason', () => {
  it.each([
    ['i-section', { h: 20, b: 40, tw: 4, tf: 8, r: 5 }, /deeper than the section/],
    ['i-section', { h: 80, b: 12, tw: 4, tf: 5, r: 5 }, /wider than the flanges/],
    ['hollow-section', { h: 40, b: 20, t: 11, outer: 1, inner: 0 }, /thicker than half/],
    ['hollow-section', { h: 40, b: 20, t: 2, outer: 11, inner: 5 }, /outer radius/],
    ['hollow-section', { h: 40, b: 20, t: 2, outer: 9, inner: 1 }, /no wall would be left/],
    ['angle-section', { a: 40, b: 40, t: 4, root: 5, toe: 5 }, /toe radius/],
    ['angle-section', { a: 40, b: 10, t: 4, root: 5, toe: 3 }, /longer than the shorter leg/],
  ] as const)('%s %j', async (id, sizes, words) => {
    const answer = await asked(id, exactly(sizes, 'mm'));
    expect(answer.outs).toEqual({});
    expect(reason(answer)?.what).toMatch(words);
  });

  it('a wall of no thickness', async () => {
    const sizes = exactly({ h: 40, b: 20, t: 0, outer: 1, inner: 1 }, 'mm');
    await expect(asked('hollow-section', sizes)).rejects.toThrow(/wall thickness must be above 0/);
  });

  it('a channel whose flanges point nowhere', async () => {
    const sizes = exactly({ h: 80, b: 40, tw: 4, tf: 4, r: 0 }, 'mm');
    const answer = await asked('channel-section', sizes);
    expect(answer.findings.map((f) => f.code)).toContain('sides-not-named');
  });
});

describe('what is missing', () => {
  it('leaves out what depends on it and is named, without a fault of its own', async () => {
    const answer = await asked('i-section', exactly({ h: 80, b: 46, tf: 5.2, r: 5 }, 'mm'));
    expect(Object.keys(answer.outs)).toEqual(['Iw']);
    expect(reason(answer)).toBeUndefined();
    expect(answer.findings.some((f) => f.code === 'missing' && f.place.column === 'tw')).toBe(true);
  });
});
