import type { PlainRow } from '../method.ts';
import type { CellWall } from './cells.ts';

/** Word for the side of a wall where there is no cell. */
export const OUTSIDE = 'outside';

/** A wall of closed cells by its name and sizes; lengths in m. */
export interface NamedWall extends CellWall {
  readonly name: string;
  readonly length: number;
  readonly thickness: number;
}

/** True where a wall names no cell. */
export const isOutside = (cell: number | string | undefined): boolean =>
  cell === undefined || cell === '' || cell === OUTSIDE;

/** A row of the table of walls, its cells by their place among `names`. */
export function wallOf(row: PlainRow, names: readonly string[]): NamedWall {
  const [length, thickness] = [Number(row.length), Number(row.thickness)];
  const side = (cell: number | string | undefined) =>
    isOutside(cell) ? -1 : names.indexOf(String(cell));
  return {
    name: String(row.wall),
    length,
    thickness,
    flexibility: length / (thickness * Number(row.shear)),
    sides: [side(row.cell), side(row.other)],
  };
}

/** A cell whose walls can not close around its area: a circle needs the least length, √(4 π A). */
export function openCell(areas: readonly number[], walls: readonly NamedWall[]) {
  for (const [cell, area] of areas.entries()) {
    const around = walls.filter((w) => w.sides[0] !== w.sides[1] && w.sides.includes(cell));
    const length = around.reduce((sum, w) => sum + w.length, 0);
    const least = Math.sqrt(4 * Math.PI * area);
    if (length < least * (1 - 1e-3))
      return {
        cell,
        what: (names: readonly string[]) =>
          `the walls of cell ${names[cell]} are ${mm(length)} mm long together; to close around its area they need ${mm(least)} mm or more`,
      };
  }
  return undefined;
}

const mm = (metres: number): string => String(Number((1000 * metres).toPrecision(4)));
