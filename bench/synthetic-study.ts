import {
  type Change,
  clockText,
  type Entry,
  type RateBook,
  type TableChunk,
  ulid,
} from '../src/study/index.ts';

/** Repeatable numbers in [0, 1): mulberry32. */
export function repeatable(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const STUDY = 'bench';
const MATERIALS = ['dual-phase steel 600', 'Al 6082-T6', 'PP talc', 'deep-draw steel'] as const;

/** A made-up record of `parts` parts and `joints` joints in changes of 1,000 rows. */
export function syntheticChanges(parts: number, joints: number, seed = 1): Change[] {
  const random = repeatable(seed);
  const opening: Entry[] = [
    {
      v: 1,
      e: 'study.put',
      set: { title: 'bench', vehicle: 'bench', condition: 'kerb', invented: true },
    },
    {
      v: 1,
      e: 'node.add',
      node: { id: 'root', kind: 'vehicle', parent: null, label: 'V', name: 'made up' },
    },
    { v: 1, e: 'rates.put', book: RATES },
    ...corners(),
  ];
  const tables = [
    ...chunks('part', parts, random, partRow),
    ...chunks('joint', joints, random, jointRow),
  ].map((table): Entry[] => [{ v: 1, e: 'table.add', table }]);
  return [opening, ...tables].map((entries, i) => change(i + 1, entries, random));
}

/** One more reading: the mass of a part, measured again. */
export const editOf = (seq: number, part: string, kg: number, random: () => number): Change =>
  change(
    seq,
    [
      {
        v: 1,
        e: 'reading.add',
        reading: {
          id: ulid(seq, random),
          of: { subject: part, property: 'mass', condition: 'kerb' },
          value: { t: 'scalar', kind: 'mass', x: kg, spread: { s: 'normal', u: 0.01 } },
          asWritten: `${kg} kg`,
          how: 'measured',
          by: 'bench',
          takenAt: { local: '2026-01-01T00:00:00' },
          instrument: 'scale',
          evidence: [],
          causes: [],
        },
      },
    ],
    random,
  );

function change(seq: number, entries: readonly Entry[], random: () => number): Change {
  const id = ulid(seq, random);
  return {
    id,
    study: STUDY,
    device: 'bench',
    seq,
    clock: clockText({ ms: seq, count: 0, device: 'bench' }),
    by: 'bench',
    gesture: id,
    words: 'bench',
    saw: {},
    entries,
  };
}

const corners = (): Entry[] =>
  ['FL', 'FR', 'RL', 'RR'].map(
    (corner): Entry => ({
      v: 1,
      e: 'reading.add',
      reading: {
        id: `corner-${corner}`,
        of: { subject: 'root', property: `cornerLoad.${corner}`, condition: 'kerb' },
        value: { t: 'scalar', kind: 'mass', x: 400, spread: { s: 'normal', u: 0.5 } },
        asWritten: '400 kg',
        how: 'measured',
        by: 'bench',
        takenAt: { local: '2026-01-01T00:00:00' },
        instrument: 'scales',
        evidence: [],
        causes: [],
      },
    }),
  );

type MakeRow = (i: number, random: () => number) => string[];

function chunks(
  kind: 'part' | 'joint',
  n: number,
  random: () => number,
  row: MakeRow,
): TableChunk[] {
  const size = 1000;
  return Array.from({ length: Math.ceil(n / size) }, (_, c) => ({
    id: ulid(1000 + c, random),
    parse: 1,
    nodeKind: kind,
    file: `${kind}s.csv`,
    headings: [],
    columns: kind === 'part' ? PART_COLUMNS : JOINT_COLUMNS,
    firstRow: 2 + c * size,
    rows: Array.from({ length: Math.min(size, n - c * size) }, (_, i) => row(c * size + i, random)),
    decimal: '.',
    resolved: {},
    root: 'root',
    condition: 'kerb',
    frame: 'vehicle',
    howWithInstrument: 'measured',
    howWithout: 'seen',
    by: 'bench',
    takenAt: { local: '2026-01-01T00:00:00' },
  }));
}

const PART_COLUMNS: TableChunk['columns'] = [
  { use: 'label' },
  { use: 'property', property: 'mass', kind: 'mass', unit: 'kg', uColumn: 2, instrumentColumn: 3 },
  { use: 'skip' },
  { use: 'skip' },
  { use: 'property', property: 'position', kind: 'length', unit: 'mm', component: 0, uColumn: 7 },
  { use: 'property', property: 'position', kind: 'length', unit: 'mm', component: 1, uColumn: 7 },
  { use: 'property', property: 'position', kind: 'length', unit: 'mm', component: 2, uColumn: 7 },
  { use: 'skip' },
  { use: 'property', property: 'material' },
  { use: 'property', property: 'process' },
];

const partRow: MakeRow = (i, random) => [
  `P${i}`,
  (0.05 + 4 * random()).toFixed(3),
  '0.01',
  'scale',
  (-800 + 4500 * random()).toFixed(1),
  (-900 + 1800 * random()).toFixed(1),
  (200 + 900 * random()).toFixed(1),
  '5',
  MATERIALS[Math.floor(random() * MATERIALS.length)] ?? MATERIALS[0],
  'stamp',
];

const JOINT_COLUMNS: TableChunk['columns'] = [
  { use: 'label' },
  { use: 'property', property: 'count.holes', kind: 'count' },
  { use: 'property', property: 'time.access', kind: 'time', unit: 's', uColumn: 3 },
  { use: 'skip' },
  { use: 'property', property: 'time.drive', kind: 'time', unit: 's', uColumn: 5 },
  { use: 'skip' },
  { use: 'property', property: 'type' },
];

const jointRow: MakeRow = (i, random) => [
  `J${i}`,
  String(1 + Math.floor(20 * random())),
  (0.5 + random()).toFixed(2),
  '0.1',
  (2 + 6 * random()).toFixed(2),
  '0.5',
  'bolt',
];

const rate = (id: string, kind: 'moneyPerMass' | 'ratio', x: number, match: string[]) => ({
  cause: id,
  id,
  words: id,
  kind,
  x,
  spread: { s: 'triangular' as const, low: 0.8 * x, high: 1.3 * x },
  how: 'guessed' as const,
  source: 'made up for the bench',
  match,
});

const RATES: RateBook = {
  id: 'bench-R1',
  version: 'R1',
  region: 'made up',
  date: '2026-01-01',
  currency: 'u',
  volumePerYear: 60000,
  years: 5,
  invented: true,
  cells: [
    rate('material/steel', 'moneyPerMass', 1.2, ['steel']),
    rate('material/aluminium', 'moneyPerMass', 4.5, ['al 6082']),
    rate('material/polypropylene', 'moneyPerMass', 1.7, ['pp']),
    rate('process/stamping', 'moneyPerMass', 0.8, ['stamp']),
    rate('factor/yield stamping', 'ratio', 1.5, ['stamp']),
    rate('factor/overhead', 'ratio', 1.18, ['overhead']),
  ],
};
