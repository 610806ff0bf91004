import { processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, partLength, shared, tooling } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';

export default processModel({
  id: 'roll-forming',
  title: 'Roll forming',
  wording: 'What should a roll-formed profile cost?',
  inputs: [
    MASS,
    PIECES,
    partLength('thickness', 't', 'thickness of the strip', [0.3, 5], 'thickness'),
    partLength('strip', 'b', 'width of the strip: developed section', [10, 800]),
    partLength('length', 'l', 'length of the profile', [50, 8000], 'envelope.length'),
    given({
      ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3', range: [1000, 9000] },
      ...{ meaning: 'density of the strip', moves: 'up' },
    }),
    usual(
      {
        ...{
          name: 'loss',
          symbol: 'l_v',
          kind: 'length',
          unit: 'mm',
          range: [0, 400],
          moves: 'up',
        },
        meaning: 'strip lost for each piece: cuts, ends of coils, trials',
      },
      '5 / 12 / 30 mm',
    ),
    usual(
      {
        ...{ name: 'speed', symbol: 'v', kind: 'speed', unit: 'm/min', range: [1, 100] },
        ...{ meaning: 'speed of the line', bounds: { above: 0 }, moves: 'down' },
      },
      '10 / 18 / 30 m/min',
    ),
    usual(
      {
        ...{ name: 'cut', symbol: 't_c', kind: 'time', unit: 's', range: [0, 60], moves: 'up' },
        meaning: 'time that the line stands for a cut or punch; 0 with a flying shear',
      },
      '0 / 1 / 3 s',
    ),
    usual(
      {
        ...{
          name: 'stations',
          symbol: 'n_s',
          kind: 'count',
          unit: '1',
          range: [4, 60],
          moves: 'up',
        },
        meaning: 'pairs of rolls',
      },
      'exactly 20',
    ),
    usual(
      {
        ...{ name: 'rolls', symbol: 'T_s', kind: 'money', unit: '{u}', range: [500, 40000] },
        ...{ meaning: 'price of a pair of rolls', moves: 'up' },
      },
      '4000 / 6000 / 9000 {u}',
    ),
    machineRate('roll forming line', '60 / 80 / 110 {u}/h', 'roll forming line'),
    shared('price', '0.95 / 1.15 / 1.45 {u}/kg'),
    shared('scrapPrice', '0.15 / 0.22 / 0.3 {u}/kg'),
    shared('crew', '1 / 1.5 / 2'),
    shared('rejects', '0.5 / 1 / 2 %'),
    shared('setUp', '60 / 120 / 240 min'),
    shared('batch', 'exactly 5000'),
    ...tooling('exactly 0 {u}', 'exactly 1500000').filter((i) => i.name !== 'tool'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'kg', 'mass of strip for a piece', 'G = ρ t b (l + l_v)'),
    step('tools', 'T', 'money', '{u}', 'price of the set of rolls', 'T = n_s T_s'),
  ],
  plan: (x) => {
    const { thickness = 0, strip = 0, length = 0, loss = 0, count = 1 } = x;
    const gross = (x.density ?? 0) * thickness * strip * (length + loss);
    const tool = (x.stations ?? 0) * (x.rolls ?? 0);
    const cycle = (length + loss) / (x.speed ?? 0) + (x.cut ?? 0);
    return {
      work: { gross, net: (x.mass ?? 0) / count, cycle, tool },
      steps: { gross, tools: tool },
    };
  },
  sources: [
    {
      title: 'Strip by developed width, time by the speed of the line, tools by pairs of rolls',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'The line runs at one speed; punching and welding in line are in the time for a cut.',
  ],
  checks: [
    {
      what: 'strip, time and tools of a profile worked by hand',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/published/forming-processes.test.ts',
    },
  ],
  example: {
    mass: '3.11 ± 0.01 kg',
    thickness: '1.4 ± 0.03 mm',
    strip: '220 ± 2 mm',
    length: '1280 ± 2 mm',
    density: '7850 ± 40 kg/m3',
  },
});
