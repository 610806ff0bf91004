import { GAS_CONSTANT } from '../../data/index.ts';
import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import {
  COMPLIANCE,
  ofZone,
  ofZoneOr,
  REFERENCE_PRESSURE,
  REFERENCE_TEMPERATURE,
  TEST_PRESSURE,
  TEST_TEMPERATURE,
  TEST_TIME,
  VOLUME,
} from './leak-inputs.ts';

const steady = (id: string, words: string, u: number) => ({
  id: `leak/${id}`,
  words,
  x: 0,
  spread: { s: 'normal', u } as const,
  how: 'guessed' as const,
  source: 'judgement, where nothing is recorded',
});

const drop = (pd: number, p: number, T: number, dT: number, g: number): number =>
  pd + (p * dT) / T - p * g;

export default question({
  id: 'leak-from-decay',
  version: 1,
  title: 'Leak by loss of pressure',
  wording: 'How much leaks, by the pressure that was lost in a closed volume?',
  subject: 'zone',
  section: SEALING,
  inputs: [
    VOLUME,
    ofZone(
      {
        ...{ name: 'drop', symbol: 'Δp', kind: 'pressureDiff', unit: 'Pa' },
        ...{ meaning: 'fall of the pressure read, negative where it rose', range: [-5000, 20000] },
      },
      'leak.drop',
    ),
    TEST_TIME,
    TEST_PRESSURE,
    TEST_TEMPERATURE,
    ofZoneOr(
      {
        ...{ name: 'warming', symbol: 'ΔT', kind: 'tempDiff', unit: 'K' },
        ...{ meaning: 'rise of the gas temperature meanwhile', range: [-5, 5] },
      },
      'leak.warming',
      '0 ± 0.05 K',
      steady('steady-temperature', 'temperature taken as steady to 0.1 K', 0.05),
    ),
    ofZoneOr(
      {
        ...{ name: 'growth', symbol: 'g', kind: 'ratio', unit: '%' },
        ...{ meaning: 'growth of the volume meanwhile: creep of lid and seal', range: [-1, 1] },
      },
      'leak.growth',
      '0 ± 0.005 %',
      steady('steady-volume', 'volume taken as steady to 0.01 %', 5e-5),
    ),
    COMPLIANCE,
    REFERENCE_TEMPERATURE,
    REFERENCE_PRESSURE,
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['warmed', 'Δp_T', 'pressureDiff', 'Pa'] as const),
        'pressure that the change of temperature brings',
        'Δp_T = p ΔT / T',
        (_v, _d, _t, p, T, dT) => (p * dT) / T,
      ),
      worked(
        ...(['grown', 'Δp_V', 'pressureDiff', 'Pa'] as const),
        'pressure that the growth of the volume takes',
        'Δp_V = p g',
        (_v, _d, _t, p, _T, _dT, g) => p * g,
      ),
      worked(
        ...(['signal', 'Δp_L', 'pressureDiff', 'Pa'] as const),
        'fall that is left to the leak',
        'Δp_L = Δp + p ΔT / T − p g',
        (_v, d, _t, p, T, dT, g) => drop(d, p, T, dT, g),
      ),
      {
        ...worked(
          ...(['flow', 'Q', 'gasFlow', 'Pa.m3/s'] as const),
          'leak at the temperature of the test',
          'Q = (V + p C) Δp_L / t',
          (v, d, t, p, T, dT, g, c) => ((v + p * c) * drop(d, p, T, dT, g)) / t,
        ),
        decides: 'difference',
        directions: { more: 'leaks', less: 'gains' },
      },
      worked(
        ...(['standard', 'qₙ', 'volumeFlow', 'cm3/min'] as const),
        'leak as a standard volume in a time (sccm at its reference temperature)',
        'qₙ = Q Tₙ / (T pₙ)',
        (v, d, t, p, T, dT, g, c, Tn, pn) =>
          ((((v + p * c) * drop(d, p, T, dT, g)) / t) * Tn) / (T * pn),
      ),
      worked(
        ...(['molar', 'n', 'molarFlow', 'umol/s'] as const),
        'leak as an amount of gas in a time',
        'n = Q / (R T)',
        (v, d, t, p, T, dT, g, c) => ((v + p * c) * drop(d, p, T, dT, g)) / t / (GAS_CONSTANT * T),
      ),
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'Ideal gas in a closed volume: d(pV) = V dp + p dV, at steady temperature',
      status: 'published',
    },
  ],
  assumptions: [
    'The pressure is read after filling, when the temperature of the gas has settled; one temperature stands for all of the gas.',
    'Walls give way in proportion to the pressure (C), and creep on by the growth g.',
    'The loss is small against the pressure above the surroundings.',
  ],
  cautions: ['pressure-test', 'sealed-by-judgement'],
  checks: [
    {
      what: '20 L, 50 Pa in 60 s: 0.016667 Pa·m³/s, 9.869 sccm, 7.339 µmol/s; 0.1 K at 106.325 kPa 36.3 Pa; 0.05 % of volume 53.2 Pa; 110 L 0.092 Pa·m³/s',
      source: 'ideal gas, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: {
    V: '110 ± 3 L',
    drop: '50 ± 3 Pa',
    t: '60 ± 0.2 s',
    p: '105 ± 0.1 kPa',
    T: '20 ± 0.3 Cel',
    warming: '-0.05 ± 0.02 K',
    growth: '0.005 ± 0.002 %',
    C: '40 ± 10 mL/kPa',
    Tref: 'exactly 0 Cel',
    pref: 'exactly 101.325 kPa',
  },
});
