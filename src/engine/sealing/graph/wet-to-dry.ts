import { SEALED } from '../../../data/index.ts';
import type { SealingGraph, Way } from './sealing-graph.ts';

/** One way of water or another fluid into a dry zone, from zone to zone. */
export interface WetPath {
  readonly zones: readonly string[];
  readonly ways: readonly Way[];
  /** Seals in series: barriers on it of which even the weakest crossing has a seal. */
  readonly seals: number;
  /** The barrier with the weakest seal, the first of several alike. */
  readonly weakest: Way;
  /** The one with the tightest seal: as tight as the path can be. */
  readonly tightest: Way;
}

export interface WetPaths {
  readonly paths: readonly WetPath[];
  /** There are more than were looked for. */
  readonly cut: boolean;
}

/** More paths than these tell nobody anything. */
const MOST_PATHS = 200;
const MOST_LOOKED_AT = 20_000;

interface Part {
  readonly zones: readonly string[];
  readonly ways: readonly Way[];
  readonly seals: number;
}

/**
 * Every way from a wet zone or a fluid into a dry one that enters no zone twice, those with the
 * fewest seals first: shortest paths in the graph of zones, a way weighing one where even its
 * weakest crossing is sealed, and nothing where one is not. Crossings side by side make one way
 * that is as weak as the weakest of them.
 */
export function wetPaths(graph: SealingGraph): WetPaths {
  const media = new Map(graph.input.zones.map((z) => [z.name, z.medium]));
  const waiting = new Waiting();
  for (const [name, medium] of media)
    if (medium === 'wet' || medium === 'fluid') waiting.add({ zones: [name], ways: [], seals: 0 });
  const paths: WetPath[] = [];
  let looked = 0;
  for (let part = waiting.take(); part; part = waiting.take()) {
    if (paths.length >= MOST_PATHS || ++looked > MOST_LOOKED_AT) return { paths, cut: true };
    const at = part.zones.at(-1) ?? '';
    if (media.get(at) === 'dry') {
      const path = pathOf(part);
      if (path) paths.push(path);
      continue;
    }
    for (const way of graph.from(at)) {
      const next = way.zones[0] === at ? way.zones[1] : way.zones[0];
      // Another wet zone is a start of its own.
      if (part.zones.includes(next) || media.get(next) === 'wet') continue;
      waiting.add({
        zones: [...part.zones, next],
        ways: [...part.ways, way],
        seals: part.seals + (way.rank >= SEALED ? 1 : 0),
      });
    }
  }
  return { paths, cut: false };
}

/** Ways that are not at their end yet, by seals and then by the number of zones. */
class Waiting {
  readonly #parts: Part[][][] = [];

  add(part: Part): void {
    const row = this.#parts[part.seals] ?? [];
    this.#parts[part.seals] = row;
    const list = row[part.zones.length] ?? [];
    row[part.zones.length] = list;
    list.push(part);
  }

  take(): Part | undefined {
    for (const row of this.#parts)
      for (const list of row ?? []) {
        const part = list?.shift();
        if (part) return part;
      }
    return undefined;
  }
}

function pathOf({ zones, ways, seals }: Part): WetPath | undefined {
  const [first, ...rest] = ways;
  if (!first) return undefined;
  const weakest = rest.reduce((a, b) => (b.rank < a.rank ? b : a), first);
  const tightest = rest.reduce((a, b) => (b.rank > a.rank ? b : a), first);
  return { zones, ways, seals, weakest, tightest };
}
