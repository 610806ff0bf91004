import { question, type TallyBody } from '../method.ts';
import { recordedWord, wordColumn } from '../sealing/sealing-columns.ts';
import { LINES } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { lineColumn, lineLength, linkedTo, nearestCrushZone, nearestFace } from './line-columns.ts';
import { lookAtLines } from './line-look.ts';

type Term = TallyBody['terms'][number];
const sum = (name: string, symbol: string, kind: Term['kind'], of: string): Term => ({
  ...{ name, symbol, kind, shown: `Σ ${of}`, needs: [name] },
  each: (x) => x,
});
const labels = (of: readonly string[]): string => of.join('; ');

export default question({
  id: 'line-census',
  version: 1,
  title: 'Lines and circuits',
  wording: 'Which lines run where, and which circuits would one event take together?',
  subject: 'study',
  section: LINES,
  inputs: [
    {
      in: 'table',
      name: 'lines',
      meaning: 'a pipe, hose or cable',
      where: 'every line of the study',
      rows: (at) => at.view.nodes('line').map((n) => n.id),
      columns: [
        wordColumn(
          'name',
          'number of the line',
          'number of the line',
          (at, row) => at.view.node(row)?.label ?? row,
        ),
        recordedWord('kind', 'line.kind'),
        recordedWord('circuit', 'line.circuit'),
        wordColumn(
          'through',
          'zones it runs through, parted by ;',
          'zones of the line',
          (at, row) => labels(linkedTo(at.view, row, 'runs-through')),
        ),
        wordColumn('from', 'what it starts at', 'ends of the line', (at, row) =>
          labels(linkedTo(at.view, row, 'ends-at', 'from')),
        ),
        wordColumn('to', 'what it leads to', 'ends of the line', (at, row) =>
          labels(linkedTo(at.view, row, 'ends-at', 'to')),
        ),
        recordedWord('route', 'line.route'),
        wordColumn('crush', 'nearest crush zone', 'route and zones', nearestCrushZone),
        wordColumn('face', 'nearest wall', 'route and barriers', nearestFace),
        recordedWord('replaced', 'line.replaced'),
        {
          in: 'scalar',
          ...{ name: 'length', symbol: 'l', kind: 'length', unit: 'm', meaning: 'length' },
          ...{ range: [0.02, 60], bounds: { atLeast: 0 } },
          where: 'length of the line, else along the points of its route',
          find: lineLength,
        },
        lineColumn(
          {
            ...{ name: 'clips', symbol: 'c', kind: 'count', unit: '1' },
            ...{ meaning: 'clips', range: [0, 500] },
          },
          'line.clips',
        ),
        lineColumn(
          {
            ...{ name: 'connectors', symbol: 'k', kind: 'count', unit: '1' },
            ...{ meaning: 'connectors', range: [0, 500] },
          },
          'line.connectors',
        ),
        lineColumn(
          {
            ...{ name: 'bend', symbol: 'r', kind: 'length', unit: 'mm' },
            ...{ meaning: 'smallest bend radius', range: [1, 2000] },
          },
          'line.bend',
        ),
        lineColumn(
          {
            ...{ name: 'bendLimit', symbol: 'r_g', kind: 'length', unit: 'mm' },
            ...{ meaning: 'least bend radius allowed', range: [1, 2000] },
          },
          'line.bendLimit',
        ),
      ],
    },
  ],
  body: {
    body: 'tally',
    table: 'lines',
    groupBy: 'kind',
    terms: [
      {
        ...{ name: 'lines', symbol: 'N', kind: 'count' as const, shown: 'Σ 1' },
        needs: [],
        each: () => 1,
      },
      sum('length', 'L', 'length', 'l'),
      sum('clips', 'C', 'count', 'c'),
      sum('connectors', 'K', 'count', 'k'),
    ],
    outputs: [
      worked('lines', 'N', 'count', '1', 'lines', 'N = Σ 1', (n) => n),
      worked('length', 'L', 'length', 'm', 'length of all of them', 'L = Σ l', (_n, l) => l),
      worked('clips', 'C', 'count', '1', 'clips', 'C = Σ c', (_n, _l, c) => c),
      worked('connectors', 'K', 'count', '1', 'connectors', 'K = Σ k', (_n, _l, _c, k) => k),
      worked(
        ...(['spacing', 's', 'length', 'mm'] as const),
        'length for each clip',
        's = L / C',
        (_n, l, c) => l / c,
      ),
    ],
  },
  look: lookAtLines,
  modelError: {},
  sources: [
    { title: 'Counting; distances of straight legs to boxes', status: 'published' },
    {
      title: 'Two circuits that stand in for each other do not run through one place',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'A line shares a place with another where both run through one zone of the record; the distances are of the recorded points, straight in between, without the line’s own thickness.',
  ],
  cautions: ['high-voltage'],
  checks: [
    {
      what: 'lengths and distances of made-up routes by hand; shared places of two circuits',
      source: 'own inputs',
      status: 'own inputs, published formula',
      test: 'test/engine/lines/lines.test.ts',
    },
  ],
  example: {
    lines: [
      {
        ...{ name: 'BR1', kind: 'brake', circuit: 'brake 1', through: 'bay; channel' },
        ...{ from: 'unit', to: 'caliper', route: '0 0 0; 300 400 0', crush: '', face: '' },
        ...{ replaced: 'as one', length: '4.2 ± 0.1 m', clips: '11', connectors: '4' },
        ...{ bend: '18 ± 1 mm', bendLimit: '15 ± 0.1 mm' },
      },
      {
        ...{ name: 'BR2', kind: 'brake', circuit: 'brake 2', through: 'bay; channel' },
        ...{ from: 'unit', to: '', route: '0 100 0; 300 500 0', crush: '', face: '' },
        ...{ replaced: 'as one', length: '3.9 ± 0.1 m', clips: '10', connectors: '4' },
        ...{ bend: '12 ± 1 mm', bendLimit: '15 ± 0.1 mm' },
      },
    ],
  },
});
