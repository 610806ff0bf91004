import { type OutputSpec, question } from '../method.ts';
import { HOIST } from '../sections.ts';
import { HOIST_ROW } from './hoist-inputs.ts';
import { lookAtOrder } from './order-look.ts';
import { leastOf, PLAN_COLUMNS } from './plan-rows.ts';
import { precedenceOf } from './removal-precedence.ts';

const LEAST = [
  ['spareX', 'Δₓ', 'length', 'mm', 'margin in X beyond what is asked for'],
  ['spareY', 'Δ_y', 'length', 'mm', 'margin in Y beyond what is asked for'],
  ['spareArm', 'Δₐ', 'mass', 'kg', 'rating of one arm less its load'],
  ['spareLift', 'Δ_R', 'mass', 'kg', 'rating of the lift less its load'],
] as const;

const output = ([name, symbol, kind, unit, meaning]: (typeof LEAST)[number]): OutputSpec => ({
  ...{ name, symbol, kind, unit, decides: 'margin' },
  meaning: `${meaning}, least over the plan`,
  shown: `${symbol} = min over the steps`,
});

const row = (step: string, doing: string, after: string, kg: readonly [number, number]) => {
  const [left, taken] = kg;
  const mm = (x: number) => `exactly ${x} mm`;
  const moment = (of: number, at: number) => `exactly ${of * at} kg.m`;
  return {
    ...{ step, doing, after, why: after === '' ? '' : 'as recorded' },
    ...{ mass: `exactly ${left} kg`, takenMass: `exactly ${taken} kg` },
    ...{ leftX: moment(left, 1.3), leftY: moment(left, 0.01) },
    ...{ takenX: moment(taken, 1.3), takenY: moment(taken, 0.01) },
    ...{ x: mm(1300), y: mm(10), z: mm(600), marginX: mm(740), pulledX: mm(620) },
    ...{ limitX: mm(273), limitY: mm(168), spareX: mm(347), spareY: mm(380) },
    ...{ spareArm: 'exactly 480 kg', spareLift: 'exactly 1770 kg' },
  };
};

export default question({
  id: 'removal-order',
  version: 1,
  title: 'Order of the removal',
  wording: 'Does the planned order keep its margins on the hoist, and which orders would?',
  subject: 'vehicle',
  section: HOIST,
  uses: ['hoist-balance'],
  inputs: [
    {
      in: 'table',
      name: 'steps',
      meaning: 'one step of the removal plan, in order',
      where: 'removal plan; precedence from joints and from what stands in the way',
      rows: (at) => {
        const { plan, findings } = precedenceOf(at);
        for (const finding of findings) at.note(finding);
        return plan.map((step) => step.id);
      },
      columns: PLAN_COLUMNS,
    },
    HOIST_ROW,
    ...LEAST.map(([name, symbol, kind, unit, meaning]) =>
      leastOf(name, symbol, kind, unit, meaning),
    ),
  ],
  body: {
    body: 'row',
    outputs: LEAST.map((least, i) => ({
      ...output(least),
      of: (...x: number[]) => x[i] ?? Number.NaN,
    })),
  },
  look: lookAtOrder,
  modelError: {},
  sources: [
    {
      title: 'A step may be taken when all that holds it and all that stands in its way is off',
      status: 'common practice, no source',
    },
    {
      title: 'R. Bellman, Dynamic Programming (1957): the widest of the least margins',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Each step is taken whole; what is left after it hangs on which steps were taken, not on their order.',
    'Orders are looked for by trying steps in the order planned; a margin counts when it holds with the spread of the record.',
    'Joints and blockers that nobody recorded are not seen: look before pulling.',
  ],
  cautions: ['hoist-balance'],
  checks: [
    {
      what: 'orders found against every order of small plans tried one by one',
      source: 'own inputs; exhaustive search',
      status: 'own inputs, published formula',
      test: 'test/engine/hoist/order-search.test.ts',
    },
  ],
  example: {
    steps: [
      row('R1', 'wheels off', '', [1558, 88]),
      row('R2', 'lower the pack', 'R1', [1094, 464]),
    ],
    hoist: [
      {
        front: 'exactly 560 mm',
        rear: 'exactly 2380 mm',
        left: 'exactly -560 mm',
        right: 'exactly 560 mm',
        shareX: 'exactly 15 %',
        leastX: 'exactly 250 mm',
        shareY: 'exactly 15 %',
        pull: 'exactly 80 kg',
        pullX: 'exactly -820 mm',
        pullY: 'exactly 0 mm',
        rating: 'exactly 3500 kg',
        armRating: 'exactly 1000 kg',
      },
    ],
    spareX: '347 ± 6 mm',
    spareY: '380 ± 6 mm',
    spareArm: '480 ± 3 kg',
    spareLift: '1770 ± 1 kg',
  },
});
