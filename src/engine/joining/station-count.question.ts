import { question } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { allowanceBase } from './allowance-base.ts';

export default question({
  id: 'station-count',
  version: 1,
  title: 'Stations at a takt',
  wording: 'How many stations does putting the joints in take at the takt?',
  subject: 'vehicle',
  section: CENSUS,
  uses: ['standard-time'],
  inputs: [
    {
      in: 'scalar',
      name: 'standard',
      symbol: 'T',
      kind: 'time',
      unit: 'min',
      meaning: 'standard time of the work',
      range: [0.01, 10_000],
      bounds: { above: 0 },
      where: 'standard time',
      find: (at) => at.ask('standard-time', at.subject, 'standard'),
    },
    {
      in: 'scalar',
      name: 'takt',
      symbol: 'τ',
      kind: 'time',
      unit: 's',
      meaning: 'takt',
      range: [20, 3600],
      bounds: { above: 0 },
      where: 'takt, of the vehicle',
      find: (at) => at.number(at.subject, 'work.takt'),
    },
    allowanceBase,
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'stations',
        symbol: 'Z',
        kind: 'ratio',
        unit: '1',
        meaning: 'stations of one person each, perfectly balanced: round up',
        shown: 'Z = T / τ',
      },
    ],
    solve: ({ scalars, terms }) => ({
      outputs: { stations: Number(scalars.standard) / Number(scalars.takt) },
      detail: {
        title: 'What the time rests on',
        columns: [{ name: 'allowance is a share of' }],
        rows: [[terms.base || 'not said']],
      },
    }),
  },
  modelError: {},
  sources: [
    { title: 'Least number of stations: work over takt', status: 'common practice, no source' },
  ],
  assumptions: [
    'No loss of balance: work that can not be split evenly takes more stations.',
    'Holding and curing is done beside the work.',
  ],
  cautions: [],
  checks: [
    {
      what: '24 min of work at a takt of 4 min: 6 stations',
      source: 'work over takt, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/allowances.test.ts',
    },
  ],
  example: { standard: '24 ± 2 min', takt: 'exactly 240 s', base: 'normal time' },
});
