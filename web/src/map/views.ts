import type { MapBody, MapModel, Triple } from '../worker/map-model.ts';
import { hull, type Point } from './hull.ts';

export const VIEWS = ['plan', 'side', 'front', 'rear'] as const;
export type ViewName = (typeof VIEWS)[number];

/** How a view looks on the vehicle: metres in its frame to metres on the paper, u right, v down. */
interface Projection {
  readonly at: (p: Triple) => Point;
  /** Which components of a size lie along u and v. */
  readonly along: readonly [0 | 1 | 2, 0 | 1 | 2];
}

export const PROJECTIONS: Readonly<Record<ViewName, Projection>> = {
  plan: { at: ([x, y]) => [x, -y], along: [0, 1] },
  side: { at: ([x, , z]) => [x, -z], along: [0, 2] },
  front: { at: ([, y, z]) => [-y, -z], along: [1, 2] },
  rear: { at: ([, y, z]) => [y, -z], along: [1, 2] },
};

/** A rectangle on the paper, metres; u, v is its upper left corner. */
export interface Box {
  readonly body: MapBody;
  readonly u: number;
  readonly v: number;
  readonly w: number;
  readonly h: number;
}

export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** One view, ready to be drawn, in metres on the paper. */
export interface View {
  readonly name: ViewName;
  readonly boxes: readonly Box[];
  /** The whole vehicle's envelope about the middle of its axles, else the hull of all placed parts. */
  readonly outline: readonly Point[];
  readonly frame: Frame;
}

/** Tread width drawn for a wheel, of its radius: it is not recorded. */
export const TREAD = 0.6;

/** Without a part's place, and without axles, a drawing has neither size nor scale. */
export const canBeDrawn = ({ bodies, wheels }: MapModel): boolean =>
  bodies.length > 0 || wheels !== undefined;

export function viewOf(name: ViewName, model: MapModel): View {
  const boxes = model.bodies.map((body) => boxOf(body, PROJECTIONS[name]));
  const corners = boxes.flatMap(({ u, v, w, h }): Point[] => [
    [u, v],
    [u + w, v],
    [u, v + h],
    [u + w, v + h],
  ]);
  const outline = envelopeOf(name, model) ?? hull(corners);
  return { name, boxes, outline, frame: frameOf([...corners, ...outline, ...reach(name, model)]) };
}

/** Overhangs are not recorded: the envelope stands on the ground about the middle of the axles. */
function envelopeOf(name: ViewName, { envelope, wheels }: MapModel): Point[] | undefined {
  if (!envelope || !wheels) return undefined;
  const [length, width, height] = envelope;
  const { at } = PROJECTIONS[name];
  const low = at([(wheels.wheelbase - length) / 2, -width / 2, 0]);
  const high = at([(wheels.wheelbase + length) / 2, width / 2, height]);
  return [low, [high[0], low[1]], high, [low[0], high[1]]];
}

function boxOf(body: MapBody, { at, along }: Projection): Box {
  const [u, v] = at(body.at);
  const [w, h] = [body.size[along[0]], body.size[along[1]]];
  return { body, u: u - w / 2, v: v - h / 2, w, h };
}

/** Outermost points of the wheels, and the ground. */
function reach(name: ViewName, { wheels }: MapModel): Point[] {
  if (!wheels) return [];
  const { wheelbase, radius, tracks } = wheels;
  const half = Math.max(...tracks) / 2 + (TREAD * radius) / 2;
  const { at } = PROJECTIONS[name];
  return [at([-radius, -half, 0]), at([wheelbase + radius, half, 2 * radius])];
}

function frameOf(points: readonly Point[]): Frame {
  const us = points.map(([u]) => u);
  const vs = points.map(([, v]) => v);
  const [left, width] = stretch(us);
  const [top, height] = stretch(vs);
  return { left, top, width, height };
}

/** Least extent of a view, metres: a single place has none of its own. */
const LEAST = 0.5;

/** Where numbers begin and how far they go, at least the least extent about their middle. */
function stretch(xs: readonly number[]): [from: number, size: number] {
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const size = Math.max(high - low, LEAST);
  return [(low + high - size) / 2, size];
}
