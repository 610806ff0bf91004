import { linearSolve } from './linear-solve.ts';

/** A wall of closed cells: what it resists with, and the cells at its two sides. */
export interface CellWall {
  /** ∫ ds / (t G) along the wall, 1/Pa. */
  readonly flexibility: number;
  /** Cells on its two sides, by their place in the list; −1 for outside. */
  readonly sides: readonly [number, number];
}

/** Torsion of closed cells by Bredt and Batho, for a twist of 1 rad/m. */
export interface CellTorsion {
  /** Torque for a twist of 1 rad/m, N·m². */
  readonly rigidity: number;
  /** Shear flow around each cell for a twist of 1 rad/m, N/m per rad/m. */
  readonly flows: readonly number[];
}

/**
 * Bredt–Batho torsion of cells that share walls: the flows q for which every cell twists alike,
 * Σ (qᵢ − qⱼ) ∫ ds/(t G) = 2 Aᵢ θ′, and T = 2 Σ Aᵢ qᵢ. `areas` in m².
 * Undefined when the cells do not determine the flows.
 */
export function cellTorsion(
  areas: readonly number[],
  walls: readonly CellWall[],
): CellTorsion | undefined {
  const matrix = areas.map(() => areas.map(() => 0));
  for (const { flexibility, sides } of walls)
    for (const [i, j] of [sides, [sides[1], sides[0]] as const]) {
      const row = matrix[i];
      if (!row || i === j) continue;
      row[i] = (row[i] ?? 0) + flexibility;
      if (j >= 0) row[j] = (row[j] ?? 0) - flexibility;
    }
  const flows = linearSolve(
    matrix,
    areas.map((a) => 2 * a),
  );
  if (!flows) return undefined;
  return { rigidity: areas.reduce((sum, a, i) => sum + 2 * a * (flows[i] ?? 0), 0), flows };
}
