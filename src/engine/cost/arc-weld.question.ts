import { processModel, step } from './process-model.ts';
import { machineRate, shared } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';
import { ALIKE, beside, handling, SEAM, seamSpeed } from './welding-inputs.ts';

export default processModel({
  id: 'arc-weld',
  title: 'Arc welds',
  wording: 'What should the arc welds of a joint cost?',
  subject: 'joint',
  inputs: [
    SEAM,
    ALIKE,
    given({
      ...{ name: 'throat', symbol: 'a', kind: 'length', unit: 'mm', range: [0.5, 15], moves: 'up' },
      meaning: 'throat of the fillet',
    }),
    usual(
      {
        ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3', range: [1500, 9000] },
        ...{ meaning: 'density of the wire', moves: 'up' },
      },
      '7850 ± 40 kg/m3',
    ),
    usual(
      {
        ...{ name: 'deposit', symbol: 'η', kind: 'ratio', unit: '%', range: [40, 100] },
        ...{ meaning: 'share of the wire that is deposited', bounds: { above: 0 }, moves: 'down' },
      },
      '90 / 94 / 97 %',
    ),
    seamSpeed('welding speed', '0.4 / 0.6 / 0.9 m/min'),
    beside('time to move to the next seam and start', '3 / 4 / 6 s'),
    handling('20 / 30 / 50 s'),
    usual(
      {
        ...{ name: 'gas', symbol: 'p_g', kind: 'moneyPerTime', unit: '{u}/h', range: [0, 30] },
        ...{ meaning: 'gas and energy while the arc burns', moves: 'up' },
      },
      '3 / 5 / 8 {u}/h',
    ),
    machineRate('arc welding robot', '25 / 34 / 46 {u}/h', 'welding cell'),
    shared('price', '1.6 / 2.2 / 3.2 {u}/kg'),
    shared('crew', '0.3 / 0.5 / 1'),
    shared('rejects', '0.5 / 1 / 2 %'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'g', 'wire', 'G = n l a² ρ / η'),
    step('arc', 't_a', 'time', 's', 'time with the arc on', 't_a = n l / v'),
  ],
  plan: (x) => {
    const { count = 0, length = 0, throat = 0 } = x;
    const arc = (count * length) / (x.speed ?? 0);
    // A fillet of equal legs with throat a has the area a².
    const gross = (count * length * throat ** 2 * (x.density ?? 0)) / (x.deposit ?? 1);
    const cycle = arc + count * (x.beside ?? 0) + (x.handling ?? 0);
    return {
      work: { gross, net: gross, cycle, bought: (x.gas ?? 0) * arc },
      steps: { gross, arc },
    };
  },
  sources: [
    { title: 'Area of a fillet of equal legs: square of its throat', status: 'published' },
    { title: 'Welding speeds, deposit, gas', status: 'common practice, no source' },
  ],
  assumptions: ['Fillets of equal legs, flat; one torch.'],
  checks: [
    {
      what: 'wire and time of a fillet worked by hand from its geometry',
      source: 'geometry of a fillet, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/joining-processes.test.ts',
    },
  ],
  example: { length: '0.12 ± 0.003 m', count: '6', throat: '3.5 ± 0.2 mm' },
});
