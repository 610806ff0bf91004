import { question } from '../method.ts';
import { LINES } from '../sections.ts';
import { finding, worked } from '../structure/outputs.ts';
import { LENGTH, ofLine } from './line-columns.ts';

type Args = [L: number, d: number, q: number, rho: number, eta: number, zeta: number];
const speed = (d: number, q: number): number => (4 * q) / (Math.PI * d ** 2);
const reynolds = (d: number, q: number, rho: number, eta: number): number =>
  (rho * speed(d, q) * d) / eta;
/** Reynolds number below which the flow is laminar, and above which Blasius is taken. */
const LAMINAR = 2300;
const TURBULENT = 4000;
const BLASIUS_ENDS = 1e5;
const friction = (re: number): number => (re < LAMINAR ? 64 / re : 0.3164 / re ** 0.25);
const dynamic = (...[, d, q, rho]: Args): number => (rho / 2) * speed(d, q) ** 2;
const along = (...x: Args): number => {
  const [L, d, q, rho, eta] = x;
  return ((friction(reynolds(d, q, rho, eta)) * L) / d) * dynamic(...x);
};

export default question({
  id: 'pressure-drop',
  version: 1,
  title: 'Loss of pressure in a line',
  wording: 'How much pressure does the fluid lose on its way through the line?',
  subject: 'line',
  section: LINES,
  inputs: [
    LENGTH,
    ofLine(
      {
        ...{ name: 'bore', symbol: 'd', kind: 'length', unit: 'mm' },
        ...{ meaning: 'inner diameter', range: [0.5, 100] },
      },
      'line.bore',
    ),
    ofLine(
      {
        ...{ name: 'flow', symbol: 'q', kind: 'volumeFlow', unit: 'L/min' },
        ...{ meaning: 'flow', range: [0.001, 500] },
      },
      'line.flow',
    ),
    ofLine(
      {
        ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3' },
        ...{ meaning: 'density of the fluid', range: [0.5, 2000] },
      },
      'line.density',
    ),
    ofLine(
      {
        ...{ name: 'viscosity', symbol: 'η', kind: 'viscosity', unit: 'mPa.s' },
        ...{ meaning: 'viscosity of the fluid', range: [0.005, 500] },
      },
      'line.viscosity',
    ),
    {
      ...ofLine(
        {
          ...{ name: 'losses', symbol: 'ζ', kind: 'ratio', unit: '1' },
          ...{ meaning: 'loss coefficients of bends and fittings, added', range: [0, 200] },
        },
        'line.losses',
      ),
      bounds: { atLeast: 0 },
    },
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['loss', 'Δp', 'pressureDiff', 'kPa'] as const),
        'loss of pressure',
        'Δp = (λ L / d + ζ) ρ v² / 2',
        (...x) => {
          const args = x as Args;
          return along(...args) + args[5] * dynamic(...args);
        },
      ),
      worked(
        ...(['along', 'Δp₁', 'pressureDiff', 'kPa'] as const),
        'of this, along the line',
        'Δp₁ = λ L ρ v² / (2 d)',
        (...x) => along(...(x as Args)),
      ),
      worked(
        ...(['speed', 'v', 'speed', 'm/s'] as const),
        'mean speed',
        'v = 4 q / (π d²)',
        (_L, d, q) => speed(d, q),
      ),
      worked(
        ...(['reynolds', 'Re', 'ratio', '1'] as const),
        'Reynolds number',
        'Re = ρ v d / η',
        (_L, d, q, rho, eta) => reynolds(d, q, rho, eta),
      ),
      worked(
        ...(['lambda', 'λ', 'ratio', '1'] as const),
        'friction factor: 64/Re below Re 2300, else Blasius',
        'λ = 64 / Re; λ = 0.3164 / Re^¼',
        (_L, d, q, rho, eta) => friction(reynolds(d, q, rho, eta)),
      ),
    ],
  },
  valid: ({ scalars }) => {
    const { bore = 1, flow = 0, density = 0, viscosity = 1 } = scalars;
    const re = reynolds(bore, flow, density, viscosity);
    if (re >= LAMINAR && re < TURBULENT)
      return [
        finding(
          'doubt',
          'neither-laminar-nor-turbulent',
          'flow',
          'the flow is neither surely laminar nor surely turbulent',
          'Take the loss as good to a third, or measure it.',
        ),
      ];
    if (re > BLASIUS_ENDS)
      return [
        finding(
          'doubt',
          'beyond-blasius',
          'flow',
          'beyond Re 100 000 Blasius’ law gives too little',
          'Take it as a lower bound.',
        ),
      ];
    return [];
  },
  modelError: { loss: { relative: 0.1, sharedFraction: 0.5 } },
  sources: [
    { title: 'Darcy and Weisbach; Hagen and Poiseuille; Blasius 1913', status: 'from memory' },
  ],
  assumptions: ['Smooth round bore, liquid or a gas whose pressure changes little, steady flow.'],
  cautions: [],
  checks: [
    {
      what: 'laminar: the law of Hagen and Poiseuille; turbulent: Blasius at Re 1e4 λ 0.03164; a coolant hose by hand',
      source: 'closed form, own inputs',
      status: 'own inputs, published formula',
      test: 'test/engine/lines/lines.test.ts',
    },
  ],
  example: {
    length: '3.4 ± 0.05 m',
    bore: '16 ± 0.2 mm',
    flow: '10 ± 0.5 L/min',
    density: '1065 ± 5 kg/m3',
    viscosity: '2.6 ± 0.2 mPa.s',
    losses: '6 ± 1',
  },
});
