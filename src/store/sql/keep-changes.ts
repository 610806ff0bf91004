import type { ControlledTransaction } from 'kysely';
import type { Change, Id } from '../../study/index.ts';
import type { StageWork } from '../held-stage.ts';
import type { Ack } from '../port.ts';
import { lastArrival, storeChanges } from './change-log.ts';
import { Projector } from './projector.ts';
import type { SqlLibrary, Tables } from './tables.ts';
import type { WordIndex } from './word-index.ts';

/** Stores and projects what is new of a batch, inside the transaction that `library` is in. */
export async function keepChanges(
  library: SqlLibrary,
  study: Id,
  batch: readonly Change[],
  author: string,
): Promise<Ack> {
  return keepWith(library, await Projector.of(library, study), study, batch, author);
}

async function keepWith(
  library: SqlLibrary,
  projector: Projector,
  study: Id,
  batch: readonly Change[],
  author: string,
): Promise<Ack> {
  const { ack, fresh } = await storeChanges(library.db, study, batch, author);
  await projector.project(fresh);
  return ack;
}

/** A large append in the transaction given, with one projector for all its batches. */
export function stageIn(
  transaction: ControlledTransaction<Tables>,
  words: WordIndex,
  study: Id,
  author: string,
): StageWork {
  const library = { db: transaction, words };
  let projector: Projector | undefined;
  let added = 0;
  return {
    add: async (batch, other) => {
      projector ??= await Projector.of(library, study);
      added += (await keepWith(library, projector, study, batch, other ?? author)).added;
    },
    commit: async () => {
      const cursor = await lastArrival(transaction, study);
      await transaction.commit().execute();
      return { cursor, added };
    },
    rollBack: () => transaction.rollback().execute(),
  };
}
