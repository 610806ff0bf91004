import { question } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { accessTime, driveTime, jointCount, jointTable, jointType } from './joint-columns.ts';

export default question({
  id: 'install-time',
  version: 1,
  title: 'Time to install the joints',
  wording: 'How long does it take to put the joints in, as recorded?',
  subject: 'study',
  section: CENSUS,
  inputs: [jointTable(jointCount, accessTime, driveTime, jointType)],
  body: {
    body: 'tally',
    table: 'joints',
    groupBy: 'type',
    terms: [
      {
        name: 'time',
        symbol: 'T',
        kind: 'time',
        shown: 'Σ n (tₐ + tᵈ)',
        needs: ['count', 'access', 'drive'],
        each: (n, access, drive) => n * (access + drive),
      },
      {
        name: 'elements',
        symbol: 'N',
        kind: 'count',
        shown: 'Σ n',
        needs: ['count'],
        each: (n) => n,
      },
    ],
    outputs: [
      {
        name: 'time',
        symbol: 'T',
        kind: 'time',
        unit: 'min',
        meaning: 'install time of all joints',
        shown: 'T = Σ n (tₐ + tᵈ)',
        of: (time) => time,
      },
      {
        name: 'each',
        symbol: 'T/N',
        kind: 'time',
        unit: 's',
        meaning: 'mean time a joint',
        shown: 'T / N',
        of: (time, elements) => time / elements,
      },
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'Sum of element times, each reached and driven one after the other',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'One person, one joint at a time; no allowances, tool changes or waiting: the elements as recorded.',
    'Element times by one estimator share that estimator’s error.',
  ],
  cautions: [],
  checks: [
    {
      what: 'a worked motion-element case as a sum of elements, in time units of 0.036 s',
      source:
        'after the published 1948 method-time book (Maynard, Stegemerten, Schwab): 86.44 units = 3.1118 s',
      status: 'seen',
      test: 'test/published/element-times.test.ts',
    },
  ],
  example: {
    joints: [
      { count: '62', access: '0.6 s ± 15 %', drive: '4.0 s ± 15 %', type: 'screw' },
      { count: '18', access: '1.2 s ± 15 %', drive: '7.5 s ± 15 %', type: 'bolt' },
    ],
  },
});
