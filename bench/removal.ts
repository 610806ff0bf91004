import { performance } from 'node:perf_hooks';
import {
  askStudy,
  buildGraph,
  type Facts,
  planRemoval,
  type Questions,
} from '../src/engine/index.ts';
import {
  type Change,
  clockText,
  type Entry,
  fold,
  type Id,
  rowId,
  type StudyView,
  type TableChunk,
  ulid,
} from '../src/study/index.ts';
import { repeatable } from './synthetic-study.ts';

type Line = (what: string, ms: number, per: string) => void;
type Median = <T>(runs: number, before: (i: number) => T, timed: (made: T) => void) => number;

/** What a removal path may take. */
const LIMIT_MS = 100;

/** Ways to a part in a made-up study: its graph, a usual way, the longest there is, and the question. */
export function removalSection(
  parts: number,
  joints: number,
  questions: Questions,
  median: Median,
  line: Line,
): void {
  const path = questions.get('removal-path');
  if (!path) throw new Error('the registry has no removal-path');
  const fresh = (): StudyView => fold('bench', madeWays(parts, joints));
  const view = fresh();
  const graph = buildGraph(view);
  const ids = view.nodes('part').map((n) => n.id);
  const [usual = '', farthest = ''] = [ids[Math.floor(0.02 * parts)], ids.at(-1)];
  const steps = (target: Id): number => planRemoval(graph, target, FACTS).best?.steps.length ?? 0;
  const plan = (target: Id): number => quickest(15, () => planRemoval(graph, target, FACTS));
  const built = median(5, fresh, (v) => buildGraph(v));
  line('graph of what holds what, from the study', built, `${ids.length} parts`);
  const near = plan(usual);
  line('removal path', near, `${steps(usual)} steps; limit ${LIMIT_MS} ms: ${verdict(near)}`);
  const far = plan(farthest);
  line(
    'removal path that takes nearly everything apart',
    far,
    `${steps(farthest)} steps, ${((1000 * far) / steps(farthest)).toFixed(1)} µs a step`,
  );
  const start = performance.now();
  const answer = askStudy(path, questions, { view, subject: usual });
  line(
    'the same asked as a question, graph, times and spread',
    performance.now() - start,
    `${answer.detail?.rows.length} rows`,
  );
}

/** Shortest of several runs, ms: what else the machine does only ever adds. */
export function quickest(runs: number, timed: () => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    timed();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

const verdict = (ms: number): string => (ms < LIMIT_MS ? 'kept' : 'NOT KEPT');

const FACTS: Facts = {
  isLocked: () => false,
  isDestroyed: () => false,
  seconds: () => 5,
  tool: () => 'socket',
};

/** Parts in a row, joined to neighbours before them, each behind one of these; no rings. */
function madeWays(parts: number, joints: number): Change[] {
  const random = repeatable(7);
  const chunk = (id: string, from: Partial<TableChunk>): TableChunk => ({
    id,
    parse: 1,
    nodeKind: 'part',
    file: 'bench.csv',
    headings: [],
    columns: [{ use: 'label' }],
    firstRow: 2,
    rows: [],
    decimal: '.',
    resolved: {},
    root: 'root',
    condition: 'kerb',
    frame: 'vehicle',
    howWithInstrument: 'measured',
    howWithout: 'seen',
    by: 'bench',
    takenAt: { local: '2026-01-01T00:00:00' },
    ...from,
  });
  const [partChunk, jointChunk] = [ulid(1, random), ulid(2, random)];
  const part = (i: number): Id => rowId(partChunk, i + 2);
  const labels = Array.from({ length: parts }, (_, i) => `P${i}`);
  const near = (i: number): number => Math.max(0, i - 1 - Math.floor(4 * random()));
  const jointRows = Array.from({ length: joints }, (_, i) => {
    const at = 1 + (i % (parts - 1));
    return [`J${i}`, `P${at}`, `P${near(at)}`, String(1 + (i % 8)), '0.8', '4.5'];
  });
  const blocks = Array.from(
    { length: parts - 1 },
    (_, i): Entry => ({
      v: 1,
      e: 'link.add',
      link: { id: `b${i}`, kind: 'blocks', from: part(near(i + 1)), to: part(i + 1) },
    }),
  );
  const entries: Entry[] = [
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
    { v: 1, e: 'table.add', table: chunk(partChunk, { rows: labels.map((l) => [l]) }) },
    {
      v: 1,
      e: 'table.add',
      table: chunk(jointChunk, {
        nodeKind: 'joint',
        columns: JOINT_COLUMNS,
        rows: jointRows,
        resolved: Object.fromEntries(labels.map((label, i) => [label, part(i)])),
      }),
    },
    ...blocks,
  ];
  const id = ulid(3, random);
  const clock = clockText({ ms: 1, count: 0, device: 'bench' });
  const rest = { by: 'bench', gesture: id, words: 'bench', saw: {}, entries };
  return [{ id, study: 'bench', device: 'bench', seq: 1, clock, ...rest }];
}

const JOINT_COLUMNS: TableChunk['columns'] = [
  { use: 'label' },
  { use: 'from' },
  { use: 'to' },
  { use: 'property', property: 'count.holes', kind: 'count' },
  { use: 'property', property: 'time.access', kind: 'time', unit: 's' },
  { use: 'property', property: 'time.drive', kind: 'time', unit: 's' },
];
