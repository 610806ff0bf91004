import type { Kind } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import {
  type Finder,
  question,
  type ScalarColumn,
  type TallyBody,
  type TermColumn,
} from '../method.ts';
import { CENSUS } from '../sections.ts';
import { jointCount, jointTable } from './joint-columns.ts';
import { isSeam, type JointKind, jointKind } from './joint-kinds.ts';

const kindOf = (at: Finder, row: string): JointKind => jointKind(at.text(row, 'type').text);

const kind: TermColumn = {
  in: 'term',
  name: 'kind',
  meaning: 'kind of joint',
  where: 'words of the kind of joint',
  find: (at, row) => at.word(kindOf(at, row)),
};

/** A column that is asked for of some kinds only: of the others it is nothing, exactly. */
const only = (
  is: (kind: JointKind) => boolean,
  words: string,
  column: Omit<ScalarColumn, 'in' | 'find' | 'range' | 'bounds'>,
  find: ScalarColumn['find'],
  range: readonly [number, number],
): ScalarColumn => ({
  in: 'scalar',
  ...column,
  range,
  bounds: { atLeast: 0 },
  find: (at, row) => (is(kindOf(at, row)) ? find(at, row) : at.exact(0, words)),
});

const flag = (name: string, symbol: string, of: JointKind): ScalarColumn =>
  only(
    (k) => k === of,
    `no ${of}`,
    { name, symbol, kind: 'ratio', unit: '1', meaning: `1 for a ${of}, else 0`, where: 'kind' },
    (at) => at.exact(1, of),
    [0, 1],
  );

const term = (
  name: string,
  symbol: string,
  of: Kind,
  column: string,
): TallyBody['terms'][number] => ({
  name,
  symbol,
  kind: of,
  shown: `Σ n · ${column}`,
  needs: ['count', column],
  each: (n, x) => n * x,
});

export default question({
  id: 'seam-census',
  version: 1,
  title: 'Census of welds, rivets and adhesive',
  wording: 'How many spots and rivets, and how many metres of weld and adhesive, are there?',
  subject: 'study',
  section: CENSUS,
  inputs: [
    jointTable(
      jointCount,
      flag('spot', 's', 'spot weld'),
      flag('rivet', 'r', 'rivet'),
      only(
        isSeam,
        'no seam',
        {
          name: 'weld',
          symbol: 'l',
          kind: 'length',
          unit: 'mm',
          meaning: 'length of weld, each; zero for what is no seam',
          where: 'length of weld of the joint',
        },
        (at, row) => at.number(row, 'seam.length'),
        [0, 20_000],
      ),
      only(
        (k) => k === 'adhesive',
        'no adhesive',
        {
          name: 'bead',
          symbol: 'b',
          kind: 'length',
          unit: 'mm',
          meaning: 'length of adhesive, each; zero for other joints',
          where: 'length of bead of the joint',
        },
        (at, row) => at.number(row, 'seam.length'),
        [0, 20_000],
      ),
      only(
        (k) => k === 'adhesive',
        'no adhesive',
        {
          name: 'adhesive',
          symbol: 'm',
          kind: 'mass',
          unit: 'g',
          meaning: 'adhesive, each; zero for other joints',
          where: 'adhesive of the joint',
        },
        (at, row) => at.number(row, 'adhesive.mass'),
        [0, 5000],
      ),
      kind,
    ),
    {
      in: 'table',
      name: 'told',
      meaning: 'a part whose process tells of joints that the register lacks',
      where: 'parts made by spot welding or bonding, where no joint is of that kind',
      rows: toldParts,
      columns: [
        {
          in: 'term',
          name: 'process',
          meaning: 'process of the part',
          where: 'process of the part',
          find: (at, row) => at.text(row, 'process'),
        },
      ],
    },
  ],
  body: {
    body: 'tally',
    table: 'joints',
    groupBy: 'kind',
    terms: [
      term('spots', 'S', 'count', 'spot'),
      term('rivets', 'R', 'count', 'rivet'),
      term('weld', 'L', 'length', 'weld'),
      term('bead', 'B', 'length', 'bead'),
      term('adhesive', 'M', 'mass', 'adhesive'),
    ],
    outputs: [
      {
        name: 'weld',
        symbol: 'L',
        kind: 'length',
        unit: 'm',
        meaning: 'length of weld',
        shown: 'L = Σ n l',
        of: (_s, _r, weld) => weld,
      },
      {
        name: 'spots',
        symbol: 'S',
        kind: 'count',
        unit: '1',
        meaning: 'spot welds',
        shown: 'S = Σ n s',
        of: (spots) => spots,
      },
      {
        name: 'rivets',
        symbol: 'R',
        kind: 'count',
        unit: '1',
        meaning: 'rivets',
        shown: 'R = Σ n r',
        of: (_s, rivets) => rivets,
      },
      {
        name: 'bead',
        symbol: 'B',
        kind: 'length',
        unit: 'm',
        meaning: 'length of adhesive',
        shown: 'B = Σ n b',
        of: (_s, _r, _w, bead) => bead,
      },
      {
        name: 'adhesive',
        symbol: 'M',
        kind: 'mass',
        unit: 'g',
        meaning: 'adhesive',
        shown: 'M = Σ n m',
        of: (_s, _r, _w, _b, adhesive) => adhesive,
      },
    ],
  },
  valid: ({ tables }) => notRegistered(tables.told ?? []),
  modelError: {},
  sources: [{ title: 'Counting and adding', status: 'common practice, no source' }],
  assumptions: [
    'Joints of the register only; a kind that it has none of counts as none, and parts whose process tells of such joints are named.',
  ],
  cautions: [],
  checks: [
    {
      what: 'metres of weld as the sum of count times length, against a general-purpose sum',
      source: 'SUM of SQLite; own inputs and the made-up joints of the demo',
      status: 'common practice',
      test: 'test/published/joint-counts.test.ts',
    },
  ],
  example: {
    joints: [
      {
        count: '9',
        spot: '0',
        rivet: '0',
        weld: '1460 ± 5 mm',
        bead: '0 mm',
        adhesive: '0 g',
        kind: 'friction stir weld',
      },
      {
        count: '2',
        spot: '0',
        rivet: '0',
        weld: '0 mm',
        bead: '800 ± 20 mm',
        adhesive: '6 ± 1 g',
        kind: 'adhesive',
      },
      {
        count: '40',
        spot: '1',
        rivet: '0',
        weld: '0 mm',
        bead: '0 mm',
        adhesive: '0 g',
        kind: 'spot weld',
      },
      {
        count: '6',
        spot: '0',
        rivet: '1',
        weld: '0 mm',
        bead: '0 mm',
        adhesive: '0 g',
        kind: 'rivet',
      },
    ],
    told: [{ process: 'stamp + spot weld' }],
  },
});

/** Kinds of joints that a part's process may tell of. */
const TOLD = [
  ['spot weld', /spot[- ]?weld/i],
  ['adhesive', /bonded|adhesive|glue/i],
  ['rivet', /\brivet/i],
] as const;

function toldParts(at: Finder): readonly string[] {
  const kinds = new Set(at.view.nodes('joint').map(({ id }) => kindOf(at, id)));
  const lacking = TOLD.filter(([of]) => !kinds.has(of));
  return at.view
    .nodes('part', at.subject)
    .map(({ id }) => id)
    .filter((id) => lacking.some(([, words]) => words.test(at.text(id, 'process').text)));
}

const notRegistered = (rows: readonly Readonly<Record<string, string | number>>[]): Finding[] =>
  rows.map((row) => ({
    code: 'joint-kind-not-registered',
    level: 'gap',
    place: { subject: String(row.subject), property: 'process' },
    value: String(row.process),
    what: 'the process tells of joints of a kind that the register has none of: they are not counted',
    next: 'Count them and add them to the register.',
  }));
