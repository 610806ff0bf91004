import { createReadStream } from 'node:fs';
import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import {
  isTableForm,
  type Overrides,
  photoEntry,
  readPhotoList,
  readRateBook,
  type TableForm,
  type TableProgress,
} from '../capture/index.ts';
import { type Id, RefusalError } from '../study/index.ts';
import { fileToImport, type Imported, importTableInto } from './import-table.ts';
import type { Library } from './library.ts';

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
  { file: 'work.csv', form: 'readings' },
  { file: 'fastenings.csv', form: 'readings' },
  { file: 'element-times.csv', form: 'element-times' },
  { file: 'claims.csv', form: 'claims' },
];

export interface RecordStep {
  readonly file: string;
  readonly rows: number;
}

export interface RecordRequest {
  readonly dir: string;
  readonly by: string;
  readonly overrides?: Partial<Record<TableForm, Overrides>>;
  readonly progress?: (file: string, progress: TableProgress) => void;
  readonly done?: (step: RecordStep) => void;
}

/** The form of a table by its file's name, where that tells. */
export function formOf(file: string): TableForm | undefined {
  const known = RECORD_TABLES.find((t) => t.file === basename(file).toLowerCase());
  const word = basename(file).toLowerCase().split('.')[0] ?? '';
  return known?.form ?? (isTableForm(word) ? word : undefined);
}

/**
 * Imports the tables, rate books and photographs of a folder that go by the names above. Each
 * file is all or nothing; the first refusal stops, and what came before it stands.
 */
export async function importRecord(
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
      note({ file, rows: (await importOne(library, study, request, file, form)).rows });
  for (const file of names.filter((n) => /^rates.*\.json$/.test(n)))
    note({ file, rows: await importRates(library, study, join(request.dir, file), request.by) });
  if (names.includes('photos.csv'))
    note({ file: 'photos.csv', rows: await importPhotos(library, study, request) });
  if (steps.length === 0) throw nothingThere(request.dir);
  return steps;
}

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

async function importOne(
  library: Library,
  study: Id,
  request: RecordRequest,
  file: string,
  form: TableForm,
): Promise<Imported> {
  const overrides = request.overrides?.[form];
  return importTableInto(library, study, {
    ...(await fileToImport(join(request.dir, file))),
    form,
    by: request.by,
    ...(overrides ? { overrides } : {}),
    ...(request.progress ? { progress: (p: TableProgress) => request.progress?.(file, p) } : {}),
  });
}

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
