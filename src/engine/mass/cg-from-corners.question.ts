import { question } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { CORNER_LOADS, rearward, TRACKS, toTheRight, WHEELBASE } from './corner-loads.ts';

export default question({
  id: 'cg-from-corners',
  version: 1,
  title: 'Centre of gravity in plan from the corner scales',
  wording: 'Where is the centre of gravity in plan, by the corner scales?',
  subject: 'study',
  section: BALANCE,
  inputs: [...CORNER_LOADS, WHEELBASE, ...TRACKS],
  body: {
    body: 'row',
    outputs: [
      {
        name: 'total',
        symbol: 'm',
        kind: 'mass',
        unit: 'kg',
        meaning: 'mass of the vehicle',
        shown: 'm = mFL + mFR + mRL + mRR',
        of: (fl, fr, rl, rr) => fl + fr + rl + rr,
      },
      {
        name: 'x',
        symbol: 'X',
        kind: 'length',
        unit: 'mm',
        meaning: 'centre of gravity, rearward of the front axle',
        shown: 'X = L (mRL + mRR) / m',
        of: rearward,
      },
      {
        name: 'y',
        symbol: 'Y',
        kind: 'length',
        unit: 'mm',
        meaning: 'centre of gravity, to the right',
        shown: 'Y = (bF (mFR − mFL) + bR (mRR − mRL)) / 2 m',
        of: (fl, fr, rl, rr, _wheelbase, front, rear) => toTheRight(fl, fr, rl, rr, front, rear),
      },
      {
        name: 'frontShare',
        symbol: 'sF',
        kind: 'ratio',
        unit: '%',
        meaning: 'share on the front axle',
        shown: 'sF = (mFL + mFR) / m',
        of: (fl, fr, rl, rr) => (fl + fr) / (fl + fr + rl + rr),
      },
      {
        name: 'leftShare',
        symbol: 'sL',
        kind: 'ratio',
        unit: '%',
        meaning: 'share on the left',
        shown: 'sL = (mFL + mRL) / m',
        of: (fl, fr, rl, rr) => (fl + rl) / (fl + fr + rl + rr),
      },
      {
        name: 'cross',
        symbol: 'c',
        kind: 'ratio',
        unit: '%',
        meaning: 'cross-weight, front right with rear left',
        shown: 'c = (mFR + mRL) / m',
        of: (fl, fr, rl, rr) => (fr + rl) / (fl + fr + rl + rr),
      },
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'ISO 10392:2011, Road vehicles – Determination of centre of gravity',
      at: 'horizontal position: moments of the wheel loads',
      status: 'published',
    },
  ],
  assumptions: [
    'Level ground and level scales, suspension settled, wheels straight ahead.',
    'The condition is the one of the record: fluids and load as stated.',
  ],
  cautions: ['hoist-balance'],
  checks: [
    {
      what: 'four corner loads to mass, X, Y, shares and u(X)',
      source: 'ISO 10392 (horizontal position), own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/iso-10392.test.ts',
    },
  ],
  example: {
    fl: '452 ± 0.5 kg',
    fr: '438 ± 0.5 kg',
    rl: '381 ± 0.5 kg',
    rr: '369 ± 0.5 kg',
    wheelbase: '2700 ± 2 mm',
    frontTrack: '1560 ± 3 mm',
    rearTrack: '1540 ± 3 mm',
  },
});
