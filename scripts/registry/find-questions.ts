import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Question } from '../../src/engine/method.ts';

/** A question and the file that defines it, from the project's root, with forward slashes. */
export interface QuestionFile {
  readonly file: string;
  readonly question: Question;
}

const SUFFIX = '.question.ts';

/**
 * Imports every src/engine/<subject>/<id>.question.ts below `root`, in the order of their ids.
 * @throws Error naming the file, when one exports no question or carries another's id.
 */
export async function findQuestions(root: string): Promise<readonly QuestionFile[]> {
  const found: QuestionFile[] = [];
  for (const file of questionFiles(root)) found.push({ file, question: await read(root, file) });
  return found.sort((a, b) => (a.question.id < b.question.id ? -1 : 1));
}

/** Paths from `root` of all question files, sorted. */
export function questionFiles(root: string): readonly string[] {
  const engine = 'src/engine';
  const subjects = readdirSync(join(root, engine), { withFileTypes: true });
  return subjects
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) =>
      readdirSync(join(root, engine, name))
        .filter((file) => file.endsWith(SUFFIX))
        .map((file) => `${engine}/${name}/${file}`),
    )
    .sort();
}

async function read(root: string, file: string): Promise<Question> {
  const module: { default?: Question } = await import(pathToFileURL(join(root, file)).href);
  const id = module.default?.id;
  const wanted = basename(file, SUFFIX);
  if (module.default === undefined || id !== wanted)
    throw new Error(
      `${file}: its default export has the id ${JSON.stringify(id)}, and ${JSON.stringify(wanted)} is wanted. ` +
        'Export the question as default and give it the id of its file.',
    );
  return module.default;
}
