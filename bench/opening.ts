import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { Library } from '../src/app/index.ts';
import { openSqliteStore } from '../src/store/index.ts';
import { type Change, fold, rowId } from '../src/study/index.ts';
import { editOf, repeatable, syntheticChanges } from './synthetic-study.ts';

const STUDY = 'bench';
/** Entries recorded by hand, one a change: the most to read for what it holds. */
const ENTRIES = 100_000;
/** Parts that they are readings of. */
const PARTS = 5000;
/** Changes handed to the store at a time. */
const BATCH = 1000;
const RUNS = 5;

type Line = (what: string, ms: number, per: string) => void;

/**
 * How long a large study takes to open, from the closed library: the first rows, which the
 * library keeps made (a snapshot that is never old), and the whole view, folded from its changes.
 */
export async function openingSection(line: Line): Promise<void> {
  const [quarter, whole] = [await opened(ENTRIES / 4), await opened(ENTRIES)];
  const growth = (what: keyof Opened) =>
    `${(whole[what] / quarter[what]).toFixed(2)} x a quarter of them`;
  const many = ENTRIES.toLocaleString('en');
  line(`open a study of ${many} entries: rows of its parts`, whole.rows, growth('rows'));
  line('  the whole view, every reading', whole.view, `${growth('view')} (4 is linear)`);
  line(`  keep them, ${BATCH} in each batch on disk`, whole.keeping, growth('keeping'));
  const tables = syntheticChanges(40_000, 60_000);
  const begin = performance.now();
  fold(STUDY, tables);
  const ms = performance.now() - begin;
  line('fold tables of 100,000 rows with 340,000 readings', ms, 'no opening: the fold alone');
}

interface Opened {
  readonly keeping: number;
  readonly rows: number;
  readonly view: number;
}

async function opened(entries: number): Promise<Opened> {
  const dir = await mkdtemp(join(tmpdir(), 'hoistside-bench-'));
  try {
    const keeping = await kept(dir, entries);
    return {
      keeping,
      rows: await median(() => firstRows(dir)),
      view: await median(() => wholeView(dir)),
    };
  } finally {
    await rm(dir, { recursive: true });
  }
}

async function kept(dir: string, entries: number): Promise<number> {
  const changes = handMade(entries);
  const store = await openSqliteStore(dir);
  const begin = performance.now();
  for (let at = 0; at < changes.length; at += BATCH)
    await store.append(STUDY, changes.slice(at, at + BATCH), 'bench');
  const ms = performance.now() - begin;
  await store.close();
  return ms;
}

/** Parts from a table, then readings of them in turn. */
function handMade(entries: number): Change[] {
  const random = repeatable(3);
  const base = syntheticChanges(PARTS, 0);
  const parts = base.flatMap((change) =>
    change.entries.flatMap((entry) =>
      entry.e === 'table.add'
        ? entry.table.rows.map((_, i) => rowId(entry.table.id, entry.table.firstRow + i))
        : [],
    ),
  );
  const edits = Array.from({ length: entries }, (_, i) =>
    editOf(base.length + 1 + i, parts[i % parts.length] ?? '', 1 + random(), random),
  );
  return [...base, ...edits];
}

async function median(run: () => Promise<number>): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < RUNS; i++) times.push(await run());
  times.sort((a, b) => a - b);
  return times[Math.floor(RUNS / 2)] ?? Number.NaN;
}

async function firstRows(dir: string): Promise<number> {
  const begin = performance.now();
  const store = await openSqliteStore(dir);
  const rows = await store.find({ study: STUDY, limit: PARTS });
  if (rows.length !== PARTS) throw new Error('rows are missing');
  const ms = performance.now() - begin;
  await store.close();
  return ms;
}

async function wholeView(dir: string): Promise<number> {
  const begin = performance.now();
  const library = new Library(await openSqliteStore(dir), dir, 'bench');
  const view = await library.view(STUDY);
  const root = view.root();
  if (!root || view.children(root.id).length !== PARTS) throw new Error('parts are missing');
  const ms = performance.now() - begin;
  await library.close();
  return ms;
}
