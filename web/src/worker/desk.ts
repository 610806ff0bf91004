import { readRateBook } from '../../../src/capture/index.ts';
import {
  describeQuestion,
  type MeasureNext,
  type PlainQuestion,
  type Progress,
  type Sampled,
  type SampleOptions,
  sampleWritten,
  type WrittenInputs,
} from '../../../src/engine/index.ts';
import {
  changesOf,
  type Finding,
  type Id,
  NODE_KINDS,
  type NodeKind,
  type Photo,
  propertyWords,
  type Sha256,
} from '../../../src/study/index.ts';
import type { AnswerSheet } from './answer-sheet.ts';
import { answerValues, questionOf } from './answers-of.ts';
import { type CellStory, cellStory } from './cell-story.ts';
import {
  type ClaimRow,
  type ClaimTyped,
  claimEntries,
  claimRow,
  type TieTyped,
  tieEntries,
  withdrawEntries,
} from './claim-rows.ts';
import { type CostSteps, costSteps } from './cost-by-cause.ts';
import { type CellEdit, editEntries } from './edit-cell.ts';
import { type FasteningChoice, fasteningChoices } from './fastening-rows.ts';
import { type Gap, gapsOf } from './gaps.ts';
import { headerOf, type StudyHeader } from './header-of.ts';
import { type HistoryRow, historyRows } from './history-rows.ts';
import { type HoistAct, type HoistModel, hoistEntries, hoistModel } from './hoist-model.ts';
import { type JointRow, jointRows } from './joint-rows.ts';
import { freshId, localTime, zoneText } from './local-time.ts';
import { type MapModel, mapModel } from './map-model.ts';
import { namedFindings } from './named-findings.ts';
import { type NodeStory, nodeStory } from './node-story.ts';
import { OpenDesk } from './open-desk.ts';
import { type PartRow, partRows } from './part-rows.ts';
import { keepPhoto, type PhotoTyped, photoBytes, photosOf } from './photos.ts';
import type { Asked } from './sampling.ts';
import { doSpoken, type SpokenAct } from './spoken-acts.ts';
import { type StepPlace, stepPlaces } from './step-places.ts';
import { type Walkaround, walkarounds } from './walk-rows.ts';
import {
  scalesOf,
  type Typed,
  type Waiting,
  type Weighed,
  waitingForMass,
  weighed,
} from './weighing.ts';

export interface NodeChoice {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  readonly kind: NodeKind;
}

/**
 * The open study in its worker: its view, the engine, and what still has to reach the server.
 * Pages ask it and hand it what people did.
 */
export class Desk extends OpenDesk {
  header(): StudyHeader {
    return headerOf(this.sync().view);
  }

  parts(): PartRow[] {
    return partRows(this.sync().view);
  }

  map(): MapModel {
    return mapModel(this.sync().view);
  }

  nodes(kind?: NodeKind): NodeChoice[] {
    const { view } = this.sync();
    const kinds = kind ? [kind] : NODE_KINDS;
    return kinds.flatMap((k) =>
      view.nodes(k).map(({ id, label, name }) => ({ id, label, name, kind: k })),
    );
  }

  instruments(): string[] {
    const labels = this.sync()
      .view.instruments()
      .map(({ label }) => label);
    return [...new Set(labels)];
  }

  joints(): JointRow[] {
    return jointRows(this.sync().view);
  }

  fastenings(): FasteningChoice[] {
    return fasteningChoices(this.sync().view);
  }

  stepPlaces(steps: readonly string[]): StepPlace[] {
    return stepPlaces(this.sync().view, steps);
  }

  scales(): string[] {
    return scalesOf(this.sync().view);
  }

  weighed(typed: Typed): Weighed {
    return weighed(this.sync().view, typed);
  }

  waitingForMass(): Waiting[] {
    return waitingForMass(this.sync().view);
  }

  async questions(): Promise<PlainQuestion[]> {
    return [...(await this.loaded()).values()].map(describeQuestion);
  }

  /** Answers of every node that a question can be asked of; none when it can't be asked yet. */
  async answers(question: string): Promise<AnswerSheet[]> {
    return (await this.current()).all(question);
  }

  async answer(
    question: string,
    subject: Id | undefined,
    over: WrittenInputs,
  ): Promise<AnswerSheet> {
    return (await this.current()).one(question, subject, over);
  }

  /**
   * Samples an answer of the study; undefined when it was stopped, or the study went on meanwhile.
   */
  async sample(
    asked: Asked,
    options: SampleOptions,
    told: (progress: Progress) => void,
  ): Promise<Sampled | undefined> {
    const { question, subject, over } = asked;
    const run = (await this.current()).sampling(question, subject, over, options);
    return this.sampling.drive(run, told);
  }

  async sampleValues(
    question: string,
    written: WrittenInputs,
    options: SampleOptions,
    told: (progress: Progress) => void,
  ): Promise<Sampled | undefined> {
    const run = sampleWritten(questionOf(await this.loaded(), question), written, options);
    return this.sampling.drive(run, told);
  }

  stopSampling(): void {
    this.sampling.stop();
  }

  async answerValues(question: string, written: WrittenInputs): Promise<AnswerSheet> {
    return answerValues(await this.loaded(), question, written);
  }

  async costByCause(): Promise<CostSteps | null> {
    const questions = await this.loaded();
    return costSteps(this.sync().view, questions);
  }

  async claims(): Promise<ClaimRow[]> {
    const [answers, questions] = [await this.current(), await this.loaded()];
    return answers.claims().map((state) => claimRow(state, this.sync().view, questions));
  }

  /** What no answer could be given for, and where to fill it. */
  async gaps(): Promise<Gap[]> {
    const answers = await this.current();
    const questions = [...(await this.loaded()).values()].filter((q) => !q.onRequest);
    const all = questions.flatMap((q) => answers.all(q.id));
    return gapsOf(this.sync().view, all);
  }

  /** What to measure next: of a node in hand, or of the whole study. */
  async next(limit: number, subject?: Id): Promise<MeasureNext> {
    return (await this.current()).next(limit, subject);
  }

  story(subject: Id, property: string): CellStory {
    const { view } = this.sync();
    const gestures = new Map(view.gestures().map((g) => [g.gesture, g]));
    const ofChange = new Map(changesOf(view).map((c) => [c.id, c.gesture]));
    return cellStory(view, subject, property, (change) => gestures.get(ofChange.get(change) ?? ''));
  }

  node(id: Id): NodeStory | undefined {
    return nodeStory(this.sync().view, id);
  }

  /** What was found in the record itself: collisions, clocks that jumped, changes not arrived. */
  findings(of?: Id): Finding[] {
    return namedFindings(this.sync().view, of);
  }

  photos(subject: Id): readonly Photo[] {
    return photosOf(this.sync().view, subject);
  }

  /** The bytes of a photograph, of the kind that they are. */
  async photo(hash: Sha256): Promise<Blob> {
    const { api } = await this.started();
    return photoBytes(hash, this.sync().mirror.store, api);
  }

  /** On this device's disk when this returns. */
  async addPhoto(typed: PhotoTyped, by: string): Promise<void> {
    const sync = this.sync();
    const context = { id: freshId(), takenAt: { local: localTime(typed.file.lastModified) } };
    const entry = await keepPhoto(typed, context, sync.mirror.store);
    const label = sync.view.node(typed.subject)?.label ?? typed.subject;
    await sync.record({ by, words: `photograph of ${label}`, entries: [entry] });
  }

  /** What was done, newest first. */
  history(): HistoryRow[] {
    const { view, device } = this.sync();
    return historyRows(view, device);
  }

  /** The removal plan as it stands; undefined where there is none. */
  async hoist(): Promise<HoistModel | undefined> {
    return hoistModel(this.sync().view, await this.loaded());
  }

  /** Records what is done at the hoist. */
  async atHoist(act: HoistAct, by: string): Promise<void> {
    const context = { at: localTime(), id: freshId };
    return this.record(by, hoistEntries(this.sync().view, await this.loaded(), act, context));
  }

  edit(edit: CellEdit, by: string): Promise<void> {
    const { view } = this.sync();
    const context = { by, takenAt: { local: localTime(), zone: zoneText() }, id: freshId };
    return this.record(by, editEntries(view, edit, context));
  }

  /** Returns the id of the claim. */
  async claim(typed: ClaimTyped): Promise<Id> {
    const id = freshId();
    await this.record(typed.by, claimEntries(this.sync().view, typed, id, localTime()));
    return id;
  }

  async tie(typed: TieTyped, by: string): Promise<void> {
    const questions = await this.loaded();
    return this.record(by, tieEntries(this.sync().view, questions, typed, freshId()));
  }

  withdrawClaim(id: Id, why: string, by: string): Promise<void> {
    return this.record(by, withdrawEntries(this.sync().view, id, why));
  }

  chooseReading(subject: Id, property: string, reading: Id, by: string): Promise<void> {
    const { view } = this.sync();
    const { of } = view.cell(subject, property);
    return this.record(by, {
      words: `choose ${propertyWords(property)} of ${view.node(subject)?.label ?? subject}`,
      entries: [{ v: 1, e: 'choose', of, reading }],
    });
  }

  /** Records a rate book from its JSON; returns how many rates it has. */
  async rateBook(text: string, file: string, by: string): Promise<number> {
    const book = readRateBook(text, file);
    await this.record(by, {
      words: `rate book ${book.version}`,
      entries: [{ v: 1, e: 'rates.put', book }],
    });
    return book.cells.length;
  }

  /** Recordings of the walkaround by their time line. */
  async walkarounds(): Promise<Walkaround[]> {
    return walkarounds(this.sync().view, await this.claims());
  }

  /** Speech, drafts and marks; returns what was doubtful in a file. */
  spoken(act: SpokenAct, by: string): Promise<readonly Finding[]> {
    return doSpoken(this.sync().view, act, by, (entries) => this.record(by, entries));
  }

  /** Reverses a gesture; the undo of an undo does it again. */
  async undo(gesture: Id, by: string): Promise<void> {
    const sync = this.sync();
    const what = sync.view.gestures().find((g) => g.gesture === gesture);
    await sync.record({
      by,
      words: `undo: ${what?.words ?? gesture}`,
      entries: [],
      undoes: gesture,
    });
  }

  async dropRefused(): Promise<void> {
    await this.sync().dropRefused();
  }
}
