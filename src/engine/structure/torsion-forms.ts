import type { HollowSizes, ISizes } from './profiles.ts';

/**
 * Torsion constant of a rolled I-section with root fillets, m⁴: flanges and web as strips with
 * their ends and the circles that the junctions hold (after El Darwish and Johnston, 1965; the
 * form used by producers' tables of EN 10365 sections).
 */
export function rolledITorsion({ h, b, tw, tf, r }: ISizes): number {
  const circle = ((r + tw / 2) ** 2 + (r + tf) ** 2 - r * r) / (2 * r + tf);
  const junctions = 2 * (tw / tf) * (0.145 + (0.1 * r) / tf) * circle ** 4;
  return (2 / 3) * (b - 0.63 * tf) * tf ** 3 + ((h - 2 * tf) * tw ** 3) / 3 + junctions;
}

/** A straight strip of an open section, m. */
export interface Strip {
  readonly length: number;
  readonly thickness: number;
}

/** Torsion constant of an open thin section, m⁴: Σ b t³ / 3. */
export const stripTorsion = (strips: readonly Strip[]): number =>
  strips.reduce((sum, { length, thickness }) => sum + (length * thickness ** 3) / 3, 0);

/** Torsion of a rectangular hollow section as in the annexes of EN 10210-2 and EN 10219-2. */
export interface HollowTorsion {
  /** m⁴ */
  readonly constant: number;
  /** m³ */
  readonly modulus: number;
  /** Share of Bredt's formula alone, m⁴. */
  readonly bredt: number;
}

export function hollowTorsion({ h, b, t, outer, inner }: HollowSizes): HollowTorsion {
  const corner = ((outer + inner) / 2) * (4 - Math.PI);
  const line = 2 * (b - t + (h - t)) - 2 * corner;
  const enclosed = (b - t) * (h - t) - (corner * (outer + inner)) / 2;
  const k = (2 * enclosed * t) / line;
  const bredt = 2 * k * enclosed;
  const constant = (t ** 3 * line) / 3 + bredt;
  return { constant, modulus: constant / (t + k / t), bredt };
}

/** Terms of the series below: the next one is under 1e-12 of the first. */
const TERMS = 199;

/** Torsion constant of a solid rectangle, m⁴ (Saint-Venant's series, exact). */
export function rectangleTorsion(width: number, height: number): number {
  const [long, short] = [Math.max(width, height), Math.min(width, height)];
  let sum = 0;
  for (let n = 1; n <= TERMS; n += 2) sum += Math.tanh((n * Math.PI * long) / (2 * short)) / n ** 5;
  return long * short ** 3 * (1 / 3 - (64 / Math.PI ** 5) * (short / long) * sum);
}
