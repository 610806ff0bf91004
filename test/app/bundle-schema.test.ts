import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, expect, test } from 'vitest';
import schema from '../../docs/bundle.schema.json' with { type: 'json' };
import { saveBundle } from '../../src/app/index.ts';
import { recordFullStudy } from '../whole/full-study.ts';
import { Libraries } from './libraries.ts';
import { unpack } from './zip-tools.ts';

/** A bundle as the schema describes it, read without any of our own reader. */
interface Bundle {
  manifest: Record<string, unknown>;
  changes: { change: { entries: Record<string, unknown>[] } }[];
}

const fits = new Ajv2020({ strict: false, validateFormats: false }).compile(schema);
let libraries: Libraries;
let bundle: Bundle;
beforeAll(async () => {
  libraries = await Libraries.start();
  const library = await libraries.open('here');
  const path = libraries.path('study.hoist.zip');
  await saveBundle(library, await recordFullStudy(library), path);
  const files = await unpack(path);
  const lines = files.get('changes.ndjson')?.toString().trimEnd().split('\n') ?? [];
  bundle = {
    manifest: JSON.parse(files.get('manifest.json')?.toString() ?? ''),
    changes: lines.map((line) => JSON.parse(line)),
  };
});
afterAll(() => libraries.end());

test('a bundle with every kind of entry fits the published schema', () => {
  fits(bundle);
  expect(fits.errors).toBeNull();
});

test.each<[string, (b: Bundle) => void]>([
  ['another version', (b) => Object.assign(b.manifest, { version: 2 })],
  ['a manifest without its study', (b) => delete b.manifest.study],
  [
    'an entry of no known kind',
    (b) => Object.assign(b.changes[0]?.change.entries[0] ?? {}, { e: 'x' }),
  ],
  [
    'an entry with a field too many',
    (b) => Object.assign(b.changes[0]?.change.entries[0] ?? {}, { more: 1 }),
  ],
  [
    'a change without its entries',
    (b) => Object.assign(b.changes[0]?.change ?? {}, { entries: 7 }),
  ],
])('%s does not', (_what, breakIt) => {
  const broken = structuredClone(bundle);
  breakIt(broken);
  expect(fits(broken)).toBe(false);
});
