import type { Finding } from '../../study/index.ts';
import { question } from '../method.ts';
import { COST } from '../sections.ts';
import { LEARNING_MODELS, type LearningModel, learned } from './learning.ts';
import { given } from './usual-inputs.ts';

export default question({
  id: 'learning-curve',
  version: 1,
  title: 'Learning curve',
  wording: 'How long do a later piece and all pieces together take, when people learn?',
  subject: 'study',
  onRequest: true,
  section: COST,
  inputs: [
    {
      in: 'term',
      name: 'model',
      meaning:
        'what falls by the slope with each doubling: the time of a unit, or the mean of all so far',
      options: LEARNING_MODELS,
      where: 'not in a study: as asked',
      find: (at) => at.word(at.given('model')),
    },
    given({
      ...{
        name: 'first',
        symbol: 't₁',
        kind: 'time',
        unit: 'h',
        range: [0.0001, 1e6],
        moves: 'up',
      },
      meaning: 'time of the first unit',
    }),
    given({
      ...{ name: 'slope', symbol: 's', kind: 'ratio', unit: '%', range: [60, 100], moves: 'up' },
      meaning: 'slope: what is left with each doubling',
    }),
    given({
      ...{ name: 'units', symbol: 'n', kind: 'count', unit: '1', range: [1, 1e8] },
      ...{ meaning: 'units', bounds: { atLeast: 1 }, moves: 'down' },
    }),
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        ...{ name: 'unit', symbol: 'tₙ', kind: 'time', unit: 'h' },
        meaning: 'time of unit n',
        shown:
          'unit: tₙ = t₁ nᵇ; cumulative average: tₙ = t₁ (n nᵇ − (n − 1) (n − 1)ᵇ), b = ln s / ln 2',
      },
      {
        ...{ name: 'mean', symbol: 't̄', kind: 'time', unit: 'h' },
        meaning: 'mean of the first n units',
        shown: 'unit: t̄ = Σ tᵢ / n; cumulative average: t̄ = t₁ nᵇ',
      },
      {
        ...{ name: 'total', symbol: 'Σt', kind: 'time', unit: 'h' },
        meaning: 'time of the first n units together',
        shown: 'Σt = n t̄',
      },
    ],
    solve: ({ scalars, terms }) => {
      const { first = Number.NaN, slope = Number.NaN, units = Number.NaN } = scalars;
      const model: LearningModel | undefined = LEARNING_MODELS.find((m) => m === terms.model);
      if (!model) return { outputs: {}, findings: [NO_MODEL] };
      const { unit, mean } = learned(model, slope, units);
      return {
        outputs: { unit: first * unit, mean: first * mean, total: first * mean * units },
        findings: [named(model)],
      };
    },
  },
  modelError: {},
  sources: [
    { title: 'Wright (1936), cumulative average model', status: 'from memory' },
    { title: 'Crawford, unit model', status: 'from memory' },
  ],
  assumptions: ['One slope throughout: no plateau and no break in the work.'],
  cautions: [],
  checks: [
    {
      what: '80 %: units 1, 2, 4, 8, 10, 100 and the total of 10 in both models; 85 %, 250 h, 15 units',
      source: 'published worked examples of both models, recomputed',
      status: 'seen',
      test: 'test/published/capital-and-learning.test.ts',
    },
  ],
  example: { model: 'unit', first: '250 ± 10 h', slope: '85 ± 1 %', units: '15' },
});

const NO_MODEL: Finding = {
  ...{ code: 'no-learning-model', level: 'gap', place: { column: 'model' } },
  what: 'it is not said which learning curve is meant: the two give different totals',
  next: `Say ${LEARNING_MODELS.join(' or ')}.`,
};

const named = (model: LearningModel): Finding => ({
  ...{ code: 'learning-model', level: 'note', place: { column: 'model' }, value: model },
  what: `learning after the ${model} model`,
  next: 'Name the model wherever the figure is quoted.',
});
