/** One request of IndexedDB, as a promise. */
export const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('the browser keeps nothing'));
  });

/** All of a transaction or nothing, on the disk when this returns. */
export function written(
  db: IDBDatabase,
  store: string,
  work: (rows: IDBObjectStore) => void,
): Promise<void> {
  const transaction = db.transaction(store, 'readwrite', { durability: 'strict' });
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('the browser broke off'));
    work(transaction.objectStore(store));
  });
}
