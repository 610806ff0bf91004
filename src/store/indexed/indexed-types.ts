/**
 * The part of IndexedDB (W3C Recommendation, version 2.0) that the store uses, so that it compiles
 * without the types of a browser. A browser's own objects fit.
 */
export interface IndexedFactory {
  open(name: string, version?: number): IndexedOpening;
}

interface Requested {
  readonly error: unknown;
  addEventListener(type: 'success' | 'error', listener: () => void): void;
}

export interface IndexedRequest<T> extends Requested {
  readonly result: T;
}

export interface IndexedOpening extends IndexedRequest<IndexedDatabase> {
  readonly result: IndexedDatabase;
  addEventListener(type: 'success' | 'error', listener: () => void): void;
  addEventListener(
    type: 'upgradeneeded',
    listener: (event: { readonly oldVersion: number }) => void,
  ): void;
}

export interface IndexedDatabase {
  createObjectStore(
    name: string,
    options: { readonly keyPath: string | string[] },
  ): Pick<IndexedRows, 'createIndex'>;
  transaction(
    names: string[],
    mode: 'readonly' | 'readwrite',
    options?: { readonly durability: 'strict' },
  ): IndexedTransaction;
  addEventListener(type: 'versionchange', listener: () => void): void;
  close(): void;
}

export interface IndexedTransaction {
  readonly error: unknown;
  objectStore(name: string): IndexedRows;
  abort(): void;
  addEventListener(type: 'complete' | 'abort' | 'error', listener: () => void): void;
}

export interface IndexedRows {
  createIndex(
    name: string,
    keyPath: string[] | string,
    options: { readonly unique: boolean },
  ): unknown;
  index(name: string): Pick<IndexedRows, 'get' | 'getKey' | 'openKeyCursor'>;
  get(key: IndexedKey): IndexedRequest<unknown>;
  getKey(key: IndexedKey): IndexedRequest<unknown>;
  getAll(range?: unknown, count?: number): IndexedRequest<unknown[]>;
  put(value: unknown): IndexedRequest<unknown>;
  delete(key: unknown): IndexedRequest<undefined>;
  openKeyCursor(range?: unknown, direction?: 'next' | 'prev'): IndexedRequest<IndexedCursor | null>;
}

export type IndexedKey = string | number | IndexedKey[];

export interface IndexedCursor {
  readonly key: unknown;
  continue(): void;
}

/** Makes ranges of keys: a browser's IDBKeyRange. */
export interface IndexedRanges {
  bound(low: IndexedKey, high: IndexedKey, lowOpen?: boolean, highOpen?: boolean): unknown;
}
