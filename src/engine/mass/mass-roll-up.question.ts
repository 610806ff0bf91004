import { question } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { partAssembly, partCoordinate, partMass } from './part-columns.ts';

export default question({
  id: 'mass-roll-up',
  version: 1,
  title: 'Mass and centre of gravity from the parts',
  wording: 'What do the parts weigh together, and where is their centre of gravity?',
  subject: 'study',
  section: BALANCE,
  inputs: [
    {
      in: 'table',
      name: 'parts',
      meaning: 'the parts below the subject',
      where: 'every part below the subject',
      rows: (at) => at.view.nodes('part', at.subject).map((n) => n.id),
      columns: [
        partMass,
        partCoordinate('x', 0, 'distance rearward of the front axle'),
        partCoordinate('y', 1, 'distance to the right of the centre plane'),
        partCoordinate('z', 2, 'height over the ground'),
        partAssembly,
      ],
    },
  ],
  body: {
    body: 'tally',
    table: 'parts',
    groupBy: 'assembly',
    terms: [
      { name: 'mass', symbol: 'M', kind: 'mass', shown: 'Σ m', needs: ['mass'], each: (m) => m },
      {
        name: 'placed',
        symbol: 'M′',
        kind: 'mass',
        shown: 'Σ m, parts with a position',
        needs: ['mass', 'x', 'y', 'z'],
        each: (m, _x, _y, _z) => m,
      },
      {
        name: 'momentX',
        symbol: 'Sx',
        kind: 'massMoment',
        shown: 'Σ m x',
        needs: ['mass', 'x', 'y', 'z'],
        each: (m, x, _y, _z) => m * x,
      },
      {
        name: 'momentY',
        symbol: 'Sy',
        kind: 'massMoment',
        shown: 'Σ m y',
        needs: ['mass', 'x', 'y', 'z'],
        each: (m, _x, y, _z) => m * y,
      },
      {
        name: 'momentZ',
        symbol: 'Sz',
        kind: 'massMoment',
        shown: 'Σ m z',
        needs: ['mass', 'x', 'y', 'z'],
        each: (m, _x, _y, z) => m * z,
      },
    ],
    outputs: [
      {
        name: 'mass',
        symbol: 'M',
        kind: 'mass',
        unit: 'kg',
        meaning: 'mass of the parts',
        shown: 'M = Σ m',
        of: (mass) => mass,
      },
      {
        name: 'x',
        symbol: 'X',
        kind: 'length',
        unit: 'mm',
        meaning: 'centre of gravity, rearward of the front axle',
        shown: 'X = Sx / M′',
        of: (_m, placed, sx) => sx / placed,
      },
      {
        name: 'y',
        symbol: 'Y',
        kind: 'length',
        unit: 'mm',
        meaning: 'centre of gravity, to the right',
        shown: 'Y = Sy / M′',
        of: (_m, placed, _sx, sy) => sy / placed,
      },
      {
        name: 'z',
        symbol: 'Z',
        kind: 'length',
        unit: 'mm',
        meaning: 'centre of gravity, height',
        shown: 'Z = Sz / M′',
        of: (_m, placed, _sx, _sy, sz) => sz / placed,
      },
    ],
  },
  modelError: {},
  sources: [
    { title: 'Sum of masses and of their moments (elementary statics)', status: 'from memory' },
    {
      title: 'ISO 4130:1978, Road vehicles – Three-dimensional reference system',
      at: 'axes; signs X rearward, Y to the right, Z up from memory',
      status: 'published',
    },
  ],
  assumptions: [
    'A part without a reading is missing, not zero.',
    'The position of a row with several pieces is the centre of gravity of all its pieces.',
    'Errors of different readings are independent but for the causes that the record names.',
  ],
  cautions: ['hoist-balance'],
  checks: [
    {
      what: 'mass and centre of gravity of four corner loads as four parts',
      source: 'moments about the axles, after ISO 10392 (horizontal position)',
      status: 'own inputs, published formula',
      test: 'test/published/iso-10392.test.ts',
    },
  ],
  example: {
    parts: [
      {
        mass: '6.90 ± 0.01 kg',
        x: '-180 ± 5 mm',
        y: '-430 ± 5 mm',
        z: '470 ± 5 mm',
        assembly: '10',
      },
      { mass: '5.30 ± 0.01 kg', x: '-735 ± 5 mm', y: '0 ± 5 mm', z: '480 ± 5 mm', assembly: '10' },
    ],
  },
});
