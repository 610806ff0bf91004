import { processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, shared, tooling } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';

export default processModel({
  id: 'low-pressure-casting',
  title: 'Low-pressure casting with a sand core',
  wording: 'What should a low-pressure casting with a core cost?',
  inputs: [
    MASS,
    PIECES,
    given({
      ...{
        name: 'volume3',
        symbol: 'V',
        kind: 'volume',
        unit: 'cm3',
        range: [5, 50000],
        moves: 'up',
      },
      meaning: 'volume of the section that is solid last',
    }),
    given({
      ...{ name: 'surface', symbol: 'A_s', kind: 'area', unit: 'cm2', range: [5, 100000] },
      ...{ meaning: 'cooled surface of that section', moves: 'down' },
    }),
    given({
      ...{ name: 'core', symbol: 'm_c', kind: 'mass', unit: 'kg', range: [0, 60], moves: 'up' },
      ...{ meaning: 'mass of the sand core; 0 without one', bounds: { atLeast: 0 } },
    }),
    usual(
      {
        ...{
          name: 'corePrice',
          symbol: 'p_s',
          kind: 'moneyPerMass',
          unit: '{u}/kg',
          range: [0.1, 6],
        },
        ...{ meaning: 'core made and put in', moves: 'up' },
      },
      '0.9 / 1.3 / 2.0 {u}/kg',
    ),
    usual(
      {
        ...{ name: 'mould', symbol: 'B_m', kind: 'timePerArea', unit: 's/mm2', range: [0.1, 20] },
        ...{ meaning: 'constant of the mould in the rule of Chvorinov', moves: 'up' },
      },
      '2 / 3 / 4.5 s/mm2',
    ),
    usual(
      {
        ...{ name: 'fill', symbol: 't_i', kind: 'time', unit: 's', range: [2, 120], moves: 'up' },
        meaning: 'time to fill',
      },
      '8 / 12 / 20 s',
    ),
    usual(
      {
        ...{ name: 'dead', symbol: 't_d', kind: 'time', unit: 's', range: [5, 300], moves: 'up' },
        meaning: 'time to set the core, close, open and take out',
      },
      '40 / 60 / 90 s',
    ),
    usual(
      {
        ...{ name: 'cavities', symbol: 'n_z', kind: 'count', unit: '1', range: [1, 8] },
        ...{ meaning: 'cavities of the mould', bounds: { atLeast: 1 }, moves: 'down' },
      },
      'exactly 1',
    ),
    usual(
      {
        ...{ name: 'melt', symbol: 'ζ', kind: 'ratio', unit: '%', range: [0.5, 12], moves: 'up' },
        ...{
          meaning: 'melt lost as dross and in the riser tube',
          bounds: { atLeast: 0, below: 100 },
        },
      },
      '3 / 5 / 8 %',
    ),
    usual(
      {
        ...{ name: 'melting', symbol: 'p_a', kind: 'moneyPerMass', unit: '{u}/kg', range: [0, 2] },
        ...{ meaning: 'melting and holding', moves: 'up' },
      },
      '0.2 / 0.3 / 0.45 {u}/kg',
    ),
    machineRate('low-pressure caster', '55 / 75 / 100 {u}/h', 'low-pressure machine'),
    shared('price', '2.4 / 2.9 / 3.6 {u}/kg'),
    shared('scrapPrice', '1.4 / 1.8 / 2.2 {u}/kg'),
    shared('crew', '0.3 / 0.5 / 0.8'),
    shared('rejects', '2 / 5 / 9 %'),
    shared('setUp', '90 / 180 / 300 min'),
    shared('batch', 'exactly 1500'),
    ...tooling('60000 / 100000 / 170000 {u}', 'exactly 80000'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'kg', 'metal bought for a casting', 'G = m / (1 − ζ)'),
    step('modulus', 'M', 'length', 'mm', 'modulus of the section', 'M = V / A_s'),
    step('solid', 't_f', 'time', 's', 'time until it is solid', 't_f = B_m M²'),
  ],
  plan: (x) => {
    const net = (x.mass ?? 0) / (x.count ?? 1);
    const gross = net / (1 - (x.melt ?? 0));
    const modulus = (x.volume3 ?? 0) / (x.surface ?? 0);
    const solid = (x.mould ?? 0) * modulus ** 2;
    const cores = (x.corePrice ?? 0) * (x.core ?? 0);
    return {
      work: {
        ...{ gross, net: gross, bought: cores + (x.melting ?? 0) * gross },
        ...{ cycle: (x.fill ?? 0) + solid + (x.dead ?? 0), pieces: x.cavities ?? 1 },
        tool: x.tool ?? 0,
      },
      steps: { gross, modulus, solid },
    };
  },
  sources: [
    {
      title: 'Chvorinov’s rule, time of solidification by the square of volume over surface',
      status: 'published',
    },
    {
      title: 'Groover, Fundamentals of Modern Manufacturing, chapter on casting',
      status: 'from memory',
    },
    { title: 'Cores, losses, times and rates', status: 'common practice, no source' },
  ],
  assumptions: ['A core is used once. Heat treatment and machining are questions of their own.'],
  checks: [
    {
      what: 'cylinder and cube, insulated cube, plate and riser by Chvorinov’s rule',
      source: 'published examination questions (ME 2015 Q46, ME 2018 Q160), recomputed',
      status: 'seen',
      test: 'test/published/casting-and-moulding.test.ts',
    },
  ],
  example: {
    mass: '4.2 ± 0.02 kg',
    volume3: '180 ± 5 cm3',
    surface: '400 ± 10 cm2',
    core: '1.6 ± 0.05 kg',
  },
});
