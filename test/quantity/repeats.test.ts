/**
 * Repeated readings written in one go. The experimental standard deviation of the mean is that
 * of JCGM 100:2008, 4.2.3; the resolution of a display that of F.2.2.1, 0.29 of the last digit.
 */
import { describe, expect, it } from 'vitest';
import {
  degreesOfFreedom,
  type Kind,
  parseQuantity,
  standardUncertainty,
} from '../../src/quantity/index.ts';

function read(text: string, kind: Kind = 'mass', unit?: string) {
  const parsed = parseQuantity(text, kind, unit === undefined ? {} : { unit });
  if (!parsed.ok) return parsed.why;
  const { x, spread } = parsed.value;
  return { x, u: standardUncertainty(spread, x), dof: degreesOfFreedom(spread), s: spread.s };
}

describe('repeated readings', () => {
  it.each<[string, Kind, string | undefined]>([
    ['12.1; 12.3; 12.2 kg', 'mass', undefined],
    ['12,1; 12,3; 12,2 kg', 'mass', undefined],
    ['12.1 kg; 12 300 g; 12.2 kg', 'mass', undefined],
    ['12.1;12.3;12.2', 'mass', 'kg'],
  ])('%s is their mean with its spread', (text, kind, unit) => {
    const u = 0.1 / Math.sqrt(3);
    expect(read(text, kind, unit)).toEqual({
      ...{ x: expect.closeTo(12.2, 12), u: expect.closeTo(u, 12), dof: 2, s: 'repeats' },
    });
  });

  it('that are all alike are known to half of their last digit', () => {
    expect(read('2.0; 2.0; 2.0 mm', 'length')).toMatchObject({
      ...{ x: 0.002, u: expect.closeTo(0.05e-3 / Math.sqrt(3), 12), s: 'rectangular' },
    });
    expect(read('14; 14 kg')).toMatchObject({ u: expect.closeTo(0.5 / Math.sqrt(3), 12) });
    expect(read('3/8; 3/8 in', 'length')).toMatchObject({ s: 'unknown', u: undefined });
  });

  it('of a count may lie between', () => {
    expect(read('9; 10; 10', 'count')).toMatchObject({ x: expect.closeTo(29 / 3, 12) });
  });

  it.each([
    ['12.1; heavy kg', 'mass'],
    ['12.1; 12.3 mm', 'mass'],
    ['12.1 ± 0.1; 12.3 kg', 'mass'],
    ['12.1; ', 'mass'],
    ['12.1 kg; 12 300 g; 12.2', 'mass'],
    ['; 12.1 kg', 'mass'],
  ] as const)('%s are refused', (text, kind) => {
    expect(read(text, kind)).toBeTypeOf('string');
  });
});
