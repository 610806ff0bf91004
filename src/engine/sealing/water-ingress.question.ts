import { STANDARD_GRAVITY } from '../../data/index.ts';
import { type PlainInputs, question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { chosen } from '../structure/inputs.ts';
import { finding, worked } from '../structure/outputs.ts';
import { HOLE, HOLE_LENGTH, SURFACE_TENSION } from './leak-inputs.ts';

const head = (depth: number, rho: number): number => rho * STANDARD_GRAVITY * depth;
const flow = (d: number, l: number, depth: number, rho: number, eta: number): number =>
  (Math.PI * d ** 4 * head(depth, rho)) / (128 * eta * l);

export default question({
  id: 'water-ingress',
  version: 1,
  title: 'Water through a hole under immersion',
  wording: 'How much water passes a fine hole while the enclosure lies under water?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [
    HOLE,
    HOLE_LENGTH,
    chosen(
      {
        ...{ name: 'depth', symbol: 'h', kind: 'length', unit: 'm', meaning: 'depth of the hole' },
        ...{ range: [0.05, 10], bounds: { above: 0 } },
      },
      { written: 'exactly 1 m', x: 1 },
      'IPX7 (IEC 60529): 1 m to the lowest point, at least 0.15 m over the highest',
    ),
    chosen(
      {
        ...{ name: 'time', symbol: 't', kind: 'time', unit: 'min', meaning: 'time under water' },
        ...{ range: [1, 1440], bounds: { above: 0 } },
      },
      { written: 'exactly 30 min', x: 1800 },
      'IPX7 (IEC 60529): 30 min',
    ),
    chosen(
      {
        ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3' },
        ...{ meaning: 'density of the water', range: [950, 1050], bounds: { above: 0 } },
      },
      { written: 'exactly 998 kg/m3', x: 998 },
      'taken as that of water at 20 °C',
    ),
    chosen(
      {
        ...{ name: 'viscosity', symbol: 'η', kind: 'viscosity', unit: 'mPa.s' },
        ...{ meaning: 'viscosity of the water', range: [0.3, 2], bounds: { above: 0 } },
      },
      { written: 'exactly 1.002 mPa.s', x: 1.002e-3 },
      'taken as that of water at 20 °C',
    ),
    SURFACE_TENSION,
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['head', 'p', 'pressureDiff', 'kPa'] as const),
        'pressure of the water',
        'p = ρ g h',
        (_d, _l, h, _t, rho) => head(h, rho),
      ),
      worked(
        ...(['flow', 'q', 'volumeFlow', 'cm3/min'] as const),
        'laminar flow once the hole is wet through',
        'q = π d⁴ p / (128 η L)',
        (d, l, h, _t, rho, eta) => flow(d, l, h, rho, eta),
      ),
      worked(
        ...(['volume', 'V', 'volume', 'mL'] as const),
        'water that has come in by the end',
        'V = q t',
        (d, l, h, t, rho, eta) => flow(d, l, h, rho, eta) * t,
      ),
      worked(
        ...(['meniscus', 'p_m', 'pressureDiff', 'kPa'] as const),
        'pressure that the skin of the water at the inner mouth holds back',
        'p_m = 4 γ / d',
        (d, _l, _h, _t, _rho, _eta, gamma) => (4 * gamma) / d,
      ),
      worked(
        ...(['reynolds', 'Re', 'ratio', '1'] as const),
        'Reynolds number, laminar up to about 2000',
        'Re = 4 ρ q / (π η d)',
        (d, l, h, _t, rho, eta) => (4 * rho * flow(d, l, h, rho, eta)) / (Math.PI * eta * d),
      ),
    ],
  },
  valid,
  modelError: {},
  sources: [
    { title: 'IEC 60529', at: 'second numeral 7: 1 m, 0.15 m, 30 min', status: 'published' },
    { title: 'ISO 20653', at: 'road vehicles, degrees of protection', status: 'published' },
    { title: 'Hagen and Poiseuille; Young and Laplace', status: 'from memory' },
  ],
  assumptions: [
    'Round straight hole, wet through from the start, free air inside; the air that is let out is not held back.',
    'An enclosure that cools under water draws in more: the pressure inside falls below the surroundings.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'a 100 µm hole of 5 mm at 1 m for 30 min by hand; fourth power of the diameter',
      source: 'Poiseuille, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: {
    d: '100 ± 5 um',
    L: '5 ± 0.2 mm',
    depth: '1 ± 0.02 m',
    time: '30 ± 0.1 min',
    density: '998 ± 1 kg/m3',
    viscosity: '1.002 ± 0.02 mPa.s',
    gamma: '72.8 ± 0.5 mN/m',
  },
});

function valid({ scalars }: PlainInputs) {
  const { d = 0, L = 0, depth = 0, density = 0, viscosity = 1, gamma = 0 } = scalars;
  const re = (4 * density * flow(d, L, depth, density, viscosity)) / (Math.PI * viscosity * d);
  return [
    ...(4 * gamma > d * head(depth, density)
      ? [
          finding(
            'note',
            'held-by-meniscus',
            'd',
            'the skin of the water at the inner mouth may hold this pressure back',
            'Do not count on it: dirt, vibration or a wet inner face undo it.',
          ),
        ]
      : []),
    ...(re > 2000
      ? [
          finding(
            'doubt',
            'not-laminar',
            'd',
            'the flow is no longer laminar: less comes in than this',
            'Take it as an upper bound, or ask of a narrower hole.',
          ),
        ]
      : []),
  ];
}
