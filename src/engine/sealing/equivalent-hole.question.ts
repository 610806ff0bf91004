import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import {
  DOWNSTREAM,
  GAS_FLOW,
  GAS_VISCOSITY,
  HOLE_LENGTH,
  SURFACE_TENSION,
  UPSTREAM,
} from './leak-inputs.ts';

const diameter = (q: number, l: number, p1: number, p2: number, eta: number): number =>
  ((256 * eta * l * q) / (Math.PI * (p1 ** 2 - p2 ** 2))) ** 0.25;

export default question({
  id: 'equivalent-hole',
  version: 1,
  title: 'Hole that leaks as much',
  wording: 'How wide is the one round hole that would leak as much?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [GAS_FLOW, HOLE_LENGTH, UPSTREAM, DOWNSTREAM, GAS_VISCOSITY, SURFACE_TENSION],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['d', 'd', 'length', 'um'] as const),
        'diameter',
        'd = (256 η L Q / (π (p₁² − p₂²)))^¼',
        diameter,
      ),
      worked(
        ...(['meniscus', 'p_m', 'pressureDiff', 'kPa'] as const),
        'pressure that the skin of the water at its mouth would hold back',
        'p_m = 4 γ / d',
        (q, l, p1, p2, eta, gamma) => (4 * gamma) / diameter(q, l, p1, p2, eta),
      ),
    ],
  },
  modelError: {},
  sources: [
    { title: 'Hagen and Poiseuille, for a gas at steady temperature', status: 'from memory' },
    { title: 'Young and Laplace, pressure of a meniscus', status: 'from memory' },
  ],
  assumptions: [
    'Laminar flow; one round straight hole stands for all paths together, which real leaks are not.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: '1 sccm through 5 mm at 10 kPa above 1 atm: 49.26 µm',
      source: 'Poiseuille, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: {
    Q: '0.00168875 ± 0.00005 Pa.m3/s',
    L: '5 ± 0.5 mm',
    p1: '111.325 ± 0.05 kPa',
    p2: '101.325 ± 0.02 kPa',
    viscosity: '18.2 ± 0.2 uPa.s',
    gamma: '72.8 ± 0.5 mN/m',
  },
});
