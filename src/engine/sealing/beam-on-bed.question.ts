import {
  type PlainInputs,
  question,
  type ScalarColumn,
  type ScalarInput,
  type Solved,
} from '../method.ts';
import { SEALING } from '../sections.ts';
import { scalarsOf, stated } from '../structure/inputs.ts';
import { output } from '../structure/outputs.ts';
import { spreadLoad, spreadOf } from './flange.ts';

const STATE = 'not in the record: state it';
const told = (
  name: string,
  symbol: string,
  kind: ScalarInput['kind'],
  unit: string,
  meaning: string,
  range: ScalarInput['range'],
): ScalarInput =>
  stated({ ...{ name, symbol, kind, unit, meaning, range }, bounds: { above: 0 } }, STATE);

/** Moment by a unit load at a distance, times 4 β. */
const bendLoad = (x: number): number =>
  Math.exp(-Math.abs(x)) * (Math.cos(x) - Math.sin(Math.abs(x)));

const loadColumn = (
  name: string,
  symbol: string,
  kind: ScalarInput['kind'],
  unit: string,
  meaning: string,
): ScalarColumn => ({
  in: 'scalar',
  ...{ name, symbol, kind, unit, meaning, where: STATE },
  range: [-1e6, 1e6],
  find: (at) => at.missing(meaning, STATE),
});

export default question({
  id: 'beam-on-bed',
  version: 1,
  title: 'Beam on an elastic bed under point loads',
  wording: 'How far does a long beam on an elastic bed give way under loads in a row?',
  subject: 'part',
  onRequest: true,
  section: SEALING,
  inputs: [
    {
      in: 'table',
      name: 'loads',
      meaning: 'a load and its place along the beam',
      where: STATE,
      rows: () => [],
      columns: [
        loadColumn('P', 'P', 'force', 'kN', 'load'),
        loadColumn('x', 'x', 'length', 'mm', 'place along the beam'),
      ],
    },
    told('E', 'E', 'stress', 'GPa', 'modulus of the beam', [0.1, 450]),
    told('I', 'I', 'secondMoment', 'mm4', 'second moment of its section', [0.1, 1e10]),
    told(
      'k',
      'k',
      'stress',
      'MPa',
      'stiffness of the bed: force by length and deflection',
      [1e-3, 1e4],
    ),
    told('c', 'c', 'length', 'mm', 'distance of its outer fibre from the axis', [0.1, 1000]),
  ],
  body: {
    body: 'solve',
    outputs: [
      output(
        ...(['beta', 'β', 'curvature', '/m'] as const),
        'inverse length over which a load spreads',
        'β⁴ = k / (4 E I)',
      ),
      output(
        ...(['w', 'w', 'length', 'mm'] as const),
        'largest deflection under a load',
        'w = Σ P β exp(−β x) (cos(β x) + sin(β x)) / (2 k)',
      ),
      output(
        ...(['M', 'M', 'torque', 'kN.m'] as const),
        'largest bending moment under a load',
        'M = Σ P exp(−β x) (cos(β x) − sin(β x)) / (4 β)',
      ),
      output(...(['sigma', 'σ', 'stress', 'MPa'] as const), 'bending stress there', 'σ = M c / I'),
    ],
    solve,
  },
  modelError: {},
  sources: [
    { title: 'Hetényi, Beams on Elastic Foundation, 1946', status: 'from memory' },
    {
      title: 'Boresi and Schmidt, Advanced Mechanics of Materials',
      at: 'example 10.1',
      status: 'published',
    },
  ],
  assumptions: ['Endless straight beam, a bed that pulls as it presses, loads along one line.'],
  cautions: [],
  checks: [
    {
      what: 'a rail under one load of 170 kN and under three at 1.7 m: 5.038 and 7.86 mm, 51.21 and 37.02 kN·m',
      source: 'Boresi and Schmidt, example 10.1',
      status: 'seen',
      test: 'test/published/hetenyi-beams.test.ts',
    },
  ],
  example: {
    loads: [
      { P: '170 ± 2 kN', x: '0 ± 2 mm' },
      { P: '170 ± 2 kN', x: '1700 ± 2 mm' },
      { P: '170 ± 2 kN', x: '3400 ± 2 mm' },
    ],
    E: '200 ± 2 GPa',
    I: '36900000 ± 200000 mm4',
    k: '14 ± 0.5 MPa',
    c: '99.1 ± 0.5 mm',
  },
});

function solve(x: PlainInputs): Solved {
  const { E, I, k, c } = scalarsOf(x, 'E', 'I', 'k', 'c');
  const loads = (x.tables.loads ?? []).map((row) => [Number(row.P), Number(row.x)] as const);
  if (loads.length === 0) return { outputs: {} };
  const beta = spreadOf(k, E * I);
  const largest = (one: (x: number) => number): number =>
    Math.max(
      ...loads.map(([, at]) => loads.reduce((sum, [P, x]) => sum + P * one(beta * (x - at)), 0)),
    );
  const M = largest(bendLoad) / (4 * beta);
  return { outputs: { beta, w: (largest(spreadLoad) * beta) / k, M, sigma: (M * c) / I } };
}
