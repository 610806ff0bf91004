/** A row of a made-up parts list as somebody would have written it down. kg and m. */
export interface MadeRow {
  readonly number: string;
  readonly name: string;
  readonly assembly: string;
  readonly instrument: string;
  readonly massU: number;
  readonly positionU: number;
  pieces: number;
  /** As written; empty when there is no reading. */
  mass: string;
  at: [x: number, y: number, z: number];
}

/** What a record says of a whole vehicle, its modules and its joints. kg, m, rad. */
export interface MadeRecord {
  readonly rows: MadeRow[];
  readonly corners: { fl: number; fr: number; rl: number; rr: number };
  readonly wheelbase: number;
  readonly track: { front: number; rear: number };
  readonly radius: number;
  readonly lifts: readonly { readonly angle: number; readonly gain: number }[];
  readonly modules: readonly {
    readonly label: string;
    readonly mass: number;
    readonly holds: string[];
  }[];
  readonly joints: readonly {
    readonly number: string;
    readonly spec: string;
    readonly count: number;
    readonly ends: readonly string[];
  }[];
  readonly tares: readonly { readonly label: string; readonly mass: number }[];
}

/** Standard uncertainties of what is not a part. */
export const SPREADS = {
  cornerKg: 0.5,
  wheelbaseM: 0.002,
  trackM: 0.003,
  radiusM: 0.002,
  angleRad: (0.1 * Math.PI) / 180,
  gainKg: 0.7,
  moduleKg: 0.3,
} as const;

/** Mass of a row as written, kg; NaN when it has no reading. */
export const written = (row: MadeRow): number => (row.mass === '' ? Number.NaN : Number(row.mass));
