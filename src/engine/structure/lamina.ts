/** Elastic constants of a ply in its own axes: 1 along the fibre, 2 across; Pa. */
export interface Ply {
  readonly e1: number;
  readonly e2: number;
  readonly g12: number;
  readonly nu12: number;
}

/**
 * A symmetric 3 × 3 matrix in plane stress, in contracted notation: 1 and 2 the two directions
 * (x and y where it is turned), 6 the engineering shear.
 */
export interface Plane3 {
  readonly q11: number;
  readonly q12: number;
  readonly q16: number;
  readonly q22: number;
  readonly q26: number;
  readonly q66: number;
}

/**
 * Reduced stiffness of a ply in its own axes, Pa. The minor Poisson ratio follows from the major
 * one by reciprocity; some reports go on with a rounded one, which can be given.
 */
export function reducedStiffness({ e1, e2, g12, nu12 }: Ply, nu21 = (nu12 * e2) / e1): Plane3 {
  const share = 1 - nu12 * nu21;
  return {
    q11: e1 / share,
    q12: (nu12 * e2) / share,
    q16: 0,
    q22: e2 / share,
    q26: 0,
    q66: g12,
  };
}

/** Stiffness in laminate axes of a ply whose fibre lies at `angle` to x, against the clock. */
export function turnedStiffness(q: Plane3, angle: number): Plane3 {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [c2, s2, cs] = [c * c, s * s, c * s];
  const both = q.q12 + 2 * q.q66;
  return {
    q11: q.q11 * c2 * c2 + 2 * both * c2 * s2 + q.q22 * s2 * s2,
    q22: q.q11 * s2 * s2 + 2 * both * c2 * s2 + q.q22 * c2 * c2,
    q12: (q.q11 + q.q22 - 4 * q.q66) * c2 * s2 + q.q12 * (c2 * c2 + s2 * s2),
    q66: (q.q11 + q.q22 - 2 * q.q12 - 2 * q.q66) * c2 * s2 + q.q66 * (c2 * c2 + s2 * s2),
    q16: ((q.q11 - both) * c2 - (q.q22 - both) * s2) * cs,
    q26: ((q.q11 - both) * s2 - (q.q22 - both) * c2) * cs,
  };
}

/** Strains of a ply in its own axes from those in laminate axes (engineering shear). */
export function plyStrains(
  [x, y, xy]: readonly [number, number, number],
  angle: number,
): readonly [e1: number, e2: number, g12: number] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    x * c * c + y * s * s + xy * c * s,
    x * s * s + y * c * c - xy * c * s,
    2 * (y - x) * c * s + xy * (c * c - s * s),
  ];
}

/** Moduli along x and y of a material or laminate from its stiffness; Pa for a stiffness in Pa. */
export interface EngineeringConstants {
  readonly ex: number;
  readonly ey: number;
  readonly gxy: number;
  readonly nuxy: number;
}

/** Engineering constants of a plane stiffness (its inverse is worked out here). */
export function engineeringConstants(q: Plane3): EngineeringConstants {
  const { q11, q12, q16, q22, q26, q66 } = q;
  const det =
    q11 * (q22 * q66 - q26 * q26) - q12 * (q12 * q66 - q26 * q16) + q16 * (q12 * q26 - q22 * q16);
  const s11 = (q22 * q66 - q26 * q26) / det;
  const s22 = (q11 * q66 - q16 * q16) / det;
  const s66 = (q11 * q22 - q12 * q12) / det;
  const s12 = (q16 * q26 - q12 * q66) / det;
  return { ex: 1 / s11, ey: 1 / s22, gxy: 1 / s66, nuxy: -s12 / s11 };
}

/** How near a ply is to an isotropic one before it is judged as one. */
const ALIKE = { moduli: 0.02, shear: 0.05 };

/**
 * Why these constants can belong to no material, in words; undefined when they can. An
 * orthotropic ply needs ν₁₂² < E₁/E₂, an isotropic one ν below ½.
 */
export function plyFault({ e1, e2, g12, nu12 }: Ply): string | undefined {
  const most = Math.sqrt(e1 / e2);
  if (Math.abs(nu12) >= most)
    return `its Poisson ratio must be below √(E₁/E₂) = ${Number(most.toPrecision(4))}, or straining it would give energy away`;
  const shear = e1 / (2 * (1 + nu12));
  const alike = Math.abs(e1 / e2 - 1) < ALIKE.moduli && Math.abs(g12 / shear - 1) < ALIKE.shear;
  if (alike && nu12 >= 0.5)
    return 'it is isotropic, and the Poisson ratio of such a material is below 0.5';
  return undefined;
}
