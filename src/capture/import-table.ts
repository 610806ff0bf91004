import { type Entry, RefusalError } from '../study/index.ts';
import { AssembliesForm } from './assemblies-form.ts';
import { BagsForm } from './bags-form.ts';
import { ChunkedForm } from './chunked-form.ts';
import { ClaimsForm } from './claims-form.ts';
import { ElementTimesForm } from './element-times-form.ts';
import type { FormReader, Setup } from './form-reader.ts';
import { type LinkedNodes, LinkedNodesForm } from './linked-nodes-form.ts';
import { ModulesForm } from './modules-form.ts';
import { PrecedenceForm } from './precedence-form.ts';
import { assumptions, type Prepared, prepareTable } from './prepare-table.ts';
import { PREVIEW_ROWS, type Preview, previewRow } from './preview.ts';
import { Problems } from './problems.ts';
import { ReadingsForm } from './readings-form.ts';
import { RemovalsForm } from './removals-form.ts';
import type { TableForm } from './table-forms.ts';
import type { TableProgress, TableRequest } from './table-request.ts';
import { isBlank, PassRecord, tableChunks } from './table-rows.ts';

/** A table that passed its check. */
export interface TableImport {
  readonly preview: Preview;
  readonly rows: number;
  /**
   * Batches of entries, one for each chunk of rows; to be read once. Throws RefusalError when
   * the file is no longer the one that was checked.
   */
  readonly entries: AsyncIterable<readonly Entry[]>;
}

const ZONES: LinkedNodes = { kind: 'zone', words: 'zones', links: [] };
const BARRIERS: LinkedNodes = {
  kind: 'barrier',
  words: 'barriers',
  links: [
    { field: 'a', link: 'separates', role: 'a', to: ['zone'] },
    { field: 'b', link: 'separates', role: 'b', to: ['zone'] },
    { field: 'by', link: 'made-by', to: ['part', 'assembly', 'joint'] },
  ],
};
const CROSSINGS: LinkedNodes = {
  kind: 'crossing',
  words: 'crossings',
  links: [
    { field: 'crosses', link: 'crosses', to: ['barrier'] },
    { field: 'by', link: 'made-by', to: ['joint', 'part', 'assembly'] },
  ],
};

const LINES: LinkedNodes = {
  kind: 'line',
  words: 'lines',
  links: [
    { field: 'by', link: 'made-by', to: ['part', 'assembly'] },
    { field: 'through', link: 'runs-through', role: 'by place', to: ['zone'] },
    { field: 'from', link: 'ends-at', role: 'from', to: ['part', 'assembly', 'line'] },
    { field: 'to', link: 'ends-at', role: 'to', to: ['part', 'assembly', 'line'] },
  ],
};

const READERS: Readonly<Record<TableForm, (setup: Setup) => FormReader>> = {
  parts: (setup) => new ChunkedForm(setup, 'part'),
  joints: (setup) => new ChunkedForm(setup, 'joint'),
  bags: (setup) => new BagsForm(setup),
  precedence: (setup) => new PrecedenceForm(setup),
  assemblies: (setup) => new AssembliesForm(setup),
  modules: (setup) => new ModulesForm(setup),
  removals: (setup) => new RemovalsForm(setup),
  readings: (setup) => new ReadingsForm(setup),
  claims: (setup) => new ClaimsForm(setup),
  'element-times': (setup) => new ElementTimesForm(setup),
  zones: (setup) => new LinkedNodesForm(setup, ZONES),
  barriers: (setup) => new LinkedNodesForm(setup, BARRIERS),
  crossings: (setup) => new LinkedNodesForm(setup, CROSSINGS),
  lines: (setup) => new LinkedNodesForm(setup, LINES),
};

/** A table that was checked, and what its import goes on with. */
interface Checked {
  readonly prepared: Prepared;
  readonly reader: FormReader;
  readonly record: PassRecord;
}

/**
 * Checks a whole table and says what would be imported, with every guess and problem.
 * @throws RefusalError when the file is empty or no text.
 */
export const previewTable = async (request: TableRequest): Promise<Preview> =>
  previewOf(await checkTable(request));

/**
 * Checks a whole table, then hands out its entries: all or nothing.
 * @throws RefusalError with every problem found, up to MOST_PROBLEMS.
 */
export async function importTable(request: TableRequest): Promise<TableImport> {
  const checked = await checkTable(request);
  checked.prepared.setup.problems.throwIfAny();
  const preview = previewOf(checked);
  return { preview, rows: checked.record.rows, entries: readEntries(checked) };
}

async function checkTable(request: TableRequest): Promise<Checked> {
  const prepared = await prepareTable(request);
  const { setup, as } = prepared;
  const reader = READERS[request.form](setup);
  const record = new PassRecord();
  if (setup.problems.any) return { prepared, reader, record };
  const progress = progressOf(request, 'checking');
  for await (const chunk of tableChunks(as, record, setup.problems, progress))
    for (const [i, cells] of chunk.rows.entries())
      if (!setup.problems.full) reader.check(cells, chunk.firstRow + i);
  if (reader.needsLook()) await lookAgain(prepared, reader, record);
  reader.settle();
  if (record.rows === 0 && !setup.problems.any) setup.problems.add(noRows(as.headings));
  return { prepared, reader, record };
}

async function lookAgain(
  prepared: Prepared,
  reader: FormReader,
  record: PassRecord,
): Promise<void> {
  const { request } = prepared.setup;
  const again = new PassRecord();
  const silent = new Problems(request.file);
  for await (const chunk of tableChunks(
    prepared.as,
    again,
    silent,
    progressOf(request, 'checking'),
  ))
    reader.look(chunk);
  if (!prepared.setup.problems.full) sameFile(record, again, request.file);
}

const noRows = (headings: readonly string[]) => ({
  row: 2,
  column: headings[0] ?? '',
  value: '',
  why: 'the table has headings and no rows',
  next: 'Import a table with a row for each thing.',
});

/** @throws RefusalError when two passes over a file saw different text. */
function sameFile(first: PassRecord, second: PassRecord, file: string): void {
  if (first.isSameAs(second)) return;
  throw new RefusalError({
    code: 'conflict',
    place: { file },
    why: 'the file was changed while it was imported',
    next: 'Import it again when nothing writes to it; nothing was kept.',
  });
}

const progressOf =
  (request: TableRequest, phase: TableProgress['phase']) =>
  (done: number): void =>
    request.progress?.({
      phase,
      done,
      ...(request.size === undefined ? {} : { total: request.size }),
    });

async function* readEntries({
  prepared,
  reader,
  record,
}: Checked): AsyncGenerator<readonly Entry[]> {
  const { request } = prepared.setup;
  const opening = reader.opening();
  if (opening.length > 0) yield opening;
  const again = new PassRecord();
  const silent = new Problems(request.file);
  for await (const chunk of tableChunks(
    prepared.as,
    again,
    silent,
    progressOf(request, 'reading'),
  )) {
    const entries = reader.entries(chunk);
    if (entries.length > 0) yield entries;
  }
  sameFile(record, again, request.file);
}

function previewOf({ prepared, reader, record }: Checked): Preview {
  const { setup, delimiter, decimal, head } = prepared;
  const { mapping, request, problems } = setup;
  const { encoding: value, encodingWhy: why } = head;
  return {
    form: request.form,
    file: request.file,
    encoding: { value, why, given: false, others: [] },
    delimiter,
    decimal,
    columns: mapping.columns,
    unmapped: mapping.columns.flatMap((c) => (c.field ? [] : [c.column])),
    assumed: assumptions(setup),
    rows: firstRows(prepared, reader),
    counts: { rows: record.rows, 'blank rows': record.blankRows, ...reader.counts() },
    notes: [...(setup.request.sheet?.notes ?? []), ...reader.notes()],
    problems: problems.refusals(),
  };
}

function firstRows(prepared: Prepared, reader: FormReader): Preview['rows'] {
  const { headings } = prepared.as;
  const refusals = prepared.setup.problems.refusals();
  const isMapped = prepared.setup.mapping.columns.length > 0;
  return prepared.firstRows
    .map((cells, i) => ({ cells, row: i + 2 }))
    .filter(({ cells }) => !isBlank(cells))
    .slice(0, PREVIEW_ROWS)
    .map(({ cells, row }) => {
      const canRead = isMapped && cells.length === headings.length;
      const values = canRead ? reader.values(cells, row) : new Map();
      return previewRow(cells, row, headings, values, refusals);
    });
}
