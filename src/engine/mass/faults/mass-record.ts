import type { LinearForm } from '../../../quantity/index.ts';

/** A row of the parts list as the fault search sees it. SI. */
export interface MassRow {
  /** Number people call it by; unique among the rows. */
  readonly number: string;
  /** As shown. */
  readonly label: string;
  readonly name: string;
  /** What it belongs to: an assembly's number. */
  readonly group: string;
  /** Of all its pieces; undefined without a reading. */
  readonly mass: LinearForm | undefined;
  /** X, Y, Z of its centre of gravity; undefined when not all are there. */
  readonly at: readonly [x: LinearForm, y: LinearForm, z: LinearForm] | undefined;
  /** NaN when not counted. */
  readonly pieces: number;
  /** Empty when not named. */
  readonly instrument: string;
  /** The mass as it was written, empty when that is not known. */
  readonly written: string;
  /** Mass to be expected by other means than a scale, with its relative spread. */
  readonly expected?: { readonly kg: number; readonly relative: number };
}

/** A set of parts weighed in one piece. */
export interface MassModule {
  readonly label: string;
  readonly mass: LinearForm;
  /** Indices of the rows that were in it. */
  readonly holds: ReadonlySet<number>;
}

/** What the whole vehicle is by its scales: mass and moments about the axes of its frame. */
export interface WholeVehicle {
  readonly mass?: LinearForm | undefined;
  readonly x?: LinearForm | undefined;
  readonly y?: LinearForm | undefined;
  readonly z?: LinearForm | undefined;
  /** Where its wheels stand, m. */
  readonly wheels?: readonly { readonly x: number; readonly y: number }[];
}

/** A tote or tray in which parts are weighed. */
export interface Tare {
  readonly label: string;
  readonly kg: number;
}

/** A group of joints: what it holds, by number of part or assembly. */
export interface JointEnds {
  readonly label: string;
  readonly spec: string;
  readonly count: number;
  readonly ends: readonly string[];
}

/** Everything the search looks at. */
export interface MassRecord {
  readonly rows: readonly MassRow[];
  readonly modules: readonly MassModule[];
  readonly whole: WholeVehicle;
  readonly tares: readonly Tare[];
  readonly joints: readonly JointEnds[];
}

/** Mass of a row, kg; NaN without a reading. */
export const massOf = (row: MassRow | undefined): number => row?.mass?.x ?? Number.NaN;

/** Centre of gravity of a row, m; undefined without one. */
export const pointOf = (row: MassRow | undefined): readonly [number, number, number] | undefined =>
  row?.at && [row.at[0].x, row.at[1].x, row.at[2].x];

/** Distance of two rows' centres of gravity, m; undefined when one has none. */
export function distanceOf(a: MassRow | undefined, b: MassRow | undefined): number | undefined {
  const [p, q] = [pointOf(a), pointOf(b)];
  return p && q && Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}
