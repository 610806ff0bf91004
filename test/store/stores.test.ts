import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { describe } from 'vitest';
import { openIndexedStore, openMemoryStore, openSqliteStore } from '../../src/store/index.ts';
import { foundParts } from './found-parts.ts';
import { type StoreUnderTest, storeContract } from './store-contract.ts';

/**
 * One suite over every store. Where they differ on purpose the difference has a test of its own:
 * - copying to a file: memory and IndexedDB refuse it (memory-store.test.ts, indexed-store.test.ts),
 *   SQLite does it (sqlite-store.test.ts);
 * - outliving the process, several processes, full disks: SQLite alone (sqlite-store.test.ts, test/fault);
 * - a large append that meets a conflict: SQLite refuses it at the piece, the others at the commit.
 * IndexedDB is here a general stand-in written for tests; test/web/indexed-store.test.ts runs the
 * same suite in a real browser.
 */
const STORES: readonly [string, StoreUnderTest][] = [
  ['memory', inMemory()],
  ['SQLite in a folder', inFolder()],
  ['IndexedDB', indexed()],
];

describe.each(STORES)('%s', (_, under) => {
  describe('contract', () => storeContract(under));
  describe('parts and heads', () => foundParts(under));
});

function inMemory(): StoreUnderTest {
  return { open: async (options) => openMemoryStore(options), cleanUp: async () => {} };
}

function inFolder(): StoreUnderTest {
  let dir = '';
  return {
    open: async (options) => {
      dir = await mkdtemp(join(tmpdir(), 'hoistside-store-'));
      return openSqliteStore(dir, options);
    },
    cleanUp: () => rm(dir, { recursive: true }),
  };
}

function indexed(): StoreUnderTest {
  return {
    open: (options) => openIndexedStore({ indexedDB: new IDBFactory(), IDBKeyRange }, 'x', options),
    cleanUp: async () => {},
  };
}
