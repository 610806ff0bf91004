import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe } from 'vitest';
import { openSqliteStore } from '../../src/store/index.ts';
import { storeContract } from './store-contract.ts';

describe('SQLite in a real folder', () => {
  let dir = '';
  storeContract({
    open: async (options) => {
      dir = await mkdtemp(join(tmpdir(), 'hoistside-store-'));
      return openSqliteStore(dir, options);
    },
    cleanUp: () => rm(dir, { recursive: true }),
  });
});
