import type { Finding, Id, InForce, Missing, Touched } from '../../study/index.ts';
import { BoundRow, columnNames } from '../bound-row.ts';
import type { Found, FoundTerm, TableInput } from '../method.ts';
import { withinBounds } from './bounds.ts';
import type { StudyFinder } from './study-finder.ts';
import type { Watch } from './watched-view.ts';

/** A row of a table as it was bound; without `row` where it is none of the table's. */
interface KeptRow {
  readonly id: Id;
  readonly row: BoundRow | undefined;
  readonly read: readonly (InForce | Missing)[];
  /** Of its numbers; of the cells read; noted on the way. */
  readonly findings: Readonly<Record<'numbers' | 'cells' | 'noted', readonly Finding[]>>;
  readonly conditions: readonly Id[];
  readonly ratesUsed: boolean;
  readonly watch: Watch;
}

/** A table as it was bound last. */
export interface KeptTable {
  /** Changes of the view by which it was brought up to date. */
  readonly changes: number;
  readonly kept: readonly KeptRow[];
  /** Rows that are the table's. */
  readonly rows: readonly BoundRow[];
  readonly findings: KeptRow['findings'];
  /** Places in `kept` of rows with findings. */
  readonly speaking: readonly number[];
  readonly conditions: readonly Id[];
  readonly ratesUsed: boolean;
  /** Places in `kept` of rows that look at no readings but their own. */
  readonly alone: ReadonlyMap<Id, number>;
  /** Nodes whose readings the list of rows or another row rests on; any, where it is not known. */
  readonly shared: ReadonlySet<Id> | 'any';
}

/** All that was read for a table, row by row. */
export const readOf = ({ kept }: KeptTable): readonly (InForce | Missing)[] =>
  kept.flatMap((row) => row.read);

/**
 * Binds the rows of a table. Of one that is kept only those rows are bound again whose own
 * readings were touched since; all of them where something was touched that rows share, for what
 * one row has worked out of it others may use too.
 */
export function bindTable(
  input: TableInput,
  finder: StudyFinder,
  before: KeptTable | undefined,
  changes: number,
  touched: (changes: number) => Touched,
): KeptTable {
  if (!before) return bindAll(input, finder, changes);
  if (before.changes === changes) return before;
  const { subjects } = touched(before.changes);
  const { shared, alone } = before;
  if (shared === 'any' || [...subjects].some((id) => shared.has(id)))
    return bindAll(input, finder, changes);
  const stale = [...subjects].flatMap((id) => alone.get(id) ?? []);
  return rebound(input, finder, before, stale, changes);
}

function bindAll(input: TableInput, finder: StudyFinder, changes: number): KeptTable {
  const { made: ids, watch } = finder.view.during(() => input.rows(finder));
  const kept = ids.map((id) => bindRow(input, finder, id));
  return { changes, kept, rows: rowsOf(kept), ...followed(kept, watch), ...summed(kept) };
}

/** The table with a few rows bound again. */
function rebound(
  input: TableInput,
  finder: StudyFinder,
  before: KeptTable,
  stale: readonly number[],
  changes: number,
): KeptTable {
  if (stale.length === 0) return { ...before, changes };
  const kept = [...before.kept];
  for (const i of stale) kept[i] = bindRow(input, finder, kept[i]?.id ?? '');
  const renewed = stale.flatMap((i) => kept[i] ?? []);
  // A row may begin to look at others, by what it reads now.
  if (!renewed.every(isAlone)) return bindAll(input, finder, changes);
  const old = stale.flatMap((i) => before.kept[i] ?? []);
  const same = [...renewed, ...old].every((row) => isUsual(row, before));
  return {
    ...before,
    ...{ changes, kept, rows: rowsOf(kept) },
    ...(same ? spoken(kept, [...before.speaking, ...stale]) : summed(kept)),
  };
}

function rowsOf(kept: readonly KeptRow[]): BoundRow[] {
  const rows: BoundRow[] = [];
  for (const { row } of kept) if (row) rows.push(row);
  return rows;
}

const isAlone = ({ id, watch }: KeptRow): boolean => watch.isOnly(id);

function followed(kept: readonly KeptRow[], listed: Watch): Pick<KeptTable, 'alone' | 'shared'> {
  const alone = new Map<Id, number>();
  const shared = new Set(listed.subjects);
  let isVolatile = listed.volatile;
  for (const [i, row] of kept.entries()) {
    isVolatile ||= row.watch.volatile;
    if (isAlone(row)) alone.set(row.id, i);
    else for (const id of row.watch.subjects) shared.add(id);
  }
  return { alone, shared: isVolatile ? 'any' : shared };
}

type Summed = Pick<KeptTable, 'findings' | 'speaking' | 'conditions' | 'ratesUsed'>;

/** Findings of all rows, and what else is said of them together. */
function summed(kept: readonly KeptRow[]): Summed {
  const conditions = new Set<Id>();
  for (const row of kept) for (const id of row.conditions) conditions.add(id);
  return {
    ...spoken(kept, [...kept.keys()]),
    conditions: [...conditions],
    ratesUsed: kept.some((row) => row.ratesUsed),
  };
}

/** Findings of rows at these places, in their order, and which of them have any. */
function spoken(
  kept: readonly KeptRow[],
  places: readonly number[],
): Pick<KeptTable, 'findings' | 'speaking'> {
  const speaking = [...new Set(places)].filter((i) => hasFindings(kept[i])).sort((a, b) => a - b);
  const all = (of: keyof KeptRow['findings']) =>
    speaking.flatMap((i) => kept[i]?.findings[of] ?? []);
  return {
    speaking,
    findings: { numbers: all('numbers'), cells: all('cells'), noted: all('noted') },
  };
}

const hasFindings = (row: KeptRow | undefined): boolean =>
  row !== undefined &&
  row.findings.numbers.length + row.findings.cells.length + row.findings.noted.length > 0;

/** True where conditions and rates of all rows together do not hang on this one. */
const isUsual = ({ conditions, ratesUsed }: KeptRow, all: KeptTable): boolean =>
  conditions.length === all.conditions.length && ratesUsed === all.ratesUsed;

function bindRow(input: TableInput, finder: StudyFinder, id: Id): KeptRow {
  const before = finder.mark();
  const numbers: Finding[] = [];
  const { made: row, watch } = finder.view.during(() => cellsOf(input, finder, id, numbers));
  const { read, noted, ratesUsed } = finder.since(before);
  return {
    id,
    row,
    read,
    findings: findingsBy(numbers, findingsOf(read), noted),
    conditions: conditionsOf(read),
    ratesUsed,
    watch,
  };
}

function cellsOf(
  input: TableInput,
  finder: StudyFinder,
  id: Id,
  findings: Finding[],
): BoundRow | undefined {
  if (input.only && !input.only(finder, id)) return undefined;
  const numbers: Found[] = [];
  const words: FoundTerm[] = [];
  for (const column of input.columns) {
    if (column.in === 'term') words.push(column.find(finder, id));
    else numbers.push(withinBounds(column, column.find(finder, id), findings));
  }
  return new BoundRow(id, finder.labelOf(id), columnNames(input), numbers, words);
}

const SILENT: KeptRow['findings'] = { numbers: [], cells: [], noted: [] };

/** Nearly all rows have none and share one object. */
const findingsBy = (
  numbers: readonly Finding[],
  cells: readonly Finding[],
  noted: readonly Finding[],
): KeptRow['findings'] =>
  numbers.length + cells.length + noted.length === 0 ? SILENT : { numbers, cells, noted };

function conditionsOf(read: readonly (InForce | Missing)[]): readonly Id[] {
  const first = read[0]?.of.condition;
  if (first === undefined) return [];
  for (const { of } of read)
    if (of.condition !== first) return [...new Set(read.map((r) => r.of.condition))];
  return [first];
}

export function findingsOf(read: readonly (InForce | Missing)[]): readonly Finding[] {
  const found: Finding[] = [];
  for (const r of read) if ('findings' in r) found.push(...r.findings);
  return found;
}
