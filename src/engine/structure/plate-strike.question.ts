import { type PlainInputs, question, type ScalarInput, type Solved } from '../method.ts';
import { PLATES } from '../sections.ts';
import { scalarsOf, stated } from './inputs.ts';
import { exponents, finding, output, refused } from './outputs.ts';
import { bentPlate } from './plate-bending.ts';
import {
  DEPTH,
  EDGE_INPUTS,
  heldEdgesOf,
  PLATE_ASSUMPTIONS,
  PLATE_INPUTS,
  sidesKnown,
  slender,
} from './plate-inputs.ts';
import { IN_THICKNESSES } from './plate-outputs.ts';
import { large } from './plate-under-pressure.question.ts';
import { type Limit, type Strike, strikeOf, unitStrike } from './strike.ts';

const LIMITS: readonly Limit[] = ['first yield', 'largest strain'];

const side = (name: 'u' | 'v', along: 'x' | 'y'): ScalarInput =>
  stated(
    {
      ...{ name, symbol: name, kind: 'length', unit: 'mm', range: [5, 1000] },
      ...{ meaning: `length of the struck patch along ${along}`, bounds: { above: 0 } },
    },
    'not in the record: the size of what strikes',
  );

const NUMBERS = ['a', 'b', 'D', 'poisson', 'depth', 'strain', 'u', 'v'] as const;

export default question({
  id: 'plate-strike',
  version: 1,
  title: 'Strike work of a plate',
  wording: 'How much work does a floor take at its middle before its face yields or cracks?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    ...PLATE_INPUTS,
    DEPTH,
    stated(
      {
        ...{ name: 'strain', symbol: 'εL', kind: 'ratio', unit: '1', range: [1e-4, 0.05] },
        meaning: 'limit strain of the face: yield stress over E, or first-ply strain',
        bounds: { above: 0 },
      },
      'not in the record: from the table of materials, or laminate-strain',
    ),
    {
      in: 'term',
      name: 'limit',
      meaning: 'what the limit strain is compared with',
      options: LIMITS,
      where: 'not in the record: first yield for a metal, largest strain for a laminate',
      find: (at) => at.word(''),
    },
    side('u', 'x'),
    side('v', 'y'),
    ...EDGE_INPUTS,
  ],
  uses: ['plate-stiffness'],
  body: {
    body: 'solve',
    outputs: [
      output('work', 'U', 'energy', 'J', 'elastic work until the limit', 'U = ½ P w'),
      output('force', 'P', 'force', 'N', 'force at the limit', 'P = 2 εL D / (t κ₁)'),
      output(
        'w',
        'w',
        'length',
        'mm',
        'mean deflection under the patch at the limit',
        'w = P w₁ / D',
      ),
      IN_THICKNESSES,
    ],
    solve,
  },
  modelError: {},
  sources: [
    {
      title: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition 1959',
      at: 'Navier’s series under a patch on a rectangle',
      status: 'from memory',
    },
    {
      title: 'Elastic work to first yield as a figure to rank floors by',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    ...PLATE_ASSUMPTIONS,
    'Pressed slowly, evenly over the patch: no waves, no mass of the plate, no dent under what strikes, no stretching of the middle plane.',
    'The section is alike above and below its middle plane; strains are looked at under the middle of the patch and at the middle of clamped edges.',
    'A figure to rank floors by. It does not say what a floor survives: real strikes dent, tear and stretch, and what lies above has limits of its own.',
  ],
  cautions: [],
  checks: [
    {
      what: 'work against the strain energy of the sine series, deflection and moment under a patch',
      source:
        'Timoshenko and Woinowsky-Krieger (0.01160 under a point), Roark table 11.4 case 1c (1.28), both from memory',
      status: 'from memory, recomputed',
      test: 'test/published/plate-strike.test.ts',
    },
  ],
  example: {
    a: '600 ± 1 mm',
    b: '400 ± 1 mm',
    D: '102 ± 4 N.m',
    poisson: '0.33 ± 0.01',
    depth: '2.5 ± 0.05 mm',
    strain: '0.002 ± 0.0002',
    limit: 'first yield',
    u: '50 ± 2 mm',
    v: '50 ± 2 mm',
    x0: 'clamped',
    xa: 'clamped',
    y0: 'supported',
    yb: 'supported',
  },
});

function solve(x: PlainInputs): Solved {
  const { a, b, D, poisson, depth, strain, u, v } = scalarsOf(x, ...NUMBERS);
  const held = heldEdgesOf(x);
  if ('refusal' in held) return held.refusal;
  const limit = LIMITS.find((l) => l === x.terms.limit);
  if (!limit)
    return refused(
      'limit-not-named',
      'limit',
      'it is not said what the limit strain is compared with',
      `Give ${LIMITS.join(' or ')}.`,
    );
  if (!sidesKnown(x) || !Number.isFinite(u + v)) return { outputs: {} };
  if (u > a || v > b)
    return refused(
      'patch-off-plate',
      u > a ? 'u' : 'v',
      'the patch reaches over an edge of the plate',
      'Give it its size on the plate.',
    );
  const bent = bentPlate(a, b, poisson, held.edges, { on: 'patch', x: a / 2, y: b / 2, u, v });
  if (!bent)
    return refused(
      'plate-not-held',
      'x0',
      'the edges do not hold the plate',
      'Look at the edges again.',
    );
  const unit = unitStrike(bent, { a, b, u, v }, poisson, held.edges, limit);
  const { work, force, w } = strikeOf(unit, D, depth, strain);
  return {
    outputs: { work, force, w, inThicknesses: w / depth },
    findings: [...slender(a, b), ...large(w, depth), ...small(u, v, depth)],
    detail: strikeTable(
      (t, e) => strikeOf(unit, D * t ** 3, depth * t, strain * e),
      `${bent.form}; ${limit}, ${unit.where}`,
    ),
  };
}

/** Exponents of a solid plate, whose D goes with its thickness, and of the limit strain. */
function strikeTable(at: (thickness: number, strain: number) => Strike, form: string) {
  const [thickness, strain] = [
    exponents((f) => ({ ...at(f, 1) })),
    exponents((f) => ({ ...at(1, f) })),
  ];
  const row = (words: string, of: keyof Strike) => [words, form, thickness[of], strain[of]];
  return {
    title: 'Forms used, and exponents',
    columns: [
      { name: 'quantity' },
      { name: 'form' },
      { name: 'exponent of the thickness, solid plate' },
      { name: 'exponent of the limit strain' },
    ],
    rows: [row('work', 'work'), row('force', 'force'), row('deflection', 'w')],
  };
}

/** Thin plate theory bends a plate too sharply under what is smaller than its thickness. */
function small(u: number, v: number, depth: number) {
  if (!(Math.min(u, v) < depth)) return [];
  return [
    finding(
      'doubt',
      'patch-below-thickness',
      u < v ? 'u' : 'v',
      'the patch is smaller than the plate is thick: strains right under it are not those of a thin plate',
      'Take a patch of at least the thickness.',
    ),
  ];
}
