import { beyond, processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, shared, tooling } from './shared-inputs.ts';
import { given, reading, usual } from './usual-inputs.ts';

const kelvin = { kind: 'tempAbs', unit: 'Cel' } as const;

export default processModel({
  id: 'injection-moulding',
  title: 'Injection moulding',
  wording: 'What should an injection-moulded part cost?',
  inputs: [
    MASS,
    PIECES,
    given({
      ...{ name: 'projected', symbol: 'A_p', kind: 'area', unit: 'cm2', range: [0.5, 15000] },
      ...{ meaning: 'projected area of a part', moves: 'up' },
    }),
    given(
      {
        ...{ name: 'wall', symbol: 'h', kind: 'length', unit: 'mm', range: [0.5, 12], moves: 'up' },
        meaning: 'thickest wall',
      },
      reading('thickness', 'thickness'),
    ),
    usual(
      {
        ...{ name: 'cavities', symbol: 'n_z', kind: 'count', unit: '1', range: [1, 128] },
        ...{ meaning: 'cavities of the mould', bounds: { atLeast: 1 } },
      },
      'exactly 1',
    ),
    usual(
      {
        ...{ name: 'runner', symbol: 'r', kind: 'ratio', unit: '%', range: [0, 60], moves: 'up' },
        meaning: 'area and mass of the runner over the parts',
      },
      '2 / 5 / 12 %',
    ),
    usual(
      {
        ...{ name: 'pressure', symbol: 'p_c', kind: 'stress', unit: 'MPa', range: [10, 100] },
        ...{ meaning: 'mean pressure in the cavity', moves: 'up' },
      },
      '30 / 40 / 55 MPa',
    ),
    usual(
      {
        ...{
          name: 'diffusivity',
          symbol: 'α',
          kind: 'diffusivity',
          unit: 'mm2/s',
          range: [0.04, 0.3],
        },
        ...{ meaning: 'thermal diffusivity of the plastic', bounds: { above: 0 }, moves: 'down' },
      },
      '0.07 / 0.09 / 0.12 mm2/s',
    ),
    usual(
      {
        ...kelvin,
        name: 'meltTemp',
        symbol: 'θ_m',
        meaning: 'temperature of the melt',
        range: [120, 420],
        moves: 'up',
        bounds: {},
      },
      '230 ± 5 Cel',
    ),
    usual(
      {
        ...kelvin,
        name: 'wallTemp',
        symbol: 'θ_w',
        meaning: 'temperature of the mould',
        range: [5, 220],
        moves: 'up',
        bounds: {},
      },
      '50 ± 5 Cel',
    ),
    usual(
      {
        ...kelvin,
        name: 'ejectTemp',
        symbol: 'θ_e',
        meaning: 'temperature of the middle at ejection',
        range: [40, 280],
        moves: 'down',
        bounds: {},
      },
      '95 ± 5 Cel',
    ),
    usual(
      {
        ...{ name: 'dead', symbol: 't_d', kind: 'time', unit: 's', range: [2, 90], moves: 'up' },
        meaning: 'time to close, inject, open and take out',
      },
      '8 / 12 / 18 s',
    ),
    machineRate('injection 800 t', '45 / 60 / 80 {u}/h', 'injection moulding machine'),
    usual(
      {
        ...{ name: 'clamp', symbol: 'F₀', kind: 'force', unit: 'kN', range: [100, 60000] },
        ...{ meaning: 'clamp force of the machine that the rate belongs to' },
        ...{ bounds: { above: 0 }, moves: 'down' },
      },
      'exactly 8000 kN',
    ),
    shared('price', '1.35 / 1.7 / 2.2 {u}/kg'),
    shared('scrapPrice', '0.1 / 0.2 / 0.4 {u}/kg'),
    shared('crew', '0.2 / 0.4 / 0.7'),
    shared('rejects', '0.5 / 1.5 / 3 %'),
    shared('setUp', '45 / 75 / 120 min'),
    shared('batch', 'exactly 5000'),
    ...tooling('80000 / 150000 / 280000 {u}', 'exactly 800000'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'kg', 'plastic for a part', 'G = m (1 + r)'),
    step('clampForce', 'F', 'force', 'kN', 'clamp force wanted', 'F = n_z A_p (1 + r) p_c'),
    step(
      ...([
        'cooling',
        't_f',
        'time',
        's',
        'cooling until the middle of the wall can be ejected',
      ] as const),
      't_f = h² / (π² α) ln((4 / π) (θ_m − θ_w) / (θ_e − θ_w))',
    ),
    step(
      ...([
        'coolingMean',
        't_n',
        'time',
        's',
        'cooling until the mean of the wall is at that temperature',
      ] as const),
      't_n = h² / (π² α) ln((8 / π²) (θ_m − θ_w) / (θ_e − θ_w))',
    ),
  ],
  plan: (x) => {
    const { cavities = 1, runner = 0, wall = 0, meltTemp = 0, wallTemp = 0, ejectTemp = 0 } = x;
    const net = (x.mass ?? 0) / (x.count ?? 1);
    const gross = net * (1 + runner);
    const clampForce = cavities * (x.projected ?? 0) * (1 + runner) * (x.pressure ?? 0);
    const ratio = (meltTemp - wallTemp) / (ejectTemp - wallTemp);
    const lag = wall ** 2 / (Math.PI ** 2 * (x.diffusivity ?? 0));
    const isBetween = ejectTemp > wallTemp && ejectTemp < meltTemp;
    const timeOf = (factor: number) =>
      isBetween && factor * ratio > 1 ? lag * Math.log(factor * ratio) : Number.NaN;
    const cooling = timeOf(4 / Math.PI);
    return {
      work: {
        ...{ gross, net, cycle: (x.dead ?? 0) + cooling, pieces: cavities },
        ...{ size: clampForce / (x.clamp ?? 0), tool: x.tool ?? 0 },
      },
      steps: { gross, clampForce, cooling, coolingMean: timeOf(8 / Math.PI ** 2) },
      findings: isBetween
        ? []
        : [
            beyond(
              'ejectTemp',
              'the temperature at ejection is not between those of the mould and the melt',
              'Correct one of the three temperatures.',
            ),
          ],
    };
  },
  sources: [
    {
      title: 'Heat equation of a plate between cold walls, first term of its series',
      at: 'middle of the wall 4/π, mean of the wall 8/π²',
      status: 'published',
    },
    {
      title: 'Clamp force by projected area and mean pressure',
      status: 'common practice, no source',
    },
    { title: 'Times, pressures and rates', status: 'common practice, no source' },
  ],
  assumptions: [
    'Runners are sold as scrap; a hot runner has next to none.',
    'A wall cools from both sides; ribs and bosses that are thicker cool longer.',
  ],
  checks: [
    {
      what: '3 mm, 0.09 mm²/s, 230/50/95 °C: 16.49 s for the middle, 11.92 s for the mean, and four more; 4 cavities of 60 cm² with a runner at 40 MPa: 1040 kN',
      source:
        'heat equation, checked by the full Fourier series; published examples of clamp force',
      status: 'seen',
      test: 'test/published/casting-and-moulding.test.ts',
    },
  ],
  example: {
    mass: '0.68 ± 0.002 kg',
    projected: '950 ± 10 cm2',
    wall: '2.8 ± 0.1 mm',
  },
});
