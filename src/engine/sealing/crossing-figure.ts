import { SEALED } from '../../data/index.ts';
import type { Figure, GraphEdge, GraphNode } from '../figure.ts';
import { rankOf, type SealingGraph, type Way } from './graph/sealing-graph.ts';
import { wetPaths } from './graph/wet-to-dry.ts';

/** More boxes than these are read better in the table beside. */
const MOST = 48;

/**
 * Zones as boxes, and between them a box for each set of barriers that something goes through;
 * the way with the fewest seals is bold.
 */
export function zonesFigure(graph: SealingGraph): readonly Figure[] {
  const { zones } = graph.input;
  const count = zones.length + graph.ways.length;
  if (graph.ways.length === 0 || count > MOST) return [];
  const depth = depths(graph);
  const [weakest] = wetPaths(graph).paths;
  const bold = (is: boolean | undefined) => (is ? { strong: true as const } : {});
  return [
    {
      f: 'graph',
      title: 'Zones and what crosses between them',
      alt: 'Zones from wet above to dry below, and between them the barriers that something goes through, with the pieces and the weakest seal among them; dashed where that is none, bold on the way with the fewest seals.',
      nodes: [
        ...zones.map(({ name, medium }) => ({
          id: zoneId(name),
          label: `${name}: ${medium ?? 'medium not known'}`,
          ...bold(weakest?.zones.includes(name)),
        })),
        ...graph.ways.map(
          (way, i): GraphNode => ({
            id: wayId(i),
            label: wayWords(way),
            ...bold(weakest?.ways.includes(way)),
          }),
        ),
      ],
      edges: graph.ways.flatMap((way, i) => edgesOf(way, i, depth, weakest?.ways ?? [])),
    },
  ];
}

const zoneId = (name: string): string => `zone ${name}`;
const wayId = (i: number): string => `way ${i}`;

function wayWords(way: Way): string {
  const pieces = way.crossings.reduce((n, c) => n + c.in.count, 0);
  const weak = way.crossings.find((c) => rankOf(c) === way.rank);
  return `${way.barriers.map((b) => b.name).join(' + ')}: ${pieces}, ${weak?.seal?.words ?? 'seal not known'}`;
}

function edgesOf(
  way: Way,
  i: number,
  depth: ReadonlyMap<string, number>,
  bold: readonly Way[],
): GraphEdge[] {
  const [a, b] = way.zones;
  const turned = (depth.get(a) ?? 0) > (depth.get(b) ?? 0);
  const style: Pick<GraphEdge, 'line' | 'strong'> = {
    line: way.rank < SEALED ? 'dashed' : 'continuous',
    ...(bold.includes(way) ? { strong: true } : {}),
  };
  return [
    { from: zoneId(turned ? b : a), to: wayId(i), ...style },
    { from: wayId(i), to: zoneId(turned ? a : b), ...style },
  ];
}

/** Zones by how many ways they lie from the wet ones; dry ones below all others. */
function depths(graph: SealingGraph): ReadonlyMap<string, number> {
  const depth = new Map<string, number>();
  let row = graph.input.zones.flatMap((z) => (z.medium === 'wet' ? [z.name] : []));
  for (let d = 0; row.length > 0; d++) {
    for (const name of row) depth.set(name, d);
    const next = row.flatMap((name) => graph.from(name).flatMap((way) => way.zones));
    row = [...new Set(next)].filter((name) => !depth.has(name));
  }
  for (const { name, medium } of graph.input.zones)
    if (medium === 'dry') depth.set(name, Number.MAX_SAFE_INTEGER);
  return depth;
}
