import { type PlainInputs, question, type Solved } from '../method.ts';
import { PLATES } from '../sections.ts';
import { scalarsOf } from './inputs.ts';
import { finding, output } from './outputs.ts';
import {
  EDGE_INPUTS,
  edgesOf,
  PLATE_ASSUMPTIONS,
  PLATE_INPUTS,
  ritzForm,
  sidesKnown,
  slender,
} from './plate-inputs.ts';
import { AREAL_MASS } from './plate-outputs.ts';
import { remembered } from './remembered.ts';
import { type Edges, plateModes, rigidMotions, ritzPlate } from './ritz-plate.ts';

const MODES = 8;

export default question({
  id: 'plate-frequencies',
  version: 1,
  title: 'Natural frequencies of a plate',
  wording: 'At which frequencies does a plate ring?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    ...PLATE_INPUTS,
    {
      in: 'scalar',
      name: 'mass',
      symbol: 'm',
      kind: AREAL_MASS.kind,
      unit: AREAL_MASS.unit,
      meaning: 'mass for an area, with what rides on the plate',
      range: [0.1, 500],
      bounds: { above: 0 },
      where: 'plate-stiffness of the part; two-skin-stiffness gives that of two skins',
      find: (at) => at.ask('plate-stiffness', at.subject, 'arealMass'),
    },
    ...EDGE_INPUTS,
  ],
  uses: ['plate-stiffness'],
  body: {
    body: 'solve',
    outputs: Array.from({ length: MODES }, (_, i) =>
      output(
        `f${i + 1}`,
        `f${i + 1}`,
        'frequency',
        'Hz',
        `natural frequency ${i + 1}, without bodily motion`,
        'f = (λ / (2 π a²)) √(D / m), λ = ω a² √(m / D)',
      ),
    ),
    solve,
  },
  modelError: {},
  sources: [
    {
      title: 'Leissa, The free vibration of rectangular plates, J. Sound Vib. 31, 1973',
      status: 'from memory',
    },
    {
      title: 'NAFEMS, Selected Benchmarks for Natural Frequency Analysis, FV12',
      status: 'published',
    },
  ],
  assumptions: [
    ...PLATE_ASSUMPTIONS,
    'In vacuum, undamped; what rides on the plate counts as mass alone.',
    'Bodily motions of a plate that is free to move are left out.',
  ],
  cautions: [],
  checks: [
    {
      what: 'square and long plates supported, clamped, cantilevered and free: ω a² √(m/D)',
      source: 'Leissa, J. Sound Vib. 31, 1973',
      status: 'from memory, recomputed',
      test: 'test/published/plate-frequencies.test.ts',
    },
    {
      what: 'free square plate of 10 m: eight frequencies in Hz',
      source: 'NAFEMS Selected Benchmarks, FV12',
      status: 'seen',
      test: 'test/published/plate-frequencies.test.ts',
    },
  ],
  example: {
    a: '600 ± 1 mm',
    b: '400 ± 1 mm',
    D: '100 ± 4 N.m',
    poisson: '0.33 ± 0.01',
    mass: '6.8 ± 0.1 kg/m2',
    x0: 'clamped',
    xa: 'free',
    y0: 'free',
    yb: 'free',
  },
});

function solve(x: PlainInputs): Solved {
  const { a, b, D, poisson, mass } = scalarsOf(x, 'a', 'b', 'D', 'poisson', 'mass');
  const found = edgesOf(x);
  if ('refusal' in found) return found.refusal;
  if (!sidesKnown(x)) return { outputs: {} };
  const { modes, rigid, form } = motions(a, b, poisson, found.edges);
  const hertz = (lambda: number) => Math.sqrt((lambda * D) / mass) / (2 * Math.PI);
  return {
    outputs: Object.fromEntries(modes.map((lambda, i) => [`f${i + 1}`, hertz(lambda)])),
    findings: [...slender(a, b), ...loose(rigid)],
    detail: {
      title: `Method: ${form}`,
      columns: [
        { name: 'frequency' },
        { name: 'ω a² √(m/D)' },
        { name: 'exponent of D' },
        { name: 'exponent of the mass' },
      ],
      rows: modes.map((lambda, i) => [String(i + 1), Math.sqrt(lambda) * a * a, 0.5, -0.5]),
    },
  };
}

/** λ = ω² m / D of the first motions, 1/m⁴, those without bending left out. */
const motions = remembered((a: number, b: number, nu: number, edges: Edges) => {
  const plate = ritzPlate(a, b, nu, edges);
  const rigid = rigidMotions(edges);
  const modes = plateModes(plate).slice(rigid, rigid + MODES);
  return { modes, rigid, form: ritzForm(plate.x.count, plate.y.count) };
});

function loose(rigid: number) {
  if (rigid === 0) return [];
  return [
    finding(
      'note',
      'bodily-motion',
      'x0',
      `the edges leave the plate ${rigid} bodily motion${rigid === 1 ? '' : 's'}, left out here`,
      'Nothing, when it lies on soft supports.',
    ),
  ];
}
