import { performance } from 'node:perf_hooks';
import {
  askStudy,
  buildSealing,
  type Questions,
  SealingGraph,
  wetPaths,
} from '../src/engine/index.ts';
import type { Kind } from '../src/quantity/index.ts';
import {
  type Change,
  clockText,
  type Entry,
  fold,
  type StudyView,
  ulid,
} from '../src/study/index.ts';
import { quickest } from './removal.ts';
import { repeatable } from './synthetic-study.ts';

type Line = (what: string, ms: number, per: string) => void;
type Median = <T>(runs: number, before: (i: number) => T, timed: (made: T) => void) => number;

/** What the ways through all crossings may take. */
const LIMIT_MS = 100;
const ZONES = 40;

/** Ways from wet to dry in a made-up study in which every joint is a fastener through walls. */
export function sealingSection(
  joints: number,
  questions: Questions,
  median: Median,
  line: Line,
): void {
  const fresh = (): StudyView => fold('bench', [madeUp(joints)]);
  const built = median(5, fresh, (view) => buildSealing(view));
  line('zones, walls and crossings from the study', built, `${joints} crossings, ${ZONES} zones`);
  const { input } = buildSealing(fresh());
  const crossed = quickest(9, () => wetPaths(new SealingGraph(input)));
  const graph = new SealingGraph(input);
  const { paths } = wetPaths(graph);
  line(
    `crossing paths, ${joints} joints by length and walls`,
    crossed,
    `${paths.length} ways, ${graph.ways.length} sets of barriers; limit ${LIMIT_MS} ms: ${crossed < LIMIT_MS ? 'kept' : 'NOT KEPT'}`,
  );
  const question = questions.get('crossing-paths');
  if (!question) throw new Error('the registry has no crossing-paths');
  const view = fresh();
  const start = performance.now();
  askStudy(question, questions, { view });
  line('the same asked as a question', performance.now() - start, `${joints} rows of crossings`);
}

/** Zones in a row from outside to a dry one, a wall between each two, and screws of all lengths. */
function madeUp(joints: number): Change {
  const random = repeatable(11);
  const zones = Array.from({ length: ZONES }, (_, i) =>
    i === 0 ? 'wet' : i === ZONES - 1 || i % 5 === 0 ? 'dry' : 'drained',
  );
  const entries: Entry[] = [
    {
      ...{ v: 1, e: 'study.put' },
      set: { title: 'bench', vehicle: 'bench', condition: 'kerb', invented: true },
    },
    node('root', 'vehicle', null),
    ...zones.flatMap((medium, i) => [node(`Z${i}`, 'zone'), text(`Z${i}`, 'zone.medium', medium)]),
    ...zones.slice(1).flatMap((_, i) => wall(i)),
    ...Array.from({ length: joints }, (_, i) => screw(i, random)).flat(),
  ];
  const id = ulid(1, random);
  const clock = clockText({ ms: 1, count: 0, device: 'bench' });
  const rest = { by: 'bench', gesture: id, words: 'bench', saw: {}, entries };
  return { id, study: 'bench', device: 'bench', seq: 1, clock, ...rest };
}

/** Walls of 3 mm, 50 mm apart along Y; every other one reaches over half of X only. */
const wall = (i: number): Entry[] => [
  node(`B${i}`, 'barrier'),
  link('separates', `B${i}`, `Z${i}`, 'a'),
  link('separates', `B${i}`, `Z${i + 1}`, 'b'),
  text(`B${i}`, 'wall.axis', 'Y'),
  number(`B${i}`, 'box.y0', 'length', 0.05 * (i + 1)),
  number(`B${i}`, 'box.y1', 'length', 0.05 * (i + 1) + 0.003),
  ...(i % 2 === 0 ? [] : [number(`B${i}`, 'box.x1', 'length', 1)]),
];

function screw(i: number, random: () => number): Entry[] {
  const id = `X${i}`;
  const seat = 0.05 * Math.floor(ZONES * random());
  const of = { subject: id, property: 'place', condition: 'kerb' };
  const value = {
    ...({ t: 'vector', kind: 'length', x: [2 * random(), seat, 0], frame: 'vehicle' } as const),
    cov: [1e-6, 0, 0, 0, 1e-6, 0, 0, 0, 1e-6],
  };
  return [
    node(id, 'crossing'),
    reading(of, value),
    text(id, 'crossing.direction', random() < 0.5 ? '+Y' : '-Y'),
    text(id, 'crossing.seal', random() < 0.5 ? 'none' : 'O-ring'),
    number(id, 'crossing.reach', 'length', 0.02 + 0.15 * random()),
  ];
}

const node = (
  id: string,
  kind: 'vehicle' | 'zone' | 'barrier' | 'crossing',
  parent: string | null = 'root',
): Entry => ({
  ...{ v: 1, e: 'node.add' },
  node: { id, kind, parent, label: id, name: 'made up' },
});
const link = (kind: 'separates', from: string, to: string, role: string): Entry => ({
  ...{ v: 1, e: 'link.add' },
  link: { id: `${from} ${role}`, kind, from, to, role },
});

type Reading = Extract<Entry, { e: 'reading.add' }>['reading'];
const reading = (of: Reading['of'], value: Reading['value']): Entry => ({
  ...{ v: 1, e: 'reading.add' },
  reading: {
    ...{ id: `${of.subject} ${of.property}`, of, value, asWritten: '', how: 'seen', by: 'bench' },
    ...{ takenAt: { local: '2026-01-01' }, evidence: [], causes: [] },
  },
});
const cell = (subject: string, property: string) => ({ subject, property, condition: 'kerb' });
const text = (subject: string, property: string, words: string): Entry =>
  reading(cell(subject, property), { t: 'text', text: words });
const number = (subject: string, property: string, kind: Kind, x: number): Entry =>
  reading(cell(subject, property), { t: 'scalar', kind, x, spread: { s: 'normal', u: 5e-4 } });
