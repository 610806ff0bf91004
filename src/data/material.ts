import type { Spread, Way } from '../quantity/index.ts';

/** One value of a material with where it comes from. */
export interface MaterialValue {
  /** SI. */
  readonly x: number;
  readonly spread: Spread;
  readonly how: Way;
  /** Author or body, title, edition, place; the spread is common practice unless it says more. */
  readonly source: string;
  /** Whether the place was read when the row was written, or the value comes from memory. */
  readonly status: 'seen' | 'from memory' | 'common practice, no source';
}

/** An isotropic material, or one used as if it were, by the words a part's material is called. */
export interface Material {
  readonly id: string;
  readonly words: string;
  /** Words found in a part's material, in lower case; the longest match of all rows counts. */
  readonly match: readonly string[];
  /** Fibre or filler in a resin: its own name may hold a slash, as in "SMC glass 30 / UP". */
  readonly composite?: true;
  /** Young's modulus, Pa. */
  readonly modulus: MaterialValue;
  readonly poisson: MaterialValue;
  /** kg/m³. */
  readonly density: MaterialValue;
  /** Yield or 0.2 % proof strength, Pa. */
  readonly yield?: MaterialValue;
  /** Tensile strength, Pa. */
  readonly strength?: MaterialValue;
  /** Linear thermal expansion, 1/K. */
  readonly expansion?: MaterialValue;
  /** Thermal conductivity, W/(m·K). */
  readonly conductivity?: MaterialValue;
}

/** Numeric properties of a material. */
export type MaterialProperty = Exclude<keyof Material, 'id' | 'words' | 'match' | 'composite'>;
