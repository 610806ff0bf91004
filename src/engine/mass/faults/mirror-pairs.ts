import type { MassRow } from './mass-record.ts';
import { pointOf } from './mass-record.ts';

/** Words and letters by which names tell the sides apart. */
const SIDES = [
  [/\bLH\b|\bleft\b|\bL\/H\b/i, /\bRH\b|\bright\b|\bR\/H\b/i],
  [/[\s(]L\)?$/, /[\s(]R\)?$/],
] as const;

/** How far from mirrored two positions may be, m, beside 5 % of the distance from the middle. */
const OFF_M = 0.05;
const OFF_SHARE = 0.05;

type Side = 'left' | 'right';
export interface Sided {
  readonly side: Side;
  /** The name without its side. */
  readonly stem: string;
}

/** The side a name tells, if it tells one. */
export function sideOf(name: string): Sided | undefined {
  for (const [left, right] of SIDES) {
    const [isLeft, isRight] = [left.test(name), right.test(name)];
    if (isLeft !== isRight)
      return { side: isLeft ? 'left' : 'right', stem: stemOf(name, isLeft ? left : right) };
  }
  return undefined;
}

const stemOf = (name: string, side: RegExp): string =>
  name
    .replace(side, ' ')
    .replace(/[\s()]+/g, ' ')
    .trim()
    .toLowerCase();

/**
 * For each row the index of its mirror image: the row of the same group and name but for the
 * side, across the centre plane where both have positions; undefined without one.
 */
export function mirrorsOf(rows: readonly MassRow[]): readonly (number | undefined)[] {
  const bySide = new Map<string, number>();
  const sides = rows.map((row) => sideOf(row.name));
  const key = (row: MassRow, side: Side, stem: string) => `${row.group}\n${stem}\n${side}`;
  for (const [i, row] of rows.entries()) {
    const s = sides[i];
    if (s) bySide.set(key(row, s.side, s.stem), i);
  }
  return rows.map((row, i) => {
    const s = sides[i];
    const other = s && bySide.get(key(row, s.side === 'left' ? 'right' : 'left', s.stem));
    return other !== undefined && acrossFrom(row, rows[other]) ? other : undefined;
  });
}

function acrossFrom(a: MassRow, b: MassRow | undefined): boolean {
  const [p, q] = [pointOf(a), pointOf(b)];
  if (!p || !q) return true;
  const off = OFF_M + OFF_SHARE * Math.abs(p[1]);
  return (
    Math.abs(p[1] + q[1]) <= off && Math.abs(p[0] - q[0]) <= off && Math.abs(p[2] - q[2]) <= off
  );
}
