import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { stated } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';
import { HOLE, SURFACE_TENSION } from './leak-inputs.ts';

export default question({
  id: 'many-leak-paths',
  version: 1,
  title: 'Many small leaks or one large one',
  wording: 'What differs when the same leak is many small paths and not one large one?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [
    HOLE,
    stated(
      {
        ...{ name: 'n', symbol: 'n', kind: 'ratio', unit: '1' },
        ...{ meaning: 'number of equal small paths', range: [2, 1e6], bounds: { atLeast: 1 } },
      },
      'not in the record: state it',
    ),
    SURFACE_TENSION,
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['each', 'd₁', 'length', 'um'] as const),
        'diameter of each small path that leak as much together',
        'd₁ = d / n^¼',
        (d, n) => d * n ** -0.25,
      ),
      worked(
        ...(['areaRatio', 'a', 'ratio', '1'] as const),
        'area of the small paths over that of the large one',
        'a = √n',
        (_d, n) => Math.sqrt(n),
      ),
      worked(
        ...(['molecularRatio', 'm', 'ratio', '1'] as const),
        'molecular flow of the small paths over that of the large one: a tracer gas sees more',
        'm = n^¼',
        (_d, n) => n ** 0.25,
      ),
      worked(
        ...(['holdOne', 'p_m', 'pressureDiff', 'kPa'] as const),
        'pressure that the skin of water holds back at the large one',
        'p_m = 4 γ / d',
        (d, _n, gamma) => (4 * gamma) / d,
      ),
      worked(
        ...(['holdEach', 'p₁', 'pressureDiff', 'kPa'] as const),
        'and at each small one',
        'p₁ = 4 γ / d₁',
        (d, n, gamma) => (4 * gamma) / (d * n ** -0.25),
      ),
    ],
  },
  modelError: {},
  sources: [
    { title: 'Laminar flow goes with the fourth power of the diameter', status: 'published' },
    { title: 'Young and Laplace, pressure of a meniscus', status: 'from memory' },
  ],
  assumptions: [
    'Equal lengths and pressures, laminar flow of the test gas: the sum is equal at the pressure of the test, not at another one.',
    'One test of pressure can not tell the two apart: a tracer gas or a test under water can.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: '16 paths: half the diameter, four times the area, twice the molecular flow and twice the pressure held back',
      source: 'powers of Poiseuille and Knudsen, closed form',
      status: 'own inputs, published formula',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: { d: '100 ± 5 um', n: '16 ± 1', gamma: '72.8 ± 0.5 mN/m' },
});
