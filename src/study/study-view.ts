import type { Claim, Tie } from './claim.ts';
import type { LinkSpec, NodeKind, NodeSpec, Photo, StudyHeader } from './entries.ts';
import type { Finding } from './finding.ts';
import { cellKey, type FoldState } from './fold-state.ts';
import { type StepState, stepState } from './gate-state.ts';
import type { Id } from './ids.ts';
import { inForce } from './in-force.ts';
import type { Instrument } from './instrument.ts';
import { withInstruments } from './instrument-findings.ts';
import type { Line, Touched } from './line.ts';
import { isLive, rootId } from './live.ts';
import type { RateBook } from './rate-book.ts';
import type { Cause, CellRef, PropertyId } from './reading.ts';
import type { Mark, PhotoMark, Speech, StandingDraft, WordRule } from './spoken.ts';
import type { Gesture, InForce, Missing, StandingReading, StudyView } from './view.ts';

const sameCell = (a: CellRef, b: CellRef): boolean =>
  a.condition === b.condition && (a.posture ?? '') === (b.posture ?? '');

const byId = (a: NodeSpec, b: NodeSpec): number => (a.id < b.id ? -1 : 1);
const byLabel = (a: NodeSpec, b: NodeSpec): number =>
  a.label === b.label ? byId(a, b) : a.label < b.label ? -1 : 1;
const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const laterBook = (a: RateBook, b: RateBook): number =>
  a.date === b.date ? (a.version < b.version ? -1 : 1) : a.date < b.date ? -1 : 1;

/** A study's state, read. What it works out is kept along its line until a change touches it. */
export class StudyViewOf implements StudyView {
  readonly #state: FoldState;
  readonly #history: () => readonly Gesture[];
  #gestures: readonly Gesture[] | undefined;

  constructor(
    state: FoldState,
    readonly line: Line,
    readonly revision: string,
    readonly changes: number,
    history: () => readonly Gesture[],
  ) {
    this.#state = state;
    this.#history = history;
  }

  touchedSince(changes: number): Touched {
    return this.line.since(changes);
  }

  get study(): Id {
    return this.#state.study;
  }
  get header(): StudyHeader {
    return this.#state.header;
  }
  get findings(): readonly Finding[] {
    return this.#state.findings;
  }

  root(): NodeSpec | undefined {
    const id = rootId(this.#state);
    return id === null ? undefined : this.node(id);
  }

  node(id: Id): NodeSpec | undefined {
    return this.#state.nodes.get(id);
  }

  find(labelOrId: string): NodeSpec | undefined {
    if (isLive(this.#state, labelOrId)) return this.node(labelOrId);
    const ids = this.#state.labels.get(labelOrId) ?? [];
    const id = ids.find((candidate) => isLive(this.#state, candidate));
    return id === undefined ? undefined : this.node(id);
  }

  children(id: Id): readonly NodeSpec[] {
    return this.#live(this.#state.childIds.get(id) ?? []).sort(byLabel);
  }

  nodes(kind: NodeKind, under?: Id): readonly NodeSpec[] {
    if (under === undefined || under === rootId(this.#state)) return this.#all(kind);
    return this.#all(kind).filter((node) => this.#isBelow(node.id, under));
  }

  links(kind: LinkSpec['kind'], end?: Id): readonly LinkSpec[] {
    const ids = end === undefined ? this.#state.links.keys() : (this.#state.linksAt.get(end) ?? []);
    const links = [...ids].flatMap((id) => this.#state.links.get(id) ?? []);
    return links.filter((l) => l.kind === kind && isLive(this.#state, l.from));
  }

  cell(subject: Id, property: PropertyId, condition?: Id, posture?: Id): InForce | Missing {
    const usual = posture === undefined && (condition ?? this.header.condition);
    const short = usual === this.header.condition;
    const of = () => this.#cellRef(subject, property, condition, posture);
    const key = short ? property : cellKey(of());
    const kept = this.line.cells.get(subject)?.get(key);
    if (kept) return kept;
    const cell = this.#work(of());
    const own = this.line.cells.get(subject) ?? new Map<string, InForce | Missing>();
    this.line.cells.set(subject, own.set(key, cell));
    return cell;
  }

  #cellRef(subject: Id, property: PropertyId, condition?: Id, posture?: Id): CellRef {
    return {
      subject,
      property,
      condition: condition ?? this.header.condition,
      ...(posture === undefined ? {} : { posture }),
    };
  }

  #work(of: CellRef): InForce | Missing {
    const here = this.readings(of.subject, of.property).filter(({ reading }) =>
      sameCell(reading.of, of),
    );
    const cell = inForce(of, here, this.#state.chosen.get(cellKey(of)));
    return withInstruments(cell, (id) => this.#state.instruments.get(id));
  }

  readings(subject: Id, property: PropertyId): readonly StandingReading[] {
    const ids = this.#state.readingsOf.get(subject)?.get(property) ?? [];
    return ids.flatMap((id) => this.#state.readings.get(id) ?? []);
  }

  reading(id: Id): StandingReading | undefined {
    return this.#state.readings.get(id);
  }
  properties(subject: Id): readonly PropertyId[] {
    return [...(this.#state.readingsOf.get(subject)?.keys() ?? [])];
  }
  cause(id: Id): Cause | undefined {
    return this.#state.causes.get(id);
  }
  instrument(id: Id): Instrument | undefined {
    return this.#state.instruments.get(id);
  }
  instruments(): readonly Instrument[] {
    return [...this.#state.instruments.values()].sort((a, b) => (a.label < b.label ? -1 : 1));
  }
  condition(id: Id): string {
    return this.#state.conditions.get(id) ?? id;
  }
  claims(): readonly Claim[] {
    return [...this.#state.claims.values()];
  }
  ties(claim: Id): readonly Tie[] {
    return [...this.#state.ties.values()].filter((t) => t.claim === claim);
  }
  photoMarks(photo: Id): readonly PhotoMark[] {
    return [...this.#state.photoMarks.values()].filter((mark) => mark.photo === photo);
  }
  speeches(): readonly Speech[] {
    return [...this.#state.speeches.values()].sort((a, b) =>
      order(a.startedAt.local, b.startedAt.local),
    );
  }
  drafts(speech: Id): readonly StandingDraft[] {
    const own = [...this.#state.drafts.values()].filter(({ draft }) => draft.speech === speech);
    return own.sort((a, b) => a.draft.fromS - b.draft.fromS);
  }
  draft(id: Id): StandingDraft | undefined {
    return this.#state.drafts.get(id);
  }
  wordRules(): readonly WordRule[] {
    return [...this.#state.words.values()];
  }
  marks(): readonly Mark[] {
    return [...this.#state.marks.values()].sort((a, b) => order(a.at.local, b.at.local));
  }
  photos(subject?: Id): readonly Photo[] {
    const all = [...this.#state.photos.values()];
    return subject === undefined ? all : all.filter((p) => p.subject === subject);
  }
  step(id: Id): StepState {
    return stepState(this.#state, this, id);
  }
  gestures(): readonly Gesture[] {
    this.#gestures ??= this.#history();
    return this.#gestures;
  }

  rates(version?: string): RateBook | undefined {
    const books = [...this.#state.books].sort(laterBook);
    return version === undefined ? books.at(-1) : books.find((b) => b.version === version);
  }
  rateVersions(): readonly string[] {
    return [...this.#state.books].sort(laterBook).map((b) => b.version);
  }

  #all(kind: NodeKind): readonly NodeSpec[] {
    const kept = this.line.byKind.get(kind);
    if (kept) return kept;
    const found = this.#live([...this.#state.nodes.keys()])
      .filter((n) => n.kind === kind)
      .sort(byId);
    this.line.byKind.set(kind, found);
    return found;
  }

  #live(ids: readonly Id[]): NodeSpec[] {
    return ids.filter((id) => isLive(this.#state, id)).flatMap((id) => this.node(id) ?? []);
  }

  /** `under` itself counts as below it. */
  #isBelow(id: Id, under: Id): boolean {
    for (let at: Id | null = id; at !== null; at = this.node(at)?.parent ?? null)
      if (at === under) return true;
    return false;
  }
}
