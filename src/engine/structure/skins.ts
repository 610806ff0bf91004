/** Two skins of one isotropic material apart from one another; lengths in m, moduli in Pa. */
export interface Skins {
  readonly top: number;
  readonly bottom: number;
  /** Height of the core between them; 0 for a solid plate. */
  readonly core: number;
  readonly modulus: number;
  readonly poisson: number;
}

/** Distance of the middles of the skins, and what they weigh against one another. */
const armOf = ({ top, bottom, core }: Skins) => ({
  arm: core + (top + bottom) / 2,
  pair: (top * bottom) / (top + bottom),
});

/** Second moment of the skins for a width, m³: own and by parallel axes. */
function skinsMoment(s: Skins): number {
  const { arm, pair } = armOf(s);
  return (s.top ** 3 + s.bottom ** 3) / 12 + pair * arm * arm;
}

/** Bending stiffness for a width, N·m: D = E I / (1 − ν²). */
export const bendingStiffness = (s: Skins): number =>
  (s.modulus * skinsMoment(s)) / (1 - s.poisson ** 2);

/** A solid plate as two skins that touch. */
export const solidPlate = (thickness: number, modulus: number, poisson: number): Skins => ({
  top: thickness / 2,
  bottom: thickness / 2,
  core: 0,
  modulus,
  poisson,
});

/** Exponent with which D depends on both skins together, the core held: d ln D / d ln t. */
export function skinExponent(s: Skins): number {
  const { arm, pair } = armOf(s);
  const slope = (s.top ** 3 + s.bottom ** 3) / 4 + pair * arm * (arm + s.top + s.bottom);
  return slope / skinsMoment(s);
}

/** Exponent with which D depends on the height of the core, the skins held. */
export function coreExponent(s: Skins): number {
  const { arm, pair } = armOf(s);
  return (2 * pair * arm * s.core) / skinsMoment(s);
}

/** Bending stiffness of ribs along themselves, by their mass for an area, N·m. */
export function ribStiffness(s: Skins, coreMass: number, density: number): number {
  if (s.core === 0) return 0;
  const solid = coreMass / (density * s.core);
  return (s.modulus * solid * s.core ** 3) / 12;
}
