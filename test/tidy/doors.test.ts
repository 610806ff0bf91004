import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { filesBelow, readText } from './sources.ts';

/** What is missing from a door's opening comment: purpose, dependencies, what it stays away from. */
function doorFaults(folder: string, source: string): readonly string[] {
  const comment = /^\/\*\*\n([\s\S]*?)\*\//.exec(source)?.[1] ?? '';
  const lines = comment
    .split('\n')
    .map((line) => line.replace(/^\s*\*\s?/, '').trim())
    .filter((line) => line !== '');
  return [
    lines.length < 3 ? 'opens with fewer than three lines of comment' : '',
    lines[0]?.startsWith(`${folder}: `) ? '' : `does not open with "${folder}: " and its purpose`,
    /\bdepends on\b/i.test(comment) ? '' : 'does not say what it depends on',
    /\bstays away from\b/i.test(comment) ? '' : 'does not say what it stays away from',
  ].filter((fault) => fault !== '');
}

const folders = readdirSync(join(ROOT, 'src'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && filesBelow(`src/${entry.name}`).length > 0)
  .map((entry) => entry.name);

describe('folders of src', () => {
  it.each(folders)('%s has a door that opens with its paragraph', (folder) => {
    const door = `src/${folder}/index.ts`;
    expect(filesBelow(`src/${folder}`)).toContain(door);
    expect(doorFaults(folder, readText(door))).toEqual([]);
  });

  it('and a door without a paragraph is seen', () => {
    expect(doorFaults('study', "export * from './view.ts';\n")).toHaveLength(4);
  });
});
