import {
  type Kind,
  parseQuantity,
  type ScalarValue,
  type Spread,
  standardUncertainty,
  type Value,
} from '../quantity/index.ts';
import type { ColumnUse, Entry, TableChunk } from './entries.ts';
import type { Id } from './ids.ts';
import { propertyDef } from './properties.ts';
import type { Reading } from './reading.ts';

type PropertyUse = Extract<ColumnUse, { use: 'property' }>;

/** What a cell of a table says: a value, nothing (an empty cell), or why it can't be read. */
export type CellRead =
  | { readonly read: 'value'; readonly value: Value; readonly asWritten: string }
  | { readonly read: 'empty' }
  | { readonly read: 'bad'; readonly why: string; readonly next: string; readonly column: number };

/** How numbers of a chunk are written. */
type Writing = Pick<TableChunk, 'columns' | 'decimal' | 'frame'>;

/** Id of the node that a row becomes; `row` is its 1-based row in the file. */
export const rowId = (chunkId: string, row: number): Id =>
  `${chunkId}.r${String(row).padStart(8, '0')}`;

/** Id of the chunk that a node came from, when it came by a table. */
export const chunkOf = (nodeId: Id): string | undefined => /^(.{26})\.r\d+$/.exec(nodeId)?.[1];

/** Reads the cell of a scalar or text column, with the spread that its u column gives. */
export function readCell(row: readonly string[], column: number, writing: Writing): CellRead {
  const use = writing.columns[column];
  const text = (row[column] ?? '').trim();
  if (use?.use !== 'property' || text === '') return { read: 'empty' };
  const kind = kindOf(use);
  if (kind === undefined) return { read: 'value', value: { t: 'text', text }, asWritten: text };
  const parsed = parseQuantity(text, kind, { unit: use.unit ?? '1', decimal: writing.decimal });
  if (!parsed.ok) return { read: 'bad', why: parsed.why, next: parsed.next, column };
  const spread = readSpread(row, use, kind, parsed.value, writing);
  if ('bad' in spread) return { read: 'bad', ...spread.bad };
  const asWritten = writtenWith(text, use);
  const value: ScalarValue = { ...parsed.value, spread: spread.spread };
  return { read: 'value', value: kind === 'count' ? asCount(value) : value, asWritten };
}

const kindOf = (use: PropertyUse): Kind | undefined => use.kind ?? propertyDef(use.property)?.kind;

const asCount = (v: ScalarValue): Value => ({ t: 'count', n: v.x, spread: v.spread });

const writtenWith = (text: string, use: PropertyUse): string =>
  use.unit && use.unit !== '1' && /^[\d\s.,−-]+$/.test(text) ? `${text} ${use.unit}` : text;

type SpreadRead =
  | { readonly spread: Spread }
  | { readonly bad: { readonly why: string; readonly next: string; readonly column: number } };

/** Kinds whose spread is of another kind. */
const SPREAD_KINDS: ReadonlyMap<Kind, Kind> = new Map([
  ['tempAbs', 'tempDiff'],
  ['count', 'ratio'],
]);

function readSpread(
  row: readonly string[],
  use: PropertyUse,
  kind: Kind,
  value: ScalarValue,
  writing: Writing,
): SpreadRead {
  const text = use.uColumn === undefined ? '' : (row[use.uColumn] ?? '').trim();
  if (text === '' || use.uColumn === undefined)
    return {
      spread: value.spread.s === 'unknown' ? (use.spreadIfNone ?? value.spread) : value.spread,
    };
  // A temperature's spread is a difference, a count's need not be whole.
  const differenceKind = SPREAD_KINDS.get(kind) ?? kind;
  const unit = use.uUnit ?? use.unit ?? '1';
  const u = parseQuantity(text, differenceKind, { unit, decimal: writing.decimal });
  if (!u.ok) return { bad: { why: u.why, next: u.next, column: use.uColumn } };
  if (u.value.x < 0)
    return {
      bad: {
        why: 'a standard uncertainty is negative',
        next: 'Write it as a positive number, or leave it empty when it is not known.',
        column: use.uColumn,
      },
    };
  return { spread: u.value.x === 0 ? { s: 'exact' } : { s: 'normal', u: u.value.x } };
}

/** Columns of each vector property, by component; one that is not there leaves a hole. */
export function vectorColumns(columns: readonly ColumnUse[]): Map<string, number[]> {
  const found = new Map<string, number[]>();
  columns.forEach((use, i) => {
    if (use.use !== 'property' || use.component === undefined) return;
    const at = found.get(use.property) ?? [];
    at[use.component] = i;
    found.set(use.property, at);
  });
  return found;
}

/** Reads a vector from its component columns: all there, none there, or a bad cell. */
export function readVector(
  row: readonly string[],
  columns: readonly number[],
  writing: Writing,
): CellRead {
  const cells = Array.from({ length: 3 }, (_, i) => readCell(row, columns[i] ?? -1, writing));
  const bad = cells.find((c) => c.read === 'bad');
  if (bad) return bad;
  const values = cells.flatMap((c) =>
    c.read === 'value' && c.value.t === 'scalar' ? [c.value] : [],
  );
  if (values.length === 0) return { read: 'empty' };
  if (values.length < 3)
    return {
      read: 'bad',
      why: 'a position has some of its three numbers only',
      next: 'Give X, Y and Z, or leave all three empty.',
      column: columns[cells.findIndex((c) => c.read === 'empty')] ?? firstColumn(columns),
    };
  return {
    read: 'value',
    value: vectorOf(values, writing.frame),
    asWritten: columns.map((c) => row[c]?.trim()).join(', '),
  };
}

/** The first column that is there. */
export const firstColumn = (columns: readonly number[]): number =>
  columns.find((c) => c !== undefined) ?? 0;

function vectorOf(values: readonly ScalarValue[], frame: string): Value {
  const us = values.map((v) => standardUncertainty(v.spread, v.x));
  const n = values.length;
  const cov = us.some((u) => u === undefined)
    ? []
    : values.flatMap((_, i) => values.map((__, j) => (i === j ? (us[i] ?? 0) ** 2 : 0)));
  return {
    t: 'vector',
    kind: values[0]?.kind ?? 'length',
    x: values.map((v) => v.x),
    cov: n ? cov : [],
    frame,
  };
}

/** The primitive entries that a chunk stands for, row by row. Bad cells become nothing here: the import refuses them. */
export function* expandTable(chunk: TableChunk): Generator<Entry> {
  const vectors = vectorColumns(chunk.columns);
  for (const [i, row] of chunk.rows.entries())
    yield* expandRow(chunk, row, chunk.firstRow + i, vectors);
}

function* expandRow(
  chunk: TableChunk,
  row: readonly string[],
  rowNumber: number,
  vectors: ReadonlyMap<string, readonly number[]>,
): Generator<Entry> {
  const id = rowId(chunk.id, rowNumber);
  const parent = rowParent(chunk, row);
  const label = wordIn(chunk, row, 'label') || `row ${rowNumber}`;
  const name = wordIn(chunk, row, 'name') || label;
  yield { v: 1, e: 'node.add', node: { id, kind: chunk.nodeKind, parent, label, name } };
  for (const [c, use] of chunk.columns.entries()) {
    if (use.use === 'from' || use.use === 'to') yield* joinEnds(chunk, id, row[c] ?? '', use.use);
    if (use.use !== 'property' || use.component !== undefined) continue;
    const cell = readCell(row, c, chunk);
    if (cell.read === 'value') yield readingEntry(chunk, id, rowNumber, row, c, use, cell);
  }
  for (const [property, columns] of vectors) {
    const cell = readVector(row, columns, chunk);
    const first = firstColumn(columns);
    const use = chunk.columns[first];
    if (cell.read === 'value' && use?.use === 'property')
      yield readingEntry(chunk, id, rowNumber, row, first, { ...use, property }, cell);
  }
}

/** Id of the node to which a row belongs. */
export const rowParent = (chunk: TableChunk, row: readonly string[]): Id =>
  resolve(chunk, wordIn(chunk, row, 'parent')) ?? chunk.root;

function wordIn(chunk: TableChunk, row: readonly string[], use: ColumnUse['use']): string {
  const at = chunk.columns.findIndex((c) => c.use === use);
  return at < 0 ? '' : (row[at] ?? '').trim();
}

/** The node that a label was found to name; labels may be words like "constructor". */
const resolve = (chunk: TableChunk, label: string): Id | undefined =>
  Object.hasOwn(chunk.resolved, label) ? chunk.resolved[label] : undefined;

/** Ends of a joint, several separated by `;`. An end that names no node keeps its words. */
function* joinEnds(
  chunk: TableChunk,
  joint: Id,
  text: string,
  role: 'from' | 'to',
): Generator<Entry> {
  const ends = text
    .split(';')
    .map((t) => t.trim())
    .filter((t) => t !== '');
  for (const [i, words] of ends.entries())
    yield {
      v: 1,
      e: 'link.add',
      link: {
        id: `${joint}.${role}${i}`,
        kind: 'joins',
        from: joint,
        to: resolve(chunk, words) ?? null,
        role,
        words,
      },
    };
}

const nominalOf = (v: Value): number => (v.t === 'scalar' ? v.x : v.t === 'count' ? v.n : 0);

function readingEntry(
  chunk: TableChunk,
  subject: Id,
  rowNumber: number,
  row: readonly string[],
  column: number,
  use: PropertyUse,
  cell: Extract<CellRead, { read: 'value' }>,
): Entry {
  const named = use.instrumentColumn === undefined ? '' : (row[use.instrumentColumn] ?? '').trim();
  const instrument = named || (use.instrument ?? '');
  const reading: Reading = {
    id: `${subject}.c${column}`,
    of: { subject, property: use.property, condition: chunk.condition },
    value: cell.value,
    asWritten: cell.asWritten,
    how: instrument === '' ? chunk.howWithout : chunk.howWithInstrument,
    by: chunk.by,
    takenAt: chunk.takenAt,
    ...(instrument === '' ? {} : { instrument }),
    evidence: [],
    causes: (use.causes ?? []).map(({ cause, effect }) => ({
      cause,
      effect: effect === 'relative' ? nominalOf(cell.value) : effect,
    })),
    source: { file: chunk.file, row: rowNumber, column: chunk.headings[column] ?? `${column + 1}` },
  };
  return { v: 1, e: 'reading.add', reading };
}
