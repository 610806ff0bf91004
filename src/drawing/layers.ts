/** An arrow between two nodes, by their places in a list. */
export interface Arc {
  readonly from: number;
  readonly to: number;
}

/** Nodes of a layer in order; an arc that passes through has a bend there, by its place among the arcs. */
export type LayerItem = { readonly node: number } | { readonly bend: number };

/** Nodes in layers, with every arc that goes on downwards from layer to layer. */
export interface Layered {
  readonly layers: readonly (readonly LayerItem[])[];
  /** Arcs that close a circle: they were left out of account. */
  readonly circular: readonly number[];
}

/** Sweeps over the layers, down and up in turn. */
const SWEEPS = 8;

/**
 * Puts the nodes of a graph in layers of at most `widest` nodes, each below all that come before
 * it, those with the longest way to go first (list scheduling), and orders each layer by the mean
 * place of its neighbours so that few arcs cross. Common practice, no source.
 */
export function layered(count: number, arcs: readonly Arc[], widest: number): Layered {
  const circular = circularArcs(count, arcs);
  const kept = arcs.filter((_, i) => !circular.has(i));
  const layerOf = layersOf(count, kept, Math.max(widest, 1));
  const layers = withBends(count, arcs, circular, layerOf);
  return { layers: uncrossed(layers, arcs), circular: [...circular] };
}

/** Arcs back to where a walk along the arcs came from. */
function circularArcs(count: number, arcs: readonly Arc[]): Set<number> {
  const out = Array.from({ length: count }, (): number[] => []);
  arcs.forEach(({ from }, i) => {
    out[from]?.push(i);
  });
  const state = new Uint8Array(count);
  const circular = new Set<number>();
  for (let start = 0; start < count; start++) {
    const way = state[start] === 0 ? [{ node: start, next: 0 }] : [];
    state[start] = Math.max(state[start] ?? 0, 1);
    for (let here = way.at(-1); here; here = way.at(-1)) {
      const arc = out[here.node]?.[here.next++];
      const to = arc === undefined ? -1 : (arcs[arc]?.to ?? -1);
      if (arc === undefined) {
        state[here.node] = 2;
        way.pop();
      } else if (state[to] === 1) circular.add(arc);
      else if (state[to] === 0) {
        state[to] = 1;
        way.push({ node: to, next: 0 });
      }
    }
  }
  return circular;
}

function layersOf(count: number, arcs: readonly Arc[], widest: number): Int32Array {
  const wayToGo = longestWays(count, arcs);
  const layerOf = new Int32Array(count).fill(-1);
  const waiting = new Set(Array.from({ length: count }, (_, i) => i));
  for (let layer = 0; waiting.size > 0; layer++) {
    const blocked = new Set(arcs.filter((a) => waiting.has(a.from)).map((a) => a.to));
    const free = [...waiting].filter((n) => !blocked.has(n));
    free.sort((a, b) => (wayToGo[b] ?? 0) - (wayToGo[a] ?? 0) || a - b);
    for (const node of free.slice(0, widest)) {
      layerOf[node] = layer;
      waiting.delete(node);
    }
  }
  return layerOf;
}

/** Arcs on the longest way from each node to an end. */
function longestWays(count: number, arcs: readonly Arc[]): Int32Array {
  const ways = new Int32Array(count);
  for (let isNew = true; isNew; ) {
    isNew = false;
    for (const { from, to } of arcs)
      if ((ways[from] ?? 0) < (ways[to] ?? 0) + 1) {
        ways[from] = (ways[to] ?? 0) + 1;
        isNew = true;
      }
  }
  return ways;
}

function withBends(
  count: number,
  arcs: readonly Arc[],
  circular: ReadonlySet<number>,
  layerOf: Int32Array,
): LayerItem[][] {
  const layers = Array.from({ length: Math.max(-1, ...layerOf) + 1 }, (): LayerItem[] => []);
  for (let node = 0; node < count; node++) layers[layerOf[node] ?? 0]?.push({ node });
  arcs.forEach(({ from, to }, bend) => {
    if (circular.has(bend)) return;
    for (let l = (layerOf[from] ?? 0) + 1; l < (layerOf[to] ?? 0); l++) layers[l]?.push({ bend });
  });
  return layers;
}

/** The order of the layers with the fewest crossings that the sweeps came by. */
function uncrossed(start: LayerItem[][], arcs: readonly Arc[]): LayerItem[][] {
  let best = start;
  let least = crossings(start, arcs);
  let now = start;
  for (let sweep = 0; sweep < SWEEPS && least > 0; sweep++) {
    now = swept(now, arcs, sweep % 2 === 0);
    const crossed = crossings(now, arcs);
    if (crossed < least) [best, least] = [now, crossed];
  }
  return best;
}

const nameOf = (item: LayerItem): string => ('node' in item ? `n${item.node}` : `b${item.bend}`);

/** Names of what an item hangs on in the layer before or after. */
function endsOf(item: LayerItem, arcs: readonly Arc[], upwards: boolean): string[] {
  const other = (arc: Arc): string => `n${upwards ? arc.from : arc.to}`;
  if ('bend' in item) {
    const arc = arcs[item.bend];
    return arc ? [`b${item.bend}`, other(arc)] : [];
  }
  return arcs.flatMap((arc, i) =>
    (upwards ? arc.to : arc.from) === item.node ? [`b${i}`, other(arc)] : [],
  );
}

/** One pass down (or up): each layer sorted by the mean place of what it hangs on in the last. */
function swept(layers: LayerItem[][], arcs: readonly Arc[], down: boolean): LayerItem[][] {
  const next = layers.map((layer) => [...layer]);
  const order = next.map((_, i) => (down ? i : next.length - 1 - i)).slice(1);
  for (const l of order) {
    const before = next[down ? l - 1 : l + 1] ?? [];
    const places = new Map(before.map((item, i) => [nameOf(item), (i + 0.5) / before.length]));
    const layer = next[l] ?? [];
    const keys = new Map(
      layer.map((item, i) => {
        const ends = endsOf(item, arcs, down).flatMap((name) => places.get(name) ?? []);
        const own = (i + 0.5) / layer.length;
        return [item, ends.length === 0 ? own : ends.reduce((a, b) => a + b, 0) / ends.length];
      }),
    );
    layer.sort((a, b) => (keys.get(a) ?? 0) - (keys.get(b) ?? 0));
  }
  return next;
}

/** Pairs of arcs that cross between neighbouring layers. */
export function crossings(layers: readonly (readonly LayerItem[])[], arcs: readonly Arc[]): number {
  return layers.reduce((sum, layer, l) => {
    const below = new Map((layers[l + 1] ?? []).map((item, i) => [nameOf(item), i]));
    const pairs = layer.flatMap((item, i) =>
      downwards(item, arcs, below).map((to) => [i, to] as const),
    );
    return sum + crossedPairs(pairs);
  }, 0);
}

function downwards(
  item: LayerItem,
  arcs: readonly Arc[],
  below: ReadonlyMap<string, number>,
): number[] {
  const own =
    'bend' in item ? [item.bend] : arcs.flatMap((arc, i) => (arc.from === item.node ? [i] : []));
  return own.flatMap((i) => below.get(`b${i}`) ?? below.get(`n${arcs[i]?.to ?? -1}`) ?? []);
}

function crossedPairs(pairs: readonly (readonly [number, number])[]): number {
  let count = 0;
  for (const [a, b] of pairs) for (const [c, d] of pairs) if (a < c && b > d) count++;
  return count;
}
