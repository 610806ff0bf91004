import { GAS_CONSTANT } from '../../data/index.ts';
import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import {
  FLOW_TEMPERATURE,
  GAS_FLOW,
  REFERENCE_PRESSURE,
  REFERENCE_TEMPERATURE,
} from './leak-inputs.ts';

const flow = (name: string, unit: string, words: string) =>
  worked(name, 'Q', 'gasFlow', unit, `leak in ${words}`, 'Q = Q', (q) => q);

export default question({
  id: 'leak-units',
  version: 1,
  title: 'A leak in every unit',
  wording: 'How much is a leak in the units of other gauges?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [GAS_FLOW, FLOW_TEMPERATURE, REFERENCE_TEMPERATURE, REFERENCE_PRESSURE],
  body: {
    body: 'row',
    outputs: [
      flow('pascal', 'Pa.m3/s', 'Pa·m³/s'),
      flow('millibar', 'mbar.L/s', 'mbar·L/s'),
      flow('atmosphere', 'atm.cm3/s', 'atm·cm³/s'),
      flow('torr', 'mm[Hg].L/s', 'torr·L/s'),
      worked(
        ...(['standard', 'qₙ', 'volumeFlow', 'cm3/min'] as const),
        'standard volume in a time (sccm at its reference temperature)',
        'qₙ = Q Tₙ / (T pₙ)',
        (q, T, Tn, pn) => (q * Tn) / (T * pn),
      ),
      worked(
        ...(['molar', 'n', 'molarFlow', 'umol/s'] as const),
        'amount of gas in a time',
        'n = Q / (R T)',
        (q, T) => q / (GAS_CONSTANT * T),
      ),
    ],
  },
  modelError: {},
  sources: [
    { title: 'SI Brochure, 9th edition 2019: gas constant', status: 'published' },
    { title: 'A flow in pressure times volume holds at one temperature', status: 'published' },
  ],
  assumptions: [
    'A flow of gas as pressure times volume means nothing without its temperature; tables that leave it out mean the reference temperature.',
  ],
  cautions: [],
  checks: [
    {
      what: '1 Pa·m³/s is 10 mbar·L/s and 9.869 atm·cm³/s; 1 sccm is 1.68875 mPa·m³/s; 1 atm·cm³/s is 0.76 torr·L/s',
      source: 'conversion tables of vacuum practice',
      status: 'seen',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: {
    Q: '0.016667 ± 0.0005 Pa.m3/s',
    T: '0 ± 0.5 Cel',
    Tref: 'exactly 0 Cel',
    pref: 'exactly 101.325 kPa',
  },
});
