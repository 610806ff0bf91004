import { GAS_CONSTANT } from '../../data/index.ts';
import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { chosen } from '../structure/inputs.ts';
import { finding, worked } from '../structure/outputs.ts';
import {
  DOWNSTREAM,
  FLOW_TEMPERATURE,
  GAS_VISCOSITY,
  HOLE,
  HOLE_LENGTH,
  UPSTREAM,
} from './leak-inputs.ts';

const freePath = (p1: number, p2: number, eta: number, M: number, T: number): number =>
  (eta / ((p1 + p2) / 2)) * Math.sqrt((Math.PI * GAS_CONSTANT * T) / (2 * M));

export default question({
  id: 'leak-through-hole',
  version: 1,
  title: 'Leak through a hole',
  wording: 'How much gas passes through a fine round hole?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [
    HOLE,
    HOLE_LENGTH,
    UPSTREAM,
    DOWNSTREAM,
    GAS_VISCOSITY,
    chosen(
      {
        ...{ name: 'molarMass', symbol: 'M', kind: 'molarMass', unit: 'g/mol' },
        ...{ meaning: 'molar mass of the gas', range: [1, 150], bounds: { above: 0 } },
      },
      { written: 'exactly 28.965 g/mol', x: 28.965e-3 },
      'taken as that of air',
    ),
    FLOW_TEMPERATURE,
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['laminar', 'Q₁', 'gasFlow', 'Pa.m3/s'] as const),
        'laminar flow of a gas that expands on the way',
        'Q₁ = π d⁴ (p₁² − p₂²) / (256 η L)',
        (d, l, p1, p2, eta) => (Math.PI * d ** 4 * (p1 ** 2 - p2 ** 2)) / (256 * eta * l),
      ),
      worked(
        ...(['molecular', 'Q₂', 'gasFlow', 'Pa.m3/s'] as const),
        'molecular flow',
        'Q₂ = d³ √(2 π R T / M) (p₁ − p₂) / (6 L)',
        (d, l, p1, p2, _eta, M, T) =>
          (d ** 3 / (6 * l)) * Math.sqrt((2 * Math.PI * GAS_CONSTANT * T) / M) * (p1 - p2),
      ),
      worked(
        ...(['knudsen', 'Kn', 'ratio', '1'] as const),
        'free path over diameter: laminar below 0.01, molecular above 0.5',
        'Kn = η √(π R T / (2 M)) / (p d)',
        (d, _l, p1, p2, eta, M, T) => freePath(p1, p2, eta, M, T) / d,
      ),
    ],
  },
  valid: ({ scalars }) => {
    const { d = 0, L = 0 } = scalars;
    return d > L / 10
      ? [
          finding(
            'doubt',
            'short-hole',
            'L',
            'the hole is shorter than ten diameters: the inlet holds back too',
            'Take the laminar flow as an upper bound.',
          ),
        ]
      : [];
  },
  modelError: {},
  sources: [
    { title: 'Hagen and Poiseuille, for a gas at steady temperature', status: 'from memory' },
    { title: 'Knudsen, long tube', status: 'from memory' },
  ],
  assumptions: [
    'Round, straight and smooth hole, long against its diameter; steady temperature.',
    'Between the two kinds of flow the truth lies near their sum.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: '10, 20, 30 µm, 5 mm, 10 kPa above 1 atm: 2.868e-6, 4.588e-5, 2.323e-4 Pa·m³/s; 1 µm, 1 mm, 1 atm to vacuum: helium 3.303e-8, air 1.228e-8',
      source: 'Poiseuille and Knudsen, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: {
    d: '20 ± 1 um',
    L: '5 ± 0.2 mm',
    p1: '111.325 ± 0.05 kPa',
    p2: '101.325 ± 0.02 kPa',
    viscosity: '18.2 ± 0.2 uPa.s',
    molarMass: 'exactly 28.965 g/mol',
    T: '20 ± 1 Cel',
  },
});
