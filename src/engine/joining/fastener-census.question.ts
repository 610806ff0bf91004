import { fromSi } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import { type DetailTable, type PlainRow, question, type TermColumn } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { parseFastenerSpec } from './fastener-spec.ts';
import { jointCount, jointSpec, jointTable, jointTerm, jointType } from './joint-columns.ts';
import { hasLooseFasteners, isThreaded, jointKind } from './joint-kinds.ts';

/** A torque as a word: how many different ones there are does not hang on its spread. */
const torque: TermColumn = {
  in: 'term',
  name: 'torque',
  meaning: 'torque specified, with its unit',
  where: 'torque specified of the joint',
  find: (at, row) => {
    const found = at.number(row, 'torque.specified');
    if ('missing' in found) return { text: '', how: 'missing', place: found.place };
    const shown = Number(fromSi(found.form.x, 'N.m', 'torque').toPrecision(6));
    return { text: `${shown} N·m`, how: 'given', place: found.place };
  },
};

const counted = (name: string, symbol: string, meaning: string, shown: string) =>
  ({ name, symbol, kind: 'count', unit: '1', meaning, shown }) as const;

export default question({
  id: 'fastener-census',
  version: 1,
  title: 'Census of fasteners and tools',
  wording: 'How many different fasteners, tools and torques are there?',
  subject: 'study',
  section: CENSUS,
  inputs: [
    jointTable(
      jointCount,
      jointType,
      jointSpec,
      torque,
      jointTerm('tool', 'tool', 'tool'),
      jointTerm('onRemoval', 'onRemoval', 'on removal'),
    ),
  ],
  body: {
    body: 'solve',
    outputs: [
      counted('fasteners', 'N', 'loose fasteners', 'Σ n of bolts, screws, nuts and rivets'),
      counted('specs', 'S', 'different specifications of loose fasteners', 'different words'),
      counted('threads', 'M', 'different threads', 'different threads'),
      counted('tools', 'W', 'different tools', 'different words'),
      counted('torques', 'D', 'different torques specified', 'different values'),
      counted(
        'renewed',
        'N*',
        'elements renewed at each opening',
        'Σ n, on removal: renew fastener',
      ),
      counted('destructive', 'G†', 'groups that opening destroys', 'on removal: destroys part'),
    ],
    solve: ({ tables }) => {
      const joints = (tables.joints ?? []).map(withKind);
      const loose = joints.filter(({ kind }) => hasLooseFasteners(kind));
      const sum = (of: readonly Kinded[]) => of.reduce((n, { row }) => n + Number(row.count), 0);
      const by = (word: string) => joints.filter(({ row }) => row.onRemoval === word);
      return {
        outputs: {
          fasteners: sum(loose),
          specs: different(loose.map(({ row }) => String(row.spec))),
          threads: different(loose.map(({ size }) => size?.thread ?? '')),
          tools: different(joints.map(({ row }) => String(row.tool))),
          torques: different(joints.map(({ row }) => String(row.torque))),
          renewed: sum(by('renew fastener')),
          destructive: by('destroys part').length,
        },
        detail: bySpec(loose),
        findings: joints.flatMap(torqueWithoutSize),
      };
    },
  },
  modelError: {},
  sources: [{ title: 'Counting', status: 'common practice, no source' }],
  assumptions: [
    'Specifications are alike where their words are; threads are read out of them (ISO 965-1 designations).',
  ],
  cautions: [],
  checks: [
    {
      what: 'counts by specification and of different words, against a general-purpose grouping',
      source: 'GROUP BY and COUNT(DISTINCT) of SQLite; own inputs',
      status: 'common practice',
      test: 'test/published/joint-counts.test.ts',
    },
  ],
  example: {
    joints: [
      {
        count: '62',
        type: 'screw',
        spec: 'M6x20 8.8',
        torque: '8 N·m',
        tool: 'socket 10 mm',
        onRemoval: 'reusable',
      },
      {
        count: '18',
        type: 'bolt',
        spec: 'M12x90 10.9',
        torque: '95 N·m',
        tool: 'socket 18 mm',
        onRemoval: 'renew fastener',
      },
    ],
  },
});

interface Kinded {
  readonly row: PlainRow;
  readonly kind: ReturnType<typeof jointKind>;
  readonly size: ReturnType<typeof parseFastenerSpec>;
}

const withKind = (row: PlainRow): Kinded => ({
  row,
  kind: jointKind(String(row.type)),
  size: parseFastenerSpec(String(row.spec)),
});

const different = (words: readonly string[]): number => new Set(words.filter((w) => w !== '')).size;

/** Elements, tools and torques of each specification, most elements first. */
function bySpec(loose: readonly Kinded[]): DetailTable {
  const groups = new Map<string, Kinded[]>();
  for (const joint of loose) {
    const spec = String(joint.row.spec) || 'not recorded';
    groups.set(spec, [...(groups.get(spec) ?? []), joint]);
  }
  const words = (of: readonly Kinded[], column: string): string =>
    [...new Set(of.map(({ row }) => String(row[column] ?? '')))].filter((w) => w !== '').join(', ');
  const rows = [...groups].map(
    ([spec, of]) =>
      [
        spec,
        of[0]?.size?.thread ?? '',
        of[0]?.size?.grade ?? '',
        of.length,
        of.reduce((n, { row }) => n + Number(row.count), 0),
        words(of, 'torque'),
        words(of, 'tool'),
      ] as const,
  );
  return {
    title: 'Fasteners by specification',
    columns: [
      { name: 'specification' },
      { name: 'thread' },
      { name: 'grade' },
      { name: 'groups', kind: 'count' },
      { name: 'elements', kind: 'count' },
      { name: 'torques' },
      { name: 'tools' },
    ],
    rows: rows.sort((a, b) => b[4] - a[4] || (a[0] < b[0] ? -1 : 1)),
  };
}

/** A torque says nothing of a fastener whose size is not known. */
function torqueWithoutSize({ row, kind, size }: Kinded): Finding[] {
  if (row.torque === '' || size !== undefined || !isThreaded(kind)) return [];
  return [
    {
      code: 'torque-without-size',
      level: 'doubt',
      place: { subject: String(row.subject), property: 'torque.specified' },
      value: String(row.torque),
      what: 'a torque is recorded of a fastener whose size is not',
      next: 'Write its size in the specification, e.g. M6x20.',
    },
  ];
}
