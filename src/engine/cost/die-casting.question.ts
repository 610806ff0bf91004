import { processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, shared, tooling } from './shared-inputs.ts';
import { given, reading, usual } from './usual-inputs.ts';

export default processModel({
  id: 'die-casting',
  title: 'High-pressure die casting',
  wording: 'What should a pressure die casting cost?',
  inputs: [
    MASS,
    PIECES,
    given({
      ...{ name: 'projected', symbol: 'A_p', kind: 'area', unit: 'cm2', range: [5, 12000] },
      ...{ meaning: 'projected area of a casting', moves: 'up' },
    }),
    given(
      {
        ...{ name: 'wall', symbol: 'h', kind: 'length', unit: 'mm', range: [0.8, 15], moves: 'up' },
        meaning: 'thickest wall that must be solid',
      },
      reading('thickness', 'thickness'),
    ),
    usual(
      {
        ...{ name: 'cavities', symbol: 'n_z', kind: 'count', unit: '1', range: [1, 16] },
        ...{ meaning: 'cavities of the die', bounds: { atLeast: 1 } },
      },
      'exactly 1',
    ),
    usual(
      {
        ...{ name: 'runner', symbol: 'r', kind: 'ratio', unit: '%', range: [5, 150], moves: 'up' },
        meaning: 'runner, biscuit and overflows over the castings, in mass and in area',
      },
      '25 / 40 / 70 %',
    ),
    usual(
      {
        ...{ name: 'pressure', symbol: 'p_c', kind: 'stress', unit: 'MPa', range: [20, 120] },
        ...{ meaning: 'pressure in the cavity', moves: 'up' },
      },
      '50 / 60 / 80 MPa',
    ),
    usual(
      {
        ...{ name: 'margin', symbol: 'j', kind: 'ratio', unit: '1', range: [1, 2], moves: 'up' },
        meaning: 'clamp force of the machine over the force that opens the die',
      },
      '1.1 / 1.15 / 1.25',
    ),
    usual(
      {
        ...{ name: 'mould', symbol: 'B_m', kind: 'timePerArea', unit: 's/mm2', range: [0.1, 5] },
        ...{ meaning: 'constant of the die in the rule of Chvorinov', moves: 'up' },
      },
      '0.8 / 1.2 / 1.8 s/mm2',
    ),
    usual(
      {
        ...{ name: 'dead', symbol: 't_d', kind: 'time', unit: 's', range: [5, 120], moves: 'up' },
        meaning: 'time to close, pour, open, take out and spray',
      },
      '25 / 35 / 50 s',
    ),
    usual(
      {
        ...{ name: 'melt', symbol: 'ζ', kind: 'ratio', unit: '%', range: [0.5, 12], moves: 'up' },
        ...{
          meaning: 'melt lost as dross, of all that is poured',
          bounds: { atLeast: 0, below: 100 },
        },
      },
      '2 / 3 / 5 %',
    ),
    usual(
      {
        ...{ name: 'melting', symbol: 'p_a', kind: 'moneyPerMass', unit: '{u}/kg', range: [0, 2] },
        ...{ meaning: 'melting and holding, of all that is poured', moves: 'up' },
      },
      '0.15 / 0.22 / 0.35 {u}/kg',
    ),
    machineRate(
      'die casting 1200 t',
      '90 / 120 / 160 {u}/h',
      'die casting cell with its trim press',
    ),
    usual(
      {
        ...{ name: 'clamp', symbol: 'F₀', kind: 'force', unit: 'kN', range: [500, 120000] },
        ...{ meaning: 'clamp force of the machine that the rate belongs to' },
        ...{ bounds: { above: 0 }, moves: 'down' },
      },
      'exactly 12000 kN',
    ),
    shared('price', '2.4 / 2.9 / 3.6 {u}/kg'),
    shared('scrapPrice', '1.4 / 1.8 / 2.2 {u}/kg'),
    shared('crew', '0.5 / 0.7 / 1'),
    shared('rejects', '2 / 4 / 8 %'),
    shared('setUp', '90 / 150 / 240 min'),
    shared('batch', 'exactly 3000'),
    ...tooling('120000 / 200000 / 350000 {u}', 'exactly 120000'),
  ],
  steps: [
    step(
      'gross',
      'G',
      'mass',
      'kg',
      'metal bought for a casting',
      'G = m (1 + (1 + r) ζ / (1 − ζ))',
    ),
    step('opening', 'F_o', 'force', 'kN', 'force that opens the die', 'F_o = n_z A_p (1 + r) p_c'),
    step('clampForce', 'F', 'force', 'kN', 'clamp force wanted', 'F = j F_o'),
    step('solid', 't_f', 'time', 's', 'time until the wall is solid', 't_f = B_m (h / 2)²'),
  ],
  plan: (x) => {
    const { cavities = 1, runner = 0, melt = 0 } = x;
    const net = (x.mass ?? 0) / (x.count ?? 1);
    const poured = net * (1 + runner);
    const gross = net + (poured * melt) / (1 - melt);
    const opening = cavities * (x.projected ?? 0) * (1 + runner) * (x.pressure ?? 0);
    const clampForce = (x.margin ?? 0) * opening;
    const solid = (x.mould ?? 0) * ((x.wall ?? 0) / 2) ** 2;
    return {
      work: {
        // What is lost as dross can't be sold: scrap is what comes back with the rejects.
        ...{ gross, net: gross, bought: (x.melting ?? 0) * poured },
        ...{ cycle: (x.dead ?? 0) + solid, pieces: cavities },
        ...{ size: clampForce / (x.clamp ?? 0), tool: x.tool ?? 0 },
      },
      steps: { gross, opening, clampForce, solid },
    };
  },
  sources: [
    {
      title: 'Chvorinov’s rule, time of solidification by the square of volume over surface',
      at: 'V/A of a wall cooled from both sides is half its thickness',
      status: 'published',
    },
    {
      title: 'Clamp force by projected area and pressure, with a margin',
      status: 'common practice, no source',
    },
    { title: 'Runners, losses, times and rates', status: 'common practice, no source' },
  ],
  assumptions: [
    'Runners go back into the melt; what is lost is dross. Trimming is beside the cycle.',
    'Heat treatment, impregnation and machining are questions of their own.',
  ],
  checks: [
    {
      what: '450 cm² at 60 MPa: 2700 kN, with a margin of 1.15 3105 kN; plate of 20 mm by Chvorinov’s rule',
      source: 'force as pressure by area, own inputs; Chvorinov’s rule: published examples',
      status: 'own inputs, published formula',
      test: 'test/published/casting-and-moulding.test.ts',
    },
  ],
  example: {
    mass: '2.35 ± 0.01 kg',
    projected: '620 ± 10 cm2',
    wall: '3.2 ± 0.1 mm',
  },
});
