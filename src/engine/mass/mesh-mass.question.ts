import type { Finding } from '../../study/index.ts';
import { type OutputSpec, type PlainRow, question, type ScalarColumn } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { type Face, type Point, solidOf } from './polyhedron.ts';

const AXES = ['x', 'y', 'z'] as const;

const coordinate = (axis: string): ScalarColumn => ({
  in: 'scalar',
  name: axis,
  symbol: axis,
  kind: 'length',
  unit: 'mm',
  meaning: `${axis.toUpperCase()} of the corner`,
  range: [-20_000, 20_000],
  where: 'given with the mesh',
  find: (at) => at.missing('mesh', 'a study holds no mesh of its own'),
});

const inertia = (name: string, axes: string): OutputSpec => ({
  name,
  symbol: `I${axes}`,
  kind: 'inertia',
  unit: 'kg.m2',
  meaning: `inertia about the centre, element ${axes}`,
  shown:
    axes[0] === axes[1]
      ? `I${axes} = ρ ∫ (r² − ${axes[0]}²) dV`
      : `I${axes} = −ρ ∫ ${axes[0]} ${axes[1]} dV`,
});
const centre = (axis: string): OutputSpec => ({
  name: axis,
  symbol: axis.toUpperCase(),
  kind: 'length',
  unit: 'mm',
  meaning: `centre of gravity, ${axis.toUpperCase()}`,
  shown: `${axis.toUpperCase()} = ∫ ${axis} dV / V`,
});

/** Corners of a box 60 × 20 × 40 mm, and its faces. */
const BOX = [0, 40].flatMap((z) => [0, 20].flatMap((y) => [0, 60].map((x) => ({ x, y, z }))));
const FACES = '1 3 4,1 4 2,5 6 8,5 8 7,1 2 6,1 6 5,3 7 8,3 8 4,1 5 7,1 7 3,2 4 8,2 8 6'.split(',');

export default question({
  id: 'mesh-mass',
  version: 1,
  title: 'Mass, centre and inertia of a closed mesh',
  wording: 'What does a body weigh whose surface is known, and how hard is it to turn?',
  subject: 'part',
  section: BALANCE,
  onRequest: true,
  inputs: [
    {
      in: 'table',
      name: 'corners',
      meaning: 'one corner of the surface',
      where: 'given with the mesh: a study holds none of its own',
      rows: () => [],
      columns: AXES.map(coordinate),
    },
    {
      in: 'table',
      name: 'triangles',
      meaning: 'one triangle of the surface',
      where: 'given with the mesh',
      rows: () => [],
      columns: [
        {
          in: 'term',
          name: 'at',
          meaning: 'numbers of its corners from 1, counter-clockwise seen from outside: "1 2 3"',
          where: 'given with the mesh',
          find: (at) => at.word(''),
        },
      ],
    },
    {
      in: 'scalar',
      name: 'density',
      symbol: 'ρ',
      kind: 'density',
      unit: 'kg/m3',
      meaning: 'density of the material',
      range: [20, 20_000],
      bounds: { above: 0 },
      where: 'density of the part',
      find: (at) => at.number(at.subject, 'density'),
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'volume',
        symbol: 'V',
        kind: 'volume',
        unit: 'cm3',
        meaning: 'volume within the surface',
        shown: 'V = Σ a · (b × c) / 6',
      },
      {
        name: 'mass',
        symbol: 'm',
        kind: 'mass',
        unit: 'kg',
        meaning: 'mass of the body',
        shown: 'm = ρ V',
      },
      ...AXES.map(centre),
      ...['xx', 'yy', 'zz', 'xy', 'xz', 'yz'].map((axes) => inertia(`i${axes}`, axes)),
    ],
    solve: ({ tables, scalars }) => {
      const faces = (tables.triangles ?? []).map(faceOf);
      if (faces.length === 0) return { outputs: {} };
      const solid = solidOf((tables.corners ?? []).map(pointOf), faces);
      const density = scalars.density ?? Number.NaN;
      // Wound inwards, volume and moments change sign together.
      const sign = Math.sign(solid.volume);
      const [x, y, z] = solid.centre;
      const moments = solid.inertia.map((i) => density * sign * i);
      return {
        outputs: {
          volume: Math.abs(solid.volume),
          mass: density * Math.abs(solid.volume),
          ...{ x, y, z },
          ...Object.fromEntries(INERTIAS.map((name, i) => [name, moments[i] ?? Number.NaN])),
        },
        findings: sign < 0 ? [woundInwards] : [],
      };
    },
  },
  modelError: {},
  sources: [
    {
      title: 'Integrals over tetrahedra from a point to each triangle (divergence theorem)',
      status: 'from memory',
    },
  ],
  assumptions: [
    'The surface is closed and the body solid and of one density: a mesh with an open edge is refused.',
    'Elements off the diagonal are those of the inertia matrix, the negatives of the products.',
  ],
  cautions: [],
  checks: [
    {
      what: 'unit cube, right and regular tetrahedron; moved, turned inside out, with a hole',
      source: 'cube m/6, box and tetrahedron m L²/20 (tables of moments of inertia)',
      status: 'seen',
      test: 'test/published/polyhedra.test.ts',
    },
  ],
  example: {
    corners: BOX.map(({ x, y, z }) => ({
      x: `${x} ± 0.1 mm`,
      y: `${y} ± 0.1 mm`,
      z: `${z} ± 0.1 mm`,
    })),
    triangles: FACES.map((at) => ({ at })),
    density: '2700 ± 20 kg/m3',
  },
});

const INERTIAS = ['ixx', 'iyy', 'izz', 'ixy', 'ixz', 'iyz'] as const;

const pointOf = ({ x, y, z }: PlainRow): Point => [Number(x), Number(y), Number(z)];
const faceOf = ({ at }: PlainRow): Face =>
  String(at)
    .trim()
    .split(/[\s,;]+/)
    .map((n) => Number(n) - 1) as unknown as Face;

const woundInwards: Finding = {
  code: 'mesh-wound-inwards',
  level: 'note',
  place: { column: 'triangles' },
  what: 'the triangles run clockwise seen from outside: the volume is negative as they stand, and is taken without its sign',
  next: 'Turn the triangles round where the mesh goes on to other calculations.',
};
