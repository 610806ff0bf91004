import { RefusalError } from '../../study/index.ts';

export type Point = readonly [x: number, y: number, z: number];
/** Places of its corners in a list of points, counter-clockwise seen from outside. */
export type Face = readonly [a: number, b: number, c: number];

/** Volume and its moments, of a body of density 1. */
export interface Solid {
  /** m³; negative where the triangles are wound inwards. */
  readonly volume: number;
  /** Centre, m. */
  readonly centre: Point;
  /**
   * Second moments of the volume about the centre, m⁵, as the elements xx, yy, zz, xy, xz, yz of
   * the inertia matrix: those off the diagonal are the negatives of the products.
   */
  readonly inertia: readonly [number, number, number, number, number, number];
}

/**
 * Volume, centre and inertia of a closed polyhedron, by the tetrahedra from a point to each of
 * its triangles (divergence theorem; the integrals of a tetrahedron from memory).
 * @throws RefusalError when an edge is not shared by two triangles that run along it both ways.
 */
export function solidOf(points: readonly Point[], faces: readonly Face[]): Solid {
  refuseOpen(points, faces);
  const origin = meanOf(points);
  let volume = 0;
  const first = [0, 0, 0];
  const second = [0, 0, 0, 0, 0, 0];
  for (const face of faces) {
    const [a, b, c] = face.map((i) => less(points[i] as Point, origin)) as [Point, Point, Point];
    const det = tripleProduct(a, b, c);
    volume += det / 6;
    addFirst(first, a, b, c, det);
    addSecond(second, a, b, c, det);
  }
  const centre = first.map((m) => m / volume) as [number, number, number];
  return {
    volume,
    centre: centre.map((x, k) => x + (origin[k] ?? 0)) as unknown as Point,
    inertia: inertiaAbout(centre, volume, second),
  };
}

const PAIRS = [
  [0, 0],
  [1, 1],
  [2, 2],
  [0, 1],
  [0, 2],
  [1, 2],
] as const;

const less = (p: Point, q: readonly number[]): Point => [
  p[0] - (q[0] ?? 0),
  p[1] - (q[1] ?? 0),
  p[2] - (q[2] ?? 0),
];

/** Near the body, so that no digits are lost to a far origin. */
const meanOf = (points: readonly Point[]): number[] =>
  [0, 1, 2].map((k) => points.reduce((sum, p) => sum + (p[k] ?? 0), 0) / points.length);

const tripleProduct = (a: Point, b: Point, c: Point): number =>
  a[0] * (b[1] * c[2] - b[2] * c[1]) +
  a[1] * (b[2] * c[0] - b[0] * c[2]) +
  a[2] * (b[0] * c[1] - b[1] * c[0]);

/** ∫ x dV of the tetrahedron 0, a, b, c is its volume times (a + b + c) / 4. */
function addFirst(to: number[], a: Point, b: Point, c: Point, det: number): void {
  for (let k = 0; k < 3; k++)
    to[k] = (to[k] ?? 0) + (det / 24) * ((a[k] ?? 0) + (b[k] ?? 0) + (c[k] ?? 0));
}

/** ∫ xᵢ xⱼ dV = det / 120 (Σ pᵢ pⱼ + Σ pᵢ Σ pⱼ) over the corners a, b, c. */
function addSecond(to: number[], a: Point, b: Point, c: Point, det: number): void {
  for (const [n, [i, j]] of PAIRS.entries()) {
    const own = a[i] * a[j] + b[i] * b[j] + c[i] * c[j];
    const sums = (a[i] + b[i] + c[i]) * (a[j] + b[j] + c[j]);
    to[n] = (to[n] ?? 0) + (det / 120) * (own + sums);
  }
}

/** From ∫ xᵢ xⱼ about an origin to the inertia matrix about the centre. */
function inertiaAbout(
  centre: readonly number[],
  volume: number,
  second: readonly number[],
): Solid['inertia'] {
  const [xx, yy, zz, xy, xz, yz] = PAIRS.map(
    ([i, j], n) => (second[n] ?? 0) - volume * (centre[i] ?? 0) * (centre[j] ?? 0),
  ) as [number, number, number, number, number, number];
  return [yy + zz, xx + zz, xx + yy, -xy, -xz, -yz];
}

/** Each edge must be run along once in either direction. */
function refuseOpen(points: readonly Point[], faces: readonly Face[]): void {
  const edges = faces.flatMap(([a, b, c]): (readonly [number, number])[] => [
    [a, b],
    [b, c],
    [c, a],
  ]);
  const runs = new Map<string, number>();
  for (const [p, q] of edges) runs.set(`${p} ${q}`, (runs.get(`${p} ${q}`) ?? 0) + 1);
  const isOpen = ([p, q]: readonly [number, number]) =>
    runs.get(`${p} ${q}`) !== 1 || runs.get(`${q} ${p}`) !== 1 || !points[p] || !points[q];
  const open = edges.filter(isOpen).length;
  if (open > 0 || faces.length === 0) throw notClosed(open, faces.length);
}

const notClosed = (edges: number, triangles: number): RefusalError =>
  new RefusalError({
    code: 'bad-value',
    place: { column: 'triangles' },
    value: `${edges} edges of ${triangles} triangles`,
    why: 'the mesh is not closed: edges are not shared by two triangles that run along them both ways, so it has no volume',
    next: 'Close the holes, join corners that should be one, and turn all triangles the same way round.',
  });
