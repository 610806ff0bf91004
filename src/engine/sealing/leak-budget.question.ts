import type { Id } from '../../study/index.ts';
import { type Finder, question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { ofZone } from './leak-inputs.ts';
import {
  crossingCount,
  crossingOf,
  labelOf,
  leadsInto,
  nameColumn,
  numberOr,
  recordedWord,
} from './sealing-columns.ts';

/** Crossings that lead into the zone. */
const intoZone = (at: Finder): readonly Id[] => {
  const zone = new Set([labelOf(at, at.subject)]);
  return at.view
    .nodes('crossing')
    .map((n) => n.id)
    .filter((id) => leadsInto(crossingOf(at, id), zone));
};

export default question({
  id: 'leak-budget',
  version: 1,
  title: 'Leak budget',
  wording: 'Does the zone leak less than its limit, and what may each seal let through?',
  subject: 'zone',
  section: SEALING,
  inputs: [
    {
      in: 'table',
      name: 'crossings',
      meaning: 'what leads into the zone',
      where: 'crossings that join the zone to another',
      rows: intoZone,
      columns: [
        nameColumn('crossing'),
        recordedWord('kind', 'crossing.kind'),
        crossingCount,
        {
          in: 'scalar',
          ...{ name: 'length', symbol: 'l', kind: 'length', unit: 'm', range: [0, 100] },
          ...{ meaning: 'length of seal, each', bounds: { atLeast: 0 } },
          where: 'length of seal; none for a fastener where none is recorded',
          find: (at, row) =>
            numberOr(at, row, 'crossing.sealLength', at.exact(0, 'no length of seal recorded')),
        },
        {
          in: 'scalar',
          ...{ name: 'leak', symbol: 'q', kind: 'gasFlow', unit: 'Pa.m3/s', range: [0, 1] },
          ...{ meaning: 'leak found there, each', bounds: { atLeast: 0 } },
          where: 'leak of the crossing; none where none was found',
          find: (at, row) =>
            numberOr(at, row, 'crossing.leak', at.exact(0, 'no leak was found there')),
        },
      ],
    },
    {
      in: 'scalar',
      ...{ name: 'total', symbol: 'Q', kind: 'gasFlow', unit: 'Pa.m3/s' },
      ...{ meaning: 'leak of the whole zone', range: [-1, 10] },
      where: 'leak-from-decay of the zone',
      find: (at) => at.ask('leak-from-decay', at.subject, 'flow'),
    },
    ofZone(
      {
        ...{ name: 'limit', symbol: 'Q_g', kind: 'gasFlow', unit: 'Pa.m3/s' },
        ...{ meaning: 'limit, yours', range: [1e-6, 10], bounds: { above: 0 } },
      },
      'leak.limit',
    ),
  ],
  uses: ['leak-from-decay'],
  body: {
    body: 'tally',
    table: 'crossings',
    groupBy: 'kind',
    terms: [
      {
        ...{ name: 'pieces', symbol: 'N', kind: 'count', shown: 'Σ n', needs: ['count'] },
        each: (n) => n,
      },
      {
        ...{ name: 'seal', symbol: 'L', kind: 'length', shown: 'Σ n l' },
        needs: ['count', 'length'],
        each: (n, l) => n * l,
      },
      {
        ...{ name: 'found', symbol: 'Q_f', kind: 'gasFlow', shown: 'Σ n q' },
        needs: ['count', 'leak'],
        each: (n, q) => n * q,
      },
    ],
    outputs: [
      {
        ...worked(
          ...(['margin', 'm', 'gasFlow', 'Pa.m3/s'] as const),
          'limit less leak of the whole zone',
          'm = Q_g − Q',
          (_n, _l, _f, total, limit) => limit - total,
        ),
        decides: 'margin',
      },
      worked(
        ...(['rest', 'Q_r', 'gasFlow', 'Pa.m3/s'] as const),
        'leak of which the place was not found',
        'Q_r = Q − Q_f',
        (_n, _l, found, total) => total - found,
      ),
      worked(
        ...(['each', 'q₁', 'gasFlow', 'Pa.m3/s'] as const),
        'limit for each crossing, shared evenly',
        'q₁ = Q_g / N',
        (n, _l, _f, _t, limit) => limit / n,
      ),
      worked(
        ...(['metre', 'q₂', 'gasFlow', 'Pa.m3/s'] as const),
        'limit for each metre of seal, shared evenly',
        'q₂ = Q_g l₁ / L',
        (_n, l, _f, _t, limit) => (limit * METRE) / l,
      ),
    ],
  },
  modelError: {},
  sources: [
    { title: 'Leaks side by side add up', status: 'published' },
    { title: 'Limit shared by pieces or by length', status: 'common practice, no source' },
  ],
  assumptions: [
    'The limit is yours. l₁ is a metre. Leaks found are stated at the pressure of the test.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'limit, rest and shares of a made-up zone by hand',
      source: 'own inputs',
      status: 'own inputs, published formula',
      test: 'test/engine/sealing/crossing-paths.test.ts',
    },
  ],
  example: {
    crossings: [
      {
        ...{ name: 'screws', kind: 'fastener', count: '6', length: 'exactly 0 m' },
        leak: '0.005 ± 0.001 Pa.m3/s',
      },
      {
        ...{ name: 'lid', kind: 'gasket', count: '1', length: '5.54 ± 0.01 m' },
        leak: '0.01 ± 0.002 Pa.m3/s',
      },
    ],
    total: '0.09 ± 0.01 Pa.m3/s',
    limit: '0.1 ± 0.001 Pa.m3/s',
  },
});

const METRE = 1;
