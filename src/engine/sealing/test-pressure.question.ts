import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { stated } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';
import { ofZone, VOLUME } from './leak-inputs.ts';

/** Ratio of the specific heats of air. */
const KAPPA = 1.4;

/** Work of a gas that expands from p + p₀ to p₀ without heat. */
const stored = (v: number, over: number, outside: number): number =>
  (((over + outside) * v) / (KAPPA - 1)) *
  (1 - (outside / (over + outside)) ** ((KAPPA - 1) / KAPPA));

export default question({
  id: 'test-pressure',
  version: 1,
  title: 'Force on a lid under test pressure',
  wording: 'What does the pressure of a leak test do to the lid?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [
    VOLUME,
    stated(
      {
        ...{ name: 'area', symbol: 'A', kind: 'area', unit: 'm2' },
        ...{ meaning: 'area of the lid within its seal', range: [0.001, 6], bounds: { above: 0 } },
      },
      'not in the record: state it',
    ),
    stated(
      {
        ...{ name: 'over', symbol: 'p', kind: 'pressureDiff', unit: 'kPa' },
        ...{ meaning: 'test pressure above the surroundings', range: [0.1, 100] },
        bounds: { above: 0 },
      },
      'not in the record: state it',
    ),
    stated(
      {
        ...{ name: 'outside', symbol: 'p₀', kind: 'pressureAbs', unit: 'kPa' },
        ...{ meaning: 'pressure of the surroundings', range: [60, 110], bounds: { above: 0 } },
      },
      'not in the record: read the barometer',
    ),
    stated(
      {
        ...{ name: 'count', symbol: 'n', kind: 'count', unit: '1' },
        ...{ meaning: 'fasteners that hold the lid', range: [1, 500], bounds: { above: 0 } },
      },
      'not in the record: state it',
    ),
    ofZone(
      {
        ...{ name: 'vent', symbol: 'p_v', kind: 'pressureDiff', unit: 'kPa' },
        ...{ meaning: 'pressure at which the vents open', range: [0.5, 100] },
        bounds: { above: 0 },
      },
      'zone.vent',
    ),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['force', 'F', 'force', 'kN'] as const),
        'force on the lid',
        'F = p A',
        (_v, a, p) => p * a,
      ),
      worked(
        ...(['each', 'F₁', 'force', 'N'] as const),
        'force on each fastener, shared evenly',
        'F₁ = F / n',
        (_v, a, p, _p0, n) => (p * a) / n,
      ),
      worked(
        ...(['energy', 'E', 'energy', 'J'] as const),
        'energy that is set free when the lid lets go',
        'E = (p + p₀) V (1 − r²) / 0.4; r⁷ = p₀ / (p + p₀)',
        (v, _a, p, p0) => stored(v, p, p0),
      ),
      {
        ...worked(
          ...(['margin', 'm', 'pressureDiff', 'kPa'] as const),
          'pressure left up to the opening of the vents',
          'm = p_v − p',
          (_v, _a, p, _p0, _n, vent) => vent - p,
        ),
        decides: 'margin',
      },
    ],
  },
  modelError: {},
  sources: [
    { title: 'Ideal gas expanding without exchange of heat, ratio 1.4', status: 'published' },
  ],
  assumptions: ['Stiff lid, fasteners that share evenly: at corners one may carry twice as much.'],
  cautions: ['pressure-test'],
  checks: [
    {
      what: '5 kPa on 1.7 m²: 8.5 kN; energy against the sum of small steps of the expansion',
      source: 'closed form, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: {
    V: '110 ± 3 L',
    area: '1.7 ± 0.02 m2',
    over: '5 ± 0.05 kPa',
    outside: '100 ± 0.1 kPa',
    count: '62',
    vent: '8 ± 2 kPa',
  },
});
