import type { Finding } from '../../study/index.ts';
import type { Bars } from '../figure.ts';
import {
  type DetailTable,
  type Finder,
  type PlainRow,
  question,
  type ScalarColumn,
  type TableInput,
  type TermColumn,
} from '../method.ts';
import { CENSUS } from '../sections.ts';
import { bagsOf, countByBag, strayBags, writtenJoint } from './bags.ts';
import { parseFastenerSpec } from './fastener-spec.ts';
import { jointCount, jointSpec, jointTable, jointType } from './joint-columns.ts';
import { endFindings } from './joint-ends.ts';
import { recordPlace } from './record-place.ts';

/** Welds, seats and connectors have no bag: that is no missing reading. */
const bagCount: ScalarColumn = {
  ...jointCount,
  name: 'bag',
  symbol: 'n′',
  meaning: 'count by bag; none for joints without loose fasteners',
  where: 'the bags that keep the fasteners of the joint, else its count by bag',
  range: [0, 5000],
  optional: true,
  find: (at, row) => {
    for (const finding of endFindings(at.view, row)) at.note(finding);
    noteOtherSizes(at, row);
    return countByBag(at, row);
  },
};

/** A bag whose fasteners are of another size than the joint's. */
function noteOtherSizes(at: Finder, joint: string): void {
  const wanted = at.text(joint, 'spec').text;
  for (const bag of bagsOf(at.view, joint)) {
    const spec = at.text(bag, 'spec').text;
    if (spec !== '' && wanted !== '' && !isSameSize(spec, wanted))
      at.note({
        code: 'bag-of-another-size',
        level: 'doubt',
        place: recordPlace(at.view, bag, 'spec'),
        value: `${spec} in the bag, ${wanted} by the joint`,
        what: 'the fasteners in the bag are of another size than the joint',
        next: 'Look whether the bag belongs to another joint.',
      });
  }
}

function isSameSize(a: string, b: string): boolean {
  const [x, y] = [parseFastenerSpec(a), parseFastenerSpec(b)];
  return x && y ? x.thread === y.thread && x.length === y.length : a === b;
}

const written: TermColumn = {
  in: 'term',
  name: 'joint',
  meaning: 'joint written on the bag; empty when there is none',
  where: 'words on the bag',
  find: (at, row) => at.word(writtenJoint(at.view, row)),
};

const strays: TableInput = {
  in: 'table',
  name: 'strays',
  meaning: 'one bag without a joint of the record',
  where: 'bags on which no joint is written, or one that is not in the study',
  rows: (at) => (at.view.root()?.id === at.subject ? strayBags(at.view) : []),
  columns: [
    {
      ...jointCount,
      name: 'count',
      symbol: 'n°',
      meaning: 'fasteners in the bag',
      where: 'count of the bag',
      optional: true,
      find: (at, row) => at.number(row, 'count.bag'),
    },
    { ...jointSpec, where: 'specification of the fasteners in the bag' },
    written,
  ],
};

export default question({
  id: 'joint-census',
  version: 2,
  title: 'Census of the joints',
  wording: 'How many joints are there, of which kinds, and do the bags agree?',
  subject: 'study',
  section: CENSUS,
  inputs: [jointTable(jointCount, bagCount, jointType, jointSpec), strays],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'groups',
        symbol: 'G',
        kind: 'count',
        unit: '1',
        meaning: 'groups of joints',
        shown: 'count of the rows',
      },
      {
        name: 'elements',
        symbol: 'N',
        kind: 'count',
        unit: '1',
        meaning: 'single joints, by holes',
        shown: 'N = Σ n',
      },
      {
        name: 'apart',
        symbol: 'G≠',
        kind: 'count',
        unit: '1',
        meaning: 'groups whose bags hold another number than there are holes',
        shown: 'count of the rows with a bag where n′ ≠ n',
      },
      {
        name: 'strayBags',
        symbol: 'B°',
        kind: 'count',
        unit: '1',
        meaning: 'bags without a joint',
        shown: 'count of the bags without a joint',
      },
    ],
    solve: ({ tables }) => {
      const [joints, bags] = [tables.joints ?? [], tables.strays ?? []];
      return {
        outputs: {
          groups: joints.length,
          elements: joints.reduce((sum, j) => sum + Number(j.count), 0),
          apart: joints.filter(isApart).length,
          strayBags: bags.length,
        },
        detail: byKind(joints),
        findings: [
          ...joints.filter(isApart).map(bagAgainstHoles),
          ...bags.map((bag) => strayBag(bag, joints)),
        ],
      };
    },
  },
  figures: (_x, _outs, detail) => (detail ? [elementBars(detail)] : []),
  modelError: {},
  sources: [{ title: 'Counting', status: 'common practice, no source' }],
  assumptions: [
    'Counts by holes are exact; a bag that differs from its holes is found, not averaged.',
    'A joint with several bags has what they hold together.',
  ],
  cautions: [],
  checks: [
    {
      what: 'counts of a list sum by kind and in total, against a general-purpose grouping',
      source: 'GROUP BY of SQLite; own inputs',
      status: 'common practice',
      test: 'test/published/joint-counts.test.ts',
    },
  ],
  example: {
    joints: [
      { count: '62', bag: '62', type: 'screw', spec: 'M6x20' },
      { count: '18', bag: '17', type: 'bolt', spec: 'M12x90' },
      { count: '9', type: 'friction stir weld seam', spec: '1.46 m' },
    ],
    strays: [{ count: '31', spec: 'M6x16', joint: '' }],
  },
});

/** Single joints of each kind, as the table has them. */
const elementBars = ({ rows }: DetailTable): Bars => ({
  f: 'bars',
  title: 'Single joints by kind',
  alt: 'A bar for each kind of joint, the most frequent first.',
  kind: 'count',
  unit: '1',
  from: 'zero',
  rows: rows.map(([kind, , elements]) => ({
    label: String(kind),
    ...(Number.isNaN(elements)
      ? { word: 'not all counted' }
      : { number: { x: Number(elements), u: 0 } }),
  })),
});

const isApart = (j: PlainRow): boolean => !Number.isNaN(Number(j.bag)) && j.bag !== j.count;

/** Groups and elements by kind of joint, most elements first. */
function byKind(joints: readonly PlainRow[]): DetailTable {
  const kinds = new Map<string, [groups: number, elements: number]>();
  for (const j of joints) {
    const kind = String(j.type || 'kind not recorded');
    const [groups, elements] = kinds.get(kind) ?? [0, 0];
    kinds.set(kind, [groups + 1, elements + Number(j.count)]);
  }
  const rows = [...kinds].map(([kind, [groups, elements]]) => [kind, groups, elements] as const);
  return {
    title: 'Joints by kind',
    columns: [
      { name: 'kind' },
      { name: 'groups', kind: 'count' },
      { name: 'elements', kind: 'count' },
    ],
    rows: rows.sort((a, b) => b[2] - a[2] || (a[0] < b[0] ? -1 : 1)),
  };
}

const bagAgainstHoles = (j: PlainRow): Finding => ({
  code: 'bag-differs-from-holes',
  level: 'doubt',
  place: { subject: String(j.subject) },
  value: `${j.bag} by bag, ${j.count} by holes`,
  what: 'the bag holds another number of fasteners than there are holes',
  next: 'Count both again; look for one left in the vehicle or in another bag.',
});

function strayBag(bag: PlainRow, joints: readonly PlainRow[]): Finding {
  const alike = joints.filter((j) => isSameSize(String(j.spec), String(bag.spec)));
  const names = alike.map((j) => `${j.subject} (${j.count})`).join(', ');
  const count = Number.isNaN(Number(bag.count)) ? 'not counted' : String(bag.count);
  return {
    code: 'bag-without-joint',
    level: 'doubt',
    place: { subject: String(bag.subject) },
    value: `${count}, ${bag.spec || 'size not recorded'}`,
    what:
      bag.joint === ''
        ? 'no joint is written on the bag'
        : `the bag names the joint ${bag.joint}, which is not in the study`,
    next: names === '' ? 'Find the joint it came from.' : `Joints of this size: ${names}.`,
  };
}
