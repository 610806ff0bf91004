import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A test file of test/published with the citation at its head. */
export interface PublishedTest {
  readonly file: string;
  /** Its opening comment as one line; '' when there is none. */
  readonly citation: string;
}

/** All files of test/published, in the order of their names. */
export function publishedTests(root: string): readonly PublishedTest[] {
  const folder = 'test/published';
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.test.ts'))
    .sort()
    .map((name) => `${folder}/${name}`)
    .map((file) => ({ file, citation: openingComment(readFileSync(join(root, file), 'utf8')) }));
}

/** Words of the comment that a source text opens with, on one line; '' when it opens otherwise. */
export function openingComment(source: string): string {
  const block = /^\s*\/\*\*?([\s\S]*?)\*\//.exec(source)?.[1];
  const lines = block ?? /^\s*((?:\/\/[^\n]*\n)+)/.exec(source)?.[1] ?? '';
  return lines
    .split('\n')
    .map((text) => text.replace(/^\s*(\*|\/\/)?\s?/, '').trim())
    .join(' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
