import { cellText, readTable, type TextRow } from '../../demo/csv.ts';

/** A part as it truly is. kg and m. */
export interface TruePart {
  readonly number: string;
  readonly name: string;
  readonly assembly: string;
  readonly instrument: string;
  readonly massU: number;
  readonly positionU: number;
  readonly pieces: number;
  readonly mass: number;
  readonly at: readonly [number, number, number];
}

/** A made-up vehicle of which records are drawn. */
export interface TrueVehicle {
  readonly parts: readonly TruePart[];
  readonly modules: readonly { readonly label: string; readonly holds: readonly string[] }[];
  readonly joints: readonly {
    readonly number: string;
    readonly spec: string;
    readonly count: number;
    readonly ends: readonly string[];
  }[];
  readonly tares: readonly { readonly label: string; readonly mass: number }[];
}

const CLEAN = new URL('../../demo/tables/van-27-clean/', import.meta.url).pathname;
const table = (file: string): TextRow[] => readTable(`${CLEAN}${file}`);

/** The clean record of VAN-27 (invented), taken as the truth. */
export function trueVehicle(): TrueVehicle {
  const parts = table('parts.csv').map(partOf);
  return {
    parts,
    modules: table('modules.csv').map((row) => ({
      label: cellText(row, 'module'),
      holds: held(listOf(row, 'holds'), listOf(row, 'without'), parts),
    })),
    joints: table('joints.csv').map((row) => ({
      number: cellText(row, 'number'),
      spec: cellText(row, 'spec'),
      count: Number(cellText(row, 'count_holes')),
      ends: [...listOf(row, 'from'), ...listOf(row, 'to')],
    })),
    tares: table('vehicle.csv')
      .filter((row) => row.property === 'tareMass')
      .map((row) => ({ label: cellText(row, 'subject'), mass: Number(cellText(row, 'value')) })),
  };
}

const listOf = (row: TextRow, column: string): string[] =>
  cellText(row, column)
    .split(';')
    .map((t) => t.trim())
    .filter((t) => t !== '');

/** Numbers of the parts named, by themselves or by their assembly. */
const held = (
  names: readonly string[],
  without: readonly string[],
  parts: readonly TruePart[],
): string[] =>
  parts
    .filter((p) => names.includes(p.number) || names.includes(p.assembly))
    .map((p) => p.number)
    .filter((n) => !without.includes(n));

function partOf(row: TextRow): TruePart {
  const metres = (column: string) => Number(cellText(row, column)) / 1000;
  return {
    number: cellText(row, 'number'),
    name: cellText(row, 'name'),
    assembly: cellText(row, 'assembly'),
    instrument: cellText(row, 'instrument'),
    massU: Number(cellText(row, 'mass_u_kg')),
    positionU: metres('position_u_mm'),
    pieces: Number(cellText(row, 'pieces')),
    mass: Number(cellText(row, 'mass_kg')),
    at: [metres('x_mm'), metres('y_mm'), metres('z_mm')],
  };
}
