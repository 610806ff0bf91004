import { question, type ScalarInput } from '../method.ts';
import { SEALING } from '../sections.ts';
import { size, stated } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';

const STATE = 'not in the record: measure it on the clip';
const angle = (name: string, symbol: string, meaning: string): ScalarInput =>
  stated(
    {
      ...{ name, symbol, kind: 'angle', unit: 'deg', meaning },
      ...{ range: [5, 89], bounds: { atLeast: 0 } },
    },
    STATE,
  );

type Strip = [E: number, b: number, h: number, L: number, y: number];
const force = (...[E, b, h, L, y]: Strip): number => (E * b * h ** 3 * y) / (4 * L ** 3);
const strain = (h: number, L: number, y: number): number => (1.5 * h * y) / L ** 2;
const slope = (mu: number, alpha: number): number =>
  (mu + Math.tan(alpha)) / (1 - mu * Math.tan(alpha));

export default question({
  id: 'clip-force',
  version: 1,
  title: 'Force of a clip from its strip',
  wording: 'How hard does a clip hold, and what does it take to push it on and pull it off?',
  subject: 'part',
  onRequest: true,
  section: SEALING,
  inputs: [
    stated(
      {
        ...{ name: 'modulus', symbol: 'E', kind: 'stress', unit: 'GPa' },
        ...{ meaning: 'modulus of the strip', range: [0.5, 220], bounds: { above: 0 } },
      },
      STATE,
    ),
    size('b', 'b', 'width of the strip', [1, 100]),
    size('h', 'h', 'thickness of the strip', [0.1, 10], 'thickness'),
    size('L', 'L', 'free length of the strip', [2, 100]),
    size('y', 'y', 'deflection at its end', [0.05, 20]),
    stated(
      {
        ...{
          name: 'mu',
          symbol: 'μ',
          kind: 'ratio',
          unit: '1',
          meaning: 'coefficient of friction',
        },
        ...{ range: [0.05, 0.8], bounds: { atLeast: 0 } },
      },
      STATE,
    ),
    angle('on', 'α', 'slope of its lead-in'),
    angle('off', 'α′', 'slope of its return side'),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['force', 'P', 'force', 'N'] as const),
        'force at the end of the strip',
        'P = E b h³ y / (4 L³)',
        (E, b, h, L, y) => force(E, b, h, L, y),
      ),
      worked(
        ...(['strain', 'ε', 'ratio', '%'] as const),
        'strain at its root',
        'ε = 1.5 h y / L²',
        (_E, _b, h, L, y) => strain(h, L, y),
      ),
      worked(
        ...(['stress', 'σ', 'stress', 'MPa'] as const),
        'stress at its root',
        'σ = E ε',
        (E, _b, h, L, y) => E * strain(h, L, y),
      ),
      worked(
        ...(['rate', 'c', 'stiffness', 'N/mm'] as const),
        'force by deflection',
        'c = P / y',
        (E, b, h, L, y) => force(E, b, h, L, y) / y,
      ),
      worked(
        ...(['push', 'W', 'force', 'N'] as const),
        'force to push it on',
        'W = P (μ + tan(α)) / (1 − μ tan(α))',
        (E, b, h, L, y, mu, on) => force(E, b, h, L, y) * slope(mu, on),
      ),
      worked(
        ...(['pull', 'W′', 'force', 'N'] as const),
        'force to pull it off; below zero or without end where it locks itself',
        'W′ = P (μ + tan(α′)) / (1 − μ tan(α′))',
        (E, b, h, L, y, mu, _on, off) => force(E, b, h, L, y) * slope(mu, off),
      ),
      worked(
        ...(['lock', 'α_l', 'angle', 'deg'] as const),
        'slope from which on it locks itself',
        'tan(α_l) = 1 / μ',
        (_E, _b, _h, _L, _y, mu) => Math.PI / 2 - Math.atan(mu),
      ),
    ],
  },
  modelError: { force: { relative: 0.1, sharedFraction: 0.5 } },
  sources: [
    { title: 'Cantilever; design guides of moulding-material suppliers', status: 'from memory' },
  ],
  assumptions: [
    'Strip of even section, small deflection, stiff mating part. A spring balance at the end of the strip measures the same force with less doubt: then take that reading.',
  ],
  cautions: [],
  checks: [
    {
      what: 'plastic strips of 15 and 18 mm: 4.17 and 2.89 %; spring steel 12.07 N, 579 MPa, on 9.61 N, off 30.69 N, locks from 81.5°',
      source: 'design guides of moulding-material suppliers; closed form',
      status: 'seen',
      test: 'test/published/clips-and-edges.test.ts',
    },
  ],
  example: {
    modulus: '206 ± 4 GPa',
    b: '10 ± 0.1 mm',
    h: '0.5 ± 0.01 mm',
    L: '20 ± 0.2 mm',
    y: '1.5 ± 0.05 mm',
    mu: '0.15 ± 0.03',
    on: '30 ± 1 deg',
    off: '60 ± 1 deg',
  },
});
