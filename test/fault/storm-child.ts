/**
 * Does everything a library can be killed at, all at once and without end: edits, changes of
 * another device, imports of small tables, blobs, backups. Waits for a line on standard input, a
 * StormOrder; writes a line to standard output for each thing that was acknowledged.
 */
import { writeSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { backupLibrary } from '../../src/app/backup/backup-library.ts';
import { importTableInto } from '../../src/app/import-table.ts';
import { Library } from '../../src/app/library.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import { type Change, clockText, type Entry, type Id, ulid } from '../../src/study/index.ts';
import { IMPORT_ROWS, STORM_STUDY, type StormOrder, type Told } from './storm-order.ts';

const BY = 'R. Example';
const tell = (what: Told['what'], value: string): void => void writeSync(1, `${what} ${value}\n`);
const freshId = (): string => ulid(Date.now(), Math.random);

async function storm({ dir, backups, run, what }: StormOrder): Promise<void> {
  const library = new Library(await openSqliteStore(dir, { waitMs: 60_000 }), dir, `desk-${run}`);
  if ((await library.studies()).length === 0)
    tell('edit', (await library.record(STORM_STUDY, BY, 'begin', opening())).id);
  const does = {
    edit: () => edits(library),
    sync: () => syncs(library, run),
    import: () => imports(library, run),
    blob: () => blobs(library),
    backup: () => copies(library, backups),
  };
  await Promise.all(what.map((one) => does[one]()));
}

const opening = (): Entry[] => [
  {
    ...{ v: 1, e: 'study.put' },
    set: { title: 'storm, made up', vehicle: 'V', condition: 'kerb', invented: true },
  },
  part('van', null),
];

const part = (id: Id, parent: Id | null): Entry => ({
  ...{ v: 1, e: 'node.add' },
  node: {
    id,
    kind: parent === null ? 'vehicle' : 'part',
    parent,
    label: id,
    name: `made-up ${id}`,
  },
});

/** The database works without waiting: a pause lets files and others have their turn. */
async function edits(library: Library): Promise<never> {
  for (;;) {
    await pause(1);
    const change = await library.record(STORM_STUDY, BY, 'edit', [part(`e-${freshId()}`, 'van')]);
    tell('edit', change.id);
  }
}

/** Changes that were made on a tablet and come in by the door. */
async function syncs(library: Library, run: number): Promise<never> {
  const device = `tablet-${run}`;
  for (let seq = 1; ; seq++) {
    await pause(1);
    const id = freshId();
    const change: Change = {
      ...{ id, study: STORM_STUDY, device, seq, by: BY, gesture: id, words: 'sync', saw: {} },
      clock: clockText({ ms: Date.now(), count: 0, device }),
      entries: [part(`s-${id}`, 'van')],
    };
    await library.accept(STORM_STUDY, [change], 'tablet');
    tell('sync', id);
  }
}

async function imports(library: Library, run: number): Promise<never> {
  for (let n = 1; ; n++) {
    await pause(1);
    const prefix = `i-${run}-${n}-`;
    const rows = Array.from({ length: IMPORT_ROWS }, (_, i) => `${prefix}${i},made-up,1.5\n`);
    const text = `part_no,part_name,mass_kg\n${rows.join('')}`;
    await importTableInto(library, STORM_STUDY, {
      ...{ form: 'parts', file: `${prefix}.csv`, by: BY },
      open: async function* () {
        yield Buffer.from(text);
      },
    });
    tell('import', prefix);
  }
}

async function blobs(library: Library): Promise<never> {
  for (;;) {
    const bytes = Buffer.alloc(200_000, freshId());
    tell('blob', await library.store.putBlob([bytes.subarray(0, 70_000), bytes.subarray(70_000)]));
  }
}

async function copies(library: Library, to: string): Promise<never> {
  for (;;) tell('backup', (await backupLibrary(library, to)).folder);
}

const order = await new Promise<string>((resolve) => {
  createInterface({ input: process.stdin }).once('line', resolve);
});
await storm(JSON.parse(order));
