import { createReadStream, readFileSync } from 'node:fs';
import { ROOT } from '../../../scripts/root.ts';
import { importTable, readRateBook, type TableForm } from '../../../src/capture/index.ts';
import { type Entry, fold, type StudyView } from '../../../src/study/index.ts';
import { someIds, viewOf } from '../../capture/help.ts';

const TABLES: readonly (readonly [string, TableForm])[] = [
  ['vehicle.csv', 'readings'],
  ['assemblies.csv', 'assemblies'],
  ['parts.csv', 'parts'],
  ['joints.csv', 'joints'],
  ['bags.csv', 'bags'],
  ['precedence.csv', 'precedence'],
  ['hoist.csv', 'readings'],
  ['removals.csv', 'removals'],
  ['work.csv', 'readings'],
  ['fastenings.csv', 'readings'],
  ['seals.csv', 'readings'],
  ['zones.csv', 'zones'],
  ['barriers.csv', 'barriers'],
  ['crossings.csv', 'crossings'],
  ['alternatives.csv', 'readings'],
  ['lines.csv', 'lines'],
];

/** The demo's record (invented), come in through its tables, with the latest rate book. */
export async function demoStudy(record: 'clean' | 'faulty'): Promise<StudyView> {
  const path = (file: string) => `${ROOT}/demo/tables/van-27-${record}/${file}`;
  const batches: (readonly Entry[])[] = [];
  const ids = someIds();
  const overrides = { spreads: { 'time.access,time.drive': '15 %' } };
  for (const [file, form] of TABLES) {
    const read = await importTable({
      form,
      file,
      open: () => createReadStream(path(file)),
      view: batches.length === 0 ? fold('study', []) : viewOf(...batches),
      ids,
      by: 'demo',
      takenAt: { local: '2026-10-05T09:00' },
      ...(form === 'joints' ? { overrides } : {}),
    });
    for await (const entries of read.entries) batches.push(entries);
  }
  const book = readRateBook(readFileSync(path('rates-R1.json'), 'utf8'), 'rates-R1.json');
  return viewOf(...batches, [{ v: 1, e: 'rates.put', book }]);
}
