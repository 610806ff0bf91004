import { readFile } from 'node:fs/promises';
import { InvalidArgumentError } from 'commander';
import type { WrittenInputs } from '../engine/index.ts';
import { isWay, WAYS, type Way } from '../quantity/index.ts';
import { RefusalError } from '../study/index.ts';

/** Collects `name=value` options into a record. */
export function pair(
  text: string,
  before: Readonly<Record<string, string>>,
): Record<string, string> {
  const at = text.indexOf('=');
  if (at < 1) throw new InvalidArgumentError(`"${text}" is not of the form name=value.`);
  return { ...before, [text.slice(0, at).trim()]: text.slice(at + 1).trim() };
}

/** Inputs from a JSON file and from the line; the line wins. @throws RefusalError for a file that is none. */
export async function writtenInputs(
  file: string | undefined,
  set: Readonly<Record<string, string>>,
): Promise<WrittenInputs | undefined> {
  const fromLine = Object.fromEntries(
    Object.entries(set).map(([name, text]) => [name, tableText(text)]),
  );
  if (file === undefined) return Object.keys(set).length > 0 ? fromLine : undefined;
  return { ...(await jsonInputs(file)), ...fromLine };
}

/** A value that is a JSON list is a table; anything else is as written. */
function tableText(text: string): WrittenInputs[string] {
  if (!text.startsWith('[')) return text;
  try {
    return rowsOf(JSON.parse(text));
  } catch {
    return text;
  }
}

async function jsonInputs(file: string): Promise<WrittenInputs> {
  const parsed = parseJson(await readText(file), file);
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed))
    throw badJson(file, 'the file holds no object of inputs');
  return Object.fromEntries(
    Object.entries(parsed).map(([name, value]) => [
      name,
      Array.isArray(value) ? rowsOf(value) : String(value),
    ]),
  );
}

const rowsOf = (list: readonly unknown[]): Record<string, string>[] =>
  list.map((row) =>
    Object.fromEntries(Object.entries(row as object).map(([k, v]) => [k, String(v)])),
  );

async function readText(file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8');
  } catch {
    throw new RefusalError({
      code: 'not-found',
      place: { file },
      value: file,
      why: 'the file can not be read',
      next: 'Check its name and that you may read it.',
    });
  }
}

function parseJson(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw badJson(file, `the file is no JSON (${error instanceof Error ? error.message : ''})`);
  }
}

const badJson = (file: string, why: string): RefusalError =>
  new RefusalError({
    code: 'bad-value',
    place: { file },
    why,
    next: 'Write e.g. {"wheelbase": "2700 ± 2 mm", "lifts": [{"angle": "4 °", "gain": "7.8 ± 0.7 kg"}]}.',
  });

/** A date as written, today when there is none. @throws RefusalError for what is none. */
export function dateOf(text: string | undefined): string {
  if (text === undefined) return new Date().toISOString().slice(0, 10);
  if (/^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text))) return text;
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'date' },
    value: text,
    why: 'this is no date',
    next: 'Write it as 2026-11-25.',
  });
}

/** A way of knowing by its word. @throws RefusalError `bad-call`. */
export function wayNamed(word: string): Way {
  if (isWay(word)) return word;
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'how' },
    value: word,
    why: 'no way of knowing goes by this word',
    next: `Say ${WAYS.join(', ')}.`,
  });
}
