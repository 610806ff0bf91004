/**
 * Stores changes or blobs in the library in a folder until it is killed, or `most` are in, and
 * writes the id of each to standard output once the store has acknowledged it. A refusal is
 * written too, and ends it with exit code 7.
 * Arguments: folder, `append`, `stage` or `blob`, most.
 */
import { writeSync } from 'node:fs';
import { openSqliteStore, type Store } from '../../src/store/index.ts';
import {
  type Change,
  clockText,
  type NodeSpec,
  RefusalError,
  ulid,
} from '../../src/study/index.ts';

const STUDY = 'study-1';
const DEVICE = 'device-a';
/** Changes of one large append: they come together or not at all. */
const TOGETHER = 5;

const [dir = '', how = 'append', most = '1000'] = process.argv.slice(2);

function addNode(seq: number): Change {
  const id = ulid(Date.now(), Math.random);
  return {
    id,
    study: STUDY,
    device: DEVICE,
    seq,
    clock: clockText({ ms: Date.now(), count: seq % 65_536, device: DEVICE }),
    by: 'R. Example',
    gesture: id,
    words: `add node ${seq}`,
    saw: {},
    entries: [{ v: 1, e: 'node.add', node: nodeOf(seq, id) }],
  };
}

/** The first is the vehicle, all others are parts of it. */
function nodeOf(seq: number, id: string): NodeSpec {
  const [label, name] = [`${seq}`, `node ${seq}`];
  if (seq === 1) return { id: 'vehicle', kind: 'vehicle', parent: null, label, name };
  return { id, kind: 'part', parent: 'vehicle', label, name };
}

const acknowledge = (ids: readonly string[]): void => {
  for (const id of ids) writeSync(1, `ack ${id}\n`);
};

/** Stores some more, and returns the ids of what was acknowledged. */
type StoreMore = (store: Store, seq: number) => Promise<string[]>;

const HOW: Readonly<Record<string, StoreMore>> = {
  append: async (store, seq) => {
    const change = addNode(seq);
    await store.append(STUDY, [change], 'R. Example');
    return [change.id];
  },
  stage: async (store, seq) => {
    const changes = Array.from({ length: TOGETHER }, (_, i) => addNode(seq + i));
    const stage = await store.stage(STUDY, 'R. Example');
    for (const change of changes) await stage.add([change]);
    await stage.commit();
    return changes.map((change) => change.id);
  },
  blob: async (store, seq) => [await store.putBlob([Buffer.from(`blob ${seq} `.repeat(5000))])],
};

async function record(): Promise<void> {
  const storeMore = HOW[how];
  if (!storeMore) throw new Error(`no way to store: ${how}`);
  const store = await openSqliteStore(dir);
  const first = (await store.lastSeq(STUDY, DEVICE)) + 1;
  for (let done = 0; done < Number(most); ) {
    const ids = await storeMore(store, first + done);
    acknowledge(ids);
    done += ids.length;
  }
  await store.close();
}

await record().catch((error: unknown) => {
  if (!(error instanceof RefusalError)) throw error;
  writeSync(1, `refused ${JSON.stringify(error.refusals[0])}\n`);
  process.exitCode = 7;
});
