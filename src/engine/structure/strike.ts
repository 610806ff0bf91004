import { gaussPoints } from './gauss-points.ts';
import type { Deflected } from './navier-series.ts';
import type { BentPlate } from './plate-bending.ts';
import type { Edges } from './ritz-plate.ts';

/** A rectangle, m, with a patch u × v at its middle. */
export interface Struck {
  readonly a: number;
  readonly b: number;
  readonly u: number;
  readonly v: number;
}

/** What counts as the limit: von Mises stress over E, or the largest strain along x or y. */
export type Limit = 'first yield' | 'largest strain';

/** Under 1 N on the patch with D = 1 N·m: how far it gives way, and how sharply the plate is bent. */
export interface UnitStrike {
  /** Mean deflection under the patch, m. */
  readonly w: number;
  /** Strain that counts, at 1 m from the middle plane, where it is largest. */
  readonly bend: number;
  readonly where: 'under the load' | 'at a clamped edge';
}

/** Work a plate takes until its face reaches a strain: force N, deflection m, work J. */
export interface Strike {
  readonly force: number;
  readonly w: number;
  readonly work: number;
}

/** Three points along each side: the deflection under a patch is smooth. */
const POINTS = gaussPoints(3);

/** Strain that counts at 1 m from the middle plane. */
function bendOf({ wxx, wyy }: Deflected, nu: number, limit: Limit): number {
  if (limit === 'largest strain') return Math.max(Math.abs(wxx), Math.abs(wyy));
  const [x, y] = [wxx + nu * wyy, wyy + nu * wxx];
  return Math.sqrt(x * x - x * y + y * y) / (1 - nu * nu);
}

function meanUnder(bent: BentPlate, { a, b, u, v }: Struck): number {
  let mean = 0;
  for (const p of POINTS)
    for (const q of POINTS)
      mean += (p.weight * q.weight * bent.at((a + p.x * u) / 2, (b + q.x * v) / 2).w) / 4;
  return mean;
}

/** A plate struck at its middle, by a unit force: looked at under the load and at clamped edges. */
export function unitStrike(
  bent: BentPlate,
  at: Struck,
  nu: number,
  edges: Edges,
  limit: Limit,
): UnitStrike {
  const { a, b } = at;
  const middle = bendOf(bent.at(a / 2, b / 2), nu, limit);
  const sides = [
    [edges.x0, 0, b / 2],
    [edges.xa, a, b / 2],
    [edges.y0, a / 2, 0],
    [edges.yb, a / 2, b],
  ] as const;
  const edge = sides.map(([e, x, y]) => (e === 'clamped' ? bendOf(bent.at(x, y), nu, limit) : 0));
  const most = Math.max(...edge);
  return {
    w: meanUnder(bent, at),
    bend: Math.max(middle, most),
    where: most > middle ? 'at a clamped edge' : 'under the load',
  };
}

/** Elastic work until the face, half a depth from the middle plane, reaches a strain. */
export function strikeOf(unit: UnitStrike, d: number, depth: number, strain: number): Strike {
  const force = (2 * strain * d) / (depth * unit.bend);
  const w = (force * unit.w) / d;
  return { force, w, work: (force * w) / 2 };
}
