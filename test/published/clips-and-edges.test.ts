/**
 * Snap arms and clips as in design guides of moulding-material suppliers: strains of plastic
 * strips (seen), tapered arm (from memory, recomputed), spring steel in closed form. Bonded edge
 * after Chen and Nelson, Thermal stress in bonded joints (1979, from memory): limits, and the
 * strip's balance of forces in small steps. Questions clip-force, tapered-clip and bonded-edge.
 */
import { describe, expect, it } from 'vitest';
import { asked, exactly, off, shown } from '../engine/structure/asked.ts';

const clip = (h: number, L: number, y: number, E = 206, mu = 0.15, on = 30, off = 60) =>
  asked('clip-force', {
    ...exactly({ b: 10, h, L, y }, 'mm'),
    ...{ modulus: `exactly ${E} GPa`, mu: `exactly ${mu}` },
    ...{ on: `exactly ${on} deg`, off: `exactly ${off} deg` },
  });

describe('clip-force', () => {
  it.each([
    [15, 4.167],
    [18, 2.894],
  ])('plastic, 2.5 mm thick, 2.5 mm deflection, length %f: strain %f %%', async (L, strain) => {
    expect(shown(await clip(2.5, L, 2.5, 2), 'strain')).toBeCloseTo(strain, 3);
  });

  it('spring steel 10 × 0.5 × 20 mm, 1.5 mm', async () => {
    const answer = await clip(0.5, 20, 1.5);
    expect(shown(answer, 'force')).toBeCloseTo(12.07, 2);
    expect(shown(answer, 'stress')).toBeCloseTo(579, 0);
    expect(shown(answer, 'rate')).toBeCloseTo(8.047, 3);
    expect(shown(answer, 'push')).toBeCloseTo(9.61, 2);
    expect(shown(answer, 'pull')).toBeCloseTo(30.69, 2);
    expect(shown(answer, 'lock')).toBeCloseTo(81.5, 1);
  });

  it('beyond the slope at which it locks the pull has no sense: below zero', async () => {
    expect(shown(await clip(0.5, 20, 1.5, 206, 0.15, 30, 85), 'pull')).toBeLessThan(0);
  });
});

describe('tapered-clip', () => {
  it('2 %, 19 mm, 2.4 mm: 3.279 mm, 32.5 N; by friction 0.6 and 30°: 58.5 N', async () => {
    const answer = await asked('tapered-clip', {
      ...{ strain: 'exactly 2 %', ...exactly({ L: 19, y: 2.4, b: 9.5 }, 'mm') },
      secant: 'exactly 1815 MPa',
    });
    expect(shown(answer, 'h')).toBeCloseTo(3.279, 3);
    expect(shown(answer, 'force')).toBeCloseTo(32.5, 1);
    const slope =
      shown(await clip(1, 20, 1, 2, 0.6), 'push') / shown(await clip(1, 20, 1, 2), 'force');
    expect(slope).toBeCloseTo(1.801, 3);
    expect(slope * shown(answer, 'force')).toBeCloseTo(58.5, 0);
  });
});

interface Edge {
  readonly G: number;
  readonly t: number;
  readonly L: number;
}
const edge = ({ G, t, L }: Edge) =>
  asked('bonded-edge', {
    ...exactly({ L, t, t1: 3, t2: 2.6 }, 'mm'),
    ...{ a1: 'exactly 23.5 10*-6/K', a2: 'exactly 12 10*-6/K', dT: 'exactly 60 K' },
    ...{ G: `exactly ${G} MPa`, E1: 'exactly 70 GPa', E2: 'exactly 10 GPa' },
  });
const STRAIN = 11.5e-6 * 60;
const lambda = (G: number, t: number) => Math.sqrt((G / t) * (1 / 210e3 + 1 / 26e3));

describe('bonded-edge', () => {
  it('soft and thick: the strain is the free sliding over the thickness', async () => {
    const answer = await edge({ G: 0.1, t: 10, L: 100 });
    expect(shown(answer, 'slide')).toBeCloseTo(STRAIN * 100, 9);
    expect(off(shown(answer, 'strain'), (100 * STRAIN * 100) / 10)).toBeLessThan(0.01);
  });

  it('long: no more than G Δα ΔT / (λ t), whatever the length', async () => {
    const [long, longer] = [
      await edge({ G: 500, t: 0.3, L: 700 }),
      await edge({ G: 500, t: 0.3, L: 1400 }),
    ];
    const expected = (500 * STRAIN) / (lambda(500, 0.3) * 0.3);
    expect(off(shown(long, 'stress'), expected)).toBeLessThan(1e-9);
    expect(shown(longer, 'stress')).toBeCloseTo(shown(long, 'stress'), 9);
  });

  it('agrees with the balance of forces along the strips in small steps', async () => {
    const { G, t, L } = { G: 20, t: 1, L: 60 };
    const answer = await edge({ G, t, L });
    expect(off(shown(answer, 'stress'), shot(G, t, L))).toBeLessThan(1e-3);
  });
});

/** Shear at the end by shooting from the middle: dγ/dx = (Δα ΔT − N c)/t, dN/dx = τ, N = 0 at the end. */
function shot(G: number, t: number, L: number): number {
  const c = 1 / 210e3 + 1 / 26e3;
  const steps = 60_000;
  const run = (middle: number) => {
    let [tau, force] = [0, middle];
    for (let i = 0; i < steps; i++) {
      tau += ((G * (STRAIN - force * c)) / t) * (L / steps);
      force -= tau * (L / steps);
    }
    return { tau, force };
  };
  // Linear in the force in the middle: two runs tell where it vanishes at the end.
  const [zero, one] = [run(0), run(1)];
  const middle = -zero.force / (one.force - zero.force);
  return run(middle).tau;
}
