import { STANDARD_GRAVITY, WATER_TESTS, type WaterTest, waterTestOf } from '../../data/index.ts';
import { type PlainInputs, question, type Solved } from '../method.ts';
import { SEALING } from '../sections.ts';
import { size, stated } from '../structure/inputs.ts';
import { output, refused } from '../structure/outputs.ts';

/** kg/m³, at 20 °C. */
const WATER = 998;

export default question({
  id: 'water-test',
  version: 1,
  title: 'What a water test asks for',
  wording: 'How deep, how long and with how much water is an enclosure of this code tested?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [
    {
      in: 'term',
      name: 'code',
      meaning: 'code of the test',
      options: WATER_TESTS.map((t) => t.code),
      where: 'state it',
      find: (at) => at.word(at.given('code')),
    },
    size('height', 'h', 'height of the enclosure', [5, 3000]),
    stated(
      {
        ...{ name: 'area', symbol: 'A', kind: 'area', unit: 'm2' },
        ...{ meaning: 'surface of the enclosure', range: [0.001, 30], bounds: { above: 0 } },
      },
      'not in the record: measure it',
    ),
  ],
  body: {
    body: 'solve',
    outputs: [
      output(
        ...(['depth', 'z', 'length', 'mm'] as const),
        'depth of the lowest point; 0 for jets',
        'z = max(z₁; h + z₂)',
      ),
      output('pressure', 'p', 'pressureDiff', 'kPa', 'pressure of the water there', 'p = ρ g z'),
      output('time', 't', 'time', 'min', 'least time', 't = max(t₁; t₂ A)'),
      output('water', 'V', 'volume', 'L', 'water that jets use; 0 for immersion', 'V = q t'),
    ],
    solve,
  },
  modelError: {},
  sources: [
    { title: 'IEC 60529', at: 'second numerals 5, 6 and 7', status: 'published' },
    { title: 'ISO 20653', at: 'code 9K', status: 'published' },
  ],
  assumptions: [
    'Water and enclosure within 5 K of each other, as the standard asks; depths, flows and times are its least ones.',
    'The code of a vehicle’s maker may ask for more.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'IPX7: 1 m or 0.15 m over the highest point, 30 min; IPX5 and IPX6: 3 min or 1 min/m²; IPX9K: 4 × 30 s',
      source: 'IEC 60529 and ISO 20653',
      status: 'seen',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: { code: 'IPX7', height: '1200 ± 5 mm', area: '4.8 ± 0.1 m2' },
});

const depthOf = ({ lowest, highest = 0 }: WaterTest, height: number): number =>
  lowest === undefined ? 0 : Math.max(lowest, height + highest);
const timeOf = ({ time, timeByArea = 0 }: WaterTest, area: number): number =>
  Math.max(time, timeByArea * area);

function solve({ scalars, terms }: PlainInputs): Solved {
  const test = waterTestOf(terms.code ?? '');
  if (!test)
    return refused(
      'unknown-code',
      'code',
      'no water test of the table',
      `Take one of: ${WATER_TESTS.map((t) => t.code).join(', ')}.`,
      terms.code,
    );
  const { height = Number.NaN, area = Number.NaN } = scalars;
  const depth = depthOf(test, height);
  const time = timeOf(test, area);
  return {
    outputs: {
      depth,
      pressure: WATER * STANDARD_GRAVITY * depth,
      time,
      water: (test.flow ?? 0) * time,
    },
    detail: {
      title: 'Water tests of this enclosure',
      columns: [
        { name: 'code' },
        { name: 'what is done' },
        { name: 'depth', kind: 'length', unit: 'mm' },
        { name: 'time', kind: 'time', unit: 'min' },
        { name: 'after' },
      ],
      rows: WATER_TESTS.map((t) => [
        t.code,
        t.words,
        depthOf(t, height),
        timeOf(t, area),
        t.source,
      ]),
    },
  };
}
