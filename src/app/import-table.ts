import {
  importTable,
  type Overrides,
  type Preview,
  previewTable,
  type TableForm,
  type TableProgress,
  type TableRequest,
} from '../capture/index.ts';
import { loadAll, type Questions } from '../engine/index.ts';
import { type Change, type Id, makeChange, ulid } from '../study/index.ts';
import type { Library } from './library.ts';

/** Passed on for the choices that the command line offers. */
export { TABLE_FORMS } from '../capture/index.ts';

export interface ImportRequest extends Pick<TableRequest, 'file' | 'open' | 'size' | 'sheet'> {
  readonly form: TableForm;
  readonly by: string;
  /** Who the store notes as having brought it; `by` when absent. */
  readonly hand?: string;
  readonly overrides?: Overrides;
  readonly progress?: (progress: TableProgress) => void;
}

export interface Imported {
  readonly preview: Preview;
  readonly rows: number;
  readonly changes: number;
}

/** What a table would become: guesses, first rows and problems; nothing is written. */
export const previewTableInto = async (
  library: Library,
  study: Id,
  request: ImportRequest,
): Promise<Preview> => previewTable(await tableRequest(library, study, request));

/**
 * Imports a table into a study as one gesture, all of it or nothing.
 * @throws RefusalError with a refusal for each thing wrong with the table.
 */
export async function importTableInto(
  library: Library,
  study: Id,
  request: ImportRequest,
): Promise<Imported> {
  const read = await importTable(await tableRequest(library, study, request));
  const stage = await library.store.stage(study, request.hand ?? request.by);
  const words = `import ${request.form} from ${request.file}`;
  let changes = 0;
  try {
    // Only now, when nobody else can write: a count taken before could be used up meanwhile.
    const author = await library.author(study, request.by);
    const gesture = ulid(author.nowMs, author.random);
    for await (const entries of read.entries) {
      const change: Change = makeChange(author, {
        words,
        entries,
        gesture: { id: gesture, before: changes },
      });
      await stage.add([change]);
      changes++;
    }
    if (changes > 0) await stage.commit();
    else await stage.drop();
  } catch (error) {
    await stage.drop();
    throw error;
  }
  return { preview: read.preview, rows: read.rows, changes };
}

async function tableRequest(
  library: Library,
  study: Id,
  request: ImportRequest,
): Promise<TableRequest> {
  const questions = request.form === 'claims' ? await loadAll() : undefined;
  return {
    ...request,
    view: await library.view(study),
    ids: () => ulid(Date.now(), Math.random),
    takenAt: { local: new Date().toISOString().slice(0, 19), zone: 'UTC' },
    ...(questions
      ? { knowsOutput: (id: string, output: string) => hasOutput(questions, id, output) }
      : {}),
  };
}

const hasOutput = (questions: Questions, id: string, output: string): boolean =>
  questions.get(id)?.body.outputs.some((o) => o.name === output) ?? false;
