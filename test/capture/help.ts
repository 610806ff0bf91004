import {
  type Chunk,
  importTable,
  type Overrides,
  type Preview,
  previewTable,
  type TableForm,
} from '../../src/capture/index.ts';
import {
  type Change,
  clockText,
  type Entry,
  extend,
  fold,
  type Refusal,
  RefusalError,
  type StudyView,
  ulid,
} from '../../src/study/index.ts';

/** Ids in a fixed order, so that a failure reads the same twice. */
export function someIds(): () => string {
  let n = 0;
  return () => ulid(1_700_000_000_000 + n++, () => 0.5);
}

/** The view that entries leave, each batch being a change. */
export function viewOf(...batches: readonly (readonly Entry[])[]): StudyView {
  const ids = someIds();
  const changes = batches.map(
    (entries, i): Change => ({
      id: ids(),
      study: 'study',
      device: 'device',
      seq: i + 1,
      clock: clockText({ ms: 1_700_000_000_000 + i, count: 0, device: 'device' }),
      by: 'tester',
      gesture: ids(),
      words: 'test',
      saw: {},
      entries,
    }),
  );
  return fold('study', changes);
}

/** A view with more entries, by a later change. */
export const viewWith = (view: StudyView, entries: readonly Entry[]): StudyView =>
  extend(view, [
    {
      id: ulid(1_800_000_000_000, () => 0.5),
      ...{ study: 'study', device: 'device', seq: view.changes + 1, by: 'tester' },
      clock: clockText({ ms: 1_800_000_000_000, count: 0, device: 'device' }),
      ...{ gesture: 'later', words: 'test', saw: {}, entries },
    },
  ]);

const node = (
  id: string,
  kind: 'vehicle' | 'assembly',
  parent: string | null,
  name: string,
): Entry => ({
  v: 1,
  e: 'node.add',
  node: { id, kind, parent, label: id, name },
});

/** A study with a vehicle V and the assemblies 10 and 40. */
export const START: readonly Entry[] = [
  node('V', 'vehicle', null, 'a van'),
  node('10', 'assembly', 'V', 'body'),
  node('40', 'assembly', 'V', 'battery'),
];

export interface Given {
  readonly overrides?: Overrides;
  readonly start?: readonly Entry[];
  readonly file?: string;
  readonly condition?: string;
  readonly knowsOutput?: (question: string, output: string) => boolean;
}

/** Text or bytes, cut into pieces of a size that splits rows, quotes and characters. */
async function* inPieces(source: string | Uint8Array, size: number): AsyncGenerator<Chunk> {
  const bytes = typeof source === 'string' ? new TextEncoder().encode(source) : source;
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

const requestOf = (form: TableForm, source: string | Uint8Array, given: Given, size: number) => ({
  form,
  file: given.file ?? `${form}.csv`,
  open: () => inPieces(source, size),
  view: viewOf(given.start ?? START),
  ids: someIds(),
  by: 'tester',
  takenAt: { local: '2026-10-05T09:00' },
  ...(given.overrides ? { overrides: given.overrides } : {}),
  ...(given.condition ? { condition: given.condition } : {}),
  ...(given.knowsOutput ? { knowsOutput: given.knowsOutput } : {}),
});

export interface Imported {
  readonly preview: Preview;
  readonly batches: readonly (readonly Entry[])[];
  readonly view: StudyView;
}

export async function importText(
  form: TableForm,
  source: string | Uint8Array,
  given: Given = {},
  size = 7,
): Promise<Imported> {
  const read = await importTable(requestOf(form, source, given, size));
  const batches: (readonly Entry[])[] = [];
  for await (const entries of read.entries) batches.push(entries);
  return { preview: read.preview, batches, view: viewOf(given.start ?? START, ...batches) };
}

export const previewText = (
  form: TableForm,
  source: string | Uint8Array,
  given: Given = {},
): Promise<Preview> => previewTable(requestOf(form, source, given, 1000));

/** What is refused; fails when nothing is, so that no entry was handed out. */
export async function refusalsOf(
  form: TableForm,
  source: string | Uint8Array,
  given: Given = {},
): Promise<readonly Refusal[]> {
  try {
    await importText(form, source, given);
  } catch (error) {
    if (error instanceof RefusalError) return error.refusals;
    throw error;
  }
  throw new Error('nothing was refused');
}

/** Lines of a table. */
export const lines = (...rows: readonly string[]): string => `${rows.join('\n')}\n`;
