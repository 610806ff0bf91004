import type { Figure, GraphEdge } from '../figure.ts';
import type { SealingGraph, Way } from './graph/sealing-graph.ts';
import { wetPaths } from './graph/wet-to-dry.ts';

const WORDS = { wet: 'wet', drained: 'drained', dry: 'dry', fluid: 'fluid' } as const;
/** More zones than these are read better in the table beside. */
const MOST = 40;

/** Zones as boxes, what leads from one to another as arrows toward the dry side; the weakest way bold. */
export function zonesFigure(graph: SealingGraph): readonly Figure[] {
  const { zones } = graph.input;
  if (zones.length === 0 || zones.length > MOST || graph.ways.length === 0) return [];
  const depth = depths(graph);
  const [weakest] = wetPaths(graph).paths;
  const strong = new Set(weakest?.zones ?? []);
  return [
    {
      f: 'graph',
      title: 'Zones and what crosses between them',
      alt: 'Zones from wet above to dry below; an arrow for each set of barriers that something goes through, named with the pieces; the way with the fewest seals is drawn bold.',
      nodes: zones.map(({ name, medium }) => ({
        id: name,
        label: `${name} (${medium ? WORDS[medium] : 'medium not known'})`,
        ...(strong.has(name) ? { strong: true } : {}),
      })),
      edges: graph.ways.map((way) => edgeOf(way, depth, weakest?.ways ?? [])),
    },
  ];
}

function edgeOf(way: Way, depth: ReadonlyMap<string, number>, bold: readonly Way[]): GraphEdge {
  const [a, b] = way.zones;
  const turned = (depth.get(a) ?? 0) > (depth.get(b) ?? 0);
  const pieces = way.crossings.reduce((n, c) => n + c.in.count, 0);
  const label = `${way.barriers.map((x) => x.name).join(' + ')}: ${pieces}`;
  return {
    from: turned ? b : a,
    to: turned ? a : b,
    label,
    line: way.rank < 2 ? 'dashed' : 'continuous',
    ...(bold.includes(way) ? { strong: true } : {}),
  };
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
