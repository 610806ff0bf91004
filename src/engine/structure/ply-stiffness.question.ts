import { type PlainInputs, question, type Solved } from '../method.ts';
import { LAMINATES } from '../sections.ts';
import { scalarsOf, stated } from './inputs.ts';
import {
  engineeringConstants,
  type Plane3,
  plyFault,
  reducedStiffness,
  turnedStiffness,
} from './lamina.ts';
import { output, refused } from './outputs.ts';
import { PLY_CONSTANTS } from './ply-inputs.ts';

const KEYS = ['11', '12', '22', '66'] as const;
const TURNED = ['11', '12', '16', '22', '26', '66'] as const;

const OWN_SHOWN: Readonly<Record<(typeof KEYS)[number], string>> = {
  '11': 'E₁ / (1 − ν₁₂ ν₂₁), ν₂₁ = ν₁₂ E₂ / E₁',
  '12': 'ν₁₂ E₂ / (1 − ν₁₂ ν₂₁)',
  '22': 'E₂ / (1 − ν₁₂ ν₂₁)',
  '66': 'G₁₂',
};

export default question({
  id: 'ply-stiffness',
  version: 1,
  title: 'Stiffness of one ply at an angle',
  wording: 'How stiff is a ply along, across and at an angle to its fibre?',
  subject: 'part',
  onRequest: true,
  section: LAMINATES,
  inputs: [
    ...PLY_CONSTANTS,
    stated(
      {
        ...{ name: 'angle', symbol: 'θ', kind: 'angle', unit: 'deg' },
        ...{ meaning: 'fibre to the x axis, against the clock', range: [-90, 90] },
      },
      'not in the record: from the ply book',
    ),
  ],
  body: {
    body: 'solve',
    outputs: [
      ...KEYS.map((k) =>
        output(
          `Q${k}`,
          `Q${k}`,
          'stress',
          'GPa',
          `reduced stiffness ${k}, axes of the ply`,
          OWN_SHOWN[k],
        ),
      ),
      ...TURNED.map((k) =>
        output(
          `Qbar${k}`,
          `Q̄${k}`,
          'stress',
          'GPa',
          `stiffness ${k} turned to x and y`,
          'Q̄ = T⁻¹ Q T⁻ᵀ',
        ),
      ),
      output('Ex', 'Ex', 'stress', 'GPa', 'modulus along x', 'Ex = 1 / S̄11, S̄ = Q̄⁻¹'),
      output('Ey', 'Ey', 'stress', 'GPa', 'modulus along y', 'Ey = 1 / S̄22'),
      output('Gxy', 'Gxy', 'stress', 'GPa', 'shear modulus', 'Gxy = 1 / S̄66'),
      output(
        'nuxy',
        'νxy',
        'ratio',
        '1',
        'contraction along y when stretched along x',
        'νxy = −S̄12 / S̄11',
      ),
    ],
    solve,
  },
  modelError: {},
  sources: [
    {
      title: 'Nettles, Basic Mechanics of Laminated Composite Plates, NASA RP-1351, 1994',
      at: 'reduced and turned stiffness, PDF pp. 46 and 84',
      status: 'published',
    },
  ],
  assumptions: [
    'Plane stress; linear and alike in tension and compression.',
    'The minor Poisson ratio follows by reciprocity; sources that round it differ by 0.02 % in Q₁₁.',
    'Shear strain is the engineering one (γ).',
  ],
  cautions: [],
  checks: [
    {
      what: 'Q and Q̄ at 45° in psi, with the minor Poisson ratio as the report rounds it',
      source: 'NASA RP-1351, PDF pp. 46, 84',
      status: 'seen',
      test: 'test/published/nasa-rp-1351.test.ts',
    },
    {
      what: 'T300/5208: Q, Q̄ at 30° and 45°, moduli at 45° and 60°',
      source: 'Tsai and Hahn, Introduction to Composite Materials; Jones; Kaw',
      status: 'from memory, recomputed',
      test: 'test/published/t300-5208.test.ts',
    },
  ],
  example: {
    e1: '181 ± 5 GPa',
    e2: '10.3 ± 0.5 GPa',
    g12: '7.17 ± 0.4 GPa',
    nu12: '0.28 ± 0.02',
    angle: '45 ± 2 °',
  },
});

function solve(x: PlainInputs): Solved {
  const { angle, ...ply } = scalarsOf(x, 'e1', 'e2', 'g12', 'nu12', 'angle');
  const fault = plyFault(ply);
  if (fault)
    return refused(
      'no-such-ply',
      'nu12',
      `this can be no material: ${fault}`,
      'Look the constants up again.',
    );
  const own = reducedStiffness(ply);
  const turned = turnedStiffness(own, angle);
  const term = (q: Plane3, k: string) => q[`q${k}` as keyof Plane3];
  const { ex, ey, gxy, nuxy } = engineeringConstants(turned);
  return {
    outputs: {
      ...Object.fromEntries(KEYS.map((k) => [`Q${k}`, term(own, k)])),
      ...Object.fromEntries(TURNED.map((k) => [`Qbar${k}`, term(turned, k)])),
      Ex: ex,
      Ey: ey,
      Gxy: gxy,
      nuxy,
    },
  };
}
