import { type Change, canonicalText } from '../../study/index.ts';
import { type Handed, type HeldChanges, seqKey } from '../fresh-changes.ts';
import type { Arrived } from '../port.ts';
import { done, type Rows } from './indexed-requests.ts';
import { BY_ID, BY_SEQ, CHANGES, type ChangeRow, COUNTS } from './indexed-schema.ts';

export const arrivedOf = ({ at, author, received, body }: ChangeRow): Arrived => ({
  ...{ at, author, received },
  change: JSON.parse(body) as Change,
});

/** What a batch could collide with, looked up before it is checked. */
export async function heldOf(rows: Rows, batch: readonly Handed[]): Promise<HeldChanges> {
  const bodies = new Map<string, string>();
  const seqs = new Set<string>();
  const look = async ({ change }: Handed) => {
    const { id, study, device, seq } = change;
    const held = (await done(rows(CHANGES).index(BY_ID).get(id))) as ChangeRow | undefined;
    if (held) bodies.set(id, held.body);
    const key = await done(rows(CHANGES).index(BY_SEQ).getKey([study, device, seq]));
    if (key !== undefined) seqs.add(seqKey(change));
  };
  await Promise.all(batch.filter(({ change }) => isKey(change)).map(look));
  return {
    bodyOf: (id: string) => bodies.get(id),
    hasSeq: (change: Change) => seqs.has(seqKey(change)),
  };
}

/** What is no key can not have been kept, and is refused for what is wrong with it. */
const isKey = ({ id, device, seq }: Change): boolean =>
  typeof id === 'string' && typeof device === 'string' && Number.isFinite(seq);

/** Whether a row says what was kept, under what it is looked up by. */
export const isWhole = ({ body, id, seq, device }: ChangeRow): boolean => {
  const change = JSON.parse(body) as Change;
  const isItself = change.id === id && change.seq === seq && change.device === device;
  return isItself && canonicalText(change) === body;
};

const WRITES = 'writes';

/** How many times something was written, by any page. */
export async function writes(rows: Rows): Promise<number> {
  const row = await done(rows(COUNTS).get(WRITES));
  return (row as { readonly n: number } | undefined)?.n ?? 0;
}

export async function countWrite(rows: Rows): Promise<void> {
  await done(rows(COUNTS).put({ name: WRITES, n: (await writes(rows)) + 1 }));
}
