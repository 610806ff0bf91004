import { loadAll, type Questions } from '../../../src/engine/index.ts';
import type { Entry, Id, StudyView } from '../../../src/study/index.ts';
import { AnswersOf } from './answers-of.ts';
import { Api } from './api.ts';
import { DeviceCopy } from './device-copy.ts';
import { deviceName } from './device-name.ts';
import { headerOf, type StudyHeader } from './header-of.ts';
import { Sampling } from './sampling.ts';
import { NOTHING_WAITS, type SaveState } from './save-state.ts';
import { type StudyList, studyList } from './study-list.ts';
import { StudySync } from './study-sync.ts';

/** How the worker reaches the server, and the browser's name. */
export interface Settings {
  readonly origin: string;
  readonly token: string;
  readonly device: Id;
}

type Listener = (told: { changed: true } | { state: SaveState }) => void;

/** Which study is open in the worker: opened and closed, its view, its engine, its way to the server. */
export class OpenDesk {
  #settings: Promise<{ api: Api; copy: DeviceCopy; device: Id }> | undefined;
  #questions: Promise<Questions> | undefined;
  #opening: { readonly study: Id; readonly sync: Promise<StudySync> } | undefined;
  #open: StudySync | undefined;
  #answers: { readonly view: StudyView; readonly of: AnswersOf } | undefined;
  #listener: Listener = () => undefined;
  protected readonly sampling = new Sampling();

  start({ origin, token, device }: Settings): void {
    this.#settings = (async () => ({
      api: new Api(origin, token),
      copy: await DeviceCopy.open(),
      device: await deviceName(device),
    }))();
  }

  listen(listener: Listener): void {
    this.#listener = listener;
  }

  /** Opens a study; reading it again does nothing. */
  async open(study: Id, progress: (changes: number) => void): Promise<StudyHeader> {
    if (this.#opening?.study !== study) {
      void this.#close();
      this.#opening = { study, sync: this.#openSync(study, progress) };
    }
    const opening = this.#opening;
    try {
      this.#open = await opening.sync;
    } catch (error) {
      if (this.#opening === opening) this.#opening = undefined;
      throw error;
    }
    return headerOf(this.sync().view);
  }

  async #openSync(study: Id, progress: (changes: number) => void): Promise<StudySync> {
    this.#listener({ state: NOTHING_WAITS });
    const told = {
      changed: () => {
        // What a run has bound is brought up to date in place: it would mix two states.
        this.sampling.stop();
        this.#listener({ changed: true });
      },
      state: (state: SaveState) => this.#listener({ state }),
    };
    return StudySync.open({ study, ...(await this.started()) }, told, progress);
  }

  async #close(): Promise<void> {
    this.sampling.stop();
    const sync = this.#opening?.sync.catch(() => undefined);
    this.#opening = undefined;
    this.#open = undefined;
    await (await sync)?.close();
  }

  /** The studies of the library, or of this device where no server answers. */
  async studies(): Promise<StudyList> {
    const { api, copy } = await this.started();
    return studyList(api, copy);
  }

  /** Takes the copy of a study off this device, with what of it was never sent. */
  async forget(study: Id): Promise<void> {
    if (this.#opening?.study === study) await this.#close();
    const { copy } = await this.started();
    await copy.forget(study);
  }

  /** Tells the others of the study what is in hand in this page. */
  takeInHand(by: string, part: Id | undefined): void {
    this.#open?.takeInHand(by, part);
  }

  /** Looks for the server now. */
  nudge(): void {
    this.#open?.nudge();
  }

  protected async record(by: string, act: { words: string; entries: Entry[] }): Promise<void> {
    await this.sync().record({ by, ...act });
  }

  protected started() {
    if (!this.#settings) throw new TypeError('the worker was not started');
    return this.#settings;
  }

  protected sync(): StudySync {
    if (!this.#open) throw new TypeError('no study is open');
    return this.#open;
  }

  protected loaded(): Promise<Questions> {
    this.#questions ??= loadAll();
    return this.#questions;
  }

  protected async current(): Promise<AnswersOf> {
    const questions = await this.loaded();
    const { view } = this.sync();
    if (this.#answers?.view !== view) this.#answers = { view, of: new AnswersOf(view, questions) };
    return this.#answers.of;
  }
}
