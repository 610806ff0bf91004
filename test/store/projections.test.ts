import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openMemoryStore, openSqliteStore, type Store } from '../../src/store/index.ts';
import type { Change } from '../../src/study/index.ts';
import { randomArrivals } from './random-study.ts';

const everything = async (store: Store) => ({
  heads: await store.studies(),
  parts: await store.find({ limit: 1_000_000 }),
});

const append = (store: Store, batch: readonly Change[]) =>
  store.append('study-1', batch, 'R. Example');

async function appendOneByOne(store: Store, batch: readonly Change[]): Promise<void> {
  const stage = await store.stage('study-1', 'R. Example');
  for (const change of batch) await stage.add([change]);
  await stage.commit();
}

/** The memory store folds all changes for each answer; the projections never do. */
test('rows kept up change by change are those of a fold of all changes', async () => {
  await fc.assert(
    fc.asyncProperty(randomArrivals, async (batches) => {
      const dir = await mkdtemp(join(tmpdir(), 'hoistside-projections-'));
      const [kept, folded] = [await openSqliteStore(dir), openMemoryStore()];
      try {
        for (const [i, batch] of batches.entries()) {
          await (i % 3 === 2 ? appendOneByOne(kept, batch) : append(kept, batch));
          await append(folded, batch);
          expect(await everything(kept)).toEqual(await everything(folded));
        }
        await kept.rebuild();
        expect(await everything(kept)).toEqual(await everything(folded));
      } finally {
        await kept.close();
        await rm(dir, { recursive: true });
      }
    }),
    { numRuns: Number(process.env.RUNS ?? 60), seed: Number(process.env.SEED ?? 20260105) },
  );
});
