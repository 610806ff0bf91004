import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { bundleJsonSchema } from '../../src/schema/index.ts';
import { findQuestions } from './find-questions.ts';
import { indexSource } from './index-source.ts';
import { MADE_MARK } from './markdown.ts';
import { methodIndex } from './method-index.ts';
import { methodPage } from './method-page.ts';
import { publishedTests } from './published-tests.ts';
import { validationPage } from './validation-page.ts';

/** Text by path from the root; null for a page whose question is gone. */
export type GeneratedFiles = ReadonlyMap<string, string | null>;

const METHODS = 'docs/methods';

/** Everything that is made from the question files, and the published schema of bundles. */
export async function generatedFiles(root: string): Promise<GeneratedFiles> {
  const files = await findQuestions(root);
  const questions = files.map((f) => f.question);
  const made = new Map<string, string | null>([
    ['src/engine/registry.generated.ts', indexSource(files)],
    [`${METHODS}/README.md`, methodIndex(questions)],
    ['docs/bundle.schema.json', `${JSON.stringify(bundleJsonSchema(), undefined, 2)}\n`],
    ['docs/validation/README.md', validationPage(questions, publishedTests(root))],
    ...questions.map((q) => [`${METHODS}/${q.id}.md`, methodPage(q)] as const),
  ]);
  for (const path of leftOver(root, made)) made.set(path, null);
  return made;
}

/** Pages made by an earlier run for questions that are no more. */
function leftOver(root: string, made: GeneratedFiles): readonly string[] {
  if (!existsSync(join(root, METHODS))) return [];
  return readdirSync(join(root, METHODS))
    .map((name) => `${METHODS}/${name}`)
    .filter((path) => !made.has(path) && (readText(root, path) ?? '').startsWith(MADE_MARK));
}

/** Paths whose text on disk differs from what would be made now. */
export const stalePaths = (root: string, made: GeneratedFiles): readonly string[] =>
  [...made].filter(([path, text]) => readText(root, path) !== text).map(([path]) => path);

export function writeFiles(root: string, made: GeneratedFiles): void {
  for (const [path, text] of made) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    if (text === null) rmSync(join(root, path));
    else writeFileSync(join(root, path), text);
  }
}

const readText = (root: string, path: string): string | null =>
  existsSync(join(root, path)) ? readFileSync(join(root, path), 'utf8') : null;
