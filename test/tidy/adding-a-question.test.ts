import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import type { Question } from '../../src/engine/index.ts';
import { questionFaults } from './question-faults.ts';
import { readText } from './sources.ts';

const PAGE = 'docs/methods/adding-a-question.md';
const page = readText(PAGE);
/** The example and the path at which the page says it would stand. */
const source = /```ts\n([\s\S]*?)```/.exec(page)?.[1] ?? '';
const path = /`(src\/engine\/[\w-]+\/[\w-]+\.question\.ts)`/.exec(page)?.[1] ?? '';

/** Compiles the example as if it stood at its path, under the rules of the engine. */
function compile(text: string): readonly string[] {
  const config = ts.getParsedCommandLineOfConfigFile(
    join(ROOT, 'tsconfig.engine.json'),
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: () => undefined,
    },
  );
  if (config === undefined) throw new Error('tsconfig.engine.json can not be read');
  const host = ts.createCompilerHost(config.options);
  const standing = join(ROOT, path);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (name) => name === standing || fileExists(name);
  host.readFile = (name) => (name === standing ? text : readFile(name));
  host.getSourceFile = (name, ...rest) =>
    name === standing
      ? ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true)
      : getSourceFile(name, ...rest);
  const program = ts.createProgram([standing], config.options, host);
  const file = program.getSourceFile(standing);
  return [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)].map(
    (d) => ts.flattenDiagnosticMessageText(d.messageText, '\n'),
  );
}

/** Loads the example from a folder of its own, its imports led back to the engine. */
async function load(): Promise<Question> {
  const folder = mkdtempSync(join(tmpdir(), 'hoistside-example-'));
  try {
    const file = join(folder, 'example.question.ts');
    const engine = pathToFileURL(join(ROOT, 'src/engine')).href;
    writeFileSync(file, source.replaceAll("from '../", `from '${engine}/`));
    const module: { default: Question } = await import(pathToFileURL(file).href);
    return module.default;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

it('compiles as it stands, and a slip in it would not', () => {
  expect(compile(source)).toEqual([]);
  expect(compile(source.replace("kind: 'ratio'", "kind: 'share'")).length).toBeGreaterThan(0);
});

it('is a whole question; only its own test file is not there', async () => {
  const question = await load();
  expect(questionFaults(question)).toEqual([`check ${question.checks[0].test} is no file`]);
  const { body } = question;
  if (body.body !== 'row') throw new Error('the example is a row');
  expect(body.outputs[0]?.of(452, 438, 381, 369)).toBeCloseTo(890 / 1640, 12);

  const share = body.outputs[0];
  const blind: Question = {
    ...question,
    body: { body: 'row', outputs: share === undefined ? [] : [{ ...share, of: (fl) => fl }] },
  };
  expect(questionFaults(blind)).toContain('rearRight is asked for and used by no formula');
});
