import { CLASS_IDS, propertyClass } from '../../data/index.ts';
import { type PlainInputs, question, type Solved } from '../method.ts';
import { BOLTS } from '../sections.ts';
import { output, refused } from '../structure/outputs.ts';
import { DIAMETER, PITCH, STRENGTH_CLASS } from './bolt-inputs.ts';
import { pitchDiameter, rootDiameter, stressArea } from './thread-geometry.ts';

export default question({
  id: 'bolt-strength',
  version: 1,
  title: 'Stress area and proof load of a bolt',
  wording: 'How much can a bolt of this size and property class carry?',
  subject: 'joint',
  onRequest: true,
  section: BOLTS,
  inputs: [DIAMETER, PITCH, STRENGTH_CLASS],
  body: {
    body: 'solve',
    outputs: [
      output(
        ...(['area', 'A_s', 'area', 'mm2'] as const),
        'nominal stress area',
        'A_s = π ((d₂ + d₃) / 2)² / 4',
      ),
      output('proof', 'F_p', 'force', 'kN', 'proof load', 'F_p = A_s S_p'),
      output('yields', 'F_y', 'force', 'kN', 'load at the yield or proof stress', 'F_y = A_s R_p'),
      output('tensile', 'F_m', 'force', 'kN', 'least ultimate tensile load', 'F_m = A_s R_m'),
      {
        ...output('d2', 'd₂', 'length', 'mm', 'pitch diameter', 'd₂ = d − 0.6495 P'),
        step: true,
      },
      { ...output('d3', 'd₃', 'length', 'mm', 'root diameter', 'd₃ = d − 1.2269 P'), step: true },
    ],
    solve,
  },
  modelError: {},
  sources: [
    { title: 'ISO 898-1', at: 'stress area, proof and tensile loads', status: 'published' },
  ],
  assumptions: [
    'Loads as area times stress; the tables of the standard round them, up to 0.6 % apart.',
    'Hot-dip galvanised bolts of M8 and M10 carry less (ISO 10684).',
  ],
  cautions: ['bolt-tightening'],
  checks: [
    {
      what: 'stress areas, proof and tensile loads of M6 to M16, classes 8.8 and 10.9',
      source: 'ISO 898-1, tables',
      status: 'seen',
      test: 'test/published/iso-898-1-bolts.test.ts',
    },
  ],
  example: { d: 'exactly 12 mm', P: 'exactly 1.75 mm', class: '10.9' },
});

function solve({ scalars, terms }: PlainInputs): Solved {
  const { d = Number.NaN, P = Number.NaN } = scalars;
  const found = propertyClass(terms.class ?? '', d);
  if (!found)
    return refused(
      'unknown-class',
      'class',
      'no property class of ISO 898-1',
      `Take one of: ${CLASS_IDS.join(', ')}.`,
      terms.class,
    );
  const area = stressArea(d, P);
  return {
    outputs: {
      area,
      proof: area * found.proof,
      yields: area * found.yield,
      tensile: area * found.tensile,
      d2: pitchDiameter(d, P),
      d3: rootDiameter(d, P),
    },
  };
}
