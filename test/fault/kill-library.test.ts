import { createHash } from 'node:crypto';
import { mkdir, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkLibrary, deviceOf, Library, restoreBackup } from '../../src/app/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import { builtChild, StormChild } from './storm.ts';
import {
  IMPORT_ROWS,
  STORM_ACTS,
  STORM_STUDY,
  type StormAct,
  type StormOrder,
  type Told,
} from './storm-order.ts';

const KILLS = 200;
/** Kills of one library, before the next one begins. */
const TOGETHER = 20;
/** The kill comes so long, at most, after the acknowledgement that is waited for. */
const LONGEST_MS = 150;

let script: string;
let dir: string;
beforeAll(async () => {
  script = await builtChild();
  dir = await mkdtemp(join(tmpdir(), 'hoistside-storm-'));
});
afterAll(() => rm(dir, { recursive: true }));

/** One act is to the fore in turn. */
const foremost = (run: number): StormAct => STORM_ACTS[run % STORM_ACTS.length] ?? 'edit';
/** Edits go on beside it. */
const actsOf = (run: number): StormAct[] => [...new Set([foremost(run), 'edit' as const])];

/** What is waited for before the kill: nothing, so that it may come at the opening; or any; or the foremost. */
const awaited = (run: number): readonly StormAct[] => {
  const turn = Math.floor(run / STORM_ACTS.length) % 4;
  if (turn === 0) return [];
  return turn === 1 ? STORM_ACTS : [foremost(run)];
};

const valuesOf = (told: readonly Told[], what: StormAct): string[] =>
  told.flatMap((one) => (one.what === what ? [one.value] : []));

/** Opens what the kill has left, and holds it against all that was ever acknowledged in it. */
async function verify({ dir: folder }: StormOrder, told: readonly Told[]): Promise<void> {
  const store = await openSqliteStore(folder, { checkAll: true });
  try {
    const { changes } = await store.since(STORM_STUDY, 0, 1_000_000);
    expect(changes.map((a) => a.at)).toEqual(changes.map((_, i) => i + 1));
    const ids = new Set(changes.map((a) => a.change.id));
    const acknowledged = [...valuesOf(told, 'edit'), ...valuesOf(told, 'sync')];
    expect(acknowledged.filter((id) => !ids.has(id))).toEqual([]);
    const rows = rowsByImport((await store.find({ limit: 1_000_000 })).map((row) => row.label));
    expect(valuesOf(told, 'import').filter((prefix) => !rows.has(prefix))).toEqual([]);
    // What was not acknowledged came whole, or not at all.
    for (const [prefix, count] of rows) expect([prefix, count]).toEqual([prefix, IMPORT_ROWS]);
    for (const hash of valuesOf(told, 'blob')) {
      const digest = createHash('sha256');
      for await (const chunk of store.getBlob(hash)) digest.update(chunk);
      expect(digest.digest('hex')).toBe(hash);
    }
  } finally {
    await store.close();
  }
  for (const backup of valuesOf(told, 'backup'))
    expect(JSON.parse(await readFile(join(backup, 'manifest.json'), 'utf8'))).toMatchObject({
      format: 'hoistside-backup',
    });
}

function rowsByImport(labels: readonly string[]): Map<string, number> {
  const rows = new Map<string, number>();
  for (const label of labels) {
    const prefix = /^i-\d+-\d+-/.exec(label)?.[0];
    if (prefix !== undefined) rows.set(prefix, (rows.get(prefix) ?? 0) + 1);
  }
  return rows;
}

/** After the last kill of a library: all of it read, and its latest backup restored. */
async function verifyWhole({ dir: folder, backups }: StormOrder, told: readonly Told[]) {
  const library = new Library(await openSqliteStore(folder), folder, await deviceOf(folder));
  const check = await checkLibrary(library);
  await library.close();
  expect(check).toMatchObject({ database: { faults: [], rows: 'as made anew' }, damaged: [] });
  if (valuesOf(told, 'backup').length === 0) return;
  const restored = await restoreBackup(backups, `${folder}-again`, (to) => openSqliteStore(to));
  expect(restored.check).toMatchObject({ database: { faults: [], rows: 'as made anew' } });
}

test(`${KILLS} kills at import, edit, sync, blob and backup: nothing acknowledged is lost`, async () => {
  const counts = Object.fromEntries(STORM_ACTS.map((what) => [what, 0]));
  let next = new StormChild(script);
  for (let run = 0; run < KILLS; ) {
    const folder = join(dir, `library-${run}`);
    await mkdir(folder);
    const told: Told[] = [];
    const order = () => ({ dir: folder, backups: `${folder}-backups`, run, what: actsOf(run) });
    for (let i = 0; i < TOGETHER && run < KILLS; i++, run++) {
      const child = next;
      next = new StormChild(script);
      const fresh = await child.killedAfter(order(), awaited(run), Math.random() * LONGEST_MS);
      told.push(...fresh);
      // Blobs of the rounds before are read when all is.
      await verify(order(), [...told.filter((t) => t.what !== 'blob'), ...fresh]);
      for (const { what } of fresh) counts[what] = (counts[what] ?? 0) + 1;
    }
    await verifyWhole(order(), told);
  }
  next.kill();
  console.log(`${KILLS} kills; acknowledged and not lost: ${JSON.stringify(counts)}`);
  for (const what of STORM_ACTS) expect(counts[what]).toBeGreaterThan(0);
}, 900_000);
