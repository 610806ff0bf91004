import type { PlainInputs, ScalarColumn, Solved, TableInput } from '../method.ts';
import { refused } from './outputs.ts';
import { meet } from './ring-faults.ts';
import { connections, placedWalls, type ThinWalls } from './thin-walls.ts';
import { coordinate, pointOf, scaleOf, word } from './traced.ts';

/** Points of the middle lines, by name, in units of the drawing. */
export const POINTS: TableInput = {
  in: 'table',
  name: 'points',
  meaning: 'one point on the middle line of the walls',
  where: 'not in the record: traced on a photograph with a scale bar, or off a drawing',
  rows: () => [],
  columns: [
    word('point', 'name of the point'),
    coordinate('x', 'to the right'),
    coordinate('y', 'upwards'),
  ],
};

const thickness: ScalarColumn = {
  in: 'scalar',
  name: 'thickness',
  symbol: 't',
  kind: 'length',
  unit: 'mm',
  meaning: 'thickness of the wall',
  range: [0.2, 60],
  bounds: { above: 0 },
  where: 'not in the record: measure it at the cut edge',
  find: (at) => at.missing('thickness of the wall', 'no tracing is in the record'),
};

/** Straight walls between named points. */
export const wallTable = (...more: TableInput['columns']): TableInput => ({
  in: 'table',
  name: 'walls',
  meaning: 'one straight wall between two points',
  where: 'not in the record: traced on a photograph with a scale bar, or off a drawing',
  rows: () => [],
  columns: [
    word('from', 'point where the wall begins'),
    word('to', 'point where it ends'),
    thickness,
    ...more,
  ],
});

/** The walls of plain inputs, m, or why they are none. */
export function wallsOf(x: PlainInputs): { section: ThinWalls } | { refusal: Solved } {
  const points = x.tables.points ?? [];
  const scale = scaleOf(x);
  const at = new Map(points.map((p, i) => [String(p.point), i]));
  if (at.size < points.length)
    return no('points', 'two points have the same name', 'Name every point once.');
  const rows = x.tables.walls ?? [];
  const lost = rows.flatMap((w) => [String(w.from), String(w.to)]).find((name) => !at.has(name));
  if (lost !== undefined)
    return no('walls', 'a wall ends at a point that is not listed', 'List the point.', lost);
  const section: ThinWalls = {
    nodes: points.map((p) => pointOf(p, scale)),
    walls: rows.map((w) => ({
      from: at.get(String(w.from)) ?? 0,
      to: at.get(String(w.to)) ?? 0,
      thickness: Number(w.thickness),
    })),
  };
  return faultOf(section) ?? { section };
}

const no = (column: string, what: string, next: string, value?: string) => ({
  refusal: refused('no-such-section', column, what, next, value),
});

function faultOf(section: ThinWalls) {
  if (section.walls.length === 0) return no('walls', 'there are no walls', 'Trace the walls.');
  const walls = placedWalls(section);
  if (walls.some((w) => w.length === 0))
    return no('walls', 'a wall has no length', 'Leave it out.');
  if (connections(section).pieces > 1)
    return no('walls', 'the walls do not hang together', 'Join them at common points.');
  for (const [i, a] of walls.entries())
    for (const [j, b] of walls.slice(0, i).entries())
      if (![a.from, a.to].some((n) => n === b.from || n === b.to) && meet(a.a, a.b, b.a, b.b))
        return no(
          'walls',
          `the section crosses itself: wall ${j + 1} meets wall ${i + 1} away from a common point`,
          'Put a point where walls meet, and name it in both.',
        );
  return undefined;
}
