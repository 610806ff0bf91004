import type { Graph, GraphEdge, GraphNode } from '../engine/index.ts';
import { type Arc, type LayerItem, layered } from './layers.ts';
import type { Layout } from './layout.ts';
import { arrowHead, box, type Ink, line, type Picture, type Spot, words } from './picture.ts';
import { penOf } from './shape-inks.ts';
import { brokenText, textWidth } from './text-width.ts';

const WIDTH = 150;
const TEXT = 15;
const PAD = 7;
const ACROSS = 16;
const BEND = 10;
const BETWEEN = 40;
/** Half a pen at the rim of the paper. */
const EDGE = 2;
/** Times that boxes are moved up and down towards what they hang on. */
const PASSES = 4;

/** A node with its words, and how high its box is. */
interface Card {
  readonly node: GraphNode;
  readonly lines: readonly string[];
  readonly number: string;
  readonly open: boolean;
  readonly height: number;
}

/** Boxes in layers from above to below, arrows from what comes before to what comes after. */
export function graphPicture(f: Graph, { width, say }: Layout): Picture {
  const cards = f.nodes.map((node) => cardOf(node, f, say));
  const edges = drawable(f);
  const widest = Math.max(Math.floor((width - 2 * EDGE + ACROSS) / (WIDTH + ACROSS)), 1);
  const { layers, circular } = layered(
    cards.length,
    edges.map((e) => e.arc),
    widest,
  );
  const xs = placesOf(
    layers,
    edges.map((e) => e.arc),
    width,
  );
  const heights = layers.map((layer) =>
    Math.max(0, ...layer.map((item) => ('node' in item ? (cards[item.node]?.height ?? 0) : 0))),
  );
  const tops = heights.map((_, l) => heights.slice(0, l).reduce((sum, h) => sum + h + BETWEEN, 2));
  const at = spotsOf(layers, xs, tops, heights, cards);
  return {
    width,
    height: (tops.at(-1) ?? 0) + (heights.at(-1) ?? 0) + 6,
    inks: [
      ...edges.flatMap(({ edge, arc }, i) => edgeInks(edge, arc, i, at, circular.includes(i))),
      ...edgeWords(edges, at, width),
      ...cards.flatMap((card, n) => cardInks(card, at.top(n))),
    ],
    cuts: tops.slice(1).map((top) => top - BETWEEN / 2),
  };
}

function cardOf(node: GraphNode, { kind, unit }: Graph, say: Layout['say']): Card {
  const lines = brokenText(node.label, WIDTH - 2 * PAD, 2);
  const said =
    node.number && kind && unit ? say({ ...node.number, kind, unit }) : { text: '', lack: '' };
  const number = [said.text, said.lack].filter((t) => t !== '').join(', ');
  const count = lines.length + (number === '' ? 0 : 1);
  return { node, lines, number, open: said.lack !== '', height: count * TEXT + 2 * PAD };
}

/** Edges between nodes that are there. */
function drawable(f: Graph): { readonly edge: GraphEdge; readonly arc: Arc }[] {
  const places = new Map(f.nodes.map((n, i) => [n.id, i]));
  return f.edges.flatMap((edge) => {
    const [from, to] = [places.get(edge.from), places.get(edge.to)];
    return from === undefined || to === undefined ? [] : [{ edge, arc: { from, to } }];
  });
}

const widthOf = (item: LayerItem): number => ('node' in item ? WIDTH : BEND);

/**
 * Middle of each item of each layer, clear of its neighbours: sweeps up the layers towards what
 * comes after, then down towards what comes before, so that a plain chain stands upright.
 */
function placesOf(
  layers: readonly (readonly LayerItem[])[],
  arcs: readonly Arc[],
  width: number,
): number[][] {
  const at = new Map<string, number>();
  const place = (l: number, side: 1 | -1): void => {
    const layer = layers[l] ?? [];
    const wanted = layer.map(
      (item) => meanOf(item, l, arcs, at, side) ?? at.get(keyOf(item, l)) ?? width / 2,
    );
    const xs = spread(layer, wanted, width);
    layer.forEach((item, i) => {
      at.set(keyOf(item, l), xs[i] ?? 0);
    });
  };
  const down = [...layers.keys()];
  const up = [...down].reverse();
  for (const l of down) place(l, -1);
  for (let pass = 0; pass < PASSES; pass++) {
    for (const l of up) place(l, 1);
    for (const l of down) place(l, -1);
  }
  return layers.map((layer, l) => layer.map((item) => at.get(keyOf(item, l)) ?? 0));
}

/** A node is in one layer only; a bend of an arc in each that it passes. */
const keyOf = (item: LayerItem, layer: number): string =>
  'node' in item ? `n${item.node}` : `b${item.bend},${layer}`;

/** Mean place of what an item hangs on in the layer before (−1) or after (1). */
function meanOf(
  item: LayerItem,
  layer: number,
  arcs: readonly Arc[],
  at: ReadonlyMap<string, number>,
  side: 1 | -1,
): number | undefined {
  const far = ({ from, to }: Arc): number => (side === 1 ? to : from);
  const own = ({ from, to }: Arc): number => (side === 1 ? from : to);
  const near = (i: number, arc: Arc): number[] => {
    const x = at.get(`b${i},${layer + side}`) ?? at.get(`n${far(arc)}`);
    return x === undefined ? [] : [x];
  };
  const xs = arcs.flatMap((arc, i) =>
    ('bend' in item ? i === item.bend : own(arc) === item.node) ? near(i, arc) : [],
  );
  return xs.length === 0 ? undefined : xs.reduce((a, b) => a + b, 0) / xs.length;
}

/** Moves wanted places apart until nothing overlaps, within the paper. */
function spread(layer: readonly LayerItem[], wanted: readonly number[], width: number): number[] {
  const widths = layer.map(widthOf);
  const total = widths.reduce((sum, w) => sum + w, 0);
  const gap =
    layer.length < 2 ? 0 : Math.min(ACROSS, (width - 2 * EDGE - total) / (layer.length - 1));
  const xs: number[] = [];
  let free = EDGE;
  layer.forEach((_, i) => {
    const half = (widths[i] ?? 0) / 2;
    xs.push(Math.max(wanted[i] ?? 0, free + half));
    free = (xs[i] ?? 0) + half + gap;
  });
  let end = width - EDGE;
  for (let i = layer.length - 1; i >= 0; i--) {
    const half = (widths[i] ?? 0) / 2;
    xs[i] = Math.min(xs[i] ?? 0, end - half);
    end = (xs[i] ?? 0) - half - gap;
  }
  return xs;
}

/** Where boxes and bends stand. */
interface Spots {
  /** Upper left corner of a node's box. */
  readonly top: (node: number) => Spot;
  /** Where arrows leave a node, and where they come in. */
  readonly out: (node: number) => Spot;
  readonly into: (node: number) => Spot;
  /** Spots that an arc passes, from above to below. */
  readonly bends: (arc: number) => readonly Spot[];
}

function spotsOf(
  layers: readonly (readonly LayerItem[])[],
  xs: readonly (readonly number[])[],
  tops: readonly number[],
  heights: readonly number[],
  cards: readonly Card[],
): Spots {
  const middle = new Map<number, Spot>();
  const bends = new Map<number, Spot[]>();
  layers.forEach((layer, l) => {
    const top = tops[l] ?? 0;
    layer.forEach((item, i) => {
      const x = xs[l]?.[i] ?? 0;
      if ('node' in item) middle.set(item.node, [x, top]);
      else
        bends.set(item.bend, [
          ...(bends.get(item.bend) ?? []),
          [x, top],
          [x, top + (heights[l] ?? 0)],
        ]);
    });
  });
  const of = (node: number): Spot => middle.get(node) ?? [0, 0];
  return {
    top: (node) => [of(node)[0] - WIDTH / 2, of(node)[1]],
    into: of,
    out: (node) => [of(node)[0], of(node)[1] + (cards[node]?.height ?? 0)],
    bends: (arc) => bends.get(arc) ?? [],
  };
}

function edgeInks(edge: GraphEdge, arc: Arc, i: number, at: Spots, isCircular: boolean): Ink[] {
  const [from, to] = [at.out(arc.from), at.into(arc.to)];
  const spots = isCircular ? aroundSpots(from, to) : [from, ...at.bends(i), to];
  const before = spots.at(-2) ?? from;
  const pen = isCircular
    ? 'dashed'
    : edge.strong
      ? 'wide'
      : edge.line
        ? penOf(edge.line)
        : 'narrow';
  return [line(pen, ...spots), arrowHead(to, [to[0] - before[0], to[1] - before[1]])];
}

/** Where on the first stretch of an edge its words may stand, best first. */
const ALONG = [0.5, 0.25, 0.75];

/** Words of edges, moved in from the sides of the paper and along their edge off other words. */
function edgeWords(edges: ReturnType<typeof drawable>, at: Spots, width: number): Ink[] {
  const placed: { readonly x: number; readonly y: number; readonly reach: number }[] = [];
  return edges.flatMap(({ edge: { label }, arc }, i) => {
    if (!label) return [];
    const from = at.out(arc.from);
    const to = at.bends(i)[0] ?? at.into(arc.to);
    const reach = textWidth(label, 'small') / 2 + EDGE;
    const places = ALONG.map((t) => ({
      x: Math.max(reach, Math.min(from[0] + t * (to[0] - from[0]), width - reach)),
      y: from[1] + t * (to[1] - from[1]),
      reach,
    }));
    const isFree = (p: (typeof places)[number]): boolean =>
      placed.every((q) => Math.abs(p.y - q.y) >= 10 || Math.abs(p.x - q.x) >= p.reach + q.reach);
    const place = places.find(isFree) ?? places[0];
    if (!place) return [];
    placed.push(place);
    return [words([place.x, place.y], label, { anchor: 'middle', size: 'small', onPaper: true })];
  });
}

/** An arrow back up runs out to the side, so that it is seen to close a circle. */
const aroundSpots = (from: Spot, to: Spot): Spot[] => {
  const side = Math.max(from[0], to[0]) + WIDTH / 2 + ACROSS / 2;
  return [
    from,
    [from[0], from[1] + BETWEEN / 3],
    [side, from[1] + BETWEEN / 3],
    [side, to[1] - BETWEEN / 3],
    [to[0], to[1] - BETWEEN / 3],
    to,
  ];
};

function cardInks({ node, lines, number, open, height }: Card, [x, y]: Spot): Ink[] {
  const first = y + PAD + TEXT / 2;
  const centre = x + WIDTH / 2;
  return [
    box(x, y, WIDTH, height, node.strong ? 'wide' : 'narrow', 'paper'),
    ...lines.map((text, i) => words([centre, first + i * TEXT], text, { anchor: 'middle' })),
    ...(number === ''
      ? []
      : [
          words([centre, first + lines.length * TEXT], number, {
            anchor: 'middle',
            size: 'small',
            tone: open ? 'open' : 'strong',
          }),
        ]),
  ];
}
