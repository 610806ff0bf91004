import { processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, shared, tooling } from './shared-inputs.ts';
import { given, reading, usual } from './usual-inputs.ts';

export default processModel({
  id: 'compression-moulding',
  title: 'Compression moulding of a fibre charge',
  wording: 'What should a compression-moulded part cost?',
  inputs: [
    MASS,
    PIECES,
    given({
      ...{ name: 'projected', symbol: 'A_p', kind: 'area', unit: 'cm2', range: [50, 60000] },
      ...{ meaning: 'projected area of the part', moves: 'up' },
    }),
    given(
      {
        ...{ name: 'wall', symbol: 'h', kind: 'length', unit: 'mm', range: [1, 25], moves: 'up' },
        meaning: 'thickest wall',
      },
      reading('thickness', 'thickness'),
    ),
    given({
      ...{ name: 'edge', symbol: 'l_e', kind: 'length', unit: 'm', range: [0, 40], moves: 'up' },
      ...{ meaning: 'edge that is trimmed and sealed', bounds: { atLeast: 0 } },
    }),
    usual(
      {
        ...{
          name: 'edgePrice',
          symbol: 'p_e',
          kind: 'moneyPerLength',
          unit: '{u}/m',
          range: [0, 20],
        },
        ...{ meaning: 'trimming and sealing of an edge', moves: 'up' },
      },
      '0.7 / 1.1 / 1.8 {u}/m',
    ),
    usual(
      {
        ...{ name: 'pressure', symbol: 'p_c', kind: 'stress', unit: 'MPa', range: [2, 30] },
        ...{ meaning: 'moulding pressure', moves: 'up' },
      },
      '6 / 8 / 12 MPa',
    ),
    usual(
      {
        ...{ name: 'cure', symbol: 'c_h', kind: 'timePerLength', unit: 's/mm', range: [5, 120] },
        ...{ meaning: 'time to cure for a thickness', moves: 'up' },
      },
      '20 / 30 / 45 s/mm',
    ),
    usual(
      {
        ...{ name: 'dead', symbol: 't_d', kind: 'time', unit: 's', range: [10, 200], moves: 'up' },
        meaning: 'time to lay the charge, close, open and take out',
      },
      '25 / 40 / 60 s',
    ),
    usual(
      {
        ...{ name: 'flash', symbol: 'ζ', kind: 'ratio', unit: '%', range: [0, 30], moves: 'up' },
        ...{
          meaning: 'share of the charge that is flash and cuttings',
          bounds: { atLeast: 0, below: 100 },
        },
      },
      '2 / 4 / 8 %',
    ),
    machineRate('press 2500 t', '170 / 205 / 250 {u}/h', 'moulding press'),
    usual(
      {
        ...{ name: 'pressForce', symbol: 'F₀', kind: 'force', unit: 'kN', range: [100, 60000] },
        ...{
          meaning: 'force of the press that the rate belongs to',
          bounds: { above: 0 },
          moves: 'down',
        },
      },
      'exactly 24500 kN',
    ),
    shared('price', '4.2 / 5.2 / 6.8 {u}/kg'),
    shared('crew', '0.7 / 1 / 1.5'),
    shared('rejects', '1 / 3 / 6 %'),
    shared('setUp', '60 / 120 / 180 min'),
    shared('batch', 'exactly 1000'),
    ...tooling('200000 / 320000 / 500000 {u}', 'exactly 300000'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'kg', 'mass of the charge', 'G = m / (1 − ζ)'),
    step('force', 'F', 'force', 'kN', 'force of the press', 'F = A_p p_c'),
    step('curing', 't_f', 'time', 's', 'time to cure', 't_f = c_h h'),
  ],
  plan: (x) => {
    const net = (x.mass ?? 0) / (x.count ?? 1);
    const gross = net / (1 - (x.flash ?? 0));
    const force = (x.projected ?? 0) * (x.pressure ?? 0);
    const curing = (x.cure ?? 0) * (x.wall ?? 0);
    return {
      work: {
        ...{ gross, net: gross, bought: (x.edgePrice ?? 0) * (x.edge ?? 0) },
        ...{ cycle: (x.dead ?? 0) + curing, size: force / (x.pressForce ?? 0), tool: x.tool ?? 0 },
      },
      steps: { gross, force, curing },
    };
  },
  sources: [
    {
      title:
        'Cure by thickness, force by area and pressure, cut edges trimmed and sealed by length',
      status: 'common practice, no source',
    },
  ],
  assumptions: ['Flash is not sold. One part at a time.'],
  checks: [
    {
      what: 'charge, force, time and cost of a plate worked by hand',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/published/casting-and-moulding.test.ts',
    },
  ],
  example: {
    mass: '18.8 ± 0.05 kg',
    projected: '19000 ± 100 cm2',
    wall: '5.2 ± 0.1 mm',
    edge: '5.54 ± 0.02 m',
  },
});
