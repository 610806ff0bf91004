import { expect, it } from 'vitest';
import { generatedFiles, stalePaths } from '../../scripts/registry/generated-files.ts';
import { openingComment } from '../../scripts/registry/published-tests.ts';
import { ROOT } from '../../scripts/root.ts';
import { filesBelow, readText } from './sources.ts';

const made = await generatedFiles(ROOT);

it('registry and pages are what the question files give (else: npm run registry)', () => {
  expect(stalePaths(ROOT, made)).toEqual([]);
});

it('a changed and a left-over page are seen', () => {
  const other = new Map(made).set('README.md', 'other').set('docs/methods/README.md', null);
  expect(stalePaths(ROOT, other)).toEqual(
    expect.arrayContaining(['README.md', 'docs/methods/README.md']),
  );
});

it('every file of test/published opens with its citation', () => {
  const bare = filesBelow('test/published', '.test.ts').filter(
    (path) => openingComment(readText(path)).length < 20,
  );
  expect(bare).toEqual([]);
});
