import { type PlainInputs, question, type Solved } from '../method.ts';
import { PLATES } from '../sections.ts';
import { scalarsOf } from './inputs.ts';
import { output } from './outputs.ts';
import {
  DEPTH,
  EDGE_INPUTS,
  heldEdgesOf,
  PLATE_ASSUMPTIONS,
  PLATE_INPUTS,
  ritzForm,
  sidesKnown,
  slender,
} from './plate-inputs.ts';
import { remembered } from './remembered.ts';
import { bucklingLoad, COARSE, type Edges, ritzPlate } from './ritz-plate.ts';

export default question({
  id: 'plate-buckling',
  version: 1,
  title: 'Buckling of a plate by compression and by shear',
  wording: 'At what load in its plane does a plate buckle?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    ...PLATE_INPUTS,
    { ...DEPTH, meaning: 'thickness that carries load in the plane; both skins together' },
    ...EDGE_INPUTS,
  ],
  uses: ['plate-stiffness'],
  body: {
    body: 'solve',
    outputs: [
      output(
        'N',
        'Ncr',
        'lineLoad',
        'N/mm',
        'compression along x at which it buckles',
        'Ncr = k π² D / b²',
      ),
      {
        ...output(
          'k',
          'k',
          'ratio',
          '1',
          'buckling coefficient, compression along x',
          'k = Ncr b² / (π² D)',
        ),
        step: true,
      },
      output(
        'sigma',
        'σcr',
        'stress',
        'MPa',
        'compressive stress at which it buckles',
        'σcr = Ncr / t',
      ),
      output('S', 'Scr', 'lineLoad', 'N/mm', 'shear at which it buckles', 'Scr = kτ π² D / b²'),
      {
        ...output(
          'kShear',
          'kτ',
          'ratio',
          '1',
          'buckling coefficient, shear',
          'kτ = Scr b² / (π² D)',
        ),
        step: true,
      },
      output('tau', 'τcr', 'stress', 'MPa', 'shear stress at which it buckles', 'τcr = Scr / t'),
    ],
    solve,
  },
  modelError: {
    N: { relative: 0.1, sharedFraction: 0.5 },
    S: { relative: 0.1, sharedFraction: 0.5 },
    sigma: { relative: 0.1, sharedFraction: 0.5 },
    tau: { relative: 0.1, sharedFraction: 0.5 },
  },
  sources: [
    {
      title: 'Timoshenko and Gere, Theory of Elastic Stability, 2nd edition 1961',
      at: 'plates in compression and shear',
      status: 'from memory',
    },
    {
      title: 'Gerard and Becker, Handbook of Structural Stability I, NACA TN 3781, 1957',
      status: 'from memory',
    },
    { title: 'EN 1993-1-5:2006, Plated structural elements', at: 'annex A', status: 'from memory' },
  ],
  assumptions: [
    ...PLATE_ASSUMPTIONS,
    'Compression acts along x, even over the width b; x = 0 and x = a are the loaded edges. Edges stay straight in the plane.',
    'Elastic: where the stress nears yield the plate gives way earlier. Flat: a dent or bow makes it bend from the first load.',
    'A plate does not fail as it buckles; it softens, and its edges take over.',
  ],
  cautions: [],
  checks: [
    {
      what: 'coefficients for compression and shear, edges supported, clamped, one free, sides 1 to 4',
      source: 'Timoshenko and Gere, Theory of Elastic Stability; NACA TN 3781; EN 1993-1-5',
      status: 'from memory, recomputed',
      test: 'test/published/plate-buckling.test.ts',
    },
  ],
  example: {
    a: '600 ± 1 mm',
    b: '200 ± 1 mm',
    D: '9.8 ± 0.3 N.m',
    poisson: '0.3 ± 0.01',
    depth: '0.8 ± 0.01 mm',
    x0: 'supported',
    xa: 'supported',
    y0: 'supported',
    yb: 'free',
  },
});

function solve(x: PlainInputs): Solved {
  const { a, b, D, poisson, depth } = scalarsOf(x, 'a', 'b', 'D', 'poisson', 'depth');
  const held = heldEdgesOf(x);
  if ('refusal' in held) return held.refusal;
  if (!sidesKnown(x)) return { outputs: {} };
  const { n, s, form } = loads(a, b, poisson, held.edges);
  const euler = (Math.PI / b) ** 2;
  return {
    outputs: {
      N: n * D,
      k: n / euler,
      sigma: (n * D) / depth,
      S: s * D,
      kShear: s / euler,
      tau: (s * D) / depth,
    },
    findings: slender(a, b),
    detail: {
      title: 'Method',
      columns: [{ name: 'quantity' }, { name: 'form' }],
      rows: [
        ['compression along x', form],
        ['shear', form],
      ],
    },
  };
}

/** Compression along x and shear at which a plate of D = 1 N·m buckles, N/m. */
const loads = remembered((a: number, b: number, nu: number, edges: Edges) => {
  const plate = ritzPlate(a, b, nu, edges, COARSE);
  return {
    n: bucklingLoad(plate, 'along x') ?? Number.NaN,
    s: bucklingLoad(plate, 'shear') ?? Number.NaN,
    form: ritzForm(plate.x.count, plate.y.count),
  };
});
