import { formatNumber } from '../quantity/index.ts';
import { type Id, isMissing, type NodeSpec, type StudyView } from '../study/index.ts';

/**
 * The vehicle drawn from its record, in plan above side view, both to one scale along X. Sizes
 * and positions are mm in the view: x to the right (rearward), y down the paper.
 */
export interface MapDrawing {
  readonly caption: string;
  readonly alt: string;
  readonly views: readonly MapView[];
  /** Parts named by a number on the drawing, heaviest first. */
  readonly items: readonly { readonly item: number; readonly words: string }[];
}

export interface MapView {
  readonly title: string;
  readonly axes: string;
  /** Left, top, width and height of what is drawn. */
  readonly frame: readonly [left: number, top: number, width: number, height: number];
  readonly shapes: readonly MapShape[];
}

export type MapShape =
  | {
      readonly s: 'box';
      readonly x: number;
      readonly y: number;
      readonly w: number;
      readonly h: number;
      readonly bold: boolean;
      readonly hatch: boolean;
    }
  | { readonly s: 'circle'; readonly x: number; readonly y: number; readonly r: number }
  | { readonly s: 'line'; readonly from: Point; readonly to: Point; readonly chain: boolean }
  | { readonly s: 'mark'; readonly x: number; readonly y: number; readonly sign: MapMark['sign'] }
  | { readonly s: 'item'; readonly x: number; readonly y: number; readonly item: number }
  | {
      readonly s: 'dimension';
      readonly from: number;
      readonly to: number;
      readonly y: number;
      readonly text: string;
    };
type Point = readonly [x: number, y: number];

/** A centre of gravity to mark, SI in the vehicle frame: circle with cross, or square with cross. */
export interface MapMark {
  readonly words: string;
  readonly sign: 'circle' | 'square';
  readonly x: number;
  readonly y: number;
  readonly z?: number;
}

/** A thing with a place and a size, mm in the vehicle frame. */
interface Body {
  readonly label: string;
  readonly words: string;
  readonly at: Triple;
  readonly size: Triple;
  readonly mass: number;
  readonly kind: 'part' | 'assembly';
}
type Triple = readonly [x: number, y: number, z: number];

/** A part without an envelope is drawn as a cube of one piece's mass at this density, kg/m³. */
const DRAWN_DENSITY = 2700;
/** Parts numbered on the drawing. */
const ITEMS = 8;
const MARGIN = 120;
/** Dimension line below the ground. */
const DIMENSION_Y = 230;

/** Draws what a study's readings allow; undefined when no part has a place. */
export function mapDrawing(
  view: StudyView,
  marks: readonly MapMark[] = [],
): MapDrawing | undefined {
  const parts = view.nodes('part').flatMap((n) => partBody(view, n));
  if (parts.length === 0) return undefined;
  const bySize = [...parts].sort((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1]);
  const bodies = [
    ...view.nodes('assembly').flatMap((n) => assemblyBody(view, n, parts)),
    ...bySize,
  ];
  const wheels = wheelsOf(view);
  const items = [...parts].sort((a, b) => b.mass - a.mass).slice(0, ITEMS);
  return {
    caption: captionOf(parts, marks),
    alt: altOf(bodies, marks),
    views: [planView(bodies, items, wheels, marks), sideView(bodies, items, wheels, marks)],
    items: items.map((b, i) => ({ item: i + 1, words: `${b.label} ${b.words}` })),
  };
}

function captionOf(parts: readonly Body[], marks: readonly MapMark[]): string {
  const signs = marks.map((m) => `${m.sign} with cross: ${m.words}`);
  return [
    `${parts.length} parts by position; size by envelope, else a cube of one piece's mass at ${DRAWN_DENSITY} kg/m³, no outline`,
    ...signs,
  ].join(' · ');
}

const altOf = (bodies: readonly Body[], marks: readonly MapMark[]): string =>
  `Plan and side view of the vehicle with ${bodies.length} boxes at the recorded positions` +
  marks
    .map(
      (m) =>
        `, ${m.words} at X ${mm(m.x)} mm, Y ${mm(m.y)} mm${m.z === undefined ? '' : `, Z ${mm(m.z)} mm`}`,
    )
    .join('') +
  '.';

const mm = (metres: number): number => Math.round(1000 * metres);

/** A scalar or one component of a vector in force, SI; undefined when missing. */
function reading(view: StudyView, id: Id, property: string, component = 0): number | undefined {
  const cell = view.cell(id, property);
  if (isMissing(cell)) return undefined;
  const { value } = cell;
  if (value.t === 'scalar') return value.x;
  if (value.t === 'count') return value.n;
  return value.t === 'vector' ? value.x[component] : undefined;
}

const triple = (xs: readonly (number | undefined)[]): Triple | undefined => {
  const [x, y, z] = xs;
  return x === undefined || y === undefined || z === undefined
    ? undefined
    : [1000 * x, 1000 * y, 1000 * z];
};

const envelopeOf = (view: StudyView, id: Id): Triple | undefined =>
  triple(['length', 'width', 'height'].map((side) => reading(view, id, `envelope.${side}`)));

function partBody(view: StudyView, node: NodeSpec): Body[] {
  const at = triple([0, 1, 2].map((i) => reading(view, node.id, 'position', i)));
  if (!at) return [];
  const mass = Math.max(reading(view, node.id, 'mass') ?? 0, 0);
  const pieces = Math.max(reading(view, node.id, 'count') ?? 1, 1);
  const side = 1000 * Math.cbrt(mass / pieces / DRAWN_DENSITY);
  const size = envelopeOf(view, node.id) ?? ([side, side, side] as const);
  return [{ label: node.label, words: node.name, at, size, mass, kind: 'part' }];
}

/** An assembly with an envelope stands about the mass centre of its parts. */
function assemblyBody(view: StudyView, node: NodeSpec, parts: readonly Body[]): Body[] {
  const size = envelopeOf(view, node.id);
  if (!size) return [];
  const labels = new Set(view.nodes('part', node.id).map((n) => n.label));
  const own = parts.filter((p) => labels.has(p.label));
  const mass = own.reduce((sum, p) => sum + p.mass, 0);
  if (!(mass > 0)) return [];
  const centre = (i: 0 | 1 | 2): number => own.reduce((sum, p) => sum + p.mass * p.at[i], 0) / mass;
  const at = [centre(0), centre(1), centre(2)] as const;
  return [{ label: node.label, words: node.name, at, size, mass, kind: 'assembly' }];
}

interface Wheels {
  readonly wheelbase: number;
  readonly radius: number;
  /** Front and rear. */
  readonly tracks: readonly [number, number];
}

function wheelsOf(view: StudyView): Wheels | undefined {
  const root = view.root();
  if (!root) return undefined;
  const of = (property: string): number | undefined => {
    const x = reading(view, root.id, property);
    return x === undefined ? undefined : 1000 * x;
  };
  const [wheelbase, radius, front, rear] = [
    of('wheelbase'),
    of('tyreRadius'),
    of('track.front'),
    of('track.rear'),
  ];
  if (wheelbase === undefined || radius === undefined || front === undefined || rear === undefined)
    return undefined;
  return { wheelbase, radius, tracks: [front, rear] };
}

/** Y points right in the frame; in plan, seen from above with the front to the left, right is up. */
const PLAN = (at: Triple): Point => [at[0], 0 - at[1]];
const SIDE = (at: Triple): Point => [at[0], 0 - at[2]];

function planView(
  bodies: readonly Body[],
  items: readonly Body[],
  wheels: Wheels | undefined,
  marks: readonly MapMark[],
): MapView {
  const shapes = [
    ...(wheels ? planWheels(wheels) : []),
    ...bodies.map((b) => boxOf(b, PLAN, b.size[1], false)),
    ...items.map((b, i) => itemOf(b, i, PLAN)),
    ...marks.map((m) => markOf(m, PLAN([1000 * m.x, 1000 * m.y, 0]))),
  ];
  const frame = frameOf(bodies, wheels, shapes);
  return {
    title: 'Plan',
    axes: 'X rearward, Y to the right of the vehicle (up)',
    frame,
    shapes: [axisLine(frame, 0), ...shapes],
  };
}

function sideView(
  bodies: readonly Body[],
  items: readonly Body[],
  wheels: Wheels | undefined,
  marks: readonly MapMark[],
): MapView {
  const high = marks.flatMap((m) =>
    m.z === undefined ? [] : [markOf(m, SIDE([1000 * m.x, 0, 1000 * m.z]))],
  );
  const shapes: MapShape[] = [
    ...(wheels ? sideWheels(wheels) : []),
    ...bodies.map((b) => boxOf(b, SIDE, b.size[2], b.kind === 'assembly')),
    ...items.map((b, i) => itemOf(b, i, SIDE)),
    ...high,
  ];
  const frame = frameOf(bodies, wheels, shapes);
  const ground = wheels ? [groundLine(frame)] : [];
  return { title: 'Side', axes: 'X rearward, Z up', frame, shapes: [...ground, ...shapes] };
}

function boxOf(b: Body, project: (at: Triple) => Point, height: number, hatch: boolean): MapShape {
  const [x, y] = project(b.at);
  const w = b.size[0];
  return {
    s: 'box',
    x: x - w / 2,
    y: y - height / 2,
    w,
    h: height,
    bold: b.kind === 'assembly',
    hatch,
  };
}

function itemOf(b: Body, i: number, project: (at: Triple) => Point): MapShape {
  const [x, y] = project(b.at);
  return { s: 'item', x, y, item: i + 1 };
}

const markOf = (m: MapMark, [x, y]: Point): MapShape => ({ s: 'mark', x, y, sign: m.sign });

/** Wheels in plan: their width is not recorded, they are drawn 0.6 of the radius wide. */
function planWheels(w: Wheels): MapShape[] {
  const wide = 0.6 * w.radius;
  return w.tracks.flatMap((track, axle) =>
    [-1, 1].map(
      (side): MapShape => ({
        s: 'box',
        x: axle * w.wheelbase - w.radius,
        y: (side * track) / 2 - wide / 2,
        w: 2 * w.radius,
        h: wide,
        bold: false,
        hatch: false,
      }),
    ),
  );
}

function sideWheels(w: Wheels): MapShape[] {
  const text = formatNumber(w.wheelbase, 0);
  return [
    ...[0, w.wheelbase].map((x): MapShape => ({ s: 'circle', x, y: -w.radius, r: w.radius })),
    { s: 'dimension', from: 0, to: w.wheelbase, y: DIMENSION_Y, text },
  ];
}

const axisLine = ([left, , width]: MapView['frame'], y: number): MapShape => ({
  s: 'line',
  from: [left, y],
  to: [left + width, y],
  chain: true,
});
const groundLine = ([left, , width]: MapView['frame']): MapShape => ({
  s: 'line',
  from: [left, 0],
  to: [left + width, 0],
  chain: false,
});

/** Both views share their range along X, so that they stand above each other. */
function frameOf(
  bodies: readonly Body[],
  wheels: Wheels | undefined,
  shapes: readonly MapShape[],
): MapView['frame'] {
  const xs = bodies.flatMap((b) => [b.at[0] - b.size[0] / 2, b.at[0] + b.size[0] / 2]);
  if (wheels) xs.push(-wheels.radius, wheels.wheelbase + wheels.radius);
  const ys = shapes.flatMap(heightsOf);
  const left = Math.min(...xs) - MARGIN;
  const top = Math.min(...ys) - MARGIN / 2;
  return [left, top, Math.max(...xs) + MARGIN - left, Math.max(...ys) + MARGIN / 2 - top];
}

function heightsOf(shape: MapShape): number[] {
  if (shape.s === 'box') return [shape.y, shape.y + shape.h];
  if (shape.s === 'circle') return [shape.y - shape.r, shape.y + shape.r];
  return shape.s === 'line' ? [shape.from[1], shape.to[1]] : [shape.y];
}
