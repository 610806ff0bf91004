import { type PlainInputs, question, type Solved } from '../method.ts';
import { PLATES } from '../sections.ts';
import { DESIGNS } from './floor-columns.ts';
import { type Design, designOf, optionsTable } from './floor-designs.ts';
import { lookAtDesigns } from './floor-figures.ts';
import { chosen, scalarsOf, size } from './inputs.ts';
import { finding, output, refused } from './outputs.ts';

const PATCH = chosen(
  {
    ...{ name: 'patch', symbol: 's', kind: 'length', unit: 'mm', range: [10, 500] },
    ...{ meaning: 'side of the square struck at the middle', bounds: { above: 0 } },
  },
  { written: 'exactly 100 mm', x: 0.1 },
  'a choice of the question, not a reading: the same for all designs',
);

export default question({
  id: 'floor-options',
  version: 2,
  title: 'Floor or cover plate as built, and its alternatives',
  wording:
    'How stiff and how heavy would the floor be in another design, with all it needs beside it?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    size('length', 'L', 'length of the floor', [50, 6000], 'envelope.length'),
    size('width', 'B', 'width of the floor', [50, 3000], 'envelope.width'),
    PATCH,
    DESIGNS,
  ],
  body: {
    body: 'solve',
    outputs: [
      output(
        'D',
        'D₀',
        'flexuralRigidity',
        'N.m',
        'bending stiffness for a width, as built',
        'D = E ((c + t)³ − c³) / (12 (1 − ν²))',
      ),
      output(
        'Gt',
        'G t₀',
        'stiffness',
        'kN/mm',
        'shear stiffness in the plane, as built',
        'G t = E t / (2 (1 + ν))',
      ),
      output(
        'arealMass',
        'm₀',
        'arealMass',
        'kg/m2',
        'mass for an area, as built, without what it needs beside it',
        'm = ρ t + mc',
      ),
      output(
        'mass',
        'M₀',
        'mass',
        'kg',
        'mass of the floor as built, with what it needs beside it',
        'M = (ρ t + mc) L B + m+',
      ),
      output(
        'strike',
        'U₀',
        'energy',
        'J',
        'elastic work the floor as built takes on a square at its middle',
        'U = ½ P w, σ = σL at the face',
      ),
      {
        ...output(
          'saved',
          'ΔM',
          'mass',
          'kg',
          'mass saved by the lightest alternative with all it needs; below zero it is heavier',
          'ΔM = M₀ − min M',
        ),
        decides: 'difference',
      },
      output(
        'stiffnessRatio',
        'D/D₀',
        'ratio',
        '1',
        'bending stiffness of that alternative over that as built',
        'D / D₀',
      ),
      output(
        'shearRatio',
        'G t/G t₀',
        'ratio',
        '1',
        'shear stiffness of that alternative over that as built',
        'G t / G t₀',
      ),
    ],
    solve,
  },
  look: lookAtDesigns,
  modelError: {},
  sources: [
    {
      title: 'Parallel-axis theorem and plate theory, closed form',
      status: 'common practice, no source',
    },
    {
      title: 'Elastic work to first yield as a figure to rank floors by',
      status: 'common practice, no source',
    },
    {
      title: 'Table of materials of this tool',
      at: 'conductivity and expansion, each with its source',
      status: 'published',
    },
  ],
  assumptions: [
    'Isotropic materials; two like skins where there is a core, ribs of their material along one way only.',
    'D is that of the skins; ribs stand apart. Seams, joints and beads of a stamped floor are left out.',
    'Strike work is elastic: pressed slowly on a square at the middle of a floor supported on all edges, until the face reaches its limit (von Mises). No dent, no stretching of the middle plane, skins only and a core that keeps them apart.',
    'Strike work ranks designs and does not say what one survives; what guards against strikes is what a design needs beside it.',
    'The lightest alternative is the one of least mass with all it needs; to see the spread of another, leave the lighter ones out.',
  ],
  cautions: [],
  checks: [
    {
      what: 'planks of two skins against stamped and moulded plates: D, G t, masses',
      source: 'closed forms, worked out independently',
      status: 'own inputs, published formula',
      test: 'test/published/plate-substitution.test.ts',
    },
  ],
  example: {
    length: '1520 ± 2 mm',
    width: '1250 ± 2 mm',
    designs: [
      {
        ...{ design: 'planks of two skins, as built', material: 'Al 6005A-T6', needs: '' },
        ...{ thickness: '4 ± 0.1 mm', core: '10 ± 0.1 mm', coreMass: '2.1 ± 0.2 kg/m2' },
        ...{ modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01', density: '2700 ± 20 kg/m3' },
        limit: '250 ± 10 MPa',
        ...{ beside: 'exactly 0 kg', price: 'exactly 0 {u}', edge: 'exactly 0 m' },
      },
      {
        ...{ design: 'stamped aluminium', material: 'aluminium', needs: 'stone shield' },
        ...{ thickness: '2.5 ± 0.05 mm', core: '', coreMass: '' },
        ...{ modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01', density: '2700 ± 20 kg/m3' },
        limit: '140 ± 10 MPa',
        ...{ beside: '11 ± 1.7 kg', price: '35 ± 6 {u}', edge: '' },
      },
      {
        ...{ design: 'stamped steel', material: 'steel', needs: 'stone shield' },
        ...{ thickness: '1.2 ± 0.03 mm', core: '', coreMass: '' },
        ...{ modulus: '210 ± 4 GPa', poisson: '0.3 ± 0.01', density: '7850 ± 40 kg/m3' },
        limit: '180 ± 20 MPa',
        ...{ beside: '11 ± 1.7 kg', price: '35 ± 6 {u}', edge: '' },
      },
      {
        ...{ design: 'moulded plate', material: 'glass-fibre', needs: 'edge trimmed and sealed' },
        ...{ thickness: '5.2 ± 0.1 mm', core: '', coreMass: '' },
        ...{ modulus: '20 ± 2 GPa', poisson: '0.333 ± 0.02', density: '1900 ± 40 kg/m3' },
        limit: '150 ± 25 MPa',
        ...{ beside: '', price: '', edge: '5.54 ± 0.02 m' },
      },
    ],
  },
});

function solve(x: PlainInputs): Solved {
  const floor = scalarsOf(x, 'length', 'width', 'patch');
  const designs = (x.tables.designs ?? []).map((row) => designOf(row, floor));
  const [built, ...others] = designs;
  if (!built || others.length === 0)
    return refused(
      'too-few-designs',
      'designs',
      'there is nothing to compare',
      'Give the floor as built and at least one alternative.',
    );
  const best = others.reduce((a, b) => (b.mass < a.mass ? b : a));
  return {
    outputs: {
      D: built.d,
      Gt: built.gt,
      arealMass: built.arealMass,
      mass: built.mass,
      ...(built.strike === '' ? {} : { strike: built.strike }),
      saved: built.mass - best.mass,
      stiffnessRatio: best.d / built.d,
      shearRatio: best.gt / built.gt,
    },
    findings: [
      finding(
        'note',
        'lightest-alternative',
        'designs',
        `the lightest alternative is: ${best.name}${best.needs ? `; it needs: ${best.needs}` : ''}`,
        'Weigh stiffness, edge work, heat and price beside its mass.',
      ),
      ...onStrikes(designs),
    ],
    detail: optionsTable(designs),
  };
}

/** Designs whose strike work is not known, or lies beyond small deflections. */
function onStrikes(designs: readonly Design[]) {
  const names = (of: (d: Design) => boolean) => designs.filter(of).map((d) => d.name);
  const [unknown, deep] = [
    names((d) => d.strike === ''),
    names((d) => d.struck !== '' && d.struck > 0.5),
  ];
  return [
    ...(unknown.length === 0
      ? []
      : [
          finding(
            'note',
            'strike-not-known',
            'designs',
            `no strike work without a limit stress, or with a square larger than the floor: ${unknown.join(', ')}`,
            'Give the yield or breaking stress of the face.',
          ),
        ]),
    ...(deep.length === 0
      ? []
      : [
          finding(
            'doubt',
            'strike-large-deflection',
            'designs',
            `at the limit more than half its thickness deep, where the plate stretches: ${deep.join(', ')}`,
            'Take the strike work as a rank, not as a number to rely on.',
          ),
        ]),
  ];
}
