import { describe } from 'vitest';
import { openMemoryStore } from '../../src/store/index.ts';
import { storeContract } from './store-contract.ts';

describe('memory', () => {
  storeContract({
    open: async (options) => openMemoryStore(options),
    cleanUp: async () => {},
  });
});
