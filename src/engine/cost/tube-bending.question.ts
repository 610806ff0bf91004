import { processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, partLength, shared, tooling } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';

export default processModel({
  id: 'tube-bending',
  title: 'Tube bending',
  wording: 'What should a bent tube cost?',
  inputs: [
    MASS,
    PIECES,
    partLength('diameter', 'D', 'outer diameter of the tube', [4, 160]),
    partLength('thickness', 't', 'wall of the tube', [0.3, 10], 'thickness'),
    partLength('length', 'l', 'developed length of the tube', [50, 8000]),
    given({
      ...{ name: 'bends', symbol: 'n_b', kind: 'count', unit: '1', range: [0, 40], moves: 'up' },
      ...{ meaning: 'bends', bounds: { atLeast: 0 } },
    }),
    given({
      ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3', range: [1000, 9000] },
      ...{ meaning: 'density of the tube', moves: 'up' },
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
        meaning: 'tube lost for each piece: grips, cuts, ends of bars',
      },
      '15 / 30 / 60 mm',
    ),
    usual(
      {
        ...{ name: 'bend', symbol: 't_b', kind: 'time', unit: 's', range: [1, 60], moves: 'up' },
        meaning: 'time for a bend, turning and feeding included',
      },
      '4 / 6 / 9 s',
    ),
    usual(
      {
        ...{ name: 'dead', symbol: 't_d', kind: 'time', unit: 's', range: [2, 120], moves: 'up' },
        meaning: 'time to load, cut, deburr and take out',
      },
      '12 / 18 / 30 s',
    ),
    machineRate('tube bender', '35 / 48 / 65 {u}/h', 'bending machine'),
    shared('price', '1.25 / 1.55 / 2.0 {u}/kg'),
    shared('scrapPrice', '0.15 / 0.22 / 0.3 {u}/kg'),
    shared('crew', '0.5 / 0.8 / 1'),
    shared('rejects', '0.5 / 1.5 / 3 %'),
    shared('setUp', '15 / 30 / 60 min'),
    shared('batch', 'exactly 2000'),
    ...tooling('4000 / 7000 / 12000 {u}', 'exactly 500000'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'kg', 'mass of tube for a piece', 'G = ρ π (D − t) t (l + l_v)'),
    step('bending', 'z', 'time', 's', 'time of a cycle', 'z = n_b t_b + t_d'),
  ],
  plan: (x) => {
    const { diameter = 0, thickness = 0, length = 0, loss = 0 } = x;
    const gross = (x.density ?? 0) * Math.PI * (diameter - thickness) * thickness * (length + loss);
    const bending = (x.bends ?? 0) * (x.bend ?? 0) + (x.dead ?? 0);
    return {
      work: {
        ...{ gross, net: (x.mass ?? 0) / (x.count ?? 1), cycle: bending, tool: x.tool ?? 0 },
      },
      steps: { gross, bending },
    };
  },
  sources: [
    { title: 'Time by bends, tube by developed length', status: 'common practice, no source' },
  ],
  assumptions: ['One set of bending tools for one diameter and radius; ends are not formed.'],
  checks: [
    {
      what: 'tube and time of a bent tube worked by hand',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/published/forming-processes.test.ts',
    },
  ],
  example: {
    mass: '1.43 ± 0.005 kg',
    diameter: '32 ± 0.1 mm',
    thickness: '2 ± 0.05 mm',
    length: '980 ± 3 mm',
    bends: '4',
    density: '7850 ± 40 kg/m3',
  },
});
