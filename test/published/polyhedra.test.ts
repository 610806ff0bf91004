/**
 * Volume, centre and inertia of polyhedra of density 1 (questions mesh-mass, mass-inertia): cube
 * m/6, box m (b² + c²) / 12 and regular tetrahedron m L² / 20 as tables of moments of inertia
 * have them (seen); right tetrahedron at the origin recomputed. Moved far off, turned inside out,
 * with a hole: properties. Parallel axes: boxes that make up a larger box.
 */
import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import {
  type Face,
  type Point,
  type Solid,
  solidOf as solidOfMesh,
} from '../../src/engine/mass/polyhedron.ts';
import { RefusalError } from '../../src/study/index.ts';
import { out } from '../engine/made-question.ts';

type Triangle = readonly [Point, Point, Point];

/** Triangles with their corners written out, as a list of corners and faces by number. */
function indexed(triangles: readonly Triangle[]): { points: Point[]; faces: Face[] } {
  const points: Point[] = [];
  const numberOf = (p: Point) => {
    const known = points.findIndex((q) => q.every((x, k) => x === p[k]));
    return known >= 0 ? known : points.push(p) - 1;
  };
  const faces = triangles.map((t) => t.map(numberOf) as unknown as Face);
  return { points, faces };
}
const solidOf = (triangles: readonly Triangle[]): Solid => {
  const { points, faces } = indexed(triangles);
  return solidOfMesh(points, faces);
};

/** Faces of a box as corners counter-clockwise seen from outside; 1 stands for a whole side. */
const FACES = [
  ['000', '010', '110', '100'],
  ['001', '101', '111', '011'],
  ['000', '100', '101', '001'],
  ['010', '011', '111', '110'],
  ['000', '001', '011', '010'],
  ['100', '110', '111', '101'],
] as const;

/** A box with its corner at the origin, as twelve triangles. */
function box(sides: Point): Triangle[] {
  const at = (corner: string) => sides.map((s, k) => s * Number(corner[k])) as unknown as Point;
  return FACES.flatMap(([p, q, r, t]): Triangle[] => [
    [at(p), at(q), at(r)],
    [at(p), at(r), at(t)],
  ]);
}

const tetra = (a: Point, b: Point, c: Point, d: Point): Triangle[] => [
  [a, c, b],
  [a, b, d],
  [a, d, c],
  [b, c, d],
];
const RIGHT = tetra([0, 0, 0], [1, 0, 0], [0, 1, 0], [0, 0, 1]);
const REGULAR = tetra(
  [0, 0, 0],
  [1, 0, 0],
  [0.5, Math.sqrt(3) / 2, 0],
  [0.5, Math.sqrt(3) / 6, Math.sqrt(2 / 3)],
);

const moved = (mesh: readonly Triangle[], [x, y, z]: Point): Triangle[] =>
  mesh.map((t) => t.map((p): Point => [p[0] + x, p[1] + y, p[2] + z]) as unknown as Triangle);
const turned = (mesh: readonly Triangle[]): Triangle[] =>
  mesh.map(([a, b, c]): Triangle => [a, c, b]);

/** Inertia about the origin from that about the centre (parallel axes), in the same order. */
function aboutOrigin({ volume: v, centre: [x, y, z], inertia: i }: Solid): number[] {
  const own = [y * y + z * z, x * x + z * z, x * x + y * y, -x * y, -x * z, -y * z];
  return own.map((r, k) => v * r + (i[k] ?? 0));
}
const close = (got: readonly number[], want: readonly number[], relative = 1e-12): void => {
  const size = Math.max(...want.map(Math.abs));
  for (const [k, w] of want.entries())
    expect(Math.abs((got[k] ?? Number.NaN) - w)).toBeLessThanOrEqual(relative * size);
};

describe('the unit cube', () => {
  const cube = solidOf(box([1, 1, 1]));
  it('has volume 1, its centre in the middle, m/6 about each axis', () => {
    close([cube.volume], [1]);
    close(cube.centre, [0.5, 0.5, 0.5]);
    close(cube.inertia, [1 / 6, 1 / 6, 1 / 6, 0, 0, 0]);
  });
  it('has 2/3 and −1/4 about its corner', () => {
    close(aboutOrigin(cube), [2 / 3, 2 / 3, 2 / 3, -1 / 4, -1 / 4, -1 / 4]);
  });
});

it('a box has m (b² + c²) / 12', () => {
  const [a, b, c] = [0.3, 1.2, 2.5];
  const { volume, inertia } = solidOf(box([a, b, c]));
  const m = a * b * c;
  const about = (p: number, q: number) => (m * (p * p + q * q)) / 12;
  close([volume], [m]);
  close(inertia, [about(b, c), about(a, c), about(a, b), 0, 0, 0]);
});

describe('the right tetrahedron at the origin', () => {
  const solid = solidOf(RIGHT);
  it('has 1/6, 1/4, 1/80 and 1/480', () => {
    close([solid.volume], [1 / 6]);
    close(solid.centre, [0.25, 0.25, 0.25]);
    close(solid.inertia, [1 / 80, 1 / 80, 1 / 80, 1 / 480, 1 / 480, 1 / 480]);
  });
  it('has 1/30 and −1/120 about the origin', () => {
    close(aboutOrigin(solid), [1 / 30, 1 / 30, 1 / 30, -1 / 120, -1 / 120, -1 / 120]);
  });
});

it('the regular tetrahedron of edge 1 has √2/12 and m/20', () => {
  const { volume, inertia } = solidOf(REGULAR);
  expect(volume).toBeCloseTo(0.117851, 6);
  close([volume], [Math.SQRT2 / 12]);
  close(inertia, [volume / 20, volume / 20, volume / 20, 0, 0, 0]);
});

describe.each([
  ['cube', box([1, 1, 1])],
  ['right tetrahedron', RIGHT],
  ['regular tetrahedron', REGULAR],
])('a %s', (_, mesh) => {
  const still = solidOf(mesh);

  it('moved by (1000, −500, 200) keeps its inertia to 1e-9', () => {
    const there = solidOf(moved(mesh, [1000, -500, 200]));
    close(there.inertia, still.inertia, 1e-9);
    expect(there.centre[0] - still.centre[0]).toBeCloseTo(1000, 9);
  });

  it('turned inside out has its volume with the other sign', () => {
    const inside = solidOf(turned(mesh));
    close([inside.volume], [-still.volume]);
    close(inside.centre, still.centre);
    close(
      inside.inertia,
      still.inertia.map((i) => -i),
    );
  });

  it('with a hole, or with one triangle turned round, is refused', () => {
    const [first, ...rest] = mesh as [Triangle, ...Triangle[]];
    expect(() => solidOf(rest)).toThrow(RefusalError);
    expect(() => solidOf([...turned([first]), ...rest])).toThrow(/not closed/);
  });
});

describe('the question mesh-mass', async () => {
  const { question } = await loadQuestion('mesh-mass');
  const ask = (mesh: readonly Triangle[], u = 'exactly') => {
    const { points, faces } = indexed(mesh);
    const mm = (x: number) =>
      u === 'exactly' ? `exactly ${1000 * x} mm` : `${1000 * x} ± ${u} mm`;
    return askWritten(question, {
      corners: points.map(([x, y, z]) => ({ x: mm(x), y: mm(y), z: mm(z) })),
      triangles: faces.map((f) => ({ at: f.map((i) => i + 1).join(' ') })),
      density: '1000 ± 10 kg/m3',
    });
  };

  it('gives the unit cube of water 1000 kg and 166.7 kg·m²', () => {
    const answer = ask(box([1, 1, 1]));
    expect(out(answer, 'mass').x).toBeCloseTo(1000, 6);
    expect(out(answer, 'mass').u).toBeCloseTo(10, 6);
    expect(out(answer, 'ixx').x).toBeCloseTo(1000 / 6, 6);
    expect(answer.findings).toEqual([]);
  });

  it('carries the spread of every corner: by a third where two triangles meet, else a sixth', () => {
    const u = Number(out(ask(box([1, 1, 1]), '2'), 'volume').u);
    // Of a face of two triangles, a corner moves the mean by a third of its share of area each.
    const face = 2 * (1 / 3) ** 2 + 2 * (1 / 6) ** 2;
    expect(u).toBeCloseTo(0.002 * Math.sqrt(6 * face), 9);
  });

  it('says that a mesh is wound inwards, and weighs it all the same', () => {
    const answer = ask(turned(RIGHT));
    expect(out(answer, 'mass').x).toBeCloseTo(1000 / 6, 6);
    expect(answer.findings.map((f) => f.code)).toContain('mesh-wound-inwards');
  });
});

describe('the question mass-inertia', async () => {
  const { question } = await loadQuestion('mass-inertia');
  const part = (m: number, [x, y, z]: Point, [a, b, c]: Point) => {
    const own = (p: number, q: number) => `exactly ${(m * (p * p + q * q)) / 12} kg.m2`;
    return {
      mass: `exactly ${m} kg`,
      ...{ x: `exactly ${x} m`, y: `exactly ${y} m`, z: `exactly ${z} m` },
      ...{ ownX: own(b, c), ownY: own(a, c), ownZ: own(a, b) },
    };
  };

  it('puts eight boxes together to one, by parallel axes', () => {
    const halves = [0.25, 0.75];
    const parts = halves.flatMap((x) =>
      halves.flatMap((y) => halves.map((z) => part(3, [2 * x, 3 * y, z], [1, 1.5, 0.5]))),
    );
    const answer = askWritten(question, { parts });
    expect(out(answer, 'mass').x).toBeCloseTo(24, 9);
    expect(out(answer, 'roll').x).toBeCloseTo((24 * (9 + 1)) / 12, 9);
    expect(out(answer, 'pitch').x).toBeCloseTo((24 * (4 + 1)) / 12, 9);
    expect(out(answer, 'yaw').x).toBeCloseTo((24 * (4 + 9)) / 12, 9);
    expect(out(answer, 'ixy').x).toBeCloseTo(0, 9);
  });

  it('of two points at a distance is μ d², with the product of its sign', () => {
    const parts = [part(2, [0, 0, 0], [0, 0, 0]), part(6, [2, 1, 0], [0, 0, 0])];
    const answer = askWritten(question, { parts });
    const reduced = (2 * 6) / (2 + 6);
    expect(out(answer, 'yaw').x).toBeCloseTo(reduced * 5, 9);
    expect(out(answer, 'ixy').x).toBeCloseTo(-reduced * 2, 9);
    expect(answer.findings.map((f) => f.code)).toContain('own-inertia-left-out');
  });
});
