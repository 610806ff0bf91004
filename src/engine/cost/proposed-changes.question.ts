import { type PlainInputs, type PlainRow, question, type Solved } from '../method.ts';
import { COST } from '../sections.ts';
import { LINES } from './alternatives/alternative-columns.ts';
import { figuresOf, platesTable, SIZINGS } from './alternatives/design-lines.ts';
import { CHANGE_LINES, functionsIn, lookAtChanges, ofFunction } from './alternatives/proposed.ts';
import { shared, undirected } from './shared-inputs.ts';

export default question({
  id: 'proposed-changes',
  version: 1,
  title: 'Proposed changes',
  wording: 'Which other designs would save most, and is the saving proven?',
  subject: 'study',
  section: COST,
  inputs: [
    {
      ...{ in: 'term', name: 'sizing', options: SIZINGS },
      meaning: 'how thick plates are: as each design says, or as stiff in bending as the first',
      where: 'not in a study: as asked; as designed when nothing is said',
      find: (at) => at.word(at.given('sizing')),
    },
    CHANGE_LINES,
    undirected(shared('labour', '30 / 36 / 44 {u}/h')),
    undirected(shared('volume', 'exactly 60000')),
    undirected(shared('years', 'exactly 5')),
    undirected(shared('overhead', '1.14 / 1.18 / 1.24')),
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        ...{ name: 'largest', symbol: 'd', kind: 'money', unit: '{u}', decides: 'difference' },
        directions: { more: 'the change is cheaper', less: 'the change is dearer' },
        meaning: 'cost saved by the change that saves most',
        shown: 'd = max (C₀ − C)',
      },
      {
        ...{ name: 'changes', symbol: 'n', kind: 'count', unit: '1' },
        ...{ meaning: 'changes that are proposed', shown: 'other designs, counted' },
      },
    ],
    solve,
  },
  look: lookAtChanges,
  modelError: {},
  sources: [
    {
      title: 'Other designs against the first of their function, by alternative-costs',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'The first design of each function is the one as built. Changes are ranked by the cost they save, whether it is proven or not.',
    'Savings of several functions are not added up: one change may rule out another.',
  ],
  cautions: [],
  checks: [
    {
      what: 'savings of the lid and the floor of the invented demo are those of its designs side by side',
      source: 'own inputs, sums worked by hand',
      status: 'common practice',
      test: 'test/engine/cost/proposed-changes.test.ts',
    },
  ],
  example: {
    sizing: 'equal bending stiffness',
    lines: [
      {
        ...{
          function: 'floor',
          risk: '',
          timing: '',
          design: 'two skins, as built',
          line: 'profile',
          mass: '24.5 ± 0.1 kg',
        },
        ...{
          gross: '1.14 ± 0.02',
          materialPrice: '4.7 ± 0.3 {u}/kg',
          conversion: '1.1 ± 0.2 {u}/kg',
        },
        ...{ tool: '20000 ± 3000 {u}', toolLife: 'exactly 299000', thickness: '4 ± 0.1 mm' },
        ...{
          core: '10 ± 0.1 mm',
          modulus: '70 ± 1 GPa',
          poisson: '0.33 ± 0.01',
          service: 'exactly 5 s',
        },
        ...{
          pieces: 'exactly 1',
          time: '40 ± 5 s',
          machineTime: '100 ± 10 s',
          crossings: 'exactly 9',
        },
        ...{ machineRate: '75 ± 6 {u}/h', coated: '0.2 ± 0.02 m2', coatPrice: '2.4 ± 0.2 {u}/m2' },
      },
      {
        ...{ function: 'floor', design: 'moulded plate', line: 'plate', face: '1.9 ± 0.01 m2' },
        ...{ density: '1900 ± 20 kg/m3', modulus: '20 ± 2 GPa', poisson: '0.33 ± 0.02' },
        ...{ price: '14 ± 2 {u}', materialPrice: '5.2 ± 0.4 {u}/kg' },
        ...{ risk: 'edge leaks', timing: 'next model year' },
      },
    ],
  },
});

/** Nominal figures of every design, so that the body rests on all that its table shows. */
function solve(x: PlainInputs): Solved {
  const found = functionsIn(x.tables.lines ?? []).flatMap((name) => {
    const [built, ...others] = figuresOf(ofFunction(x, name));
    return built ? others.map((other) => ({ name, built, other })) : [];
  });
  if (found.length === 0)
    return {
      outputs: {},
      findings: [
        {
          ...{ code: 'no-changes', level: 'note', place: { column: LINES.name } },
          what: 'no other design is in the record: nothing is proposed',
          next: 'Write the lines of another design for a function, in a table like alternatives.csv.',
        },
      ],
    };
  const rows = found.map(({ name, built, other }): PlainRow[string][] => [
    ...[
      name,
      other.name,
      built.cost - other.cost,
      built.mass - other.mass,
      built.time - other.time,
    ],
    ...[other.tool - built.tool, built.crossings - other.crossings, built.service - other.service],
    platesTable(ofFunction(x, name)).rows[0]?.[2] ?? '',
  ]);
  return {
    outputs: {
      largest: Math.max(...found.map(({ built, other }) => built.cost - other.cost)),
      changes: found.length,
    },
    detail: { title: 'Changes at their nominal figures', columns: NOMINAL, rows },
  };
}

const NOMINAL = [
  ...[{ name: 'function' }, { name: 'change' }],
  { name: 'cost saved', kind: 'money', unit: '{u}' },
  { name: 'mass saved', kind: 'mass', unit: 'kg' },
  { name: 'time saved', kind: 'time', unit: 's' },
  { name: 'more tools', kind: 'money', unit: '{u}' },
  ...[{ name: 'leak crossings saved' }, { name: 'service saved', kind: 'time', unit: 's' }],
  { name: 'bending stiffness of the plate as built', kind: 'flexuralRigidity', unit: 'N.m' },
] as const;
