import type { Value, Way } from '../quantity/index.ts';
import type { Change } from './change.ts';
import type { Claim, Tie } from './claim.ts';
import type { LinkSpec, NodeKind, NodeSpec, Photo, StudyHeader } from './entries.ts';
import type { Finding } from './finding.ts';
import type { StepState } from './gate-state.ts';
import type { Id } from './ids.ts';
import type { Instrument } from './instrument.ts';
import type { Touched } from './line.ts';
import type { RateBook } from './rate-book.ts';
import type { Cause, CellRef, PropertyId, Reading } from './reading.ts';
import type { Mark, PhotoMark, Speech, StandingDraft, WordRule } from './spoken.ts';

/** A reading as it stands in a study: who put it there, and whether it was withdrawn. */
export interface StandingReading {
  readonly reading: Reading;
  readonly change: Change['id'];
  readonly clock: string;
  readonly withdrawn?: { readonly why: string; readonly by: string };
}

/** The value in force of a cell, and by which rule it is. */
export interface InForce {
  readonly of: CellRef;
  readonly value: Value;
  /** Best way of knowing among the readings it comes from. */
  readonly how: Way;
  /** Readings that carry it, with the weight of each; weights sum to 1. */
  readonly from: readonly { readonly reading: Reading; readonly weight: number }[];
  readonly rule: 'only reading' | 'chosen' | 'best way of knowing' | 'weighted mean';
  /** E.g. agreeing readings no more, or a second reading that disagrees. */
  readonly findings: readonly Finding[];
}

/** Nothing there: no reading, or one that says why there is none. */
export interface Missing {
  readonly missing: true;
  readonly of: CellRef;
  readonly why: string;
}

export const isMissing = (c: InForce | Missing): c is Missing => 'missing' in c;

/** What someone did in one go. */
export interface Gesture {
  readonly gesture: string;
  readonly words: string;
  readonly by: string;
  readonly device: Id;
  readonly clock: string;
  readonly undone: boolean;
}

/** The study as its changes leave it. Read-only; good until its study is extended by more changes. */
export interface StudyView {
  readonly study: Id;
  /** Changes as of `changes` count and the digest of their ids: `r 214 · 5f1c09aa`. */
  readonly revision: string;
  readonly changes: number;
  /** The same object for views extended one from another: what is worked out can be kept by it. */
  readonly line: object;
  /** What changes touched since the view of this line that had so many. */
  touchedSince(changes: number): Touched;
  readonly header: StudyHeader;
  readonly findings: readonly Finding[];
  root(): NodeSpec | undefined;
  node(id: Id): NodeSpec | undefined;
  /** A live node by its id, or by its label; of several with one label the first added. */
  find(labelOrId: string): NodeSpec | undefined;
  /** Live children in the order of their labels. */
  children(id: Id): readonly NodeSpec[];
  /** Live nodes of one kind in the order of their ids, the node itself included, below `under` or everywhere. */
  nodes(kind: NodeKind, under?: Id): readonly NodeSpec[];
  links(kind: LinkSpec['kind'], end?: Id): readonly LinkSpec[];
  cell(subject: Id, property: PropertyId, condition?: Id, posture?: Id): InForce | Missing;
  /** Every reading of a node's property, withdrawn ones included, oldest first, in all conditions. */
  readings(subject: Id, property: PropertyId): readonly StandingReading[];
  reading(id: Id): StandingReading | undefined;
  properties(subject: Id): readonly PropertyId[];
  cause(id: Id): Cause | undefined;
  instrument(id: Id): Instrument | undefined;
  /** Every instrument that was named, in the order of their labels. */
  instruments(): readonly Instrument[];
  condition(id: Id): string;
  /** Live claims, oldest first. */
  claims(): readonly Claim[];
  ties(claim: Id): readonly Tie[];
  photos(subject?: Id): readonly Photo[];
  photoMarks(photo: Id): readonly PhotoMark[];
  /** Recordings in the order of their second zero. */
  speeches(): readonly Speech[];
  /** Drafts of a recording in the order of its words, settled ones included. */
  drafts(speech: Id): readonly StandingDraft[];
  draft(id: Id): StandingDraft | undefined;
  /** The study's own word list. */
  wordRules(): readonly WordRule[];
  /** Marked moments, oldest first. */
  marks(): readonly Mark[];
  /** How a step stands: its gates, its mark, and whether it is shown as done. */
  step(id: Id): StepState;
  /** Every gesture, undone ones marked, oldest first. */
  gestures(): readonly Gesture[];
  /** The version asked for, else the latest by date and version. */
  rates(version?: string): RateBook | undefined;
  rateVersions(): readonly string[];
}
