/**
 * Plane figures in closed form (questions polygon-section and channel-section): triangle, regular
 * hexagon (5√3/16 a⁴), rectangle with a hole, Z-section as a sum of rectangles. Own inputs,
 * closed forms of any handbook of mechanics, from memory, recomputed.
 */
import { describe, expect, it } from 'vitest';
import { asked, exactly, off, shown } from '../engine/structure/asked.ts';

type Pair = readonly [x: number, y: number];
const line = (name: string, points: readonly Pair[]) =>
  points.map(([x, y]) => ({ line: name, x: `exactly ${x}`, y: `exactly ${y}` }));
const polygon = (outline: readonly Pair[], hole: readonly Pair[] = []) =>
  asked('polygon-section', { points: [...line('outline', outline), ...line('hole', hole)] });

const TRIANGLE: readonly Pair[] = [
  [0, 0],
  [100, 0],
  [0, 80],
];
const box = (w: number, h: number): readonly Pair[] => [
  [-w / 2, -h / 2],
  [w / 2, -h / 2],
  [w / 2, h / 2],
  [-w / 2, h / 2],
];
const HEXAGON = Array.from({ length: 6 }, (_, i): Pair => {
  const angle = (i * Math.PI) / 3;
  return [10 * Math.cos(angle), 10 * Math.sin(angle)];
});

/** In mm: area mm², moments mm⁴, where the question shows cm² and cm⁴. */
const mm2 = async (answer: ReturnType<typeof polygon>, name: string) =>
  shown(await answer, name) * 1e2;
const mm4 = async (answer: ReturnType<typeof polygon>, name: string) =>
  shown(await answer, name) * 1e4;

describe.each([
  ['against the clock', (ring: readonly Pair[]) => ring],
  ['with the clock', (ring: readonly Pair[]) => [...ring].reverse()],
])('walked %s', (_name, walk) => {
  it('a triangle', async () => {
    const answer = polygon(walk(TRIANGLE));
    expect(off(await mm2(answer, 'area'), 4000)).toBeLessThan(1e-9);
    expect(off(shown(await answer, 'cx'), 100 / 3)).toBeLessThan(1e-9);
    expect(off(shown(await answer, 'cy'), 80 / 3)).toBeLessThan(1e-9);
    expect(off(await mm4(answer, 'Ix'), (100 * 80 ** 3) / 36)).toBeLessThan(1e-9);
    expect(off(await mm4(answer, 'Iy'), (80 * 100 ** 3) / 36)).toBeLessThan(1e-9);
    expect(off(await mm4(answer, 'Ixy'), -(100 ** 2 * 80 ** 2) / 72)).toBeLessThan(1e-9);
  });

  it('a regular hexagon', async () => {
    const answer = polygon(walk(HEXAGON));
    expect(off(await mm2(answer, 'area'), 259.8076211)).toBeLessThan(1e-9);
    const moment = ((5 * Math.sqrt(3)) / 16) * 1e4;
    expect(off(await mm4(answer, 'Ix'), moment)).toBeLessThan(1e-9);
    expect(off(await mm4(answer, 'Iy'), moment)).toBeLessThan(1e-9);
  });

  it('a rectangle with a hole, also when the hole is walked the same way', async () => {
    for (const hole of [box(80, 40), [...box(80, 40)].reverse()]) {
      const answer = polygon(walk(box(100, 60)), hole);
      expect(off(await mm2(answer, 'area'), 2800)).toBeLessThan(1e-9);
      expect(off(await mm4(answer, 'Ix'), (100 * 60 ** 3 - 80 * 40 ** 3) / 12)).toBeLessThan(1e-9);
      expect(off(await mm4(answer, 'Iy'), (60 * 100 ** 3 - 40 * 80 ** 3) / 12)).toBeLessThan(1e-9);
      expect(
        off(shown(await answer, 'Wplx') * 1e3, (100 * 60 ** 2 - 80 * 40 ** 2) / 4),
      ).toBeLessThan(1e-9);
    }
  });
});

it('a Z-section 100 deep with flanges 50×5 and a web of 5', async () => {
  const answer = await asked('channel-section', {
    ...exactly({ h: 100, b: 50, tw: 5, tf: 5, r: 0 }, 'mm'),
    flanges: 'opposite sides (Z)',
  });
  const expected = {
    Iy: 1.432917e6,
    Iz: 0.358229e6,
    Iyz: 0.534375e6,
    I1: 1.653395e6,
    I2: 0.13775e6,
  };
  expect(off(shown(answer, 'area') * 1e2, 950)).toBeLessThan(1e-9);
  for (const [name, x] of Object.entries(expected))
    expect(off(shown(answer, name) * 1e4, x), name).toBeLessThan(1e-5);
  expect(off(Math.abs(shown(answer, 'angle')), 22.421)).toBeLessThan(3e-5);
});
