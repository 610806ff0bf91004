/** Strength of fasteners of one property class, Pa. */
export interface PropertyClass {
  readonly id: string;
  /** Stress under proof load. */
  readonly proof: number;
  /** Yield stress or 0.2 % proof stress. */
  readonly yield: number;
  readonly tensile: number;
  /** Diameter from which on it holds, m; of 8.8 there are two rows. */
  readonly above: number;
}

const MPa = 1e6;
const row = (
  id: string,
  proof: number,
  yieldStress: number,
  tensile: number,
  aboveMm = 0,
): PropertyClass => ({
  id,
  proof: proof * MPa,
  yield: yieldStress * MPa,
  tensile: tensile * MPa,
  above: aboveMm / 1000,
});

/**
 * Least strengths after ISO 898-1. Of 8.8 and 10.9 the proof and tensile loads of M6 to M16 were
 * seen; the other classes are from memory.
 */
export const PROPERTY_CLASSES: readonly PropertyClass[] = [
  row('4.6', 225, 240, 400),
  row('4.8', 310, 340, 420),
  row('5.6', 280, 300, 500),
  row('5.8', 380, 420, 520),
  row('6.8', 440, 480, 600),
  row('8.8', 580, 640, 800),
  row('8.8', 600, 660, 830, 16),
  row('9.8', 650, 720, 900),
  row('10.9', 830, 940, 1040),
  row('12.9', 970, 1100, 1220),
];

export const CLASS_IDS: readonly string[] = [...new Set(PROPERTY_CLASSES.map((c) => c.id))];

/** The row of a class for a nominal diameter, m. */
export const propertyClass = (id: string, diameter: number): PropertyClass | undefined =>
  PROPERTY_CLASSES.filter((c) => c.id === id && !(diameter <= c.above)).at(-1);

/**
 * Bearing face of hexagon heads, outer diameter, and clearance hole, m, by nominal diameter, mm
 * (VDI 2230 tables after ISO 4014 and ISO 273 medium).
 */
export const HEAD_FACES: ReadonlyMap<number, { readonly outer: number; readonly hole: number }> =
  new Map(
    (
      [
        [6, 8.9, 6.6],
        [8, 11.6, 9],
        [10, 14.6, 11],
        [12, 16.6, 13.5],
        [14, 19.6, 15.5],
        [16, 22.5, 17.5],
      ] as const
    ).map(([d, outer, hole]) => [d, { outer: outer / 1000, hole: hole / 1000 }]),
  );
