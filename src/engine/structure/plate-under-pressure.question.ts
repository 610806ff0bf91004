import { type PlainInputs, question, type Solved } from '../method.ts';
import { PLATES } from '../sections.ts';
import { scalarsOf, stated } from './inputs.ts';
import { finding, output, refused } from './outputs.ts';
import { type BentPlate, bentPlate } from './plate-bending.ts';
import { plateFigures } from './plate-figure.ts';
import {
  DEPTH,
  EDGE_INPUTS,
  heldEdgesOf,
  PLACE,
  PLATE_ASSUMPTIONS,
  PLATE_INPUTS,
  sidesKnown,
  slender,
} from './plate-inputs.ts';
import { IN_THICKNESSES } from './plate-outputs.ts';
import type { Edges } from './ritz-plate.ts';

const NUMBERS = ['a', 'b', 'D', 'poisson', 'depth', 'q', 'atX', 'atY'] as const;

export default question({
  id: 'plate-under-pressure',
  version: 1,
  title: 'Deflection and moments of a plate under an even pressure',
  wording: 'How far does a plate give way under an even pressure, and how is it bent?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    ...PLATE_INPUTS,
    DEPTH,
    stated(
      {
        ...{ name: 'q', symbol: 'q', kind: 'pressureDiff', unit: 'kPa', meaning: 'pressure' },
        range: [0.001, 1000],
      },
      'not in the record: state the load',
    ),
    ...PLACE,
    ...EDGE_INPUTS,
  ],
  uses: ['plate-stiffness'],
  body: {
    body: 'solve',
    outputs: [
      output(
        'w',
        'w',
        'length',
        'mm',
        'deflection at the place named',
        'w = c q s⁴ / D, s the shorter side',
      ),
      output(
        'Mx',
        'Mx',
        'force',
        'N',
        'moment along x there, for a width (N·m/m)',
        'Mx = −D (w,xx + ν w,yy)',
      ),
      output(
        'My',
        'My',
        'force',
        'N',
        'moment along y there, for a width (N·m/m)',
        'My = −D (w,yy + ν w,xx)',
      ),
      output(
        'edgeMoment',
        'Me',
        'force',
        'N',
        'moment at the middle of a clamped edge, largest of them (N·m/m); 0 without one',
        'Me = −D w,nn at the middle of the edge',
      ),
      IN_THICKNESSES,
      {
        ...output('coefficient', 'c', 'ratio', '1', 'deflection coefficient', 'c = w D / (q s⁴)'),
        step: true,
      },
    ],
    solve,
  },
  figures: (x, outs) => {
    const { a, b, D, poisson, q, atX, atY } = scalarsOf(x, ...NUMBERS);
    const held = heldEdgesOf(x);
    if (!outs.w || 'refusal' in held) return [];
    const bent = bentPlate(a, b, poisson, held.edges, { on: 'all' });
    return plateFigures(bent, [a, b], held.edges, q / D, { x: atX * a, y: atY * b });
  },
  modelError: {},
  sources: [
    {
      title: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition 1959',
      at: 'Navier’s series; tables 8 and 35',
      status: 'from memory',
    },
  ],
  assumptions: [
    ...PLATE_ASSUMPTIONS,
    'All edges supported: Navier’s series. Else Ritz’s method with polynomials; the table beside the answer says which.',
  ],
  cautions: [],
  checks: [
    {
      what: 'supported and clamped plates, sides 1 to 3: deflections and moments',
      source:
        'Timoshenko and Woinowsky-Krieger, tables 8 and 35; Roark’s Formulas for Stress and Strain',
      status: 'seen',
      test: 'test/published/plate-deflections.test.ts',
    },
  ],
  example: {
    a: '600 ± 1 mm',
    b: '400 ± 1 mm',
    D: '100 ± 4 N.m',
    poisson: '0.33 ± 0.01',
    depth: '2.5 ± 0.05 mm',
    q: '0.3 ± 0.01 kPa',
    atX: 'exactly 0.5',
    atY: 'exactly 0.5',
    x0: 'clamped',
    xa: 'clamped',
    y0: 'supported',
    yb: 'clamped',
  },
});

function solve(x: PlainInputs): Solved {
  const v = scalarsOf(x, ...NUMBERS);
  const held = heldEdgesOf(x);
  if ('refusal' in held) return held.refusal;
  if (!sidesKnown(x)) return { outputs: {} };
  const { a, b, D, poisson, q } = v;
  const bent = bentPlate(a, b, poisson, held.edges, { on: 'all' });
  if (!bent)
    return refused(
      'plate-not-held',
      'x0',
      'the edges do not hold the plate',
      'Look at the edges again.',
    );
  const here = bent.at(v.atX * a, v.atY * b);
  const w = (q * here.w) / D;
  return {
    outputs: {
      w,
      inThicknesses: w / v.depth,
      Mx: -q * (here.wxx + poisson * here.wyy),
      My: -q * (here.wyy + poisson * here.wxx),
      edgeMoment: q * edgeMoment(bent, a, b, held.edges),
      coefficient: here.w / Math.min(a, b) ** 4,
    },
    findings: [...slender(a, b), ...large(w, v.depth)],
    detail: methodTable(bent),
  };
}

/** The moment of largest size at the middle of a clamped edge, for q = 1. */
function edgeMoment(bent: BentPlate, a: number, b: number, edges: Edges): number {
  const places = [
    [edges.x0, bent.at(0, b / 2).wxx],
    [edges.xa, bent.at(a, b / 2).wxx],
    [edges.y0, bent.at(a / 2, 0).wyy],
    [edges.yb, bent.at(a / 2, b).wyy],
  ] as const;
  const moments = places.map(([edge, bend]) => (edge === 'clamped' ? -bend : 0));
  return moments.reduce((most, m) => (Math.abs(m) > Math.abs(most) ? m : most), 0);
}

/** Small deflections end at about half the thickness. */
export function large(w: number, depth: number) {
  if (!(Math.abs(w) > depth / 2)) return [];
  return [
    finding(
      'doubt',
      'large-deflection',
      'depth',
      'the deflection is more than half the thickness: the plate stretches and gives way less than this',
      'Take it as an upper bound, or measure it.',
    ),
  ];
}

/** Which method an answer about a bent plate used. */
export const methodTable = (bent: BentPlate) => ({
  title: 'Method',
  columns: [{ name: 'quantity' }, { name: 'form' }],
  rows: [
    ['deflection', bent.form],
    ['modulus', 'bending stiffness D as given, E/(1 − ν²) within it'],
  ],
});
