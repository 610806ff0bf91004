import { LEARNING_MODELS, learned } from './learning.ts';
import { processModel, step } from './process-model.ts';
import { machineRate, shared, tooling } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';

export default processModel({
  id: 'cost-build-up',
  title: 'Cost of a piece, built up',
  wording: 'What does a piece cost, from material, time, tools and what is added to them?',
  inputs: [
    {
      in: 'term',
      name: 'learning',
      meaning: 'learning curve of the people, where one is asked for',
      options: LEARNING_MODELS,
      where: 'not in a study: as asked',
      find: (at) => at.word(at.given('learning')),
    },
    given({
      ...{ name: 'gross', symbol: 'G', kind: 'mass', unit: 'kg', range: [0.0001, 1000] },
      ...{ meaning: 'mass bought for a piece', moves: 'up' },
    }),
    given({
      ...{ name: 'net', symbol: 'm', kind: 'mass', unit: 'kg', range: [0.0001, 1000] },
      meaning: 'mass of the piece: what else is bought is sold as scrap',
      moves: 'up',
    }),
    usual(
      {
        ...{ name: 'purchased', symbol: 'C_v', kind: 'money', unit: '{u}', range: [0, 10000] },
        ...{ meaning: 'bought in for a piece', moves: 'up' },
      },
      'exactly 0 {u}',
    ),
    given({
      ...{
        name: 'cycle',
        symbol: 'z',
        kind: 'time',
        unit: 's',
        range: [0.01, 100000],
        moves: 'up',
      },
      meaning: 'time of a cycle',
    }),
    usual(
      {
        ...{ name: 'cavities', symbol: 'n_z', kind: 'count', unit: '1', range: [1, 256] },
        ...{ meaning: 'pieces out of a cycle: cavities', bounds: { atLeast: 1 }, moves: 'down' },
      },
      'exactly 1',
    ),
    given({
      ...{ name: 'price', symbol: 'p', kind: 'moneyPerMass', unit: '{u}/kg', range: [0.01, 1000] },
      ...{ meaning: 'price of the material', moves: 'up', bounds: { atLeast: 0 } },
    }),
    shared('scrapPrice', 'exactly 0 {u}/kg'),
    machineRate('machine', '40 / 60 / 90 {u}/h', 'machine'),
    shared('crew', 'exactly 1'),
    shared('rejects', 'exactly 0 %'),
    shared('setUp', 'exactly 0 min'),
    shared('batch', 'exactly 1000'),
    ...tooling('exactly 0 {u}', 'exactly 1000000'),
    usual(
      {
        ...{ name: 'slope', symbol: 's', kind: 'ratio', unit: '%', range: [60, 100], moves: 'up' },
        ...{ meaning: 'slope of the learning curve', bounds: { above: 0 } },
      },
      'exactly 100 %',
    ),
    usual(
      {
        ...{ name: 'profit', symbol: 'g', kind: 'ratio', unit: '%', range: [0, 40], moves: 'up' },
        meaning: 'profit, where the factor for overhead does not hold it',
      },
      'exactly 0 %',
    ),
  ],
  steps: [
    step(
      ...(['learnt', 'λ', 'ratio', '1', 'mean time of all pieces over that of the first'] as const),
      'λ = Σ tᵢ / (N Y t₁)',
    ),
  ],
  plan: (x, { learning }) => {
    const model = LEARNING_MODELS.find((m) => m === learning);
    const units = (x.volume ?? 1) * (x.years ?? 1);
    const learnt = model ? learned(model, x.slope ?? 1, units).mean : 1;
    return {
      work: {
        ...{ gross: x.gross ?? 0, net: x.net ?? 0, bought: x.purchased ?? 0 },
        ...{ cycle: x.cycle ?? 0, pieces: x.cavities ?? 1, tool: x.tool ?? 0, learned: learnt },
      },
      steps: { learnt },
      findings: model
        ? [
            {
              ...{ code: 'learning-model', level: 'note', place: { column: 'learning' } },
              ...{ value: model, what: `learning after the ${model} model` },
              next: 'Name the model wherever the figure is quoted.',
            },
          ]
        : [],
    };
  },
  error: 0.05,
  sources: [
    {
      title: 'Esawi and Ashby (2003), resource cost model',
      at: 'material m Cm / (1 − f), tools in whole sets, time with capital and overhead',
      status: 'from memory',
    },
    { title: 'Learning curves after Wright and after Crawford', status: 'from memory' },
  ],
  assumptions: [
    'Rejects are sold as scrap at the price of scrap. Tools carry overhead like the rest.',
    'A learning curve shortens the work of people, not the cycle of the machine.',
  ],
  checks: [
    {
      what: 'resource cost at 100, 1000, 10,000 and 100,000 pieces: 605.44, 65.44, 11.44, 6.64; whole sets at 1, the life, and one more',
      source: 'after Esawi and Ashby (2003), own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/cost-build-up.test.ts',
    },
  ],
  example: {
    learning: 'cumulative average',
    gross: '1.333 ± 0.01 kg',
    net: '1.2 ± 0.01 kg',
    cycle: '60 ± 3 s',
    price: '2.5 ± 0.1 {u}/kg',
    scrapPrice: '0.4 ± 0.05 {u}/kg',
    rejects: '2 ± 0.5 %',
    setUp: '40 ± 5 min',
    tool: '60000 ± 5000 {u}',
    toolLife: 'exactly 50000',
    volume: 'exactly 20000',
    slope: '97 ± 1 %',
    purchased: '0.2 ± 0.02 {u}',
    profit: '5 ± 1 %',
  },
});
