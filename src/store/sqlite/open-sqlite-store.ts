import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { RefusalError } from '../../study/index.ts';
import { makeFolder, syncFolder } from '../files.ts';
import type { Store } from '../port.ts';
import { migrate, schemaAge } from '../sql/migrations/index.ts';
import { type Connection, openReader, openWriter } from './connection.ts';
import { NewerStore } from './newer-store.ts';
import { faultsIn } from './pragmas.ts';
import { damaged } from './sqlite-refusals.ts';
import { over, SqliteStore } from './sqlite-store.ts';

export interface SqliteStoreOptions {
  /** How long a writer waits for another one before it is refused `busy`. */
  readonly waitMs?: number;
  /** Reads the whole file for damage at the opening, however large it is. */
  readonly checkAll?: boolean;
}

/** A file of this size is looked through in a blink; larger ones when asked to. */
const QUICKLY_CHECKED = 64 * 2 ** 20;

/**
 * Opens the library in a folder, making it when there is none: `library.db` and `blobs/`. One
 * that is newer than this program can be read only.
 * @throws RefusalError `read-only`, `disk-full`, `busy`, `bad-value` when the file is damaged or
 * no library.
 */
export async function openSqliteStore(
  dir: string,
  options: SqliteStoreOptions = {},
): Promise<Store> {
  const waitMs = options.waitMs ?? 5000;
  const file = join(dir, 'library.db');
  await makeFolder(join(dir, 'blobs'));
  const writer = openWriter(file, waitMs);
  try {
    await mustBeWhole(writer, file, options.checkAll === true);
    const age = await schemaAge(over(writer.db));
    if (age === 'newer') {
      writer.close();
      return new NewerStore(dir, file, openReader(file));
    }
    if (age === 'older') {
      await writer.db.transaction().execute((db) => migrate(over(db)));
      await syncFolder(dir);
    }
    const store = new SqliteStore(dir, file, waitMs, writer, openReader(file));
    await store.sweep();
    await store.wipePurged().catch(leaveIfBusy);
    return store;
  } catch (error) {
    writer.close();
    throw error;
  }
}

async function mustBeWhole({ db }: Connection, file: string, always: boolean): Promise<void> {
  const { size } = await stat(file);
  if (!always && size > QUICKLY_CHECKED) return;
  if ((await faultsIn(db, 'quick')).length > 0) throw damaged(file);
}

/** Another program may be at it, or in the way: the next opening tries again. */
function leaveIfBusy(error: unknown): void {
  if (!(error instanceof RefusalError) || error.refusals[0].code !== 'busy') throw error;
}
