import { type MediumClass, mediumClass, SEALED } from '../../data/index.ts';
import type { Finding } from '../../study/index.ts';
import { type DetailTable, type PlainInputs, question, type Solved } from '../method.ts';
import { SEALING } from '../sections.ts';
import { output } from '../structure/outputs.ts';
import { zonesFigure } from './crossing-figure.ts';
import { sealingFindings } from './graph/sealing-findings.ts';
import { rankOf, SealingGraph } from './graph/sealing-graph.ts';
import { type WetPath, type WetPaths, wetPaths } from './graph/wet-to-dry.ts';
import {
  crossingCount,
  crossingOf,
  labelOf,
  leadsInto,
  nameColumn,
  recordedWord,
  sealing,
  wordColumn,
} from './sealing-columns.ts';

export default question({
  id: 'crossing-paths',
  version: 1,
  title: 'Ways from wet to dry',
  wording: 'By which ways can water get into what must stay dry, and what holds it off?',
  subject: 'study',
  section: SEALING,
  inputs: [
    {
      in: 'table',
      name: 'zones',
      meaning: 'a volume with a medium, or the outside',
      where: 'every zone of the study but places that lines run through',
      rows: (at) => {
        const known = new Set(sealing(at).graph.input.zones.map((z) => z.name));
        return at.view.nodes('zone').flatMap((n) => (known.has(n.label) ? [n.id] : []));
      },
      columns: [nameColumn('zone'), recordedWord('medium', 'zone.medium')],
    },
    {
      in: 'table',
      name: 'barriers',
      meaning: 'what separates two zones',
      where: 'every barrier of the study',
      rows: (at) => at.view.nodes('barrier').map((n) => n.id),
      columns: [
        nameColumn('barrier'),
        wordColumn('a', 'zone on one side', 'zones of the barrier', (at, row) =>
          sideOf(sealing(at).graph, labelOf(at, row), 'a'),
        ),
        wordColumn('b', 'zone on the other side', 'zones of the barrier', (at, row) =>
          sideOf(sealing(at).graph, labelOf(at, row), 'b'),
        ),
      ],
    },
    {
      in: 'table',
      name: 'crossings',
      meaning: 'what goes through barriers',
      where: 'every crossing of the study; fasteners that end blind go through nothing',
      rows: (at) =>
        at.view
          .nodes('crossing')
          .map((n) => n.id)
          .filter((id) => !isBlind(crossingOf(at, id))),
      columns: [
        nameColumn('crossing'),
        wordColumn(
          'through',
          'barriers that it goes through, parted by ;',
          'as recorded, else by place, direction and length',
          (at, row) => (crossingOf(at, row)?.barriers ?? []).map((b) => b.name).join('; '),
        ),
        recordedWord('seal', 'crossing.seal'),
        crossingCount,
      ],
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      output('paths', 'W', 'count', '1', 'ways from wet to dry', 'paths that enter no zone twice'),
      output(
        ...(['into', 'N', 'count', '1'] as const),
        'pieces that lead into a dry zone',
        'N = Σ n, crossings that join a dry zone to another',
      ),
      output(
        ...(['unsealed', 'N₀', 'count', '1'] as const),
        'of these, pieces without a seal',
        'N₀ = Σ n, of these without a seal',
      ),
      output(
        ...(['least', 'S', 'count', '1'] as const),
        'seals in series on the weakest way',
        'least number of seals along a path',
      ),
    ],
    solve,
  },
  figures: (x) => zonesFigure(graphOf(x)),
  modelError: {},
  sources: [
    {
      title:
        'Shortest paths in a graph of zones: a barrier weighs one where its weakest crossing is sealed',
      status: 'published',
    },
    {
      title:
        'Order of seals by their tightness; a fastener from outside into a dry volume is a leak path',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Walls are tight where nothing is recorded to cross them. Crossings side by side are as weak as the weakest of them.',
    'The order of seals is a judgement by kind: it says where to look first and proves no seal tight.',
    'A drained zone is reached by water by way of its drains.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'least seals and number of ways of made-up graphs against a general-purpose graph library',
      source: 'own inputs; shortest and all simple paths of graphology',
      status: 'own inputs, published formula',
      test: 'test/engine/sealing/crossing-paths.test.ts',
    },
  ],
  example: {
    zones: [
      { name: 'outside', medium: 'wet' },
      { name: 'cavity', medium: 'drained' },
      { name: 'cells', medium: 'dry' },
    ],
    barriers: [
      { name: 'outer wall', a: 'outside', b: 'cavity' },
      { name: 'inner wall', a: 'cavity', b: 'cells' },
      { name: 'lid', a: 'cells', b: 'outside' },
    ],
    crossings: [
      { name: 'drain', through: 'outer wall', seal: 'open', count: '4' },
      { name: 'long screws', through: 'outer wall; inner wall', seal: 'none', count: '6' },
      { name: 'lid gasket', through: 'lid', seal: 'cord', count: '1' },
    ],
  },
});

const sideOf = ({ input }: SealingGraph, name: string, side: 'a' | 'b'): string =>
  input.barriers.find((b) => b.name === name)?.[side] ?? '';

/** A fastener that ends where it was put in, or within a wall. */
const isBlind = (c: ReturnType<typeof crossingOf>): boolean =>
  c?.end !== undefined && c.barriers.length === 0;

export function graphOf({ tables }: PlainInputs): SealingGraph {
  const words = (row: Readonly<Record<string, unknown>>, name: string) => String(row[name] ?? '');
  const named = (name: string) => (name === '' ? undefined : name);
  return new SealingGraph({
    zones: (tables.zones ?? []).map((row) => {
      const medium: MediumClass | undefined = mediumClass(words(row, 'medium'));
      return { name: words(row, 'name'), medium };
    }),
    barriers: (tables.barriers ?? []).map((row) => ({
      name: words(row, 'name'),
      a: named(words(row, 'a')),
      b: named(words(row, 'b')),
    })),
    crossings: (tables.crossings ?? []).map((row) => ({
      name: words(row, 'name'),
      barriers: words(row, 'through')
        .split(';')
        .map((b) => b.trim())
        .filter((b) => b !== ''),
      seal: words(row, 'seal'),
      count: Number(row.count),
    })),
  });
}

function solve(x: PlainInputs): Solved {
  if ((x.tables.zones ?? []).length === 0) return { outputs: {} };
  const graph = graphOf(x);
  const found = wetPaths(graph);
  const dry = new Set(graph.input.zones.flatMap((z) => (z.medium === 'dry' ? [z.name] : [])));
  const pieces = graph.crossings.filter((c) => leadsInto(c, dry));
  const sum = (of: typeof pieces) => of.reduce((n, c) => n + c.in.count, 0);
  const [first] = found.paths;
  return {
    outputs: {
      paths: found.paths.length,
      into: sum(pieces),
      unsealed: sum(pieces.filter((c) => rankOf(c) < SEALED)),
      least: first?.seals ?? 0,
    },
    findings: [...sealingFindings(graph), ...pathFindings(graph, found)],
    detail: pathTable(found.paths),
  };
}

function pathFindings(graph: SealingGraph, { paths, cut }: WetPaths): readonly Finding[] {
  const none = graph.input.zones.every((z) => z.medium !== 'dry');
  return [
    ...(cut
      ? [
          {
            ...({ code: 'more-paths', level: 'note', place: {} } as const),
            what: `there are more ways than the ${paths.length} with the fewest seals shown here`,
            next: 'Seal these first, or look at a smaller part of the study.',
          },
        ]
      : []),
    ...(none
      ? [
          {
            ...({ code: 'no-dry-zone', level: 'gap', place: { property: 'zone.medium' } } as const),
            what: 'no zone is recorded as one that must stay dry',
            next: 'Write dry in the medium of the zone that must be.',
          },
        ]
      : []),
  ];
}

/** A line for each way: zones, barriers, seals in series, weakest barrier and what is weak there. */
function pathTable(paths: readonly WetPath[]): DetailTable {
  const names = (way: WetPath['weakest']) => way.barriers.map((b) => b.name).join(' + ');
  return {
    title: 'Ways from wet to dry, fewest seals first',
    columns: [
      { name: 'way' },
      { name: 'seals in series', kind: 'count' },
      { name: 'weakest barrier' },
      { name: 'its weakest crossing' },
      { name: 'seal there' },
      { name: 'pieces there', kind: 'count' },
      { name: 'tightest on the way' },
    ],
    rows: paths.map(({ zones, seals, weakest, tightest }) => {
      const weak = weakest.crossings.filter((c) => rankOf(c) === weakest.rank);
      return [
        zones.join(' → '),
        seals,
        names(weakest),
        listed(weak.map((c) => c.in.name)),
        weak[0]?.seal?.words ?? 'not known',
        weak.reduce((n, c) => n + c.in.count, 0),
        `${names(tightest)}: ${sealOf(tightest)}`,
      ];
    }),
  };
}

const sealOf = (way: WetPath['tightest']): string =>
  way.crossings.find((c) => rankOf(c) === way.rank)?.seal?.words ?? 'not known';

const LISTED = 4;
function listed(names: readonly string[]): string {
  const sorted = [...names].sort((a, b) => (a < b ? -1 : 1));
  const more = sorted.length - LISTED;
  return more > 0 ? `${sorted.slice(0, LISTED).join(', ')} and ${more} more` : sorted.join(', ');
}
