import { createReadStream } from 'node:fs';
import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import {
  FIELDS,
  isTableForm,
  type Overrides,
  type Preview,
  photoEntry,
  readPhotoList,
  readRateBook,
  type TableForm,
  type TableProgress,
} from '../capture/index.ts';
import { type Finding, type Id, RefusalError } from '../study/index.ts';
import { createStudy, type NewStudy } from './create-study.ts';
import {
  type Imported,
  type ImportRequest,
  importTableInto,
  previewTableInto,
} from './import-table.ts';
import type { Library } from './library.ts';
import { rehearse } from './rehearsal.ts';
import { fileToImport } from './table-file.ts';

/** Tables of a record folder, in the order in which they build on each other. */
const RECORD_TABLES: readonly { readonly file: string; readonly form: TableForm }[] = [
  { file: 'assemblies.csv', form: 'assemblies' },
  { file: 'parts.csv', form: 'parts' },
  { file: 'joints.csv', form: 'joints' },
  { file: 'bags.csv', form: 'bags' },
  { file: 'precedence.csv', form: 'precedence' },
  { file: 'vehicle.csv', form: 'readings' },
  { file: 'readings.csv', form: 'readings' },
  { file: 'modules.csv', form: 'modules' },
  { file: 'hoist.csv', form: 'readings' },
  { file: 'removals.csv', form: 'removals' },
  { file: 'work.csv', form: 'readings' },
  { file: 'fastenings.csv', form: 'readings' },
  { file: 'alternatives.csv', form: 'readings' },
  { file: 'element-times.csv', form: 'element-times' },
  { file: 'seals.csv', form: 'readings' },
  { file: 'zones.csv', form: 'zones' },
  { file: 'barriers.csv', form: 'barriers' },
  { file: 'crossings.csv', form: 'crossings' },
  { file: 'lines.csv', form: 'lines' },
  { file: 'claims.csv', form: 'claims' },
];

export interface RecordStep {
  readonly file: string;
  readonly rows: number;
  /** What the import took for granted or found strange. */
  readonly notes: readonly Finding[];
}

export interface RecordRequest {
  readonly dir: string;
  readonly by: string;
  /** For every table; which columns hold what is told by their headings. */
  readonly overrides?: Omit<Overrides, 'columns' | 'units' | 'spreads'>;
  /** As Overrides has them, for the tables that have the fields. */
  readonly spreads?: Readonly<Record<string, string>>;
  readonly progress?: (file: string, progress: TableProgress) => void;
  readonly done?: (step: RecordStep) => void;
}

/**
 * What the tables of a folder would become, up to the first that has problems; nothing is written.
 */
export async function previewRecord(
  library: Library,
  target: Id | NewStudy,
  request: RecordRequest,
): Promise<readonly Preview[]> {
  const names = await namesIn(request.dir);
  const tables = RECORD_TABLES.filter((t) => names.includes(t.file));
  if (tables.length === 0) throw nothingThere(request.dir);
  return rehearse(library, target, async (copy, study) => {
    const previews: Preview[] = [];
    for (const { file, form } of tables) {
      const seen = await previewTableInto(copy, study, await tableOf(request, file, form));
      previews.push(seen);
      if (seen.problems.length > 0) break;
      await importOne(copy, study, request, file, form);
    }
    return previews;
  });
}

/** The form of a table by its file's name, where that tells. */
export function formOf(file: string): TableForm | undefined {
  const known = RECORD_TABLES.find((t) => t.file === basename(file).toLowerCase());
  const word = basename(file).toLowerCase().split('.')[0] ?? '';
  return known?.form ?? (isTableForm(word) ? word : undefined);
}

/**
 * Imports the tables, rate books and photographs of a folder that go by the names above, into a
 * study or a new one: all of them or nothing, tried out on a copy in memory first. Returns the
 * study.
 * @throws RefusalError with every problem of the first file that has any.
 */
export async function importRecord(
  library: Library,
  target: Id | NewStudy,
  request: RecordRequest,
): Promise<{ readonly study: Id; readonly steps: readonly RecordStep[] }> {
  const { done: _done, ...quietly } = request;
  await rehearse(library, target, (copy, study) => importFiles(copy, study, quietly));
  const study = typeof target === 'string' ? target : await createStudy(library, target);
  return { study, steps: await importFiles(library, study, request) };
}

async function importFiles(
  library: Library,
  study: Id,
  request: RecordRequest,
): Promise<RecordStep[]> {
  const names = await namesIn(request.dir);
  const steps: RecordStep[] = [];
  const note = (step: RecordStep) => {
    steps.push(step);
    request.done?.(step);
  };
  for (const { file, form } of RECORD_TABLES)
    if (names.includes(file))
      note(stepOf(file, await importOne(library, study, request, file, form)));
  for (const file of names.filter((n) => /^rates.*\.json$/.test(n)))
    note({
      file,
      rows: await importRates(library, study, join(request.dir, file), request.by),
      notes: [],
    });
  if (names.includes('photos.csv'))
    note({ file: 'photos.csv', rows: await importPhotos(library, study, request), notes: [] });
  if (steps.length === 0) throw nothingThere(request.dir);
  return steps;
}

const stepOf = (file: string, { rows, preview }: Imported): RecordStep => ({
  file,
  rows,
  notes: preview.notes,
});

async function namesIn(dir: string): Promise<string[]> {
  try {
    if (!(await stat(dir)).isDirectory()) throw nothingThere(dir);
    return (await readdir(dir)).sort();
  } catch (error) {
    if (error instanceof RefusalError) throw error;
    throw nothingThere(dir);
  }
}

const nothingThere = (dir: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { file: dir },
    value: dir,
    why: 'no folder with tables of a record',
    next: `Name a folder that holds ${RECORD_TABLES.map((t) => t.file).join(', ')}, or one table with --form.`,
  });

const importOne = async (
  library: Library,
  study: Id,
  request: RecordRequest,
  file: string,
  form: TableForm,
): Promise<Imported> => importTableInto(library, study, await tableOf(request, file, form));

async function tableOf(
  request: RecordRequest,
  file: string,
  form: TableForm,
): Promise<ImportRequest> {
  return {
    ...(await fileToImport(join(request.dir, file))),
    form,
    by: request.by,
    overrides: { ...request.overrides, spreads: spreadsOf(form, request.spreads ?? {}) },
    ...(request.progress ? { progress: (p: TableProgress) => request.progress?.(file, p) } : {}),
  };
}

/** Shared spreads of the fields that a form has. */
const spreadsOf = (
  form: TableForm,
  spreads: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(spreads).filter(([names]) =>
      names.split(',').every((name) => FIELDS[form].some((f) => f.field === name.trim())),
    ),
  );

/** Imports a rate book; returns the number of its cells. */
export async function importRates(
  library: Library,
  study: Id,
  path: string,
  by: string,
): Promise<number> {
  const book = readRateBook(await readFile(path, 'utf8'), basename(path));
  await library.record(study, by, `rate book ${book.version}`, [{ v: 1, e: 'rates.put', book }]);
  return book.cells.length;
}

/** Keeps the photographs that a list names, then records them as one gesture. */
async function importPhotos(library: Library, study: Id, request: RecordRequest): Promise<number> {
  const view = await library.view(study);
  const list = readPhotoList(
    await readFile(join(request.dir, 'photos.csv'), 'utf8'),
    'photos.csv',
    view,
  );
  const entries = [];
  for (const item of list) {
    const path = join(request.dir, item.file);
    const hash = await library.store.putBlob(createReadStream(path));
    entries.push(photoEntry({ ...item, id: library.newStudy(), hash, head: await readFile(path) }));
  }
  await library.record(study, request.by, `${entries.length} photographs`, entries);
  return entries.length;
}
