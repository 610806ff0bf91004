import { removalsTable } from '../../../demo/removals-table.ts';
import { REMOVALS, type Removal } from '../../../demo/source/removals.ts';
import { importTable, type TableForm } from '../../../src/capture/index.ts';
import { type Answer, askStudy, loadQuestion } from '../../../src/engine/index.ts';
import { type Entry, fold, type StudyView } from '../../../src/study/index.ts';
import { someIds, viewOf } from '../../capture/help.ts';
import { committedText } from '../../demo/record.ts';

const TABLES: readonly (readonly [string, TableForm])[] = [
  ['vehicle.csv', 'readings'],
  ['assemblies.csv', 'assemblies'],
  ['parts.csv', 'parts'],
  ['joints.csv', 'joints'],
  ['precedence.csv', 'precedence'],
  ['hoist.csv', 'readings'],
  ['removals.csv', 'removals'],
  ['work.csv', 'readings'],
];

/** What a table is, where it is not as committed. */
export type InPlace = Readonly<Record<string, (committed: string) => string>>;

/** Entries of the demo's clean record (invented) with a removal plan, one batch a table. */
export async function planEntries(
  removals: readonly Removal[] = REMOVALS,
  inPlace: InPlace = {},
): Promise<readonly (readonly Entry[])[]> {
  const batches: (readonly Entry[])[] = [];
  const ids = someIds();
  const texts: InPlace = { 'removals.csv': () => removalsTable(removals), ...inPlace };
  for (const [file, form] of TABLES) {
    const committed = committedText('clean', file);
    const text = texts[file]?.(committed) ?? committed;
    const read = await importTable({
      form,
      file,
      open: async function* () {
        yield new TextEncoder().encode(text);
      },
      view: batches.length === 0 ? fold('study', []) : viewOf(...batches),
      ids,
      by: 'demo',
      takenAt: { local: '2026-10-05T09:00' },
    });
    for await (const entries of read.entries) batches.push(entries);
  }
  return batches;
}

export const planStudy = async (removals?: readonly Removal[], inPlace?: InPlace) =>
  viewOf(...(await planEntries(removals, inPlace)));

/** The balance after the step of this number. */
export async function balanceAt(view: StudyView, label: string): Promise<Answer> {
  const { question, questions } = await loadQuestion('hoist-balance');
  return askStudy(question, questions, { view, subject: view.find(label)?.id ?? label });
}

/** The order of the whole plan. */
export async function orderOf(view: StudyView): Promise<Answer> {
  const { question, questions } = await loadQuestion('removal-order');
  return askStudy(question, questions, { view, subject: view.root()?.id ?? '' });
}
