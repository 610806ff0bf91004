import { processModel, step } from './process-model.ts';
import { MASS, PIECES, tooling } from './shared-inputs.ts';
import { byMaterial, given, usual } from './usual-inputs.ts';

export default processModel({
  id: 'bought-in',
  title: 'Bought-in parts',
  wording: 'What should a bought-in part cost, by quotation and by its mass?',
  inputs: [
    MASS,
    PIECES,
    given({
      ...{ name: 'quote', symbol: 'p_b', kind: 'money', unit: '{u}', range: [0, 20000] },
      ...{
        meaning: 'price quoted for a piece; 0 where there is none',
        bounds: { atLeast: 0 },
        moves: 'up',
      },
    }),
    usual(
      {
        ...{ name: 'trust', symbol: 'ω', kind: 'ratio', unit: '%', range: [0, 100] },
        ...{ meaning: 'weight of the quotation: 100 % by quotation, 0 % by mass' },
        bounds: { atLeast: 0 },
      },
      'exactly 100 %',
    ),
    usual(
      {
        ...{
          name: 'perMass',
          symbol: 'p',
          kind: 'moneyPerMass',
          unit: '{u}/kg',
          range: [0.1, 400],
        },
        ...{ meaning: 'price of parts of this kind by mass', moves: 'up' },
      },
      '6 / 12 / 25 {u}/kg',
      byMaterial('bought'),
    ),
    usual(
      {
        ...{ name: 'rejects', symbol: 'f', kind: 'ratio', unit: '%', range: [0, 20], moves: 'up' },
        ...{ meaning: 'share of rejects found on arrival', bounds: { atLeast: 0, below: 100 } },
      },
      '0 / 0.1 / 0.3 %',
    ),
    ...tooling('exactly 0 {u}', 'exactly 1000000'),
  ],
  steps: [
    step('byMass', 'C_v', 'money', '{u}', 'price by mass', 'C_v = p m / n'),
    step('gap', 'Δ', 'money', '{u}', 'quotation less price by mass', 'Δ = p_b − C_v'),
  ],
  plan: (x) => {
    const { quote = 0, trust = 0 } = x;
    const byMass = ((x.perMass ?? 0) * (x.mass ?? 0)) / (x.count ?? 1);
    return {
      work: { bought: trust * quote + (1 - trust) * byMass, tool: x.tool ?? 0 },
      steps: { byMass, gap: quote - byMass },
    };
  },
  sources: [
    {
      title: 'Parts by quotation, else by mass of their kind',
      status: 'common practice, no source',
    },
  ],
  assumptions: ['A quotation holds for its volume and day; a price by mass is a first guess.'],
  checks: [
    {
      what: 'a part by quotation, by mass, and half by each, worked by hand',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/published/forming-processes.test.ts',
    },
  ],
  example: {
    mass: '3.4 ± 0.01 kg',
    quote: '41 ± 2 {u}',
    trust: 'exactly 70 %',
    tool: '12000 ± 1500 {u}',
  },
});
