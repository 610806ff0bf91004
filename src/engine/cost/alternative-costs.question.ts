import type { Finding } from '../../study/index.ts';
import { type PlainInputs, type PlainRow, question, type Solved } from '../method.ts';
import { COST } from '../sections.ts';
import { LINES } from './alternatives/alternative-columns.ts';
import { lookAtAlternatives } from './alternatives/alternative-look.ts';
import { figuresOf, has, platesTable, SIZINGS } from './alternatives/design-lines.ts';
import { shared } from './shared-inputs.ts';

export default question({
  id: 'alternative-costs',
  version: 1,
  title: 'Designs for one function',
  wording: 'What do other designs for the same function cost, with all that each needs beside it?',
  subject: 'alternative',
  section: COST,
  inputs: [
    {
      ...{ in: 'term', name: 'sizing', options: SIZINGS },
      meaning: 'how thick plates are: as each design says, or as stiff in bending as the first',
      where: 'not in a study: as asked; as designed when nothing is said',
      find: (at) => at.word(at.given('sizing')),
    },
    LINES,
    shared('labour', '30 / 36 / 44 {u}/h'),
    shared('volume', 'exactly 60000'),
    shared('years', 'exactly 5'),
    shared('overhead', '1.14 / 1.18 / 1.24'),
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        ...{ name: 'built', symbol: 'C₀', kind: 'money', unit: '{u}' },
        meaning: 'cost of the first design, as built',
        shown: 'C = k Σ (n (p_b + m (y p + c) + t w + t_M R + A p_A) + T S / (N Y))',
      },
      {
        ...{ name: 'other', symbol: 'C₁', kind: 'money', unit: '{u}' },
        ...{ meaning: 'cost of the cheapest other', shown: 'the same of the cheapest other' },
      },
      {
        ...{ name: 'saved', symbol: 'd', kind: 'money', unit: '{u}', decides: 'difference' },
        directions: { more: 'the other is cheaper', less: 'the other is dearer' },
        ...{ meaning: 'cost saved by the cheapest other', shown: 'd = C₀ − C₁' },
      },
      {
        ...{ name: 'massSaved', symbol: 'Δm', kind: 'mass', unit: 'kg', decides: 'difference' },
        directions: { more: 'the other is lighter', less: 'the other is heavier' },
        ...{ meaning: 'mass saved by that design', shown: 'Δm = m₀ − m₁' },
      },
      {
        ...{ name: 'timeSaved', symbol: 'Δt', kind: 'time', unit: 's', decides: 'difference' },
        directions: { more: 'the other is quicker', less: 'the other is slower' },
        ...{ meaning: 'time of work saved by it', shown: 'Δt = t₀ − t₁' },
      },
      {
        ...{ name: 'crossingsSaved', symbol: 'Δx', kind: 'ratio', unit: '1' },
        ...{ meaning: 'leak crossings that it saves', shown: 'Δx = x₀ − x₁' },
      },
      {
        ...{ name: 'serviceSaved', symbol: 'Δt_S', kind: 'time', unit: 's' },
        ...{ meaning: 'time in service that it saves', shown: 'Δt_S = t_S₀ − t_S₁' },
      },
      {
        ...{ name: 'toolsSaved', symbol: 'ΔT', kind: 'money', unit: '{u}' },
        ...{ meaning: 'price of tools that it saves', shown: 'ΔT = T₀ − T₁' },
      },
    ],
    solve,
  },
  look: lookAtAlternatives,
  modelError: {},
  sources: [
    {
      title: 'Sum of lines by piece, mass, time, area and tools, with whole sets of tools',
      status: 'common practice, no source',
    },
    { title: 'Plates of equal bending stiffness: D = E h³ / (12 (1 − ν²))', status: 'published' },
  ],
  assumptions: [
    'Designs do the same as far as their lines say so: what one needs beside it is a line of its own.',
    'Time on a machine is charged at its rate, which holds whom it needs; time of people at the rate of labour.',
    'The spread is that of prices, times, rates and facts; a design is not compared by method error.',
    'Probabilities take the difference as normal about its mean; the cheapest of several is found by the method of Mendell and Elston.',
  ],
  cautions: [],
  checks: [
    {
      what: '62 screws 5.95, with rivet nuts 13.5, 58 clips 8.35, break-even of the nut side 0.04 each; plates of equal stiffness; break-even volumes against the curves',
      source: 'sums worked by hand on the invented demo; closed forms',
      status: 'own inputs, published formula',
      test: 'test/published/alternative-costs.test.ts',
    },
  ],
  example: {
    sizing: 'equal bending stiffness',
    lines: [
      {
        ...{
          design: 'two skins, as built',
          line: 'profile',
          mass: '24.5 ± 0.1 kg',
          gross: '1.14 ± 0.02',
        },
        ...{
          materialPrice: '4.7 ± 0.3 {u}/kg',
          conversion: '1.1 ± 0.2 {u}/kg',
          tool: '20000 ± 3000 {u}',
        },
        ...{ toolLife: 'exactly 400000', thickness: '4 ± 0.1 mm', core: '10 ± 0.1 mm' },
        ...{ modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01' },
      },
      {
        ...{
          design: 'two skins, as built',
          line: 'welds',
          pieces: 'exactly 9',
          machineTime: '100 ± 10 s',
        },
        ...{ machineRate: '75 ± 6 {u}/h', crossings: 'exactly 1' },
      },
      {
        ...{
          design: 'moulded plate',
          line: 'plate',
          face: '1.9 ± 0.01 m2',
          density: '1900 ± 20 kg/m3',
        },
        ...{
          thickness: '5.2 ± 0.1 mm',
          modulus: '20 ± 2 GPa',
          poisson: '0.33 ± 0.02',
          price: '14 ± 2 {u}',
        },
        ...{
          materialPrice: '5.2 ± 0.4 {u}/kg',
          tool: '450000 ± 50000 {u}',
          toolLife: 'exactly 299000',
          service: '5 ± 1 s',
        },
      },
      {
        ...{ design: 'every design', line: 'seal', price: '3 ± 0.2 {u}', time: '40 ± 5 s' },
        ...{ coated: '0.2 ± 0.02 m2', coatPrice: '2.4 ± 0.2 {u}/m2', service: '60 ± 10 s' },
      },
    ],
  },
});

function solve(x: PlainInputs): Solved {
  const designs = figuresOf(x);
  const [built, ...others] = designs;
  const open = (x.tables.lines ?? []).flatMap(openLine);
  if (!built || others.length === 0)
    return {
      outputs: {},
      findings: designs.length === 0 ? open : [...open, tooFew(designs.length)],
    };
  const best = others.reduce((a, b) => (b.cost < a.cost ? b : a));
  return {
    outputs: {
      ...{ built: built.cost, other: best.cost, saved: built.cost - best.cost },
      ...{ massSaved: built.mass - best.mass, timeSaved: built.time - best.time },
      crossingsSaved: built.crossings - best.crossings,
      ...{ serviceSaved: built.service - best.service, toolsSaved: built.tool - best.tool },
    },
    findings: [cheapest(best.name), ...open],
    detail: platesTable(x),
  };
}

const cheapest = (name: string): Finding => ({
  ...{ code: 'cheapest-other', level: 'note', place: { column: 'lines' }, value: name },
  what: `the cheapest other design is: ${name}`,
  next: 'See the differences of all pairs with their words below it.',
});

const tooFew = (n: number): Finding => ({
  ...{ code: 'too-few-designs', level: 'gap', place: { column: 'lines' }, value: String(n) },
  what: 'a comparison takes two designs at least',
  next: 'Add another design with its lines.',
});

/** A line that can't be priced is no line of nothing: it is named. */
function openLine(row: PlainRow): Finding[] {
  const weighs = has(row, 'mass') || has(row, 'density');
  const lacks = [
    ...(weighs && !has(row, 'materialPrice') && !has(row, 'price')
      ? ['a price of its material']
      : []),
    ...(has(row, 'machineTime') && !has(row, 'machineRate') ? ['the rate of its machine'] : []),
    ...(PRICED.some((name) => has(row, name)) ? [] : ['any price or time']),
  ];
  return lacks.map((what) => ({
    ...{ code: 'line-open', level: 'gap', place: { subject: String(row.subject) } },
    value: String(row.line),
    what: `"${row.line}" of "${row.design}" lacks ${what}: it is not counted, and not as zero`,
    next: 'Give it, or name a material or machine that the rate book has.',
  }));
}

const PRICED = ['price', 'materialPrice', 'conversion', 'time', 'machineTime', 'coated', 'tool'];
