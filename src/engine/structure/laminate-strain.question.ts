import {
  type PlainInputs,
  type PlainRow,
  question,
  type ScalarColumn,
  type Solved,
} from '../method.ts';
import { LAMINATES } from '../sections.ts';
import { chosen, scalarsOf } from './inputs.ts';
import { plyStrains } from './lamina.ts';
import {
  laminateStiffness,
  type PlacedPly,
  type PlateStrains,
  plateStrains,
  type Triple,
} from './laminate.ts';
import { output, refused } from './outputs.ts';
import {
  FIRST_PLY,
  LAMINATE_ASSUMPTIONS,
  materialTable,
  PLIES,
  pliesOf,
  plyColumn,
} from './ply-inputs.ts';

const LIMITS = [
  ['t1', 'ε₁ₜ', 'tensile strain along the fibre that it bears'],
  ['c1', 'ε₁c', 'compressive strain along the fibre that it bears, above zero'],
  ['t2', 'ε₂ₜ', 'tensile strain across the fibre that it bears'],
  ['c2', 'ε₂c', 'compressive strain across the fibre that it bears, above zero'],
  ['s12', 'γ₁₂', 'shear strain in the plane that it bears'],
] as const;

const limit = ([name, symbol, meaning]: (typeof LIMITS)[number]): ScalarColumn =>
  plyColumn({
    ...{ name, symbol, meaning, kind: 'ratio', unit: '%' },
    ...{ range: [0.05, 6], bounds: { above: 0 } },
  });

const LOAD = 'not in the record: state the load; none unless said otherwise';
const force = (name: string, symbol: string, meaning: string) =>
  chosen(
    { name, symbol, meaning, kind: 'lineLoad', unit: 'N/mm', range: [-1e4, 1e4] },
    { written: 'exactly 0 N/mm', x: 0 },
    LOAD,
  );
const moment = (name: string, symbol: string, meaning: string) =>
  chosen(
    { name, symbol, meaning, kind: 'force', unit: 'N', range: [-1e5, 1e5] },
    { written: 'exactly 0 N', x: 0 },
    LOAD,
  );

export default question({
  id: 'laminate-strain',
  version: 1,
  title: 'Strains of a laminate, and its first ply to reach its limit',
  wording: 'How far does a laminate strain and bend under load, and which ply gives way first?',
  subject: 'part',
  onRequest: true,
  section: LAMINATES,
  inputs: [
    force('nx', 'Nx', 'force along x for a width'),
    force('ny', 'Ny', 'force along y for a width'),
    force('nxy', 'Nxy', 'shear force for a width'),
    moment('mx', 'Mx', 'moment that bends x, for a width, N·m/m'),
    moment('my', 'My', 'moment that bends y, for a width, N·m/m'),
    moment('mxy', 'Mxy', 'twisting moment for a width, N·m/m'),
    FIRST_PLY,
    materialTable(...LIMITS.map(limit)),
    PLIES,
  ],
  body: {
    body: 'solve',
    outputs: [
      output(
        'ex',
        'εx',
        'ratio',
        '%',
        'strain of the middle plane along x',
        '[ε; κ] = [A B; B D]⁻¹ [N; M]',
      ),
      output('ey', 'εy', 'ratio', '%', 'strain of the middle plane along y', 'as εx'),
      output('gxy', 'γxy', 'ratio', '%', 'shear strain of the middle plane', 'as εx'),
      output('kx', 'κx', 'curvature', '/m', 'curvature along x', 'as εx; ε(z) = ε + z κ'),
      output('ky', 'κy', 'curvature', '/m', 'curvature along y', 'as κx'),
      output('kxy', 'κxy', 'curvature', '/m', 'twist', 'as κx'),
      output(
        'factor',
        'R',
        'ratio',
        '1',
        'factor on all loads at which the first ply reaches a strain it bears',
        'R = min over plies, faces and directions of limit / strain',
      ),
    ],
    solve,
  },
  modelError: { factor: { relative: 0.15, sharedFraction: 0.5 } },
  sources: [
    {
      title: 'Nettles, Basic Mechanics of Laminated Composite Plates, NASA RP-1351, 1994',
      at: 'strains from forces and moments; largest-strain criterion',
      status: 'published',
    },
    {
      title: 'Kaw, Mechanics of Composite Materials, 2nd edition 2006',
      at: 'example 4.3',
      status: 'from memory',
    },
  ],
  assumptions: [
    ...LAMINATE_ASSUMPTIONS,
    'A positive Mx stretches the top face (+z) along x.',
    'First ply by largest strain: directions do not act together; residual strains of curing are left out.',
    'The laminate may bear more after its first ply has cracked, or less where plies peel apart.',
  ],
  cautions: [],
  checks: [
    {
      what: '[0/30/−45] of T300/5208 under Nx = Ny = 1000 N/m: strains and curvatures',
      source: 'Kaw, Mechanics of Composite Materials, 2nd edition, example 4.3',
      status: 'from memory, recomputed',
      test: 'test/published/t300-5208.test.ts',
    },
  ],
  example: {
    nx: '100 ± 2 N/mm',
    ny: '20 ± 2 N/mm',
    nxy: '10 ± 2 N/mm',
    mx: '60 ± 2 N',
    my: '20 ± 1 N',
    mxy: '5 ± 0.5 N',
    order: 'first ply at the top (+z)',
    materials: [
      {
        ...{ material: 'carbon', e1: '135 ± 5 GPa', e2: '9 ± 0.5 GPa', g12: '5 ± 0.4 GPa' },
        ...{ nu12: '0.3 ± 0.02', t1: '1.1 ± 0.1 %', c1: '0.8 ± 0.1 %' },
        ...{ t2: '0.5 ± 0.05 %', c2: '2 ± 0.2 %', s12: '1.5 ± 0.2 %' },
      },
    ],
    plies: [
      { material: 'carbon', angle: '0 ± 2 °', thickness: '0.5 ± 0.02 mm' },
      { material: 'carbon', angle: '90 ± 2 °', thickness: '0.5 ± 0.02 mm' },
      { material: 'carbon', angle: '0 ± 2 °', thickness: '0.5 ± 0.02 mm' },
    ],
  },
});

function solve(x: PlainInputs): Solved {
  const made = pliesOf(x);
  if ('refusal' in made) return made.refusal;
  const l = scalarsOf(x, 'nx', 'ny', 'nxy', 'mx', 'my', 'mxy');
  const strains = plateStrains(
    laminateStiffness(made.plies),
    [l.nx, l.ny, l.nxy],
    [l.mx, l.my, l.mxy],
  );
  if (!strains)
    return refused(
      'no-such-laminate',
      'plies',
      'the laminate has no stiffness',
      'Look the constants up again.',
    );
  const faces = facesOf(x, made.plies, strains);
  const [ex, ey, gxy] = strains.strain;
  const [kx, ky, kxy] = strains.curvature;
  const most = Math.max(...faces.flatMap((f) => f.used));
  return {
    outputs: { ex, ey, gxy, kx, ky, kxy, factor: 1 / most },
    detail: {
      title: 'Strains in the axes of each ply, from the top (+z) down',
      columns: [
        { name: 'ply' },
        { name: 'face' },
        { name: 'along the fibre', kind: 'ratio', unit: '%' },
        { name: 'across', kind: 'ratio', unit: '%' },
        { name: 'shear', kind: 'ratio', unit: '%' },
        ...['along', 'across', 'shear'].map((way) => ({
          ...{ name: `share of the limit, ${way}`, kind: 'ratio' as const, unit: '%' },
        })),
      ],
      rows: faces.map((f) => [f.ply, f.face, ...f.strain, ...f.used]),
    },
  };
}

/** Strains at both faces of every ply, and how much of its limits they are. */
function facesOf(x: PlainInputs, plies: readonly PlacedPly[], { strain, curvature }: PlateStrains) {
  const at = (z: number): Triple => [
    strain[0] + z * curvature[0],
    strain[1] + z * curvature[1],
    strain[2] + z * curvature[2],
  ];
  const limits = new Map((x.tables.materials ?? []).map((row) => [row.material, row]));
  return [...plies].reverse().flatMap((p, i) =>
    (['top', 'bottom'] as const).map((face) => {
      const own = plyStrains(at(p[face]), p.angle);
      return {
        ply: String(i + 1),
        face,
        strain: own,
        used: usedShares(own, limits.get(p.material)),
      };
    }),
  );
}

/** How much of its limits each strain is: along the fibre, across, in shear. */
function usedShares([e1, e2, g12]: readonly number[], limits: PlainRow | undefined): Triple {
  const share = (e = 0, tension: string, compression: string) =>
    Math.max(e / Number(limits?.[tension]), -e / Number(limits?.[compression]));
  return [share(e1, 't1', 'c1'), share(e2, 't2', 'c2'), share(g12, 's12', 's12')];
}
