import { processModel, step } from './process-model.ts';
import { machineRate, shared } from './shared-inputs.ts';
import { usual } from './usual-inputs.ts';
import { ALIKE, beside, handling } from './welding-inputs.ts';

export default processModel({
  id: 'spot-weld',
  title: 'Spot welds',
  wording: 'What should the spot welds of a joint cost?',
  subject: 'joint',
  inputs: [
    ALIKE,
    usual(
      {
        ...{ name: 'weld', symbol: 't_w', kind: 'time', unit: 's', range: [0.1, 5], moves: 'up' },
        meaning: 'squeeze, weld and hold of a spot',
      },
      '0.6 / 0.8 / 1.2 s',
    ),
    beside('time to move to the next spot', '1.2 / 1.7 / 2.5 s'),
    handling('8 / 12 / 20 s'),
    usual(
      {
        ...{ name: 'tip', symbol: 'p_t', kind: 'money', unit: '{u}', range: [0, 40], moves: 'up' },
        meaning: 'price of a pair of electrode caps, dressing included',
      },
      '1.2 / 1.8 / 2.8 {u}',
    ),
    usual(
      {
        ...{ name: 'tipLife', symbol: 'L_t', kind: 'count', unit: '1', range: [50, 20000] },
        ...{ meaning: 'spots that a pair of caps lasts', bounds: { above: 0 }, moves: 'down' },
      },
      'exactly 3000',
    ),
    usual(
      {
        ...{
          name: 'energy',
          symbol: 'E',
          kind: 'energy',
          unit: 'kW.h',
          range: [0.001, 1],
          moves: 'up',
        },
        meaning: 'energy of a spot',
      },
      '0.01 / 0.015 / 0.025 kW.h',
    ),
    usual(
      {
        ...{
          name: 'energyPrice',
          symbol: 'p_e',
          kind: 'moneyPerEnergy',
          unit: '{u}/(kW.h)',
          range: [0.01, 2],
        },
        ...{ meaning: 'price of electric energy', moves: 'up' },
      },
      '0.12 / 0.16 / 0.22 {u}/(kW.h)',
      { where: 'rate book, energy', find: (at) => at.rate('rate/energy', 'energy') },
    ),
    machineRate('spot welding robot', '18 / 25 / 34 {u}/h', 'welding robot'),
    shared('crew', '0.1 / 0.25 / 0.5'),
    shared('rejects', '0.1 / 0.3 / 0.6 %'),
  ],
  steps: [
    step('welding', 'z', 'time', 's', 'time of all spots', 'z = n (t_w + t_b) + t_d'),
    step('worn', 'C_v', 'money', '{u}', 'caps and energy', 'C_v = n (p_t / L_t + E p_e)'),
  ],
  plan: (x) => {
    const { count = 0 } = x;
    const welding = count * ((x.weld ?? 0) + (x.beside ?? 0)) + (x.handling ?? 0);
    const worn = count * ((x.tip ?? 0) / (x.tipLife ?? 1) + (x.energy ?? 0) * (x.energyPrice ?? 0));
    return { work: { cycle: welding, bought: worn }, steps: { welding, worn } };
  },
  sources: [
    { title: 'Times of a spot, life of caps, energy', status: 'common practice, no source' },
  ],
  assumptions: ['One gun after the other; guns that weld at once take less time and cost more.'],
  checks: [
    {
      what: 'time, caps and energy of twenty spots worked by hand',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/published/joining-processes.test.ts',
    },
  ],
  example: { count: '24' },
});
