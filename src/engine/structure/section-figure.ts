import type { Drawing, DrawingShape, Figure, FigurePoint } from '../figure.ts';
import { type AreaMoments, areaMoments, principal } from './area-moments.ts';
import { arc, type Point, type Ring, type Shape } from './point.ts';
import { type PlacedWall, placedWalls, type ThinWalls, wallMoments } from './thin-walls.ts';

/** What is drawn beside a section's outline. */
export interface SectionMarks {
  /** Names of the axis to the right and of the one up. */
  readonly axes: readonly [right: string, up: string];
  readonly shearCentre?: Point;
}

/** Of profiles: y the horizontal axis, z the upright one. */
export const YZ: SectionMarks = { axes: ['y', 'z'] };

/** Axes turned by less than this, rad, are drawn as those of the section. */
const ALIKE = 0.5 * (Math.PI / 180);

/** A section to scale with its axes, centroid and overall sizes; nothing where a size is missing. */
export const sectionFigures = (shape: Shape, marks: SectionMarks): readonly Figure[] =>
  drawn('Section to scale', areaMoments(shape), marks, shape.outline, [
    { s: 'area', rings: [shape.outline, ...shape.holes].map(thinned), hatch: 'metal' },
  ]);

/** Thin walls to scale, each a bar of its thickness, rounded where they meet. */
export function wallFigures(section: ThinWalls, marks: SectionMarks): readonly Figure[] {
  const bars = placedWalls(section).map(barOf);
  const corners = section.nodes.flatMap((node, i) => {
    const meeting = section.walls.filter((w) => w.from === i || w.to === i);
    const r = Math.max(...meeting.map((w) => w.thickness)) / 2;
    return meeting.length > 1 ? [arc(node.x, node.y, r, 0, 2 * Math.PI)] : [];
  });
  const bodies = [...bars, ...corners.map(thinned)].map(
    (ring): DrawingShape => ({ s: 'area', rings: [ring], hatch: 'solid' }),
  );
  const reached = bars.flat().map(([x, y]) => ({ x, y }));
  return drawn('Walls to scale', wallMoments(section), marks, reached, bodies);
}

function barOf({ a, b, length, thickness }: PlacedWall): readonly FigurePoint[] {
  const half = thickness / (2 * length);
  const [dx, dy] = [-(b.y - a.y) * half, (b.x - a.x) * half];
  return [
    [a.x + dx, a.y + dy],
    [b.x + dx, b.y + dy],
    [b.x - dx, b.y - dy],
    [a.x - dx, a.y - dy],
  ];
}

function drawn(
  title: string,
  m: AreaMoments,
  { axes: [right, up], shearCentre }: SectionMarks,
  reached: readonly Point[],
  bodies: readonly DrawingShape[],
): readonly Figure[] {
  if (!Number.isFinite(m.area)) return [];
  const centroid: FigurePoint = [m.centroid.x, m.centroid.y];
  const drawing: Drawing = {
    f: 'drawing',
    title,
    alt: altOf(m, right, up, shearCentre !== undefined),
    kind: 'length',
    unit: 'mm',
    shapes: [
      ...bodies,
      { s: 'axis', at: centroid, angle: 0, label: right },
      { s: 'axis', at: centroid, angle: Math.PI / 2, label: up },
      ...principalAxes(m, centroid),
      { s: 'mark', at: centroid, sign: 'centroid', label: 'centroid' },
      ...(shearCentre
        ? [
            {
              s: 'mark' as const,
              at: [shearCentre.x, shearCentre.y] as const,
              sign: 'other centre' as const,
              label: 'shear centre',
            },
          ]
        : []),
      ...overall(reached),
    ],
  };
  return [drawing];
}

const altOf = (m: AreaMoments, right: string, up: string, hasShear: boolean): string =>
  `The section with the axes ${right} and ${up} through its centroid` +
  `${principalAxes(m, [0, 0]).length > 0 ? ', its principal axes 1 and 2' : ''}` +
  `${hasShear ? ', its shear centre' : ''} and its overall sizes.`;

/** Axes 1 and 2, where they are not those of the section. */
function principalAxes(m: AreaMoments, at: FigurePoint): DrawingShape[] {
  const { angle } = principal(m);
  const off = Math.abs(Math.sin(2 * angle)) / 2;
  if (!(off > ALIKE)) return [];
  return [
    { s: 'axis', at, angle, label: '1' },
    { s: 'axis', at, angle: angle + Math.PI / 2, label: '2' },
  ];
}

/** Overall sizes, below and to the left. */
function overall(points: readonly Point[]): DrawingShape[] {
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  return [
    { s: 'dimension', from: [left, low], to: [Math.max(...xs), low], along: 'x' },
    { s: 'dimension', from: [left, low], to: [left, Math.max(...ys)], along: 'y' },
  ];
}

/** Chords that turn by less than this, rad, are drawn as one. */
const STRAIGHT = 0.08;

/** A ring without the corners at which its line hardly turns. */
function thinned(ring: Ring): FigurePoint[] {
  const kept: Point[] = [];
  const apart = ring.filter(({ x, y }, i) => {
    const next = ring[(i + 1) % ring.length];
    return next === undefined || Math.hypot(next.x - x, next.y - y) > 1e-9;
  });
  let turned = 0;
  apart.forEach((p, i) => {
    const before = apart[(i + apart.length - 1) % apart.length] ?? p;
    const after = apart[(i + 1) % apart.length] ?? p;
    turned += turn(before, p, after);
    if (Math.abs(turned) < STRAIGHT) return;
    kept.push(p);
    turned = 0;
  });
  return kept.map(({ x, y }) => [x, y]);
}

/** Angle by which a line turns at a point. */
function turn(a: Point, b: Point, c: Point): number {
  const angle = Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x);
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}
