import type { Change } from './change.ts';
import type { Claim, Tie } from './claim.ts';
import type { LinkSpec, NodeSpec, Photo, StudyHeader } from './entries.ts';
import type { Finding, Place } from './finding.ts';
import type { StandingGate, StandingMark } from './gate-state.ts';
import type { Id } from './ids.ts';
import type { Instrument } from './instrument.ts';
import type { Touching } from './line.ts';
import type { RateBook } from './rate-book.ts';
import type { Cause, CellRef } from './reading.ts';
import type { Mark, PhotoMark, Speech, StandingDraft, WordRule } from './spoken.ts';
import type { StandingReading } from './view.ts';

/** Where a node was last written, so that a second edit made without sight of it is found. */
export interface Written {
  readonly change: Pick<Change, 'device' | 'seq' | 'by'>;
}

/** Plain state of a fold under way. Only apply-entry.ts writes it; study-view.ts reads it. */
export interface FoldState {
  readonly study: Id;
  header: StudyHeader;
  readonly conditions: Map<Id, string>;
  readonly nodes: Map<Id, NodeSpec>;
  /** Nodes added below none, in that order; a node whose parent is not known is no root. */
  readonly roots: Id[];
  readonly childIds: Map<Id, Id[]>;
  readonly retired: Map<Id, string>;
  /** Node ids by label, in the order they were added. */
  readonly labels: Map<string, Id[]>;
  readonly links: Map<Id, LinkSpec>;
  readonly linksAt: Map<Id, Id[]>;
  readonly readings: Map<Id, StandingReading>;
  /** Reading ids by subject, then property, oldest first. */
  readonly readingsOf: Map<Id, Map<string, Id[]>>;
  readonly chosen: Map<string, Id>;
  readonly causes: Map<Id, Cause>;
  readonly instruments: Map<Id, Instrument>;
  readonly books: RateBook[];
  readonly claims: Map<Id, Claim>;
  readonly ties: Map<Id, Tie>;
  readonly photos: Map<Id, Photo>;
  readonly photoMarks: Map<Id, PhotoMark>;
  readonly speeches: Map<Id, Speech>;
  readonly drafts: Map<Id, StandingDraft>;
  readonly words: Map<Id, WordRule>;
  readonly marks: Map<Id, Mark>;
  /** By step and gate. */
  readonly gates: Map<string, StandingGate>;
  /** By step. */
  readonly stepMarks: Map<Id, StandingMark>;
  readonly written: Map<string, Written>;
  readonly findings: Finding[];
  /** Filled while a view is extended; a first fold touches everything. */
  touching?: Touching;
}

const NO_HEADER: StudyHeader = {
  title: 'untitled study',
  vehicle: 'unnamed vehicle',
  condition: 'kerb',
  invented: false,
};

export const emptyState = (study: Id): FoldState => ({
  study,
  header: NO_HEADER,
  conditions: new Map(),
  nodes: new Map(),
  roots: [],
  childIds: new Map(),
  retired: new Map(),
  labels: new Map(),
  links: new Map(),
  linksAt: new Map(),
  readings: new Map(),
  readingsOf: new Map(),
  chosen: new Map(),
  causes: new Map(),
  instruments: new Map(),
  books: [],
  claims: new Map(),
  ties: new Map(),
  photos: new Map(),
  photoMarks: new Map(),
  speeches: new Map(),
  drafts: new Map(),
  words: new Map(),
  gates: new Map(),
  stepMarks: new Map(),
  marks: new Map(),
  written: new Map(),
  findings: [],
});

export const cellKey = (of: CellRef): string =>
  `${of.subject}\u0000${of.property}\u0000${of.condition}\u0000${of.posture ?? ''}`;

/** Notes that readings of a node changed. */
export const touch = (state: FoldState, subject: Id): void =>
  void state.touching?.subjects.add(subject);

/** Notes that something else than readings changed. */
export function touchMore(state: FoldState): void {
  if (state.touching) state.touching.more = true;
}

/** Adds to a list kept in a map. */
export function pushTo<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

export function doubt(
  state: FoldState,
  code: string,
  place: Place,
  what: string,
  next: string,
): void {
  state.findings.push({ code, level: 'doubt', place: { ...place }, what, next });
}
