/** Loads on four pads (question hoist-balance): the range against a search over the one load that equilibrium leaves free. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type OnPads, padLoads } from '../../../src/engine/hoist/on-pads.ts';

const FRAME = { front: 0.56, rear: 2.38, left: -0.56, right: 0.56 } as OnPads;

/** Every load of pad FL, in steps, with which no pad pulls down: by the three equations. */
function searched(mass: number, x: number, y: number): readonly [number, number] {
  const rear = (mass * (x - FRAME.front)) / (FRAME.rear - FRAME.front);
  const right = (mass * (y - FRAME.left)) / (FRAME.right - FRAME.left);
  const good: number[] = [];
  for (let i = 0; i <= 20_000; i++) {
    const fl = (mass * i) / 20_000;
    const [fr, rl] = [mass - rear - fl, mass - right - fl];
    const rr = rear - rl;
    if (Math.min(fl, fr, rl, rr) >= -1e-9) good.push(fl);
  }
  return [Math.min(...good), Math.max(...good)];
}

describe('loads on four pads', () => {
  it('lie between the least and the most that any equilibrium allows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.6, max: 2.3, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (x, y) => {
          const [fl] = padLoads(1000, x, y, FRAME);
          const [least, most] = searched(1000, x, y);
          expect(fl?.least).toBeCloseTo(least, -0.5);
          expect(fl?.most).toBeCloseTo(most, -0.5);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('by the split assumed are in equilibrium, and within the range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.56, max: 2.38, noNaN: true }),
        fc.double({ min: -0.56, max: 0.56, noNaN: true }),
        (x, y) => {
          const loads = padLoads(900, x, y, FRAME);
          const sum = (of: (pad: string) => number) =>
            loads.reduce((total, p) => total + p.split * of(p.pad), 0);
          expect(sum(() => 1)).toBeCloseTo(900, 6);
          expect(sum((p) => (p.startsWith('F') ? 0.56 : 2.38))).toBeCloseTo(900 * x, 6);
          expect(sum((p) => (p.endsWith('L') ? -0.56 : 0.56))).toBeCloseTo(900 * y, 6);
          for (const p of loads) {
            expect(p.split).toBeGreaterThanOrEqual(p.least - 1e-9);
            expect(p.split).toBeLessThanOrEqual(p.most + 1e-9);
          }
        },
      ),
    );
  });
});
