import { done, written } from '../worker/idb.ts';

/**
 * Words of this device that must be on its disk at once: what browsers keep for a page otherwise
 * may be seconds late, and lost with a flat battery.
 */
const NAME = 'hoistside device';
const WORDS = 'words';

async function open(): Promise<IDBDatabase> {
  const request = indexedDB.open(NAME, 1);
  request.onupgradeneeded = () => request.result.createObjectStore(WORDS, { keyPath: 'name' });
  return done(request);
}

export async function readWord(name: string): Promise<string | undefined> {
  const db = await open();
  const row = await done(db.transaction(WORDS).objectStore(WORDS).get(name));
  db.close();
  return (row as { readonly word: string } | undefined)?.word;
}

export async function keepWord(name: string, word: string): Promise<void> {
  const db = await open();
  await written(db, WORDS, (rows) => void rows.put({ name, word }));
  db.close();
}
