import fc from 'fast-check';
import { WAYS } from '../../src/quantity/index.ts';
import {
  type Change,
  canonicalText,
  changesOf,
  type Entry,
  type Id,
  NODE_KINDS,
  type StudyView,
} from '../../src/study/index.ts';
import { MadeStudy, mass, node, read, studyPut } from '../study/made-study.ts';

export const DEVICES = ['desk', 'tablet', 'phone'] as const;
const ACTS = [
  ...['add', 'move', 'retire', 'name', 'label', 'link', 'read', 'read', 'withdraw'],
  ...['choose', 'undo', 'undo', 'sync', 'sync', 'put', 'many'],
] as const;

/** One thing done at one device; `a` and `b` pick what it is done to from what the device sees. */
const step = fc.record({
  device: fc.constantFrom(...DEVICES),
  act: fc.constantFrom(...ACTS),
  a: fc.nat(997),
  b: fc.nat(997),
});
type Step = typeof step extends fc.Arbitrary<infer S> ? S : never;

/** Everything three devices do to a study, partly out of sight of each other. */
export const changes: fc.Arbitrary<readonly Change[]> = fc
  .array(step, { minLength: 5, maxLength: 60, size: 'max' })
  .map(done);

function done(steps: readonly Step[]): readonly Change[] {
  const made = new MadeStudy();
  made.act([studyPut(), node('van', null, 'vehicle')]);
  for (const device of DEVICES) made.sync(device);
  for (const [i, s] of steps.entries()) doStep(made, s, i);
  return made.changes;
}

function doStep(made: MadeStudy, s: Step, i: number): void {
  const { device } = s;
  if (s.act === 'sync') {
    made.sync(device);
    return;
  }
  const seen = made.seenBy(device);
  if (s.act === 'undo') {
    const gesture = pick(seen, s.a)?.gesture;
    if (gesture !== undefined && gesture !== seen[0]?.gesture)
      made.act([], { device, undoes: gesture });
    return;
  }
  if (s.act === 'many') {
    doMany(made, s, i);
    return;
  }
  const entry = entryOf(s, idsIn(seen), i);
  if (entry) made.act([entry], { device });
}

/** One gesture in several changes, as an import is: parts and their masses. */
function doMany(made: MadeStudy, { device, a, b }: Step, i: number): void {
  const parent = pick(idsIn(made.seenBy(device)).nodes, a) ?? 'van';
  let gesture: Id | undefined;
  for (let n = 0; n < 2 + (b % 3); n++) {
    const id = `m${i}.${n}`;
    const entries = [
      node(id, parent, 'part', `L${(a + n) % 9}`),
      read(id, 'mass', mass(b / 10, 0.5), { id: `r${i}.${n}` }),
    ];
    const part = made.act(entries, { device, ...(gesture === undefined ? {} : { gesture }) });
    gesture = part.gesture;
  }
}

const pick = <T>(from: readonly T[], n: number): T | undefined => from[n % from.length];

function entryOf(s: Step, ids: Ids, i: number): Entry | undefined {
  const id = pick(ids.nodes, s.a) ?? 'van';
  const other = pick(ids.nodes, s.b) ?? 'van';
  const reading = pick(ids.readings, s.b);
  switch (s.act) {
    case 'add':
      return node(`n${i}`, id, s.b % 2 ? 'part' : 'assembly', `L${s.b % 9}`);
    case 'move':
      return id === other ? undefined : { v: 1, e: 'node.move', id, parent: other };
    case 'retire':
      return id === 'van' ? undefined : { v: 1, e: 'node.retire', id, why: 'gone' };
    case 'name':
      return { v: 1, e: 'node.name', id, name: `name ${s.b}` };
    case 'label':
      return { v: 1, e: 'node.name', id, label: `L${s.b % 9}` };
    case 'link':
      return {
        ...{ v: 1, e: 'link.add' },
        link: { id: `l${s.b % 5}`, kind: 'joins', from: id, to: other },
      };
    case 'read':
      return read(id, 'mass', mass(s.b / 10, 0.5 + (s.b % 3)), {
        ...{ id: `r${i}`, how: WAYS[s.b % 3] ?? 'seen' },
      });
    case 'withdraw':
      return (
        reading && { v: 1, e: 'reading.withdraw', id: reading.id, subject: reading.of, why: 'x' }
      );
    case 'choose':
      return reading && { v: 1, e: 'choose', of: cellOf(reading.of), reading: reading.id };
    default:
      return { v: 1, e: 'study.put', set: s.a % 2 ? { title: `T${s.b}` } : { note: `N${s.b}` } };
  }
}

const cellOf = (subject: Id) => ({ subject, property: 'mass', condition: 'kerb' });

interface Ids {
  readonly nodes: readonly Id[];
  readonly readings: readonly { readonly id: Id; readonly of: Id }[];
}

/** Every node and reading that changes ever added. */
export function idsIn(all: readonly Change[]): Ids {
  const entries = all.flatMap((c) => c.entries);
  return {
    nodes: entries.flatMap((e) => (e.e === 'node.add' ? e.node.id : [])),
    readings: entries.flatMap((e) =>
      e.e === 'reading.add' ? { id: e.reading.id, of: e.reading.of.subject } : [],
    ),
  };
}

/** All that a view says, as one text; without its history where only the state matters. */
export function dump(view: StudyView, what: 'all' | 'state' = 'all'): string {
  const { nodes, readings } = idsIn(changesOf(view));
  const ids = [...new Set(nodes)].sort();
  return canonicalText({
    ...(what === 'all'
      ? { revision: view.revision, changes: view.changes, gestures: view.gestures() }
      : {}),
    header: view.header,
    findings: view.findings,
    root: view.root(),
    kinds: NODE_KINDS.map((kind) => view.nodes(kind)),
    nodes: ids.map((id) => [
      view.node(id),
      view.children(id),
      view.links('joins', id),
      view.nodes('part', id),
      view.readings(id, 'mass'),
      view.cell(id, 'mass'),
    ]),
    labels: Array.from({ length: 9 }, (_, i) => view.find(`L${i}`)),
    links: view.links('joins'),
    readings: readings
      .map((r) => r.id)
      .sort()
      .map((id) => view.reading(id)),
  });
}
