import { question } from '../method.ts';
import { COST } from '../sections.ts';
import { capitalRecovery } from './capital-recovery.ts';
import { given, usual } from './usual-inputs.ts';

const money = { kind: 'money', unit: '{u}' } as const;
const ratio = { kind: 'ratio', unit: '1' } as const;

type Ten = [number, number, number, number, number, number, number, number, number, number];

export default question({
  id: 'machine-hour-rate',
  version: 1,
  title: 'Rate of a machine',
  wording: 'What does an hour of the machine cost?',
  subject: 'study',
  onRequest: true,
  section: COST,
  inputs: [
    given({
      ...{ ...money, name: 'investment', symbol: 'I', meaning: 'investment, put up' },
      ...{ range: [1000, 5e7], moves: 'up' },
    }),
    usual(
      {
        ...money,
        name: 'salvage',
        symbol: 'V',
        meaning: 'worth at the end of its life',
        range: [0, 1e7],
      },
      'exactly 0 {u}',
    ),
    usual(
      {
        ...{
          ...ratio,
          name: 'life',
          symbol: 'n',
          meaning: 'years that it is used',
          range: [1, 40],
        },
        ...{ bounds: { above: 0 } },
      },
      'exactly 10',
    ),
    usual(
      {
        ...{ kind: 'ratio', unit: '%', name: 'interest', symbol: 'i', moves: 'up' },
        ...{ meaning: 'interest a year', range: [0, 30] },
      },
      '5 / 7 / 10 %',
    ),
    usual(
      {
        kind: 'area',
        unit: 'm2',
        name: 'floor',
        symbol: 'A',
        meaning: 'floor with ways',
        range: [1, 5000],
        moves: 'up',
      },
      '40 / 60 / 90 m2',
    ),
    usual(
      {
        ...{ kind: 'moneyPerArea', unit: '{u}/m2', name: 'floorPrice', symbol: 'p_A', moves: 'up' },
        ...{ meaning: 'price of floor a year', range: [5, 600] },
      },
      '60 / 90 / 140 {u}/m2',
    ),
    usual(
      {
        ...{ kind: 'power', unit: 'kW', name: 'power', symbol: 'P', moves: 'up' },
        ...{ meaning: 'mean power drawn while it runs', range: [0, 5000] },
      },
      '20 / 30 / 45 kW',
    ),
    usual(
      {
        ...{ kind: 'moneyPerEnergy', unit: '{u}/(kW.h)', name: 'energyPrice', symbol: 'p_E' },
        ...{ meaning: 'price of energy', range: [0.01, 2], moves: 'up' },
      },
      '0.12 / 0.16 / 0.22 {u}/(kW.h)',
      { where: 'rate book, energy', find: (at) => at.rate('rate/energy', 'energy') },
    ),
    usual(
      {
        ...{ kind: 'ratio', unit: '%', name: 'maintenance', symbol: 'μ', moves: 'up' },
        ...{ meaning: 'maintenance a year over the investment', range: [0, 30] },
      },
      '3 / 5 / 8 %',
    ),
    usual(
      {
        ...{ kind: 'time', unit: 'h', name: 'hours', symbol: 'H', moves: 'down' },
        ...{ meaning: 'hours planned a year', range: [200, 8760], bounds: { above: 0 } },
      },
      '3500 / 4200 / 5500 h',
    ),
  ],
  body: {
    body: 'row',
    outputs: [
      {
        ...{ name: 'rate', symbol: 'R', kind: 'moneyPerTime', unit: '{u}/h' },
        meaning: 'rate of the machine, without people and overhead',
        shown: 'R = (K + A p_A + μ I) / H + P p_E',
        of: (...x) => {
          const [I, V, n, i, A, pA, P, pE, mu, H] = x as Ten;
          return (capital(I, V, n, i) + A * pA + mu * I) / H + P * pE;
        },
      },
      {
        ...{ name: 'capital', symbol: 'K', kind: 'money', unit: '{u}' },
        meaning: 'capital a year: recovery of the investment, interest on what it is still worth',
        shown: 'K = (I − V) i (1 + i)ⁿ / ((1 + i)ⁿ − 1) + V i',
        of: capital,
      },
      {
        ...{ name: 'factor', symbol: 'a_n', kind: 'ratio', unit: '1', step: true },
        meaning: 'capital recovery factor',
        shown: 'a_n = i (1 + i)ⁿ / ((1 + i)ⁿ − 1)',
        of: (_I, _V, n, i) => capitalRecovery(i ?? 0, n ?? 1),
      },
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'Capital recovery factor of engineering economy, at most 1/n without interest',
      status: 'published',
    },
    {
      title: 'Floor, energy and maintenance by year or hour',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Equal amounts at the end of each year; taxes and inflation are left out.',
    'The hours are those planned: standing still is in the availability of a process model.',
  ],
  cautions: [],
  checks: [
    {
      what: 'factors 10 %/10 a 0.16275, 8 %/10 a 0.14903, 10 %/8 a 0.18744, 6 %/4 a 0.28859; 100,000 less 20,000 over 15 a at 10 %: 12,517.90 a year; 1/n at no interest',
      source: 'published tables of capital recovery factors and a worked example, recomputed',
      status: 'seen',
      test: 'test/published/capital-and-learning.test.ts',
    },
  ],
  example: {
    investment: '850000 ± 60000 {u}',
    salvage: '50000 ± 20000 {u}',
    life: 'exactly 12',
  },
});

/** Capital a year. */
function capital(...[I = 0, V = 0, n = 1, i = 0]: number[]): number {
  return (I - V) * capitalRecovery(i, n) + V * i;
}
