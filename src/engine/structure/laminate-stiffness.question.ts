import type { Kind } from '../../quantity/index.ts';
import { type DetailTable, type PlainInputs, question, type Solved } from '../method.ts';
import { LAMINATES } from '../sections.ts';
import { engineeringConstants, type Plane3 } from './lamina.ts';
import { type Laminate, laminateStiffness, type PlacedPly } from './laminate.ts';
import { finding, output } from './outputs.ts';
import { FIRST_PLY, LAMINATE_ASSUMPTIONS, materialTable, PLIES, pliesOf } from './ply-inputs.ts';

const TERMS = ['11', '12', '16', '22', '26', '66'] as const;
/** Share of √(A₁₁ D₁₁) from which coupling of stretching and bending is worth a word. */
const COUPLED = 0.02;

const matrix = (letter: string, kind: Kind, unit: string, meaning: string, shown: string) =>
  TERMS.map((k) => output(`${letter}${k}`, `${letter}${k}`, kind, unit, `${meaning}, ${k}`, shown));

export default question({
  id: 'laminate-stiffness',
  version: 1,
  title: 'Stiffness of a laminate',
  wording: 'How stiff is a laminate in its plane and in bending, and do the two couple?',
  subject: 'part',
  onRequest: true,
  section: LAMINATES,
  inputs: [FIRST_PLY, materialTable(), PLIES],
  body: {
    body: 'solve',
    outputs: [
      output('height', 'h', 'length', 'mm', 'thickness of the laminate', 'h = Σ t'),
      ...matrix('A', 'stiffness', 'N/mm', 'stiffness in the plane', 'A = Σ Q̄ (z₂ − z₁)'),
      ...matrix('B', 'force', 'kN', 'coupling of stretching and bending', 'B = ½ Σ Q̄ (z₂² − z₁²)'),
      ...matrix('D', 'flexuralRigidity', 'N.m', 'bending stiffness', 'D = ⅓ Σ Q̄ (z₂³ − z₁³)'),
      output(
        'Ex',
        'Ex',
        'stress',
        'GPa',
        'modulus along x, held flat',
        'Ex = 1 / (h a11), a = A⁻¹',
      ),
      output('Ey', 'Ey', 'stress', 'GPa', 'modulus along y, held flat', 'Ey = 1 / (h a22)'),
      output('Gxy', 'Gxy', 'stress', 'GPa', 'shear modulus, held flat', 'Gxy = 1 / (h a66)'),
      output(
        'nuxy',
        'νxy',
        'ratio',
        '1',
        'contraction along y when stretched along x',
        'νxy = −a12 / a11',
      ),
      output(
        'Efx',
        'Efx',
        'stress',
        'GPa',
        'modulus in bending along x',
        'Efx = 12 / (h³ d11), d = D⁻¹',
      ),
      output('Efy', 'Efy', 'stress', 'GPa', 'modulus in bending along y', 'Efy = 12 / (h³ d22)'),
    ],
    solve,
  },
  modelError: {},
  sources: [
    {
      title: 'Nettles, Basic Mechanics of Laminated Composite Plates, NASA RP-1351, 1994',
      at: 'A, B and D of laminates; examples 2 and 9',
      status: 'published',
    },
    {
      title: 'Kaw, Mechanics of Composite Materials, 2nd edition 2006',
      at: 'example 4.2',
      status: 'from memory',
    },
  ],
  assumptions: [
    ...LAMINATE_ASSUMPTIONS,
    'The moduli in the plane are those of the laminate held flat (from A alone); one free to curl is softer where B is not zero.',
  ],
  cautions: [],
  checks: [
    {
      what: 'A and B of [45/0/90] and [0/45] in inches and pounds, first ply at the top',
      source: 'NASA RP-1351, examples 9 (p. 84) and 2 (p. 46)',
      status: 'seen',
      test: 'test/published/nasa-rp-1351.test.ts',
    },
    {
      what: 'quasi-isotropic [0/45/90/−45]s: A, D, B = 0, moduli',
      source: 'Nettles, NASA RP-1351 (method); numbers seen, moduli recomputed',
      status: 'seen',
      test: 'test/published/nasa-rp-1351.test.ts',
    },
    {
      what: '[0/90], [45/−45] and [0/30/−45] of T300/5208: A, B, D, and the sign of B',
      source: 'Kaw, Mechanics of Composite Materials, 2nd edition, example 4.2; Tsai and Hahn',
      status: 'from memory, recomputed',
      test: 'test/published/t300-5208.test.ts',
    },
  ],
  example: {
    order: 'first ply at the top (+z)',
    materials: [
      {
        material: 'carbon',
        e1: '135 ± 5 GPa',
        e2: '9 ± 0.5 GPa',
        g12: '5 ± 0.4 GPa',
        nu12: '0.3 ± 0.02',
      },
    ],
    plies: [
      { material: 'carbon', angle: '0 ± 2 °', thickness: '0.25 ± 0.01 mm' },
      { material: 'carbon', angle: '45 ± 2 °', thickness: '0.25 ± 0.01 mm' },
      { material: 'carbon', angle: '90 ± 2 °', thickness: '0.25 ± 0.01 mm' },
    ],
  },
});

function solve(x: PlainInputs): Solved {
  const made = pliesOf(x);
  if ('refusal' in made) return made.refusal;
  const laminate = laminateStiffness(made.plies);
  const { height, a, b, d } = laminate;
  const flat = engineeringConstants(a);
  const bent = engineeringConstants(d);
  const named = (letter: string, q: Plane3) =>
    TERMS.map((k) => [`${letter}${k}`, q[`q${k}` as keyof Plane3]] as const);
  return {
    outputs: {
      ...Object.fromEntries([...named('A', a), ...named('B', b), ...named('D', d)]),
      height,
      Ex: flat.ex / height,
      Ey: flat.ey / height,
      Gxy: flat.gxy / height,
      nuxy: flat.nuxy,
      Efx: (12 * bent.ex) / height ** 3,
      Efy: (12 * bent.ey) / height ** 3,
    },
    findings: coupling(laminate),
    detail: placesOf(made.plies),
  };
}

function coupling({ a, b, d }: Laminate) {
  const scale = Math.sqrt(a.q11 * d.q11);
  const most = Math.max(...Object.values(b).map(Math.abs));
  if (!(most > COUPLED * scale)) return [];
  return [
    finding(
      'note',
      'stretching-bends',
      'plies',
      'the laminate is not balanced about its middle: pulling it bends it, and it warps on cooling',
      'Use the strains of laminate-strain; the moduli in the plane hold only while it is kept flat.',
    ),
  ];
}

/** Where each ply lies, from the top down: settles the order that was meant. */
export function placesOf(plies: readonly PlacedPly[]): DetailTable {
  return {
    title: 'Plies from the top (+z) down',
    columns: [
      { name: 'ply' },
      { name: 'fibre to x', kind: 'angle', unit: 'deg' },
      { name: 'from z', kind: 'length', unit: 'mm' },
      { name: 'to z', kind: 'length', unit: 'mm' },
    ],
    rows: [...plies].reverse().map((p, i) => [String(i + 1), p.angle, p.top, p.bottom]),
  };
}
