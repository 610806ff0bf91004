import { processModel, step } from './process-model.ts';
import { machineRate, shared } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';
import { ALIKE, beside, handling, SEAM, seamSpeed } from './welding-inputs.ts';

const across = (name: string, symbol: string, meaning: string) =>
  given({ name, symbol, kind: 'length', unit: 'mm', meaning, range: [0.1, 40], moves: 'up' });

export default processModel({
  id: 'adhesive-bead',
  title: 'Beads of adhesive or sealer',
  wording: 'What should a bead of adhesive or sealer cost?',
  subject: 'joint',
  inputs: [
    SEAM,
    ALIKE,
    across('width', 'b', 'width of the bead as squeezed'),
    across('gap', 'h', 'thickness of the bead as squeezed'),
    usual(
      {
        ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3', range: [700, 2500] },
        ...{ meaning: 'density of the adhesive', moves: 'up' },
      },
      '1150 / 1250 / 1400 kg/m3',
    ),
    usual(
      {
        ...{ name: 'waste', symbol: 'ζ', kind: 'ratio', unit: '%', range: [0, 60], moves: 'up' },
        ...{
          meaning: 'share lost: purging, mixers, ends of drums',
          bounds: { atLeast: 0, below: 100 },
        },
      },
      '3 / 6 / 12 %',
    ),
    seamSpeed('speed of the nozzle', '8 / 12 / 18 m/min'),
    beside('time to move to the next bead', '1.5 / 2 / 3 s'),
    handling('10 / 15 / 25 s'),
    machineRate('dispensing robot', '20 / 28 / 38 {u}/h', 'dispensing cell'),
    shared('price', '4.0 / 5.2 / 7.0 {u}/kg'),
    shared('crew', '0.1 / 0.3 / 0.5'),
    shared('rejects', '0.3 / 0.7 / 1.5 %'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'g', 'adhesive bought', 'G = n l b h ρ / (1 − ζ)'),
    step('laying', 'z', 'time', 's', 'time of all beads', 'z = n (l / v + t_b) + t_d'),
  ],
  plan: (x) => {
    const { count = 0, length = 0 } = x;
    const volume = count * length * (x.width ?? 0) * (x.gap ?? 0);
    const gross = (volume * (x.density ?? 0)) / (1 - (x.waste ?? 0));
    const laying = count * (length / (x.speed ?? 0) + (x.beside ?? 0)) + (x.handling ?? 0);
    return { work: { gross, net: gross, cycle: laying }, steps: { gross, laying } };
  },
  sources: [
    { title: 'Volume of a bead by its section, density and length', status: 'published' },
    { title: 'Speeds and losses', status: 'common practice, no source' },
  ],
  assumptions: ['Curing is beside the work: an oven that all parts pass is priced with the body.'],
  checks: [
    {
      what: 'mass and time of a bead worked by hand from its geometry',
      source: 'geometry of a bead, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/joining-processes.test.ts',
    },
  ],
  example: {
    length: '1.8 ± 0.02 m',
    count: '2',
    width: '12 ± 1 mm',
    gap: '0.8 ± 0.1 mm',
  },
});
