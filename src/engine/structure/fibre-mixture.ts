/** Shares of two materials in parallel, by volume of the first (rule of mixtures). */
export const parallel = (first: number, second: number, share: number): number =>
  share * first + (1 - share) * second;

/** Two materials in series (inverse rule of mixtures). */
export const series = (first: number, second: number, share: number): number =>
  1 / (share / first + (1 - share) / second);

/**
 * Halpin and Tsai's interpolation between series (ξ = 0) and parallel (ξ → ∞):
 * P = Pm (1 + ξ η V)/(1 − η V), η = (Pf/Pm − 1)/(Pf/Pm + ξ).
 */
export function halpinTsai(fibre: number, matrix: number, share: number, xi: number): number {
  const ratio = fibre / matrix;
  const eta = (ratio - 1) / (ratio + xi);
  return (matrix * (1 + xi * eta * share)) / (1 - eta * share);
}

/** Shear modulus of an isotropic material. */
export const isotropicShear = (modulus: number, poisson: number): number =>
  modulus / (2 * (1 + poisson));
