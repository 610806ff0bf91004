import { refusal } from '../refuse.ts';
import type {
  IndexedCursor,
  IndexedDatabase,
  IndexedRequest,
  IndexedRows,
} from './indexed-types.ts';

/** How refusals name the place. */
export const WHERE = 'the store of this browser';

export const done = <T>(request: IndexedRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(asRefusal(request.error)));
  });

/** What is read at each place of a cursor. */
export const walked = <T>(
  request: IndexedRequest<IndexedCursor | null>,
  at: (cursor: IndexedCursor) => T,
): Promise<T[]> =>
  new Promise((resolve, reject) => {
    const found: T[] = [];
    request.addEventListener('success', () => {
      const cursor = request.result;
      if (cursor === null) {
        resolve(found);
        return;
      }
      found.push(at(cursor));
      cursor.continue();
    });
    request.addEventListener('error', () => reject(asRefusal(request.error)));
  });

/** Object stores by name, of one transaction. */
export type Rows = (name: string) => IndexedRows;

/**
 * One transaction: all of `work` or nothing, on the disk when this returns. `work` must wait for
 * nothing but requests of the transaction, or the browser ends it.
 * @throws RefusalError `disk-full` when the browser gives no more room.
 */
export async function written<T>(
  db: IndexedDatabase,
  names: string[],
  work: (rows: Rows) => Promise<T>,
): Promise<T> {
  const transaction = db.transaction(names, 'readwrite', { durability: 'strict' });
  const ended = new Promise<void>((resolve, reject) => {
    transaction.addEventListener('complete', () => resolve());
    transaction.addEventListener('abort', () => reject(asRefusal(transaction.error)));
  });
  // Told below, by what was thrown first.
  ended.catch(() => undefined);
  let result: T;
  try {
    result = await work((name) => transaction.objectStore(name));
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It was aborted already: by the error that is thrown on.
    }
    throw asRefusal(error);
  }
  await ended;
  return result;
}

export const read = <T>(
  db: IndexedDatabase,
  names: string[],
  work: (rows: Rows) => Promise<T>,
): Promise<T> => {
  const transaction = db.transaction(names, 'readonly');
  return work((name) => transaction.objectStore(name));
};

function asRefusal(error: unknown): unknown {
  const name = error instanceof Error ? error.name : '';
  if (name !== 'QuotaExceededError') return error ?? new Error('the browser broke off');
  return refusal(
    'disk-full',
    { file: WHERE },
    'the browser gives this application no more room',
    'Nothing of this was kept. Send what waits, take photographs off the device, or free its disk.',
  );
}
