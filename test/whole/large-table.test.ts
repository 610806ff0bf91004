import { execFile } from 'node:child_process';
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeLargeParts } from './large-parts.ts';

const MEGABYTES = Number(process.env.HOISTSIDE_LARGE_TABLE_MB ?? 200);
/** The whole process: program, database and the import together. */
const MOST_MEMORY_MEGABYTES = 500;

const root = fileURLToPath(new URL('../../', import.meta.url));
const run = promisify(execFile);
let dir = '';

beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'large-table-'));
});
afterAll(() => rm(dir, { recursive: true, force: true }));

describe('a large table', () => {
  it(`of ${MEGABYTES} MB is imported in little memory, and every row is there`, async () => {
    const table = join(dir, 'parts.csv');
    const rows = await writeLargeParts(table, MEGABYTES * 1e6);
    const script = [
      'bin/run-ts.js',
      'test/whole/import-large-table.ts',
      join(dir, 'library'),
      table,
    ];
    const { stdout } = await run(process.execPath, script, { cwd: root });
    const took = JSON.parse(stdout);
    const size = ((await stat(table)).size / 1e6).toFixed(0);
    console.log(
      `imported ${size} MB, ${rows} rows, in ${took.seconds.toFixed(0)} s; peak memory ${took.peakMegabytes.toFixed(0)} MB`,
    );
    expect(took.rows).toBe(rows);
    expect(took.parts).toBe(rows);
    expect(took.found).toMatchObject([{ label: 'P00012345', count: 2, mass: 0.055 }]);
    expect(took.peakMegabytes).toBeLessThan(MOST_MEMORY_MEGABYTES);
  }, 900_000);
});
