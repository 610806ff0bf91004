/**
 * Question sheet-stamping: forces of shearing, perimeter × thickness × strength (two textbook
 * examples seen; the disc of 150 mm is Groover, chapter 20, from memory), and of deep drawing,
 * π D t TS (Db/D − 0.7) (seen; the second cup Groover, from memory).
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../engine/cost/asked.ts';

const mm = (x: number) => `exactly ${x} mm`;
const round = (d: number) => mm(Math.PI * d);
const MPa = (x: number) => `exactly ${x} MPa`;

describe('force to shear', () => {
  it.each([
    [20, 1.5, 300, 28.27e3, 5],
    [10, 3, 400, 37.7e3, 5],
    [150, 3.2, 310, 467_469, 0.5],
  ])('%i dia × %d at %i MPa', async (d, t, tau, force, digits) => {
    const found = await numberOf('sheet-stamping', 'shearForce', {
      ...{ trim: round(d), thickness: mm(t), shear: MPa(tau) },
    });
    expect(Math.abs(found - force)).toBeLessThan(digits);
  });
});

describe('force to draw a cup', () => {
  it.each([
    [80, 3, 150, 400, 354_372],
    [75, 2.4, 138, 300, 193_396],
  ])('%i dia × %d from %i at %i MPa', async (punch, t, blank, ts, force) => {
    const found = await numberOf('sheet-stamping', 'drawForce', {
      ...{ drawn: round(punch), thickness: mm(t), tensile: MPa(ts) },
      drawRatio: `exactly ${blank / punch}`,
    });
    expect(Math.abs(found - force)).toBeLessThan(1);
  });
});
