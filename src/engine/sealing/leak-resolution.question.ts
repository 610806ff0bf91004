import { question, type ScalarInput } from '../method.ts';
import { SEALING } from '../sections.ts';
import { stated } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';
import {
  COMPLIANCE,
  ofZone,
  TEST_PRESSURE,
  TEST_TEMPERATURE,
  TEST_TIME,
  VOLUME,
} from './leak-inputs.ts';

type Range = ScalarInput['range'];
const unsteady = (
  name: string,
  symbol: string,
  kind: ScalarInput['kind'],
  unit: string,
  meaning: string,
  range: Range,
): ScalarInput =>
  stated(
    { name, symbol, kind, unit, meaning, range, bounds: { atLeast: 0 } },
    'not in the record: from readings of a tight enclosure',
  );

const disturbance = (p: number, T: number, drift: number, dT: number, dV: number): number =>
  Math.hypot(drift, (p * dT) / T, p * dV);
/** Standard uncertainties between no leak and the least one that is told. */
const FACTOR = 2;

export default question({
  id: 'leak-resolution',
  version: 1,
  title: 'Least leak a test of pressure can tell',
  wording: 'Can this test of pressure tell a leak of the limit from drift?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [
    VOLUME,
    TEST_TIME,
    TEST_PRESSURE,
    TEST_TEMPERATURE,
    COMPLIANCE,
    unsteady('drift', 'δ', 'pressureDiff', 'Pa', 'standard drift of the gauge', [0, 500]),
    unsteady('warmth', 'δT', 'tempDiff', 'K', 'standard drift of the temperature', [0, 2]),
    unsteady('swell', 'δV', 'ratio', '%', 'standard drift of the volume, as a share', [0, 1]),
    ofZone(
      {
        ...{ name: 'limit', symbol: 'Q_g', kind: 'gasFlow', unit: 'Pa.m3/s' },
        ...{ meaning: 'limit, yours', range: [1e-6, 10], bounds: { above: 0 } },
      },
      'leak.limit',
    ),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['disturbance', 'δp', 'pressureDiff', 'Pa'] as const),
        'standard disturbance of the pressure in that time',
        'δp = √(δ² + (p δT / T)² + (p δV)²)',
        (_v, _t, p, T, _c, drift, dT, dV) => disturbance(p, T, drift, dT, dV),
      ),
      worked(
        ...(['least', 'Q_s', 'gasFlow', 'Pa.m3/s'] as const),
        'least leak that is told from none',
        'Q_s = 2 (V + p C) δp / t',
        (v, t, p, T, c, drift, dT, dV) =>
          (FACTOR * (v + p * c) * disturbance(p, T, drift, dT, dV)) / t,
      ),
      {
        ...worked(
          ...(['margin', 'm', 'gasFlow', 'Pa.m3/s'] as const),
          'limit less the least leak that is told',
          'm = Q_g − Q_s',
          (v, t, p, T, c, drift, dT, dV, limit) =>
            limit - (FACTOR * (v + p * c) * disturbance(p, T, drift, dT, dV)) / t,
        ),
        decides: 'margin',
      },
      worked(
        ...(['time', 't_s', 'time', 's'] as const),
        'time after which a leak of the limit would be told, with the same disturbance',
        't_s = 2 (V + p C) δp / Q_g',
        (v, _t, p, T, c, drift, dT, dV, limit) =>
          (FACTOR * (v + p * c) * disturbance(p, T, drift, dT, dV)) / limit,
      ),
    ],
  },
  modelError: {},
  sources: [{ title: 'Ideal gas; disturbances added as squares', status: 'published' }],
  assumptions: [
    'The three disturbances are independent and small; two standard uncertainties tell a leak from none (common practice, no source).',
    'Drift that grows with time makes longer tests no better: then the time shown is too short.',
  ],
  cautions: ['pressure-test', 'sealed-by-judgement'],
  checks: [
    {
      what: '0.1 K at 20 °C and 100 kPa: 34 Pa; 0.05 % of 106.325 kPa: 53.2 Pa',
      source: 'ideal gas, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: {
    V: '110 ± 3 L',
    t: '60 ± 0.2 s',
    p: '105 ± 0.1 kPa',
    T: '20 ± 0.3 Cel',
    C: '40 ± 10 mL/kPa',
    drift: '3 ± 0.5 Pa',
    warmth: '0.02 ± 0.005 K',
    swell: '0.005 ± 0.001 %',
    limit: '0.1 ± 0.001 Pa.m3/s',
  },
});
