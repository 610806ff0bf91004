import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { generateDemo } from '../../demo/generate.ts';
import { TABLES } from './record.ts';

// Checks of made-up data: they show that the demo is what it says, and prove nothing else.

const out = mkdtempSync(join(tmpdir(), 'van-27-'));
afterAll(() => rmSync(out, { recursive: true, force: true }));

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();

test('the generator writes the committed files, byte for byte', () => {
  generateDemo(out);
  expect(filesIn(out)).toEqual(filesIn(TABLES));
  for (const file of filesIn(TABLES))
    expect(readFileSync(join(out, file)).equals(readFileSync(join(TABLES, file))), file).toBe(true);
});

test('the true column is in no file', () => {
  for (const file of filesIn(TABLES).filter((f) => !f.endsWith('.png')))
    expect(readFileSync(join(TABLES, file), 'utf8'), file).not.toMatch(/true_kg|unit_mass_true/);
});

test('a drawn photograph is a PNG of at most 60 kB', () => {
  const photos = filesIn(TABLES).filter((f) => f.endsWith('.png'));
  expect(photos).toHaveLength(24);
  for (const file of photos) {
    const bytes = readFileSync(join(TABLES, file));
    expect(bytes.subarray(1, 4).toString('latin1'), file).toBe('PNG');
    expect(bytes.length, file).toBeLessThanOrEqual(60_000);
  }
});
