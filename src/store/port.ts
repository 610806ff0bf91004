import type { Change, Id, Sha256, Ulid } from '../study/index.ts';

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

/** A change as the store hands it out, with its arrival number. */
export interface Arrived {
  readonly at: number;
  readonly change: Change;
}

export interface PartQuery {
  readonly study?: Id;
  readonly material?: string;
  readonly process?: string;
  /** Free text over label, name, material and process. */
  readonly text?: string;
  /** SI. */
  readonly thickness?: readonly [low: number, high: number];
  readonly limit: number;
}

/** A part as projected: values in force in the study's own condition, SI; null where missing. */
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

/**
 * Where changes and blobs are kept. The same tests run over every implementation. Nothing is
 * acknowledged before it is on disk; the same id with the same bytes does nothing, with other
 * bytes it is refused (`conflict`).
 */
export interface Store {
  /** All or nothing. Accepts a stream of batches so that a large import needs little memory. */
  append(changes: Iterable<Change> | AsyncIterable<Change>): Promise<Ack>;
  since(
    study: Id,
    cursor: number,
    limit: number,
  ): Promise<{ readonly changes: readonly Arrived[]; readonly next: number }>;
  studies(): Promise<readonly StudyHead[]>;
  /** Highest `seq` used by a device in a study; 0 when none. */
  lastSeq(study: Id, device: Id): Promise<number>;
  find(query: PartQuery): Promise<readonly PartRow[]>;
  /** Drops the projections and makes them again from the changes. */
  rebuild(): Promise<void>;
  putBlob(chunks: AsyncIterable<Uint8Array>): Promise<Sha256>;
  /** @throws RefusalError `not-found`. */
  getBlob(hash: Sha256): AsyncIterable<Uint8Array>;
  hasBlob(hash: Sha256): Promise<boolean>;
  /** Changes when another process has written: compare with the last one seen. */
  version(): Promise<number>;
  backup(toFile: string): Promise<void>;
  close(): Promise<void>;
}

export type { Change, Id, Sha256, Ulid };
