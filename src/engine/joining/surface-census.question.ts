import { type Finder, question, type ScalarColumn } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { orNone } from './joint-times.ts';

const OF_PARTS = ['coated.area', 'edge.cut', 'drains'] as const;

/** Parts and assemblies of which at least one of the three is recorded. */
function recorded(at: Finder): readonly string[] {
  const nodes = [...at.view.nodes('assembly', at.subject), ...at.view.nodes('part', at.subject)];
  return nodes
    .map(({ id }) => id)
    .filter((id) => OF_PARTS.some((property) => at.view.properties(id).includes(property)))
    .sort();
}

const column = (
  of: Pick<ScalarColumn, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range'>,
  property: (typeof OF_PARTS)[number],
): ScalarColumn => ({
  in: 'scalar',
  ...of,
  bounds: { atLeast: 0 },
  where: `${of.meaning} of the part; none where none is recorded`,
  find: (at, row) => orNone(at, row, property, `no ${of.meaning} is recorded`),
});

export default question({
  id: 'surface-census',
  version: 1,
  title: 'Coated areas, cut edges and drains',
  wording:
    'How much area is coated, how long are the cut fibre edges, and how many drains are there?',
  subject: 'vehicle',
  section: CENSUS,
  inputs: [
    {
      in: 'table',
      name: 'parts',
      meaning: 'a part or assembly of which one of the three is recorded',
      where: 'parts and assemblies with a coated area, a cut edge or drains',
      rows: recorded,
      columns: [
        column(
          {
            name: 'area',
            symbol: 'A',
            kind: 'area',
            unit: 'm2',
            meaning: 'coated area',
            range: [0, 100],
          },
          'coated.area',
        ),
        column(
          {
            name: 'edge',
            symbol: 'e',
            kind: 'length',
            unit: 'm',
            meaning: 'cut fibre edge',
            range: [0, 200],
          },
          'edge.cut',
        ),
        column(
          {
            name: 'drains',
            symbol: 'd',
            kind: 'count',
            unit: '1',
            meaning: 'drain holes',
            range: [0, 200],
          },
          'drains',
        ),
      ],
    },
  ],
  body: {
    body: 'tally',
    table: 'parts',
    terms: [
      { name: 'area', symbol: 'A', kind: 'area', shown: 'Σ A', needs: ['area'], each: (a) => a },
      { name: 'edge', symbol: 'E', kind: 'length', shown: 'Σ e', needs: ['edge'], each: (e) => e },
      {
        name: 'drains',
        symbol: 'D',
        kind: 'count',
        shown: 'Σ d',
        needs: ['drains'],
        each: (d) => d,
      },
    ],
    outputs: [
      {
        name: 'area',
        symbol: 'A',
        kind: 'area',
        unit: 'm2',
        meaning: 'coated area, as far as recorded',
        shown: 'A = Σ A',
        of: (area) => area,
      },
      {
        name: 'edge',
        symbol: 'E',
        kind: 'length',
        unit: 'm',
        meaning: 'cut fibre edge, as far as recorded',
        shown: 'E = Σ e',
        of: (_a, edge) => edge,
      },
      {
        name: 'drains',
        symbol: 'D',
        kind: 'count',
        unit: '1',
        meaning: 'drain holes, as far as recorded',
        shown: 'D = Σ d',
        of: (_a, _e, drains) => drains,
      },
    ],
  },
  modelError: {},
  sources: [{ title: 'Counting and adding', status: 'common practice, no source' }],
  assumptions: ['Only what is recorded counts: a part of which nothing is recorded adds nothing.'],
  cautions: [],
  checks: [
    {
      what: 'sums of areas, lengths and counts against a general-purpose sum',
      source: 'SUM of SQLite; own inputs',
      status: 'common practice',
      test: 'test/published/joint-counts.test.ts',
    },
  ],
  example: {
    parts: [
      { area: '3.8 ± 0.1 m2', edge: '0 m', drains: '8' },
      { area: '0 m2', edge: '5.54 ± 0.02 m', drains: '0' },
    ],
  },
});
