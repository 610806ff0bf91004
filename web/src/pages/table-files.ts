import { isTableForm, type Overrides, type TableForm } from '../../../src/capture/index.ts';
import type { ImportAnswer } from '../../../src/server/contract.ts';
import type { Id } from '../../../src/study/index.ts';
import { type Api, studyPath } from '../worker/api.ts';

/** Files in the order in which they build on each other. */
const ORDER: readonly FileForm[] = [
  'assemblies',
  'parts',
  'joints',
  'bags',
  'precedence',
  'readings',
  'modules',
  'removals',
  'element-times',
  'zones',
  'barriers',
  'crossings',
  'lines',
  'claims',
];

/** Names of tables that go by another word than their form. */
const BY_NAME: Readonly<Record<string, TableForm>> = {
  vehicle: 'readings',
  hoist: 'readings',
  seals: 'readings',
};

/** What a file is taken for: a table of some form, or a rate book; undefined when its name tells nothing. */
export function formOf(name: string): TableForm | 'rate book' | undefined {
  const stem = name.toLowerCase().split('.')[0] ?? '';
  if (/\.json$/i.test(name)) return 'rate book';
  return isTableForm(stem) ? stem : BY_NAME[stem];
}

export type FileForm = TableForm | 'rate book' | 'leave out';

/** One file on its way into a study. */
export interface FileStep {
  readonly file: File;
  readonly form: FileForm;
  readonly overrides: Overrides;
  /** Of a workbook; the first that is not hidden when empty or absent. */
  readonly sheet?: string;
}

export const isWorkbookName = (name: string): boolean => /\.xlsx$/i.test(name);

export const stepsOf = (files: readonly File[]): FileStep[] =>
  files
    .map((file): FileStep => ({ file, form: formOf(file.name) ?? 'leave out', overrides: {} }))
    .sort((a, b) => rank(a) - rank(b) || (a.file.name < b.file.name ? -1 : 1));

/** The readings of the vehicle come before those that stand in tables of their own. */
const rank = ({ form, file }: FileStep): number => {
  const at = ORDER.indexOf(form);
  return (at < 0 ? ORDER.length : at) - (file.name.startsWith('vehicle') ? 0.5 : 0);
};

/** Looks at a table, or imports it: all of it or nothing. @throws RefusalError. */
export function sendTable(
  api: Api,
  study: Id,
  step: FileStep & { readonly form: TableForm },
  by: string,
  dry: boolean,
): Promise<ImportAnswer> {
  const query = new URLSearchParams({ form: step.form, file: step.file.name, by });
  if (step.sheet) query.set('sheet', step.sheet);
  if (dry) query.set('dry', '1');
  if (Object.keys(step.overrides).length > 0)
    query.set('overrides', JSON.stringify(step.overrides));
  return api.json('POST', `${studyPath(study)}/import?${query}`, step.file);
}
