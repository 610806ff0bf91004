import { canonicalText } from './change.ts';
import { NODE_KINDS, type NodeSpec, type StudyHeader } from './entries.ts';
import { cellKey } from './fold-state.ts';
import type { Id } from './ids.ts';
import { type Moment, viewAt } from './moment.ts';
import type { CellRef } from './reading.ts';
import {
  type InForce,
  isMissing,
  type Missing,
  type StandingReading,
  type StudyView,
} from './view.ts';

/** A thing as it was at one moment and as it was at the other. */
export interface Pair<T> {
  readonly before: T;
  readonly after: T;
}

/** A node that is there at one moment only, and why. */
export interface GoneNode {
  readonly node: NodeSpec;
  /** `retired`: it or what it stands below was retired; `undone`: its adding was taken back. */
  readonly why: 'retired' | 'undone';
}

/** A cell whose value in force is another one, or known in another way. */
export interface CellDifference extends Pair<InForce | Missing> {
  readonly of: CellRef;
}

/** What two moments of a study differ in, each list in the order of ids. */
export interface StudyDifference {
  readonly revisions: Pair<string>;
  /** Fields of the header. */
  readonly header: readonly (Pair<unknown> & { readonly field: keyof StudyHeader })[];
  readonly nodes: {
    readonly added: readonly NodeSpec[];
    /** Not live before, and live again. */
    readonly back: readonly NodeSpec[];
    readonly gone: readonly GoneNode[];
    readonly moved: readonly Pair<NodeSpec>[];
    readonly renamed: readonly Pair<NodeSpec>[];
  };
  readonly readings: {
    readonly added: readonly StandingReading[];
    readonly withdrawn: readonly StandingReading[];
    /** Withdrawn before, and standing again. */
    readonly back: readonly StandingReading[];
    /** Their recording was undone. */
    readonly undone: readonly StandingReading[];
  };
  readonly values: readonly CellDifference[];
}

/**
 * What is different in a study between two moments: nodes, readings, and values in force.
 * @throws RefusalError `not-found` for a gesture that the study does not have.
 */
export const compareMoments = (view: StudyView, from: Moment, to: Moment): StudyDifference =>
  compareViews(viewAt(view, from), viewAt(view, to));

/** What is different from one view of a study to another. */
export function compareViews(before: StudyView, after: StudyView): StudyDifference {
  const [was, is] = [liveNodes(before), liveNodes(after)];
  const subjects = [...new Set([...was.keys(), ...is.keys()])].sort();
  const both = subjects.flatMap((id) => pairOf(was.get(id), is.get(id)));
  return {
    revisions: { before: before.revision, after: after.revision },
    header: headerFields(before.header, after.header),
    nodes: {
      added: only(is, was).filter((n) => !before.node(n.id)),
      back: only(is, was).filter((n) => before.node(n.id)),
      gone: only(was, is).map((node) => ({
        node,
        why: after.node(node.id) ? 'retired' : 'undone',
      })),
      moved: both.filter((p) => p.before.parent !== p.after.parent),
      renamed: both.filter(
        (p) => p.before.label !== p.after.label || p.before.name !== p.after.name,
      ),
    },
    readings: compareReadings(readingsOf(before, subjects), readingsOf(after, subjects)),
    values: subjects.flatMap((id) => valuesOf(before, after, id)),
  };
}

type Nodes = ReadonlyMap<Id, NodeSpec>;

const liveNodes = (view: StudyView): Nodes =>
  new Map(NODE_KINDS.flatMap((kind) => view.nodes(kind)).map((n) => [n.id, n]));

const only = (here: Nodes, notThere: Nodes): NodeSpec[] =>
  [...here.values()].filter((n) => !notThere.has(n.id)).sort(byId);

const byId = (a: { readonly id: Id }, b: { readonly id: Id }): number => (a.id < b.id ? -1 : 1);

const pairOf = <T>(before: T | undefined, after: T | undefined): Pair<T>[] =>
  before === undefined || after === undefined ? [] : [{ before, after }];

function headerFields(before: StudyHeader, after: StudyHeader): StudyDifference['header'] {
  const fields = new Set([...Object.keys(before), ...Object.keys(after)] as (keyof StudyHeader)[]);
  return [...fields]
    .filter((field) => before[field] !== after[field])
    .map((field) => ({ field, before: before[field], after: after[field] }));
}

type Readings = ReadonlyMap<Id, StandingReading>;

function readingsOf(view: StudyView, subjects: readonly Id[]): Readings {
  const all = subjects.flatMap((id) => view.properties(id).flatMap((p) => view.readings(id, p)));
  return new Map(all.map((s) => [s.reading.id, s]));
}

function compareReadings(before: Readings, after: Readings): StudyDifference['readings'] {
  const stands = (s: StandingReading | undefined) => s !== undefined && !s.withdrawn;
  const now = [...after.values()];
  const was = (s: StandingReading) => before.get(s.reading.id);
  return {
    added: now.filter((s) => !was(s)),
    withdrawn: now.filter((s) => s.withdrawn && stands(was(s))),
    back: now.filter((s) => !s.withdrawn && was(s)?.withdrawn),
    undone: [...before.values()].filter((s) => !after.has(s.reading.id)),
  };
}

function valuesOf(before: StudyView, after: StudyView, subject: Id): CellDifference[] {
  const cells = new Map<string, CellRef>();
  for (const view of [before, after])
    for (const property of view.properties(subject))
      for (const { reading } of view.readings(subject, property))
        cells.set(cellKey(reading.of), reading.of);
  return [...cells.values()].flatMap((of) => {
    const [was, is] = [before, after].map((view) =>
      view.cell(of.subject, of.property, of.condition, of.posture),
    ) as [InForce | Missing, InForce | Missing];
    return saysOf(was) === saysOf(is) ? [] : [{ of, before: was, after: is }];
  });
}

/** What a calculation would take from a cell. */
const saysOf = (cell: InForce | Missing): string =>
  isMissing(cell) ? `missing: ${cell.why}` : canonicalText([cell.value, cell.how]);
