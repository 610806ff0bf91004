import type { Point } from './point.ts';
import { type PlacedWall, placedWalls, type ThinWalls, wallMoments } from './thin-walls.ts';

/** Shear centre and warping of an open thin-walled section. */
export interface OpenWarping {
  readonly shearCentre: Point;
  /** ∫ ω² dA about the shear centre, m⁶. */
  readonly warping: number;
}

/**
 * Shear centre and warping constant of an open thin-walled section, branched or not, by sectorial
 * coordinates along the middle lines (Vlasov). The walls must hang together and close no loop.
 */
export function openWarping(section: ThinWalls): OpenWarping {
  const walls = placedWalls(section);
  const { area, centroid, ixx, iyy, ixy } = lineMoments(section);
  const about = sectorial(section, walls, centroid);
  const x = (i: number) => (section.nodes[i]?.x ?? 0) - centroid.x;
  const y = (i: number) => (section.nodes[i]?.y ?? 0) - centroid.y;
  const omegaX = integral(walls, (i) => about[i] ?? 0, x);
  const omegaY = integral(walls, (i) => about[i] ?? 0, y);
  const det = ixx * iyy - ixy * ixy;
  const shearCentre = {
    x: centroid.x + (iyy * omegaY - ixy * omegaX) / det,
    y: centroid.y - (ixx * omegaX - ixy * omegaY) / det,
  };
  const omega = sectorial(section, walls, shearCentre);
  const one = () => 1;
  const average = integral(walls, (i) => omega[i] ?? 0, one) / area;
  const normal = (i: number) => (omega[i] ?? 0) - average;
  return { shearCentre, warping: integral(walls, normal, normal) };
}

/** Moments along the middle lines only, as sectorial coordinates know them. */
const lineMoments = (section: ThinWalls) => {
  const walls = placedWalls(section);
  const { area, centroid } = wallMoments(section);
  const x = (i: number) => (section.nodes[i]?.x ?? 0) - centroid.x;
  const y = (i: number) => (section.nodes[i]?.y ?? 0) - centroid.y;
  return {
    area,
    centroid,
    ixx: integral(walls, y, y),
    iyy: integral(walls, x, x),
    ixy: integral(walls, x, y),
  };
};

/** ∫ f g dA over the walls, f and g being linear along each and given at the nodes. */
function integral(
  walls: readonly PlacedWall[],
  f: (node: number) => number,
  g: (node: number) => number,
): number {
  return walls.reduce((sum, { from, to, length, thickness }) => {
    const [fa, fb, ga, gb] = [f(from), f(to), g(from), g(to)];
    return sum + (length * thickness * (2 * fa * ga + 2 * fb * gb + fa * gb + fb * ga)) / 6;
  }, 0);
}

/** Sectorial coordinate of every node about a pole: twice the area swept from the first node. */
function sectorial(section: ThinWalls, walls: readonly PlacedWall[], pole: Point): number[] {
  const omega: number[] = [];
  const start = walls[0]?.from ?? 0;
  omega[start] = 0;
  const waiting = [start];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop())
    for (const wall of walls) {
      if (wall.from !== at && wall.to !== at) continue;
      const next = wall.from === at ? wall.to : wall.from;
      if (omega[next] !== undefined) continue;
      omega[next] = (omega[at] ?? 0) + swept(section.nodes[at], section.nodes[next], pole);
      waiting.push(next);
    }
  return omega;
}

const swept = (a: Point | undefined, b: Point | undefined, pole: Point): number =>
  a && b ? (a.x - pole.x) * (b.y - pole.y) - (b.x - pole.x) * (a.y - pole.y) : 0;
