/**
 * Thin-walled sections in closed form (questions open-section, closed-section, channel-section):
 * shear centre e = 3 b² t/(h t + 6 b t) and warping of a channel, shear centre of an angle at its
 * corner, of a slit tube at 2 r from its centre with warping ⅔ π t r⁵ (π² − 6); Bredt's
 * 4 A² t / l for one cell. Formulas of textbooks of strength of materials and Vlasov, Thin-walled
 * Elastic Beams, from memory, recomputed; own inputs.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, detailRow, exactly, off, shown } from '../engine/structure/asked.ts';

type Node = readonly [name: string, x: number, y: number];
type Wall = readonly [from: string, to: string, t: number];
const walls = (id: string, nodes: readonly Node[], list: readonly Wall[]) =>
  asked(id, {
    points: nodes.map(([point, x, y]) => ({ point, x: `exactly ${x}`, y: `exactly ${y}` })),
    walls: list.map(([from, to, t]) => ({ from, to, thickness: `exactly ${t} mm` })),
  });

const [B, H, T] = [50, 100, 2];
const CHANNEL: readonly Node[] = [
  ['a', B, H / 2],
  ['b', 0, H / 2],
  ['c', 0, -H / 2],
  ['d', B, -H / 2],
];
const CHANNEL_WALLS: readonly Wall[] = [
  ['a', 'b', T],
  ['b', 'c', T],
  ['c', 'd', T],
];

describe('an open section', () => {
  it('a channel has its shear centre behind the web', async () => {
    const answer = await walls('open-section', CHANNEL, CHANNEL_WALLS);
    expect(off(shown(answer, 'shearX'), (-3 * B * B) / (H + 6 * B))).toBeLessThan(1e-9);
    expect(shown(answer, 'shearY')).toBeCloseTo(0, 9);
    const warping = ((T * B ** 3 * H ** 2) / 12) * ((3 * B + 2 * H) / (6 * B + H));
    expect(off(shown(answer, 'Iw') * 1e6, warping)).toBeLessThan(1e-9);
    expect(off(shown(answer, 'It') * 1e4, ((2 * B + H) * T ** 3) / 3)).toBeLessThan(1e-9);
    expect(detailRow(answer, 'torsion')[1]).toContain('open thin strips');
    expect(detailRow(answer, 'torsion')[2]).toBeCloseTo(3, 6);
  });

  it('the channel by its sizes gives the same shear centre', async () => {
    const answer = await asked('channel-section', {
      ...exactly({ h: H + T, b: B + T / 2, tw: T, tf: T, r: 0 }, 'mm'),
      flanges: 'same side (channel)',
    });
    expect(off(shown(answer, 'shearCentre'), (-3 * B * B) / (H + 6 * B))).toBeLessThan(1e-9);
  });

  it('turned and moved it keeps moments, warping and torsion, and takes its shear centre along', async () => {
    const turn = 0.7;
    const moved = CHANNEL.map(
      ([n, x, y]): Node => [
        n,
        300 + x * Math.cos(turn) - y * Math.sin(turn),
        -80 + x * Math.sin(turn) + y * Math.cos(turn),
      ],
    );
    const [here, there] = await Promise.all([
      walls('open-section', CHANNEL, CHANNEL_WALLS),
      walls('open-section', moved, CHANNEL_WALLS),
    ]);
    for (const name of ['area', 'I1', 'I2', 'Iw', 'It'])
      expect(off(shown(there, name), shown(here, name)), name).toBeLessThan(1e-9);
    const e = shown(here, 'shearX');
    expect(shown(there, 'shearX')).toBeCloseTo(300 + e * Math.cos(turn), 8);
    expect(shown(there, 'shearY')).toBeCloseTo(-80 + e * Math.sin(turn), 8);
  });

  it('an angle and a T have their shear centre where the walls meet, and hardly warp', async () => {
    const corner: Node = ['o', 7, 3];
    const legs: readonly Wall[] = [
      ['o', 'p', 3],
      ['o', 'q', 2],
    ];
    const angle = await walls('open-section', [corner, ['p', 60, 3], ['q', 7, 40]], legs);
    const tee = await walls(
      'open-section',
      [corner, ['p', 60, 3], ['q', -46, 3], ['r', 7, -50]],
      [
        ['o', 'p', 3],
        ['o', 'q', 3],
        ['o', 'r', 2],
      ],
    );
    for (const answer of [angle, tee]) {
      expect(shown(answer, 'shearX')).toBeCloseTo(7, 9);
      expect(shown(answer, 'shearY')).toBeCloseTo(3, 9);
      expect(answer.outs.Iw?.x ?? 1).toBeLessThan(1e-24);
    }
  });

  it('a slit tube has it two radii from the centre, away from the slit', async () => {
    const [r, t, n] = [30, 1, 360];
    const nodes = Array.from({ length: n + 1 }, (_, i): Node => {
      const angle = (2 * Math.PI * i) / n;
      return [`p${i}`, r * Math.cos(angle), r * Math.sin(angle)];
    });
    const ring = Array.from({ length: n }, (_, i): Wall => [`p${i}`, `p${i + 1}`, t]);
    const answer = await walls('open-section', apart(nodes), ring);
    expect(off(shown(answer, 'shearX'), -2 * r)).toBeLessThan(1e-3);
    const warping = (2 / 3) * Math.PI * t * r ** 5 * (Math.PI ** 2 - 6);
    expect(off(shown(answer, 'Iw') * 1e6, warping)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'It') * 1e4, (2 * Math.PI * r * t ** 3) / 3)).toBeLessThan(1e-3);
  });
});

/** The last point a hair off the first, or the tube would be closed. */
const apart = (nodes: readonly Node[]): readonly Node[] =>
  nodes.map(([n, x, y], i) => [n, x, i === nodes.length - 1 ? y - 1e-4 : y]);

describe('a closed section', () => {
  const BOX: readonly Node[] = [
    ['a', 0, 0],
    ['b', 120, 0],
    ['c', 120, 80],
    ['d', 0, 80],
    ['e', 60, 0],
    ['f', 60, 80],
  ];
  const AROUND: readonly Wall[] = [
    ['a', 'b', 3],
    ['b', 'c', 3],
    ['c', 'd', 3],
    ['d', 'a', 3],
  ];

  it('of one cell is Bredt’s 4 A² t / l', async () => {
    const answer = await walls('closed-section', BOX, AROUND);
    expect(off(shown(answer, 'It') * 1e4, (4 * (120 * 80) ** 2 * 3) / 400)).toBeLessThan(1e-9);
    expect(detailRow(answer, 'torsion')[1]).toContain('1 closed cell by Bredt and Batho');
  });

  it('of two equal cells has nothing in its middle wall', async () => {
    const two: readonly Wall[] = [
      ['a', 'e', 3],
      ['e', 'b', 3],
      ['b', 'c', 3],
      ['c', 'f', 3],
      ['f', 'd', 3],
      ['d', 'a', 3],
      ['e', 'f', 2],
    ];
    const answer = await walls('closed-section', BOX, two);
    expect(off(shown(answer, 'It') * 1e4, (4 * (120 * 80) ** 2 * 3) / 400)).toBeLessThan(1e-9);
    expect(detailRow(answer, 'torsion')[1]).toContain('2 closed cells');
  });

  it('with a fin has its strip added', async () => {
    const answer = await walls(
      'closed-section',
      [...BOX, ['g', 160, 80]],
      [...AROUND, ['c', 'g', 4]],
    );
    const expected = (4 * (120 * 80) ** 2 * 3) / 400 + (40 * 4 ** 3) / 3;
    expect(off(shown(answer, 'It') * 1e4, expected)).toBeLessThan(1e-9);
  });

  it('by tracing agrees with the same cells by lengths and areas', async () => {
    const traced = await walls('closed-section', BOX, [
      ['a', 'e', 3],
      ['e', 'b', 1],
      ['b', 'c', 2],
      ['c', 'f', 1],
      ['f', 'd', 3],
      ['d', 'a', 2],
      ['e', 'f', 1.5],
    ]);
    const wall = (name: string, cell: string, other: string, length: number, t: number) => ({
      ...{ wall: name, cell, other, length: `exactly ${length} mm`, thickness: `exactly ${t} mm` },
      shear: 'exactly 1 GPa',
    });
    const byLengths = await asked('cell-torsion', {
      torque: 'exactly 1 N.m',
      cells: ['I', 'II'].map((cell) => ({ cell, area: 'exactly 4800 mm2' })),
      walls: [
        wall('flanges', 'I', 'outside', 120, 3),
        wall('side', 'I', '', 80, 2),
        wall('flanges', 'II', 'outside', 120, 1),
        wall('side', 'II', 'outside', 80, 2),
        wall('middle', 'II', 'I', 80, 1.5),
      ],
    });
    const rigidity = byLengths.outs.rigidity?.x ?? 0;
    expect(off(traced.outs.It?.x ?? 0, rigidity / 1e9)).toBeLessThan(1e-9);
  });
});

describe('what does not hold is refused with a reason', () => {
  it('an open section asked for Bredt', async () => {
    const answer = await walls('closed-section', CHANNEL, CHANNEL_WALLS);
    expect(answer.outs).toEqual({});
    const found = answer.findings.find((f) => f.code === 'section-is-open');
    expect(found?.what).toContain('close no cell');
    expect(found?.next).toContain('open-section');
  });

  it('a closed section asked for open strips', async () => {
    const answer = await walls('open-section', CHANNEL, [...CHANNEL_WALLS, ['d', 'a', T]]);
    expect(answer.outs).toEqual({});
    expect(codes(answer)).toContain('section-is-closed');
  });

  it('walls that cross away from a point, or hang apart, or lead nowhere', async () => {
    const crossing = await walls('open-section', CHANNEL, [
      ['a', 'c', 2],
      ['c', 'b', 2],
      ['b', 'd', 2],
    ]);
    expect(crossing.outs).toEqual({});
    expect(crossing.findings.map((f) => f.what).join()).toContain('crosses itself');
    const parted = await walls('open-section', CHANNEL, [
      ['a', 'b', 2],
      ['c', 'd', 2],
    ]);
    expect(parted.findings.map((f) => f.what).join()).toContain('hang together');
    const lost = await walls('open-section', CHANNEL, [['a', 'z', 2]]);
    expect(lost.findings.map((f) => f.what).join()).toContain('not listed');
  });

  it('a wall of no thickness', async () => {
    await expect(walls('open-section', CHANNEL, [['a', 'b', 0]])).rejects.toThrow(
      /thickness of the wall must be above 0 mm/,
    );
  });
});
