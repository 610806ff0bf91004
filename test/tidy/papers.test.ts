import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { ROOT } from '../../scripts/root.ts';
import { filesBelow, readText } from './sources.ts';

const decisions = filesBelow('docs/decisions', '.md');
const papers = filesBelow('', '.md');

describe('decisions', () => {
  it('are half a page each, numbered without a gap', () => {
    const long = decisions.filter((path) => readText(path).split('\n').length > 60);
    expect(long).toEqual([]);
    const numbers = decisions.map((path) => Number(posix.basename(path).slice(0, 4)));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
  });

  it('give each dependency a line of reason', () => {
    const text = readText('docs/decisions/0002-dependencies.md');
    const all = { ...packageJson.dependencies, ...packageJson.devDependencies };
    const reasons = [...text.matchAll(/^\| (.*?) \| (.*?) \|$/gm)].filter(
      (m) => (m[2] ?? '').length > 10,
    );
    const named = reasons.flatMap((m) =>
      [...(m[1] ?? '').matchAll(/`([^`]+)`/g)].map((n) => n[1] ?? ''),
    );
    expect(named.sort()).toEqual(Object.keys(all).sort());
  });
});

describe('dependencies', () => {
  /** Called by a script of package.json, copied from, or read by the compiler alone. */
  const notImported = /^(@types\/|@biomejs\/biome$|@fontsource\/)/;
  const sources = ['src', 'web', 'test', 'scripts', 'demo', 'bench', 'bin']
    .flatMap((folder) => filesBelow(folder, '.ts', '.tsx', '.js', '.css'))
    .concat('vitest.config.ts')
    .map(readText);
  const all = Object.keys({ ...packageJson.dependencies, ...packageJson.devDependencies });

  it.each(all.filter((name) => !notImported.test(name)))('%s is used', (name) => {
    const quoted = [`'${name}'`, `'${name}/`, `"${name}"`];
    expect(sources.some((text) => quoted.some((part) => text.includes(part)))).toBe(true);
  });
});

describe('papers', () => {
  it('lead to files that are there', () => {
    const lost = papers.flatMap((path) =>
      [...readText(path).matchAll(/\]\(([^)#\s]+)[^)]*\)/g)]
        .map((link) => link[1] ?? '')
        .filter((to) => !/^[a-z]+:/.test(to))
        .filter((to) => !existsSync(join(ROOT, posix.join(posix.dirname(path), to))))
        .map((to) => `${path} leads to ${to}`),
    );
    expect(lost).toEqual([]);
  });

  it('name files and folders of ours that are there', () => {
    const lost = ['README.md', 'ARCHITECTURE.md', 'CONTRIBUTING.md', 'SECURITY.md'].flatMap(
      (path) =>
        [...readText(path).matchAll(/`((?:src|web|test|scripts|demo|docs|bench|bin)\/[\w./-]*)`/g)]
          .map((name) => name[1] ?? '')
          .filter((name) => !existsSync(join(ROOT, name)))
          .map((name) => `${path} names ${name}`),
    );
    expect(lost).toEqual([]);
  });

  it('name commands of package.json', () => {
    const lost = papers.flatMap((path) =>
      [...readText(path).matchAll(/npm run ([\w:-]+)/g)]
        .map((command) => command[1] ?? '')
        .filter((name) => !Object.hasOwn(packageJson.scripts, name))
        .map((name) => `${path} names npm run ${name}`),
    );
    expect(lost).toEqual([]);
  });

  it('name verbs of the command line', () => {
    const lost = papers.flatMap((path) =>
      [...readText(path).matchAll(/npx hoistside (?:--library \S+ )?(?!help)([a-z-]+)/g)]
        .map((verb) => verb[1] ?? '')
        .filter((verb) => !existsSync(join(ROOT, `src/cli/${verb}.ts`)))
        .map((verb) => `${path} names the verb ${verb}`),
    );
    expect(lost).toEqual([]);
  });

  it('give the test command that the build runs, word for word', () => {
    const command = 'npm ci && npm test';
    expect(readText('README.md').split('\n')).toContain(command);
    expect(readText('.ci/run').split('\n')).toContain(command);
  });
});
