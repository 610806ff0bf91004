import type { Change, Id, Sha256 } from '../study/index.ts';

/** What the store says of a study without folding it. */
export interface StudyHead {
  readonly study: Id;
  readonly title: string;
  readonly vehicle: string;
  readonly invented: boolean;
  readonly changes: number;
  readonly parts: number;
  /** Clock of the latest change. */
  readonly clock: string;
}

export interface Ack {
  /** Arrival number of the last change now held, for the pull cursor. */
  readonly cursor: number;
  /** Changes of this call that were not here before. */
  readonly added: number;
}

/** A change as the store hands it out: arrival number, author and time of arrival stand beside it. */
export interface Arrived {
  readonly at: number;
  readonly author: string;
  /** ISO 8601, UTC. */
  readonly received: string;
  readonly change: Change;
}

export interface PartQuery {
  readonly study?: Id;
  /** Material and process as the value in force has them, letter for letter. */
  readonly material?: string;
  readonly process?: string;
  /**
   * Free text over label, name, material and process: each word given begins a word there, upper
   * and lower case and accents aside.
   */
  readonly text?: string;
  /** SI. */
  readonly thickness?: readonly [low: number, high: number];
  readonly limit: number;
}

/**
 * A part as projected: values in force in the study's own condition, SI; null where missing.
 * `massU` is the value's own standard uncertainty, without causes that it shares with others.
 */
export interface PartRow {
  readonly study: Id;
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  readonly parent: string | null;
  readonly count: number | null;
  readonly mass: number | null;
  readonly massU: number | null;
  readonly thickness: number | null;
  readonly x: number | null;
  readonly y: number | null;
  readonly z: number | null;
  readonly material: string | null;
  readonly process: string | null;
}

/** A large append in pieces: nothing is there before `commit`, nothing is left after `drop`. */
export interface Stage {
  /** `author` when these came by another hand than the rest, as a bundle's changes did. */
  add(batch: readonly Change[], author?: string): Promise<void>;
  commit(): Promise<Ack>;
  drop(): Promise<void>;
}

/**
 * Where changes are kept. The same tests run over every implementation. Nothing is acknowledged
 * before it is on disk; the same id with the same bytes (canonicalText) does nothing, with other
 * bytes it is refused (`conflict`), and so is a second change with one study, device and seq.
 */
export interface ChangeLog {
  /** One transaction: all or nothing. `author` is who the door knows the sender to be. */
  append(study: Id, batch: readonly Change[], author: string): Promise<Ack>;
  stage(study: Id, author: string): Promise<Stage>;
  /** Changes that arrived after `cursor` (0 for all), in the order of arrival. */
  since(
    study: Id,
    cursor: number,
    limit: number,
  ): Promise<{ readonly changes: readonly Arrived[]; readonly next: number }>;
  studies(): Promise<readonly StudyHead[]>;
  /** Highest `seq` used by a device in a study; 0 when none. */
  lastSeq(study: Id, device: Id): Promise<number>;
}

/** A blob that is held. */
export interface BlobHead {
  readonly hash: Sha256;
  readonly bytes: number;
}

/** Content-addressed bytes: written, fsynced, renamed, folder fsynced, then acknowledged. */
export interface Blobs {
  putBlob(chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>): Promise<Sha256>;
  /** @throws RefusalError `not-found`. */
  getBlob(hash: Sha256): AsyncIterable<Uint8Array>;
  hasBlob(hash: Sha256): Promise<boolean>;
  /** All that are held, as their files say, in the order of their hashes. */
  blobs(): AsyncIterable<BlobHead>;
}

/** How a library's database was found. */
export interface StoreCheck {
  /** What the database finds wrong with its own files; empty when they are whole. */
  readonly faults: readonly string[];
  /** Whether the rows are those that would be made anew; `not known` where they can't be made. */
  readonly rows: 'as made anew' | 'other' | 'not known';
}

/** A library of studies with its projections. */
export interface Store extends ChangeLog, Blobs {
  /**
   * Takes a study out for good: its changes, its rows, and the blobs that no other study names.
   * Its id is kept, so that no device brings it back.
   * @throws RefusalError `busy` when another program keeps traces of it from being wiped; the
   * study is out by then, and the next opening wipes them.
   */
  purge(study: Id): Promise<void>;
  /** Live parts, in the order of their studies and ids. */
  find(query: PartQuery): Promise<readonly PartRow[]>;
  /** Why nothing can be stored; absent when it can. What is there can be read. */
  readonly readOnly?: string;
  /** Reads the whole database, and makes all rows anew beside those that are there. */
  check(): Promise<StoreCheck>;
  /** Drops the projections and makes them again from the changes. */
  rebuild(): Promise<void>;
  /** Changes when another process has written: compare with the last one seen. */
  version(): Promise<number>;
  /** Copies what is committed, but not the blobs, to a new file; an existing one is refused. */
  backup(toFile: string): Promise<void>;
  close(): Promise<void>;
}
