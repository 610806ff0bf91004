import { processModel, step } from './process-model.ts';
import { PIECES, shared } from './shared-inputs.ts';
import { fromBook, given, reading, usual } from './usual-inputs.ts';

export default processModel({
  id: 'coating',
  title: 'Coating',
  wording: 'What should the coating of a part cost?',
  inputs: [
    given(
      {
        ...{ name: 'area', symbol: 'A', kind: 'area', unit: 'm2', range: [0.001, 60], moves: 'up' },
        meaning: 'coated area of one side, all pieces',
      },
      reading('coated.area', 'coated area, all pieces,'),
    ),
    PIECES,
    usual(
      {
        ...{ name: 'coat', symbol: 'p_a', kind: 'moneyPerArea', unit: '{u}/m2', range: [0.2, 60] },
        ...{ meaning: 'price of coating both sides', moves: 'up' },
      },
      '1.8 / 2.4 / 3.2 {u}/m2',
      fromBook('rate/coating', 'coating'),
    ),
    usual(
      {
        ...{ name: 'hang', symbol: 't_w', kind: 'time', unit: 's', range: [0, 300], moves: 'up' },
        meaning: 'time to hang, mask and take off a piece',
      },
      '6 / 10 / 18 s',
    ),
    shared('crew', 'exactly 1'),
    shared('rejects', '0.5 / 1 / 2 %'),
  ],
  steps: [step('coats', 'C_v', 'money', '{u}', 'coating by area', 'C_v = p_a A / n')],
  plan: (x) => {
    const coats = ((x.coat ?? 0) * (x.area ?? 0)) / (x.count ?? 1);
    return { work: { cycle: x.hang ?? 0, bought: coats }, steps: { coats } };
  },
  sources: [{ title: 'Coating by area, hanging by piece', status: 'common practice, no source' }],
  assumptions: ['The price by area holds for the thickness and the line that it was quoted for.'],
  checks: [
    {
      what: 'coating of a plate worked by hand',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/published/forming-processes.test.ts',
    },
  ],
  example: { area: '1.9 ± 0.02 m2' },
});
