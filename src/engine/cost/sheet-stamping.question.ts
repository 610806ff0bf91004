import { processModel, step } from './process-model.ts';
import { MASS, machineRate, PIECES, partLength, shared, tooling } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';

export default processModel({
  id: 'sheet-stamping',
  title: 'Sheet stamping',
  wording: 'What should a stamped part cost?',
  inputs: [
    MASS,
    PIECES,
    partLength('thickness', 't', 'thickness of the sheet', [0.3, 8], 'thickness'),
    partLength('blankLength', 'a', 'length of the blank', [10, 4000], 'envelope.length'),
    partLength('blankWidth', 'b', 'width of the blank', [10, 3000], 'envelope.width'),
    partLength('trim', 'P', 'length that is sheared: outline and holes', [20, 30000]),
    given({
      ...{ name: 'drawn', symbol: 'P_d', kind: 'length', unit: 'mm', range: [0, 20000] },
      ...{
        meaning: 'perimeter of the drawn wall; 0 for a flat part',
        bounds: { atLeast: 0 },
        moves: 'up',
      },
    }),
    usual(
      {
        ...{ name: 'drawRatio', symbol: 'β', kind: 'ratio', unit: '1', moves: 'up' },
        ...{ meaning: 'draw ratio, blank over punch', range: [0.7, 2.2], bounds: { atLeast: 0.7 } },
      },
      '1.3 / 1.5 / 1.7',
    ),
    given({
      ...{ name: 'shear', symbol: 'τ', kind: 'stress', unit: 'MPa', range: [30, 1200] },
      ...{ meaning: 'shear strength of the sheet', moves: 'up' },
    }),
    given({
      ...{ name: 'tensile', symbol: 'σ', kind: 'stress', unit: 'MPa', range: [50, 1800] },
      ...{ meaning: 'tensile strength of the sheet', moves: 'up' },
    }),
    given({
      ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3', range: [1000, 9000] },
      ...{ meaning: 'density of the sheet', moves: 'up' },
    }),
    usual(
      {
        ...{ name: 'web', symbol: 'e', kind: 'length', unit: 'mm', range: [0, 60], moves: 'up' },
        meaning: 'web of the strip between blanks',
      },
      '3 / 6 / 12 mm',
    ),
    usual(
      {
        ...{ name: 'strokes', symbol: 'ν', kind: 'frequency', unit: '/min', range: [1, 400] },
        ...{ meaning: 'strokes of the line', bounds: { above: 0 }, moves: 'down' },
      },
      '8 / 12 / 16 /min',
    ),
    usual(
      {
        ...{ name: 'each', symbol: 'n_z', kind: 'count', unit: '1', range: [1, 16] },
        ...{ meaning: 'parts out of one stroke', bounds: { atLeast: 1 }, moves: 'down' },
      },
      'exactly 1',
    ),
    machineRate('press 2500 t', '170 / 205 / 250 {u}/h', 'press line'),
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
    usual(
      {
        ...{ name: 'margin', symbol: 'j', kind: 'ratio', unit: '1', range: [1, 2], moves: 'up' },
        meaning: 'force of the press over the force needed',
      },
      '1.15 / 1.25 / 1.4',
    ),
    shared('price', '0.95 / 1.15 / 1.45 {u}/kg'),
    shared('scrapPrice', '0.15 / 0.22 / 0.3 {u}/kg'),
    shared('crew', '1.5 / 2 / 3'),
    shared('rejects', '0.5 / 1 / 2 %'),
    shared('setUp', '20 / 30 / 60 min'),
    shared('batch', 'exactly 5000'),
    ...tooling('300000 / 550000 / 900000 {u}', 'exactly 1000000'),
  ],
  steps: [
    step('gross', 'G', 'mass', 'kg', 'mass of sheet for a part', 'G = ρ t (a + e) (b + e)'),
    step('shearForce', 'F_s', 'force', 'kN', 'force to shear', 'F_s = P t τ'),
    step('drawForce', 'F_d', 'force', 'kN', 'force to draw', 'F_d = P_d t σ (β − 0.7)'),
    step('scrapShare', 'ζ', 'ratio', '%', 'share of the sheet that is scrap', 'ζ = 1 − m / G'),
  ],
  plan: (x) => {
    const { thickness: t = 0, web = 0, strokes = 0, count = 1 } = x;
    const net = (x.mass ?? 0) / count;
    const gross = (x.density ?? 0) * t * ((x.blankLength ?? 0) + web) * ((x.blankWidth ?? 0) + web);
    const shearForce = (x.trim ?? 0) * t * (x.shear ?? 0);
    const drawForce = (x.drawn ?? 0) * t * (x.tensile ?? 0) * ((x.drawRatio ?? 0) - 0.7);
    const size = ((x.margin ?? 0) * (shearForce + drawForce)) / (x.pressForce ?? 0);
    return {
      work: { gross, net, cycle: 1 / strokes, pieces: x.each ?? 1, size, tool: x.tool ?? 0 },
      steps: { gross, shearForce, drawForce, scrapShare: 1 - net / gross },
    };
  },
  sources: [
    {
      title: 'Groover, Fundamentals of Modern Manufacturing, chapter on sheet metal working',
      at: 'cutting force S t L, drawing force π D t TS (Db/D − 0.7)',
      status: 'from memory',
    },
    { title: 'Strokes, margins, rates of machines by size', status: 'common practice, no source' },
  ],
  assumptions: [
    'One press line, priced by the sum of the forces; its rate grows with the 0.6th power of the force.',
    'The blank is a rectangle; nesting is by the web alone. Blanks that nest into each other need less.',
  ],
  checks: [
    {
      what: 'force to shear 20 dia × 1.5 at 300 MPa: 28.27 kN; 150 dia × 3.2 at 310 MPa: 467.5 kN; cup of 80 from 150: 354.4 kN',
      source: 'textbook examples: shearing S t L; Groover, deep drawing example',
      status: 'seen',
      test: 'test/published/press-forces.test.ts',
    },
  ],
  example: {
    mass: '1.62 ± 0.01 kg',
    thickness: '1.2 ± 0.03 mm',
    blankLength: '620 ± 5 mm',
    blankWidth: '380 ± 5 mm',
    trim: '2400 ± 50 mm',
    drawn: '1500 ± 50 mm',
    shear: '250 ± 15 MPa',
    tensile: '310 ± 15 MPa',
    density: '7850 ± 40 kg/m3',
  },
});
