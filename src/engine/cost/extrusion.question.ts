import { processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, partLength, shared, tooling } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';

const ratio = { kind: 'ratio', unit: '1' } as const;

export default processModel({
  id: 'extrusion',
  title: 'Extrusion of aluminium',
  wording: 'What should an extruded, cut and aged profile cost?',
  inputs: [
    MASS,
    PIECES,
    given({
      ...{
        name: 'section',
        symbol: 'A',
        kind: 'area',
        unit: 'mm2',
        range: [20, 20000],
        moves: 'up',
      },
      meaning: 'area of the section',
    }),
    partLength('length', 'l', 'length of the piece', [10, 12000], 'envelope.length'),
    usual(
      {
        ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3', range: [2500, 2900] },
        ...{ meaning: 'density', moves: 'up' },
      },
      '2700 ± 15 kg/m3',
    ),
    usual(
      {
        ...{ name: 'kerf', symbol: 'l_v', kind: 'length', unit: 'mm', range: [0, 60], moves: 'up' },
        meaning: 'length lost by a cut',
      },
      '3 / 5 / 10 mm',
    ),
    usual(
      {
        ...{ name: 'lost', symbol: 'ζ', kind: 'ratio', unit: '%', range: [2, 45], moves: 'up' },
        ...{
          meaning: 'share of a billet lost: butt, stretch grips, ends',
          bounds: { atLeast: 0, below: 100 },
        },
      },
      '10 / 15 / 22 %',
    ),
    usual(
      {
        ...{ name: 'billet', symbol: 'D', kind: 'length', unit: 'mm', range: [20, 600] },
        ...{ meaning: 'diameter of the billet', bounds: { above: 0 } },
      },
      'exactly 203 mm',
    ),
    usual(
      {
        ...{ name: 'billetLength', symbol: 'L_b', kind: 'length', unit: 'mm', range: [20, 2000] },
        meaning: 'length of the billet; 0 leaves out the friction of the container (indirect)',
      },
      'exactly 700 mm',
    ),
    usual(
      {
        ...{ ...ratio, name: 'redundant', symbol: 'a_x', range: [0, 2], moves: 'up' },
        meaning: 'constant of redundant work',
      },
      '0.7 / 0.8 / 0.9',
    ),
    usual(
      {
        ...{ ...ratio, name: 'work', symbol: 'b_x', range: [1, 2], moves: 'up' },
        meaning: 'factor of ideal work',
      },
      '1.2 / 1.4 / 1.5',
    ),
    usual(
      {
        ...{ name: 'strength', symbol: 'K', kind: 'stress', unit: 'MPa', range: [5, 900] },
        ...{ meaning: 'strength coefficient at the temperature of the press', moves: 'up' },
      },
      '25 / 35 / 50 MPa',
    ),
    usual(
      {
        ...{ ...ratio, name: 'hardening', symbol: 'h', range: [0, 0.5] },
        meaning: 'strain-hardening exponent at that temperature',
      },
      'exactly 0.05',
    ),
    usual(
      {
        ...{ ...ratio, name: 'shape', symbol: 'K_x', range: [1, 3], moves: 'up' },
        meaning: 'factor of pressure for the shape of the section: 1 for a round bar',
      },
      '1 / 1.1 / 1.3',
    ),
    usual(
      {
        ...{ name: 'speed', symbol: 'v', kind: 'speed', unit: 'm/min', range: [0.5, 80] },
        ...{
          meaning: 'speed at which the profile leaves the die',
          bounds: { above: 0 },
          moves: 'down',
        },
      },
      '8 / 15 / 25 m/min',
    ),
    usual(
      {
        ...{ ...ratio, kind: 'count', name: 'strands', symbol: 'n_z', range: [1, 8] },
        ...{ meaning: 'strands out of the die', bounds: { atLeast: 1 }, moves: 'down' },
      },
      'exactly 1',
    ),
    usual(
      {
        ...{ name: 'dead', symbol: 't_d', kind: 'time', unit: 's', range: [0, 120], moves: 'up' },
        meaning: 'time between billets',
      },
      '15 / 20 / 30 s',
    ),
    usual(
      {
        ...{ name: 'ageing', symbol: 'p_a', kind: 'moneyPerMass', unit: '{u}/kg', range: [0, 3] },
        ...{ meaning: 'stretching, ageing and sawing', moves: 'up' },
      },
      '0.15 / 0.25 / 0.4 {u}/kg',
    ),
    machineRate('extrusion press', '220 / 280 / 360 {u}/h', 'extrusion press'),
    usual(
      {
        ...{ name: 'pressForce', symbol: 'F₀', kind: 'force', unit: 'kN', range: [1000, 120000] },
        ...{
          meaning: 'force of the press that the rate belongs to',
          bounds: { above: 0 },
          moves: 'down',
        },
      },
      'exactly 22000 kN',
    ),
    shared('price', '4.0 / 4.7 / 5.6 {u}/kg'),
    shared('scrapPrice', '1.4 / 1.8 / 2.2 {u}/kg'),
    shared('crew', '1.5 / 2 / 3'),
    shared('rejects', '1 / 2 / 4 %'),
    shared('setUp', '10 / 15 / 30 min'),
    shared('batch', 'exactly 1000'),
    ...tooling('3000 / 5000 / 9000 {u}', 'exactly 30000'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'kg', 'mass of billet for a piece', 'G = ρ A (l + l_v) / (1 − ζ)'),
    step('reduction', 'r_x', 'ratio', '1', 'extrusion ratio', 'r_x = π D² / (4 n_z A)'),
    step('flow', 'Ȳ', 'stress', 'MPa', 'mean flow stress', 'Ȳ = K (ln r_x)ʰ / (1 + h)'),
    step(
      ...(['pressure', 'p_x', 'stress', 'MPa', 'pressure on the ram at the start'] as const),
      'p_x = K_x Ȳ (a_x + b_x ln r_x + 2 L_b / D)',
    ),
    step('force', 'F', 'force', 'kN', 'force of the ram', 'F = p_x π D² / 4'),
  ],
  plan: (x) => {
    const { density = 0, section = 0, length = 0, kerf = 0, lost = 0, billet = 0 } = x;
    const gross = (density * section * (length + kerf)) / (1 - lost);
    const face = (Math.PI * billet ** 2) / 4;
    const reduction = face / ((x.strands ?? 1) * section);
    const strain = Math.log(reduction);
    const flow = ((x.strength ?? 0) * strain ** (x.hardening ?? 0)) / (1 + (x.hardening ?? 0));
    const friction = (2 * (x.billetLength ?? 0)) / billet;
    const pressure =
      (x.shape ?? 1) * flow * ((x.redundant ?? 0) + (x.work ?? 0) * strain + friction);
    const force = pressure * face;
    const billetMass = density * face * (x.billetLength ?? 0);
    const between = billetMass > 0 ? ((x.dead ?? 0) * gross) / billetMass : 0;
    const strands = x.strands ?? 1;
    return {
      work: {
        ...{ gross, net: (x.mass ?? 0) / (x.count ?? 1), bought: (x.ageing ?? 0) * gross },
        cycle: (length + kerf) / (x.speed ?? 0) + between * strands,
        ...{ pieces: strands, size: force / (x.pressForce ?? 0), tool: x.tool ?? 0 },
      },
      steps: { gross, reduction, flow, pressure, force },
    };
  },
  sources: [
    {
      title: 'Groover, Fundamentals of Modern Manufacturing, chapter on extrusion',
      at: 'Johnson’s strain a + b ln r, friction of the container 2 L/D',
      status: 'from memory',
    },
    {
      title: 'Speeds, losses and times of aluminium presses',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'The length of all strands leaves the die at one speed; billets are full.',
    'The rate of the press grows with the 0.6th power of the force at the start of the stroke.',
  ],
  checks: [
    {
      what: 'billet 50 × 100 to 20 mm, indirect: ratio 6.25, pressure 2578 MPa, force 5.06 MN; direct 25 to 12.5 mm at four lengths; 1701 kg/h',
      source: 'textbook examples after Johnson’s equation; Groover, extrusion example',
      status: 'seen',
      test: 'test/published/extrusion-pressure.test.ts',
    },
  ],
  example: {
    mass: '1.85 ± 0.005 kg',
    section: '540 ± 10 mm2',
    length: '1270 ± 1 mm',
  },
});
