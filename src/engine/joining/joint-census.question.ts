import type { Finding } from '../../study/index.ts';
import {
  type DetailTable,
  type PlainInputs,
  type PlainRow,
  question,
  type ScalarColumn,
} from '../method.ts';
import { CENSUS } from '../sections.ts';
import { jointCount, jointSpec, jointTable, jointType } from './joint-columns.ts';

/** Welds, seats and connectors have no bag: that is no missing reading. */
const bagCount: ScalarColumn = {
  ...jointCount,
  name: 'bag',
  symbol: 'n′',
  meaning: 'count by bag; none for joints without loose fasteners',
  where: 'count by bag of the joint',
  range: [0, 5000],
  optional: true,
  find: (at, row) => at.number(row, 'count.bag'),
};

export default question({
  id: 'joint-census',
  version: 1,
  title: 'Census of the joints',
  wording: 'How many joints are there, and of which kinds?',
  subject: 'study',
  section: CENSUS,
  inputs: [jointTable(jointCount, bagCount, jointType, jointSpec)],
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
    ],
    solve: ({ tables }) => {
      const joints = tables.joints ?? [];
      const elements = joints.reduce((sum, j) => sum + Number(j.count), 0);
      return {
        outputs: { groups: joints.length, elements },
        detail: byKind(joints),
        findings: bagsAgainstHoles(joints),
      };
    },
  },
  modelError: {},
  sources: [{ title: 'Counting', status: 'common practice, no source' }],
  assumptions: [
    'Counts by holes are exact; a bag that differs from its holes is found, not averaged.',
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
  },
});

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

function bagsAgainstHoles(joints: PlainInputs['tables'][string]): Finding[] {
  return joints
    .filter((j) => !Number.isNaN(j.bag) && j.bag !== j.count)
    .map((j) => ({
      code: 'bag-differs-from-holes',
      level: 'doubt',
      place: { subject: String(j.subject) },
      value: `${j.bag} by bag, ${j.count} by holes`,
      what: 'the bag holds another number of fasteners than there are holes',
      next: 'Count both again; look for one left in the vehicle or in another bag.',
    }));
}
