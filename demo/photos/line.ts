/** X to the right, Y down; in mm on a part, in pixels on a photograph. */
export type Point = readonly [x: number, y: number];

/** What everything here is drawn with. Curves are many short lines, so that a drawing has the same bytes everywhere. */
export interface Line {
  readonly points: readonly Point[];
  readonly closed?: true;
  /** Line width: an outline, or a finer line within it. */
  readonly pen?: 'edge' | 'fine';
  readonly fill?: 'part' | 'hole';
}

export const polygon = (...points: Point[]): Line => ({ points, closed: true });
export const polyline = (...points: Point[]): Line => ({ points });

export const box = (x: number, y: number, width: number, height: number): Line =>
  polygon([x, y], [x + width, y], [x + width, y + height], [x, y + height]);

/** Point at `degrees` clockwise from the right, as seen with Y downward. */
export function onCircle([cx, cy]: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
}

/** `count` points at equal angles on an arc, both its ends included. */
export const arc = (count: number, centre: Point, radius: number, from: number, to: number) =>
  Array.from({ length: count }, (_, i) =>
    onCircle(centre, radius, from + ((to - from) * i) / (count - 1)),
  );

const CIRCLE_STEPS = 48;

export const circle = (cx: number, cy: number, radius: number): Line => ({
  points: arc(CIRCLE_STEPS + 1, [cx, cy], radius, 0, 360).slice(1),
  closed: true,
});

/** `count` things at equal steps, the first at `from`, the last at `to`. */
export function row(count: number, from: Point, to: Point, at: (p: Point) => Line): Line[] {
  const step = count > 1 ? 1 / (count - 1) : 0;
  return Array.from({ length: count }, (_, i) =>
    at([from[0] + (to[0] - from[0]) * i * step, from[1] + (to[1] - from[1]) * i * step]),
  );
}

/** `count` things at equal angles on a circle, the first on top. */
export const ring = (count: number, centre: Point, radius: number, at: (p: Point) => Line) =>
  Array.from({ length: count }, (_, i) => at(onCircle(centre, radius, (360 * i) / count - 90)));

export const part = (line: Line): Line => ({ ...line, fill: 'part' });
export const hole = (line: Line): Line => ({ ...line, fill: 'hole', pen: 'fine' });
export const fine = (line: Line): Line => ({ ...line, pen: 'fine' });
