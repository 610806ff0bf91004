import { type PlainInputs, question, type ScalarInput, type Solved } from '../method.ts';
import { PLATES } from '../sections.ts';
import { chosen, scalarsOf, stated } from './inputs.ts';
import { finding, output, refused } from './outputs.ts';
import { bentPlate } from './plate-bending.ts';
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
import { large, methodTable } from './plate-under-pressure.question.ts';

const side = (name: 'u' | 'v', along: 'x' | 'y'): ScalarInput =>
  chosen(
    {
      ...{ name, symbol: name, kind: 'length', unit: 'mm' },
      meaning: `length of the loaded patch along ${along}; 0 for a point`,
      range: [0, 4000],
      bounds: { atLeast: 0 },
    },
    { written: 'exactly 0 mm', x: 0 },
    'not in the record: the foot or tool that presses; a point unless said otherwise',
  );

const NUMBERS = ['a', 'b', 'D', 'poisson', 'depth', 'force', 'atX', 'atY', 'u', 'v'] as const;

export default question({
  id: 'plate-under-force',
  version: 1,
  title: 'Deflection of a plate under a force on a point or patch',
  wording: 'How far does a plate give way under a force, and how stiff is it there?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    ...PLATE_INPUTS,
    DEPTH,
    stated(
      {
        ...{ name: 'force', symbol: 'P', kind: 'force', unit: 'N', meaning: 'force' },
        range: [0.1, 1e5],
      },
      'not in the record: state the load',
    ),
    ...PLACE,
    side('u', 'x'),
    side('v', 'y'),
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
        'deflection under the middle of the load',
        'w = c P s² / D, s the shorter side',
      ),
      output('stiffness', 'k', 'stiffness', 'N/mm', 'stiffness under the load', 'k = P / w'),
      IN_THICKNESSES,
      {
        ...output('coefficient', 'c', 'ratio', '1', 'deflection coefficient', 'c = w D / (P s²)'),
        step: true,
      },
    ],
    solve,
  },
  figures: (x, outs) => {
    const { a, b, D, poisson, force, atX, atY, u, v } = scalarsOf(x, ...NUMBERS);
    const held = heldEdgesOf(x);
    if (!outs.w || 'refusal' in held) return [];
    const place = { x: atX * a, y: atY * b, u, v };
    const bent = bentPlate(a, b, poisson, held.edges, { on: 'patch', ...place });
    return plateFigures(bent, [a, b], held.edges, force / D, place);
  },
  modelError: {},
  sources: [
    {
      title: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition 1959',
      at: 'Navier’s series under a force on a rectangle',
      status: 'from memory',
    },
    {
      title: 'Young and Budynas, Roark’s Formulas for Stress and Strain, 7th edition 2002',
      at: 'table 11.4, case 1b',
      status: 'published',
    },
  ],
  assumptions: [
    ...PLATE_ASSUMPTIONS,
    'All edges supported: Navier’s series. Else Ritz’s method with polynomials; the table beside the answer says which.',
    'The force is spread evenly over the patch; a point is the limit of a small one.',
  ],
  cautions: [],
  checks: [
    {
      what: 'supported plate, force at the middle, sides 1, 1.5 and 2; clamped square plate 0.00560',
      source:
        'Roark’s Formulas for Stress and Strain, table 11.4; Timoshenko and Woinowsky-Krieger, table 37',
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
    force: '20 ± 0.5 N',
    atX: 'exactly 0.5',
    atY: 'exactly 0.5',
    u: '50 ± 2 mm',
    v: '30 ± 2 mm',
    x0: 'clamped',
    xa: 'clamped',
    y0: 'supported',
    yb: 'free',
  },
});

function solve(x: PlainInputs): Solved {
  const s = scalarsOf(x, ...NUMBERS);
  const held = heldEdgesOf(x);
  if ('refusal' in held) return held.refusal;
  if (!sidesKnown(x)) return { outputs: {} };
  const { a, b, D, poisson, force, u, v } = s;
  const [px, py] = [s.atX * a, s.atY * b];
  if (
    px - u / 2 < -1e-9 * a ||
    px + u / 2 > a * (1 + 1e-9) ||
    py - v / 2 < -1e-9 * b ||
    py + v / 2 > b * (1 + 1e-9)
  )
    return refused(
      'patch-off-plate',
      'u',
      'the patch reaches over an edge of the plate',
      'Move it, or give it its size on the plate.',
    );
  const bent = bentPlate(a, b, poisson, held.edges, { on: 'patch', x: px, y: py, u, v });
  if (!bent)
    return refused(
      'plate-not-held',
      'x0',
      'the edges do not hold the plate',
      'Look at the edges again.',
    );
  const one = bent.at(px, py).w;
  const w = (force * one) / D;
  if (!(one > 0) && Number.isFinite(one))
    return refused(
      'patch-off-plate',
      'atX',
      'the force stands on a held edge: nothing bends',
      'Name a place on the plate.',
    );
  return {
    outputs: {
      w,
      inThicknesses: w / s.depth,
      stiffness: D / one,
      coefficient: one / Math.min(a, b) ** 2,
    },
    findings: [...slender(a, b), ...large(w, s.depth), ...pointed(u, v)],
    detail: methodTable(bent),
  };
}

function pointed(u: number, v: number) {
  if (u > 0 || v > 0) return [];
  return [
    finding(
      'note',
      'point-load',
      'u',
      'a point: the deflection is finite, stresses right under it are not',
      'Give the size of what presses.',
    ),
  ];
}
