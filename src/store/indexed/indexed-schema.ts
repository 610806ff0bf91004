import type { Id, Sha256, Ulid } from '../../study/index.ts';
import { refusal } from '../refuse.ts';
import { done, WHERE } from './indexed-requests.ts';
import type { IndexedDatabase, IndexedFactory } from './indexed-types.ts';

/** A change as it is kept: its text, by which bytes are compared, and what it is looked up by. */
export interface ChangeRow {
  readonly study: Id;
  readonly at: number;
  readonly id: Ulid;
  readonly device: Id;
  readonly seq: number;
  readonly author: string;
  readonly received: string;
  readonly body: string;
}

export interface StudyRow {
  readonly study: Id;
  /** Arrival number of its last change, which is how many it has. */
  readonly last: number;
}

export interface PurgedRow {
  readonly study: Id;
  /** ISO 8601, UTC. */
  readonly when: string;
}

export interface BlobRow {
  readonly hash: Sha256;
  readonly size: number;
  readonly bytes: Uint8Array;
}

export const CHANGES = 'changes';
export const STUDIES = 'studies';
export const PURGED = 'purged';
export const BLOBS = 'blobs';
export const COUNTS = 'counts';
/** Every object store in which a change may leave something. */
export const RECORD = [CHANGES, STUDIES, PURGED, COUNTS];

export const BY_ID = 'id';
export const BY_SEQ = 'seq';
export const BY_SIZE = 'size';

/** Forward only: a later version adds a step, and none is changed. */
const STEPS: readonly ((db: IndexedDatabase) => void)[] = [
  (db) => {
    const changes = db.createObjectStore(CHANGES, { keyPath: ['study', 'at'] });
    changes.createIndex(BY_ID, 'id', { unique: true });
    changes.createIndex(BY_SEQ, ['study', 'device', 'seq'], { unique: true });
    db.createObjectStore(STUDIES, { keyPath: 'study' });
    db.createObjectStore(PURGED, { keyPath: 'study' });
    db.createObjectStore(COUNTS, { keyPath: 'name' });
    // The size stands in an index, so that blobs are listed without reading them.
    const blobs = db.createObjectStore(BLOBS, { keyPath: 'hash' });
    blobs.createIndex(BY_SIZE, ['hash', 'size'], { unique: false });
  },
];

/**
 * Opens a database, made or brought up to date. A page that needs a newer one closes it under this.
 * @throws RefusalError `read-only` when a newer version of the program made it, `busy`.
 */
export async function openDatabase(
  factory: IndexedFactory,
  name: string,
): Promise<IndexedDatabase> {
  const opening = factory.open(name, STEPS.length);
  opening.addEventListener('upgradeneeded', (event) => {
    for (const step of STEPS.slice(event.oldVersion)) step(opening.result);
  });
  const db = await done(opening).catch((error: unknown) => {
    throw isNewer(error) ? newerDatabase() : error;
  });
  db.addEventListener('versionchange', () => db.close());
  return db;
}

const isNewer = (error: unknown): boolean =>
  error instanceof Error && error.name === 'VersionError';

const newerDatabase = () =>
  refusal(
    'read-only',
    { file: WHERE },
    'a newer version of the program has made it',
    'Nothing was touched. Load the page again with the server in reach.',
  );
