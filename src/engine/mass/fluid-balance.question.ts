import { FormBuilder, formUncertainty, type LinearForm } from '../../quantity/index.ts';
import { decideDifference } from '../decide.ts';
import { type BoundLook, type Found, type FoundRow, type Looked, question } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { densityOf } from './expected-mass.ts';
import { partMass } from './part-columns.ts';
import { productOf } from './product.ts';

export default question({
  id: 'fluid-balance',
  version: 1,
  title: 'Fluids recovered, and left in the parts',
  wording: 'How much of the fluids was recovered, and how much is still in the parts?',
  subject: 'study',
  section: BALANCE,
  onRequest: true,
  inputs: [
    {
      in: 'table',
      name: 'fluids',
      meaning: 'a fluid with the volume that the book fills in',
      where: 'parts of the subject with a volume filled by the book',
      rows: (at) =>
        at.view
          .nodes('part', at.subject)
          .filter((n) => at.view.properties(n.id).includes('fillVolume'))
          .map((n) => n.id),
      columns: [
        { ...partMass, meaning: 'mass recovered', where: 'mass of the fluid’s row' },
        {
          in: 'scalar',
          name: 'volume',
          symbol: 'V',
          kind: 'volume',
          unit: 'L',
          meaning: 'volume filled by the book',
          range: [0.01, 200],
          bounds: { above: 0 },
          where: 'volume filled of the fluid’s row',
          find: (at, row) => at.number(row, 'fillVolume'),
        },
        {
          in: 'scalar',
          name: 'density',
          symbol: 'ρ',
          kind: 'density',
          unit: 'kg/m3',
          meaning: 'density of the fluid',
          range: [400, 2000],
          bounds: { above: 0 },
          where: 'density of the fluid’s row',
          find: (at, row) => densityOf(at, row),
        },
      ],
    },
  ],
  body: {
    body: 'tally',
    table: 'fluids',
    terms: [
      {
        name: 'recovered',
        symbol: 'M',
        kind: 'mass',
        shown: 'Σ m',
        needs: ['mass'],
        each: (m) => m,
      },
      {
        name: 'filled',
        symbol: 'F',
        kind: 'mass',
        shown: 'Σ ρ V',
        needs: ['volume', 'density'],
        each: (v, d) => v * d,
      },
    ],
    outputs: [
      {
        ...{ name: 'recovered', symbol: 'M', kind: 'mass', unit: 'kg' },
        meaning: 'fluids recovered',
        shown: 'M = Σ m',
        of: (recovered, _filled) => recovered,
      },
      {
        ...{ name: 'filled', symbol: 'F', kind: 'mass', unit: 'kg' },
        meaning: 'fluids filled by the book',
        shown: 'F = Σ ρ V',
        of: (_recovered, filled) => filled,
      },
      {
        ...{ name: 'left', symbol: 'F − M', kind: 'mass', unit: 'kg', decides: 'difference' },
        meaning: 'fluids not recovered: left in the parts, or never filled',
        shown: 'F − M',
        of: (recovered, filled) => filled - recovered,
      },
    ],
  },
  look: fluidTable,
  modelError: {},
  sources: [
    { title: 'Mass as volume times density', status: 'from memory' },
    { title: 'Fluids weighed as they are drained', status: 'common practice, no source' },
  ],
  assumptions: [
    'The book’s volume was filled: a low level looks like fluid left in the parts.',
    'What is left weighs in the rows of the parts that hold it: it is in the balance already, and not to be added.',
    'A fluid without a mass is not recovered yet, not nothing.',
  ],
  cautions: [],
  checks: [
    {
      what: 'water by volume and density, part of it recovered',
      source: 'density of water 998.2 kg/m³ at 20 °C (handbook value, from memory)',
      status: 'from memory, recomputed',
      test: 'test/published/masses-at-the-scale.test.ts',
    },
  ],
  example: {
    fluids: [
      { mass: '8.9 ± 0.02 kg', volume: '8.9 ± 0.1 L', density: '1055 ± 5 kg/m3' },
      { mass: '3.56 ± 0.01 kg', volume: '3.6 ± 0.05 L', density: '985 ± 5 kg/m3' },
    ],
  },
});

const formOf = (cell: Found | undefined): LinearForm | undefined =>
  cell === undefined || 'missing' in cell ? undefined : cell.form;

/** Fluid by fluid: filled, recovered, left with its spread and word. */
function fluidTable({ tables }: BoundLook): Looked {
  const rows = (tables.fluids ?? []).map(fluidRow);
  if (rows.length === 0) return {};
  return {
    detail: {
      title: 'Fluid by fluid',
      columns: [
        { name: 'fluid' },
        { name: 'filled', kind: 'mass', unit: 'kg' },
        { name: 'recovered', kind: 'mass', unit: 'kg' },
        { name: 'left', kind: 'mass', unit: 'kg' },
        { name: 'u of what is left', kind: 'mass', unit: 'kg' },
        { name: 'word' },
      ],
      rows,
    },
  };
}

function fluidRow({ label, cells }: FoundRow): (string | number)[] {
  const [mass, volume, density] = [cells.mass, cells.volume, cells.density].map(formOf);
  const filled = volume && density && productOf(volume, density);
  if (!mass || !filled) return [label, filled?.x ?? '', mass?.x ?? '', '', '', 'incomplete'];
  const left = new FormBuilder().add(filled).add(mass, -1).done();
  const u = formUncertainty(left);
  return [label, filled.x, mass.x, left.x, u, decideDifference(left.x, u, null).word];
}
