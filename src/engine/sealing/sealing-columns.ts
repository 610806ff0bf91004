import { type Id, propertyWords } from '../../study/index.ts';
import type { Finder, Found, ScalarColumn, TermColumn } from '../method.ts';
import { sealingOf } from './graph/from-study.ts';
import {
  type Crossing,
  type PlacedWall,
  placedWalls,
  type SealingGraph,
} from './graph/sealing-graph.ts';

/** The graph, its crossings by name, walls, and zones that must stay dry; worked out once for each time inputs are found. */
interface Sealing {
  readonly graph: SealingGraph;
  readonly crossings: ReadonlyMap<string, Crossing>;
  readonly walls: readonly PlacedWall[];
  readonly dry: ReadonlySet<string>;
}
const KEPT = new WeakMap<Finder, Sealing>();

export function sealing(at: Finder): Sealing {
  const held = KEPT.get(at);
  if (held) return held;
  const graph = sealingOf(at.view);
  const { zones, barriers } = graph.input;
  const made: Sealing = {
    graph,
    crossings: new Map(graph.crossings.map((c) => [c.in.name, c])),
    walls: placedWalls(barriers),
    dry: new Set(zones.flatMap((z) => (z.medium === 'dry' ? [z.name] : []))),
  };
  KEPT.set(at, made);
  return made;
}

export const labelOf = (at: Finder, id: Id): string => at.view.node(id)?.label ?? id;
export const crossingOf = (at: Finder, id: Id): Crossing | undefined =>
  sealing(at).crossings.get(labelOf(at, id));

/** Whether a crossing leads into one of these zones from outside it. */
export const leadsInto = (c: Crossing | undefined, zones: ReadonlySet<string>): boolean =>
  c?.zones !== undefined && zones.has(c.zones[0] ?? '') !== zones.has(c.zones.at(-1) ?? '');

export const wordColumn = (
  name: string,
  meaning: string,
  where: string,
  text: (at: Finder, row: Id) => string,
): TermColumn => ({
  in: 'term',
  name,
  meaning,
  where,
  find: (at, row) => at.word(text(at, row)),
});

/** A word recorded of the row itself. */
export const recordedWord = (name: string, property: string): TermColumn => ({
  in: 'term',
  name,
  meaning: propertyWords(property),
  where: `${propertyWords(property)}, as recorded`,
  find: (at, row) => at.text(row, property),
});

export const nameColumn = (what: string): TermColumn =>
  wordColumn('name', `name of the ${what}`, `number of the ${what}`, labelOf);

/** Pieces of a crossing; one where no count is recorded. */
export const crossingCount: ScalarColumn = {
  in: 'scalar',
  name: 'count',
  symbol: 'n',
  kind: 'count',
  unit: '1',
  meaning: 'pieces',
  range: [1, 5000],
  bounds: { atLeast: 0 },
  where: 'pieces that go through; one where no count is recorded',
  find: (at, row) => numberOr(at, row, 'crossing.count', at.exact(1, 'one piece')),
};

/** A property of the row, else what stands for it. */
export const numberOr = (at: Finder, row: Id, property: string, other: Found): Found =>
  at.view.properties(row).includes(property) ? at.number(row, property) : other;
