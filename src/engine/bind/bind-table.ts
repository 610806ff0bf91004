import type { Finding, Id, InForce, Missing, Touched } from '../../study/index.ts';
import { BoundRow } from '../bound-row.ts';
import type { Found, FoundTerm, TableInput } from '../method.ts';
import { withinBounds } from './bounds.ts';
import type { KeptRow, KeptTable } from './kept.ts';
import type { StudyFinder } from './study-finder.ts';
import type { Watch } from './watched-view.ts';

/**
 * Binds the rows of a table; of one that is kept only those rows which look at a node that was
 * touched since, and its list of rows only where that looks at one.
 */
export function bindTable(
  input: TableInput,
  finder: StudyFinder,
  kept: KeptTable | undefined,
  changes: number,
  touched: (changes: number) => Touched,
): KeptTable {
  if (!kept) return listed(input, finder, new Map(), changes);
  if (kept.changes === changes) return kept;
  const { subjects } = touched(kept.changes);
  const stale = new Set([...kept.volatile, ...at(kept.lookingAt, subjects)]);
  if (isHit(kept.listed, subjects)) {
    const fresh = kept.rows.filter((_, i) => !stale.has(i));
    return listed(input, finder, new Map(fresh.map((row) => [row.id, row])), changes);
  }
  if (stale.size === 0) return { ...kept, changes };
  const rows = [...kept.rows];
  for (const i of stale) rows[i] = bindRow(input, finder, rows[i]?.id ?? '');
  return looking(rows, kept, changes, stale);
}

const at = (places: ReadonlyMap<Id, readonly number[]>, ids: ReadonlySet<Id>): number[] =>
  [...ids].flatMap((id) => places.get(id) ?? []);

const isHit = (watch: Watch, subjects: ReadonlySet<Id>): boolean =>
  watch.volatile || [...subjects].some((id) => watch.subjects.has(id));

/** All rows, those at hand as they are. */
function listed(
  input: TableInput,
  finder: StudyFinder,
  held: ReadonlyMap<Id, KeptRow>,
  changes: number,
): KeptTable {
  const { made: ids, watch } = finder.view.during(() => input.rows(finder));
  const rows = ids.map((id) => held.get(id) ?? bindRow(input, finder, id));
  return { ...followed(rows), rows, listed: watch, changes };
}

/** The table with some rows bound again; who looks at what is found anew only where it changed. */
function looking(
  rows: readonly KeptRow[],
  kept: KeptTable,
  changes: number,
  renewed: ReadonlySet<number>,
): KeptTable {
  const same = [...renewed].every((i) => sameWatch(rows[i]?.watch, kept.rows[i]?.watch));
  return { ...kept, rows, changes, ...(same ? {} : followed(rows)) };
}

const sameWatch = (a: Watch | undefined, b: Watch | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  a.volatile === b.volatile &&
  a.subjects.size === b.subjects.size &&
  [...a.subjects].every((id) => b.subjects.has(id));

function followed(rows: readonly KeptRow[]): Pick<KeptTable, 'lookingAt' | 'volatile'> {
  const lookingAt = new Map<Id, number[]>();
  const volatile: number[] = [];
  for (const [i, { watch }] of rows.entries()) {
    if (watch.volatile) volatile.push(i);
    for (const id of watch.subjects) {
      const list = lookingAt.get(id);
      if (list) list.push(i);
      else lookingAt.set(id, [i]);
    }
  }
  return { lookingAt, volatile };
}

function bindRow(input: TableInput, finder: StudyFinder, id: Id): KeptRow {
  const before = finder.mark();
  const numbers: Finding[] = [];
  const { made: row, watch } = finder.view.during(() => cellsOf(input, finder, id, numbers));
  const { read, noted, ratesUsed } = finder.since(before);
  return {
    id,
    row,
    read,
    findings: { numbers, cells: findingsOf(read), noted },
    conditions: [...new Set(read.map((r) => r.of.condition))],
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
  const cells: Record<string, Found> = {};
  const terms: Record<string, FoundTerm> = {};
  for (const column of input.columns) {
    if (column.in === 'term') terms[column.name] = column.find(finder, id);
    else cells[column.name] = withinBounds(column, column.find(finder, id), findings);
  }
  return new BoundRow(id, finder.labelOf(id), cells, terms);
}

const NONE: readonly never[] = [];

export function findingsOf(read: readonly (InForce | Missing)[]): readonly Finding[] {
  const found = read.flatMap((r) => ('findings' in r ? r.findings : NONE));
  return found.length === 0 ? NONE : found;
}
