import { createReadStream, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  importTable,
  readPhotoList,
  readRateBook,
  type TableForm,
} from '../../src/capture/index.ts';
import type { Entry } from '../../src/study/index.ts';
import { someIds, viewOf } from './help.ts';

const TABLES: readonly (readonly [string, TableForm, number])[] = [
  ['vehicle.csv', 'readings', 27],
  ['assemblies.csv', 'assemblies', 16],
  ['parts.csv', 'parts', 248],
  ['joints.csv', 'joints', 63],
  ['bags.csv', 'bags', 49],
  ['precedence.csv', 'precedence', 22],
  ['work.csv', 'readings', 28],
  ['fastenings.csv', 'readings', 15],
  ['alternatives.csv', 'readings', 124],
  ['modules.csv', 'modules', 2],
  ['claims.csv', 'claims', 7],
];

/** The demo's tables (invented) come in through the same door as any other. */
describe.each(['clean', 'faulty'])('the %s record of the demo', (record) => {
  const path = (file: string) =>
    fileURLToPath(new URL(`../../demo/tables/van-27-${record}/${file}`, import.meta.url));

  it('imports without a guess that is wrong, a problem or a finding', async () => {
    const batches: (readonly Entry[])[] = [];
    const ids = someIds();
    for (const [file, form, rows] of TABLES) {
      const read = await importTable({
        form,
        file,
        open: () => createReadStream(path(file)),
        view: viewOf(...batches),
        ids,
        by: 'demo',
        takenAt: { local: '2026-10-05T09:00' },
      });
      // The bag that nobody wrote a joint on is in the faulty record only.
      const stray = file === 'bags.csv' && record === 'faulty' ? 1 : 0;
      expect([file, read.rows, read.preview.unmapped]).toEqual([file, rows + stray, []]);
      for await (const entries of read.entries) batches.push(entries);
    }
    const view = viewOf(...batches);
    expect(view.findings).toEqual([]);
    expect(view.nodes('part')).toHaveLength(248);
    expect(view.nodes('joint')).toHaveLength(63);
    expect(
      readPhotoList(readFileSync(path('photos.csv'), 'utf8'), 'photos.csv', view).length,
    ).toBeGreaterThan(0);
    for (const rates of ['rates-R1.json', 'rates-R2.json'])
      expect(readRateBook(readFileSync(path(rates), 'utf8'), rates).cells.length).toBeGreaterThan(
        0,
      );
  });
});
