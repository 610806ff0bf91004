import { describe, expect, it } from 'vitest';
import { type MapShape, mapDrawing } from '../../src/report/index.ts';
import { fold } from '../../src/study/index.ts';
import { cart } from './cart.ts';

const drawing = mapDrawing(cart(), [
  { words: 'by the scales', sign: 'circle', x: 1.2, y: 0.1, z: 0.5 },
  { words: 'in plan only', sign: 'square', x: 1.3, y: 0 },
]);
const [plan, side] = drawing?.views ?? [];
const of = <S extends MapShape['s']>(shapes: readonly MapShape[] | undefined, s: S) =>
  (shapes ?? []).filter((shape): shape is Extract<MapShape, { s: S }> => shape.s === s);

describe('the drawn map', () => {
  it('sets parts at their positions: X to the right, Y and Z up the paper', () => {
    const side20 = 1000 * Math.cbrt(20 / 2700);
    expect(of(plan?.shapes, 'box').find((b) => Math.abs(b.w - side20) < 1e-9)).toMatchObject({
      x: 400 - side20 / 2,
      y: -200 - side20 / 2,
    });
    expect(of(side?.shapes, 'item')[0]).toMatchObject({ x: 400, y: -500, item: 1 });
  });

  it('stands on its wheels, with the wheelbase as a dimension', () => {
    expect(of(side?.shapes, 'circle').map((c) => c.x)).toEqual([0, 2900]);
    expect(of(side?.shapes, 'dimension')[0]?.text).toBe('2\u202f900');
    expect(of(plan?.shapes, 'box').filter((b) => b.w === 640)).toHaveLength(4);
  });

  it('marks centres of gravity, in the side view those with a height', () => {
    expect(of(plan?.shapes, 'mark').map((m) => m.sign)).toEqual(['circle', 'square']);
    expect(of(side?.shapes, 'mark')).toEqual([{ s: 'mark', x: 1200, y: -500, sign: 'circle' }]);
    expect(drawing?.alt).toContain('by the scales at X 1200 mm, Y 100 mm, Z 500 mm');
  });

  it('shares one range along X between the views', () => {
    expect([plan?.frame[0], plan?.frame[2]]).toEqual([side?.frame[0], side?.frame[2]]);
  });

  it('is not drawn where no part has a place', () => {
    expect(mapDrawing(fold('empty', []))).toBeUndefined();
  });
});
