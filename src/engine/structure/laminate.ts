import { type Plane3, type Ply, reducedStiffness, turnedStiffness } from './lamina.ts';
import { linearSolve } from './linear-solve.ts';

/** A ply of a list: constants and name of its material, fibre to x in radians, thickness in m. */
export interface LaidPly {
  readonly ply: Ply;
  readonly material: string;
  readonly angle: number;
  readonly thickness: number;
}

/** A ply between two heights over the middle plane, m, z upwards. */
export interface PlacedPly extends LaidPly {
  readonly bottom: number;
  readonly top: number;
}

/**
 * Plies from the bottom (−z) to the top, with their heights. `first` says where the first ply of
 * the list lies: the other choice turns the sign of B.
 */
export function placedPlies(plies: readonly LaidPly[], first: 'top' | 'bottom'): PlacedPly[] {
  const upwards = first === 'bottom' ? plies : [...plies].reverse();
  const height = upwards.reduce((sum, p) => sum + p.thickness, 0);
  let z = -height / 2;
  return upwards.map((p) => {
    const bottom = z;
    z += p.thickness;
    return { ...p, bottom, top: z };
  });
}

/** Stiffness of a laminate: A in N/m, B in N, D in N·m; height in m. */
export interface Laminate {
  readonly height: number;
  readonly a: Plane3;
  readonly b: Plane3;
  readonly d: Plane3;
}

const KEYS = ['q11', 'q12', 'q16', 'q22', 'q26', 'q66'] as const;
/** Share of A h below which a term of B is the rounding of a symmetric laminate. */
const NOTHING = 1e-13;

/** Classical lamination theory: A = Σ Q̄ Δz, B = ½ Σ Q̄ Δz², D = ⅓ Σ Q̄ Δz³. */
export function laminateStiffness(plies: readonly PlacedPly[]): Laminate {
  const turned = plies.map((p) => turnedStiffness(reducedStiffness(p.ply), p.angle));
  const sum = (power: 1 | 2 | 3): Plane3 =>
    Object.fromEntries(
      KEYS.map((key) => [
        key,
        plies.reduce(
          (s, p, i) => s + ((turned[i]?.[key] ?? 0) * (p.top ** power - p.bottom ** power)) / power,
          0,
        ),
      ]),
    ) as unknown as Plane3;
  const a = sum(1);
  const height = plies.reduce((h, p) => h + p.thickness, 0);
  const rounding = NOTHING * a.q11 * height;
  const b = Object.fromEntries(
    Object.entries(sum(2)).map(([key, x]) => [key, Math.abs(x) < rounding ? 0 : x]),
  ) as unknown as Plane3;
  return { height, a, b, d: sum(3) };
}

export type Triple = readonly [number, number, number];

/** Strains of the middle plane and curvatures, 1/m. */
export interface PlateStrains {
  readonly strain: Triple;
  readonly curvature: Triple;
}

const rows = (q: Plane3) => [
  [q.q11, q.q12, q.q16],
  [q.q12, q.q22, q.q26],
  [q.q16, q.q26, q.q66],
];

/**
 * Strains and curvatures under forces N, N/m, and moments M, N·m/m: solves [A B; B D].
 * Undefined when the laminate has no stiffness.
 */
export function plateStrains(
  { a, b, d, height }: Laminate,
  force: Triple,
  moment: Triple,
): PlateStrains | undefined {
  const [ra, rb, rd] = [rows(a), rows(b), rows(d)];
  // In lengths of the height, so that all terms are of one size.
  const matrix = [
    ...ra.map((row, i) => [...row, ...(rb[i] ?? []).map((x) => x / height)]),
    ...rb.map((row, i) => [
      ...row.map((x) => x / height),
      ...(rd[i] ?? []).map((x) => x / height ** 2),
    ]),
  ];
  const x = linearSolve(matrix, [...force, ...moment.map((m) => m / height)]);
  if (!x) return undefined;
  const [ex = 0, ey = 0, gxy = 0, kx = 0, ky = 0, kxy = 0] = x;
  return {
    strain: [ex, ey, gxy],
    curvature: [kx / height, ky / height, kxy / height],
  };
}
