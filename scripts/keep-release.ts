/**
 * Keeps what this release writes, for later ones to open: a library and a bundle with an entry of
 * every kind, and what they say, under test/fixtures/releases/<version>/. Run once a release:
 * node bin/run-ts.js scripts/keep-release.ts
 */
import { existsSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Library, saveBundle, VERSION } from '../src/app/index.ts';
import { openSqliteStore } from '../src/store/index.ts';
import { releaseSays } from '../test/app/release-says.ts';
import { recordFullStudy } from '../test/whole/full-study.ts';
import { ROOT } from './root.ts';

const folder = join(ROOT, 'test/fixtures/releases', VERSION);
if (existsSync(folder)) throw new Error(`${folder} is there already: a release is kept once`);
const dir = join(folder, 'library');
await mkdir(dir, { recursive: true });
const library = new Library(await openSqliteStore(dir), dir, 'desk-release');
const study = await recordFullStudy(library);
await saveBundle(library, study, join(folder, 'study.hoist.zip'));
const said = await releaseSays(library, study);
await writeFile(join(folder, 'says.json'), `${JSON.stringify(said, undefined, 1)}\n`);
await library.close();
await rm(join(dir, 'device.json'), { force: true });
console.log(`${folder}: ${said.revision}, ${said.answers.length} answers`);
