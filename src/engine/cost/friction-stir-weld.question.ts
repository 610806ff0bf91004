import { processModel, step } from './process-model.ts';
import { machineRate, shared } from './shared-inputs.ts';
import { usual } from './usual-inputs.ts';
import { ALIKE, beside, handling, SEAM, seamSpeed } from './welding-inputs.ts';

export default processModel({
  id: 'friction-stir-weld',
  title: 'Friction stir welds',
  wording: 'What should friction stir welds cost?',
  subject: 'joint',
  inputs: [
    SEAM,
    ALIKE,
    seamSpeed('welding speed', '0.6 / 1 / 1.6 m/min'),
    beside('time to plunge, dwell, retract and move to the next seam', '8 / 12 / 20 s'),
    handling('60 / 90 / 150 s'),
    usual(
      {
        ...{
          name: 'pin',
          symbol: 'p_t',
          kind: 'money',
          unit: '{u}',
          range: [10, 2000],
          moves: 'up',
        },
        meaning: 'price of a welding tool',
      },
      '80 / 150 / 260 {u}',
    ),
    usual(
      {
        ...{ name: 'pinLife', symbol: 'L_t', kind: 'length', unit: 'm', range: [50, 5000] },
        ...{ meaning: 'length that a tool lasts', bounds: { above: 0 }, moves: 'down' },
      },
      '600 / 1000 / 1600 m',
    ),
    machineRate('friction-stir cell', '60 / 75 / 95 {u}/h', 'friction-stir cell'),
    shared('crew', '0.3 / 0.5 / 1'),
    shared('rejects', '0.3 / 0.8 / 1.5 %'),
  ],
  steps: [
    step('welding', 'z', 'time', 's', 'time of all seams', 'z = n (l / v + t_b) + t_d'),
    step('worn', 'C_v', 'money', '{u}', 'wear of the tool', 'C_v = n l p_t / L_t'),
  ],
  plan: (x) => {
    const { count = 0, length = 0 } = x;
    const welding = count * (length / (x.speed ?? 0) + (x.beside ?? 0)) + (x.handling ?? 0);
    const worn = (count * length * (x.pin ?? 0)) / (x.pinLife ?? 1);
    return { work: { cycle: welding, bought: worn }, steps: { welding, worn } };
  },
  sources: [
    { title: 'Welding speeds, dwell and life of tools', status: 'common practice, no source' },
  ],
  assumptions: ['One spindle. Seams on the other side take turning over: add it to the handling.'],
  checks: [
    {
      what: 'nine seams of 1.46 m at 1 m/min worked by hand',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/published/joining-processes.test.ts',
    },
  ],
  example: { length: '1.46 ± 0.005 m', count: '9' },
});
