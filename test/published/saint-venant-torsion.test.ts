/**
 * Timoshenko and Goodier, Theory of Elasticity, 3rd edition: torsion of rectangular bars, factors
 * 0.1406, 0.166, 0.196, 0.229, 0.263, 0.281, 0.291, 0.312 on b c³ for sides in the ratio 1, 1.2,
 * 1.5, 2, 3, 4, 5, 10 (question bar-section). From memory, recomputed. Round tubes
 * (question tube-section) against closed forms, own inputs.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, detailRow, off, shown } from '../engine/structure/asked.ts';

describe('a solid rectangle', () => {
  it.each([
    [1, 0.1406],
    [1.2, 0.166],
    [1.5, 0.196],
    [2, 0.229],
    [3, 0.263],
    [4, 0.281],
    [5, 0.291],
    [10, 0.312],
  ])('of ratio %f has the factor %f', async (ratio, factor) => {
    const long = `exactly ${10 * ratio} mm`;
    for (const sides of [
      { h: long, b: 'exactly 10 mm' },
      { b: long, h: 'exactly 10 mm' },
    ]) {
      const it = shown(await asked('bar-section', sides), 'It') * 1e4;
      expect(Math.abs(it / (ratio * 1e4) - factor)).toBeLessThan(6e-4);
    }
  });
});

const tube = (d: number, t: number) =>
  asked('tube-section', {
    d: `exactly ${d} mm`,
    t: `exactly ${t} mm`,
    density: 'exactly 7850 kg/m3',
  });

describe('a round tube', () => {
  it('is a solid bar when its wall is half its diameter', async () => {
    const answer = await tube(20, 10);
    expect(off(shown(answer, 'I') * 1e4, (Math.PI * 20 ** 4) / 64)).toBeLessThan(1e-12);
    expect(off(shown(answer, 'Wpl') * 1e3, 20 ** 3 / 6)).toBeLessThan(1e-12);
    expect(Number(detailRow(answer, 'torsion')[2])).toBeCloseTo(0, 9);
  });

  it('with a thin wall nears Bredt’s 2 π r³ t, in proportion to the wall', async () => {
    const answer = await tube(100, 0.5);
    expect(off(shown(answer, 'It') * 1e4, 2 * Math.PI * 49.75 ** 3 * 0.5)).toBeLessThan(1e-4);
    expect(Math.abs(Number(detailRow(answer, 'torsion')[2]) - 1)).toBeLessThan(0.02);
    expect(detailRow(answer, 'torsion')[1]).toContain('closed round tube');
  });

  it('with walls thicker than it is round is refused with a reason', async () => {
    const answer = await tube(20, 11);
    expect(answer.outs).toEqual({});
    expect(codes(answer)).toContain('no-such-section');
  });
});
