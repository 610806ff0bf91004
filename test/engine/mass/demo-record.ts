import { createReadStream } from 'node:fs';
import { ROOT } from '../../../scripts/root.ts';
import { importTable, type TableForm } from '../../../src/capture/index.ts';
import { type Entry, fold, type StudyView } from '../../../src/study/index.ts';
import { someIds, viewOf } from '../../capture/help.ts';

const TABLES: readonly (readonly [string, TableForm])[] = [
  ['vehicle.csv', 'readings'],
  ['assemblies.csv', 'assemblies'],
  ['parts.csv', 'parts'],
  ['joints.csv', 'joints'],
  ['modules.csv', 'modules'],
];

/** What the demo's record (invented) says of masses, come in through its tables. */
export async function demoRecord(record: 'clean' | 'faulty'): Promise<StudyView> {
  const batches: (readonly Entry[])[] = [];
  const ids = someIds();
  for (const [file, form] of TABLES) {
    const read = await importTable({
      form,
      file,
      open: () => createReadStream(`${ROOT}/demo/tables/van-27-${record}/${file}`),
      view: batches.length === 0 ? fold('study', []) : viewOf(...batches),
      ids,
      by: 'demo',
      takenAt: { local: '2026-10-05T09:00' },
    });
    for await (const entries of read.entries) batches.push(entries);
  }
  return viewOf(...batches);
}
