import { ELEMENT_TIME_TABLES } from '../../data/index.ts';
import type { Finding } from '../../study/index.ts';
import { type DetailTable, type PlainRow, question } from '../method.ts';
import { CENSUS } from '../sections.ts';
import {
  type ElementRead,
  elementCode,
  elementCodes,
  elementUnits,
  type OwnUnits,
} from './element-units.ts';
import { ownElementTimes } from './own-element-times.ts';

const SECONDS_A_UNIT = ELEMENT_TIME_TABLES[0]?.secondsAUnit ?? 0.036;

export default question({
  id: 'element-time',
  version: 1,
  title: 'Time of a sequence of motions',
  wording: 'How long does the handwork take by predetermined element times?',
  subject: 'joint',
  onRequest: true,
  section: CENSUS,
  inputs: [
    {
      in: 'table',
      name: 'elements',
      meaning: 'one motion, in the order done',
      where: 'elements of motion of the joint, in order',
      rows: (at) =>
        elementCodes(at.text(at.subject, 'elements.install').text).map((code, i) => `${i} ${code}`),
      columns: [
        {
          in: 'term',
          name: 'element',
          meaning: 'its code: R16C, M10B5 (inches, case, pounds), G1A, RL1',
          where: 'elements of motion of the joint',
          find: (at, row) => at.word(row.split(' ')[1] ?? ''),
        },
      ],
    },
    {
      in: 'table',
      name: 'own',
      meaning: 'an element time of the shop’s own, which goes before the tables that come with it',
      where: 'element times imported into the study',
      rows: (at) => ownElementTimes(at.view).map(({ trial, property }) => `${trial} ${property}`),
      columns: [
        {
          in: 'term',
          name: 'element',
          meaning: 'its code',
          where: 'name of the element time',
          find: (at, row) => at.word(row.split('elementTime.')[1] ?? ''),
        },
        {
          in: 'scalar',
          name: 'units',
          symbol: 'e',
          kind: 'ratio',
          unit: '1',
          meaning: 'time units',
          range: [0, 500],
          bounds: { atLeast: 0 },
          where: 'the element time',
          find: (at, row) => {
            const [trial = '', property = ''] = row.split(' ');
            return at.number(trial, property);
          },
        },
      ],
    },
    {
      in: 'scalar',
      name: 'unit',
      symbol: 'τ',
      kind: 'time',
      unit: 's',
      meaning: 'length of one time unit',
      range: [0.001, 60],
      bounds: { above: 0 },
      where: 'the table of element times: 100,000 units make an hour',
      find: (at) => at.exact(SECONDS_A_UNIT, 'one time unit'),
      assumed: `exactly ${SECONDS_A_UNIT} s`,
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'units',
        symbol: 'E',
        kind: 'ratio',
        unit: '1',
        meaning: 'time units of the sequence',
        shown: 'E = Σ e',
      },
      {
        name: 'time',
        symbol: 't',
        kind: 'time',
        unit: 's',
        meaning: 'time of the sequence, at normal pace and without allowance',
        shown: 't = E τ',
      },
    ],
    solve: ({ tables, scalars }) => {
      const own: OwnUnits = new Map(
        (tables.own ?? []).map((row) => [elementCode(String(row.element)), Number(row.units)]),
      );
      const rows = (tables.elements ?? []).map((row) => ({
        row,
        code: elementCode(String(row.element)),
      }));
      const reads = rows.map(({ row, code }) => ({
        row,
        code,
        read: elementUnits(code, own, ELEMENT_TIME_TABLES),
      }));
      const units =
        reads.length === 0
          ? Number.NaN
          : reads.reduce((sum, { read }) => sum + ('units' in read ? read.units : Number.NaN), 0);
      return {
        outputs: { units, time: units * Number(scalars.unit) },
        detail: detailOf(reads),
        findings: reads.flatMap(findingOf),
      };
    },
  },
  modelError: { time: { relative: 0.05, sharedFraction: 0.5 } },
  sources: [
    {
      title:
        'Maynard, Stegemerten and Schwab, Methods-Time Measurement (1948): values after the published method, from reprints',
      status: 'published',
    },
  ],
  assumptions: [
    'Motions one after the other by one hand; what both hands do at once is not seen.',
    'Distances between listed ones by straight line; a weight up to 7.5 lb takes the band of 7.5 lb, none takes no band.',
    'Method error of 5 %, half of its variance common to all sequences: judgement.',
  ],
  cautions: [],
  checks: [
    {
      what: 'R16C G4A M10B5 RL1 R14B G1B M8C3 P1NSE RL1: 86.44 units = 3.1118 s',
      source: 'a worked example after the published 1948 method',
      status: 'seen',
      test: 'test/published/element-times.test.ts',
    },
  ],
  example: {
    elements: ['R16C', 'G4A', 'M10B5', 'RL1'].map((element) => ({ element })),
    own: [{ element: 'RL1', units: '2.0 ± 0.1' }],
    unit: 'exactly 0.036 s',
  },
});

interface Read {
  readonly row: PlainRow;
  readonly code: string;
  readonly read: ElementRead;
}

const detailOf = (reads: readonly Read[]): DetailTable => ({
  title: 'Elements in order',
  columns: [{ name: 'element' }, { name: 'units', kind: 'ratio' }, { name: 'from' }],
  rows: reads.map(({ code, read }) =>
    'units' in read ? [code, read.units, read.from] : [code, 'no value', read.why],
  ),
});

function findingOf({ row, code, read }: Read): Finding[] {
  const place = { subject: String(row.subject), column: 'element' };
  if ('why' in read)
    return [
      {
        code: 'element-unknown',
        level: 'gap',
        place,
        value: code,
        what: read.why,
        next: 'Correct the code, or import a table of your own that has it.',
      },
    ];
  if (!read.between) return [];
  return [
    {
      code: 'element-between',
      level: 'note',
      place,
      value: code,
      what: 'the distance stands between two of the table: taken by straight line',
      next: 'Nothing to do.',
    },
  ];
}
