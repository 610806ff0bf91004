import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe } from 'vitest';
import { openMemoryStore, openSqliteStore } from '../../src/store/index.ts';
import { foundParts } from './found-parts.ts';
import { type StoreUnderTest, storeContract } from './store-contract.ts';

/**
 * One suite over every store. Where they differ on purpose the difference has a test of its own:
 * - copying to a file: memory refuses it (memory-store.test.ts), SQLite does it (sqlite-store.test.ts);
 * - outliving the process, several processes, full disks: SQLite alone (sqlite-store.test.ts, test/fault);
 * - a large append that meets a conflict: SQLite refuses it at the piece, memory at the commit.
 */
const STORES: readonly [string, StoreUnderTest][] = [
  ['memory', inMemory()],
  ['SQLite in a folder', inFolder()],
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
