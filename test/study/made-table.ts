import type { ColumnUse, TableChunk } from '../../src/study/index.ts';

export const CHUNK_ID = '01JGTBAE00AAAAAAAAAAAAAAAA';

/** A chunk of a made-up table of parts: headings with their uses, then rows. */
export const madeTable = (
  columns: readonly (readonly [heading: string, use: ColumnUse])[],
  rows: readonly (readonly string[])[],
  more: Partial<TableChunk> = {},
): TableChunk => ({
  id: CHUNK_ID,
  parse: 1,
  nodeKind: 'part',
  file: 'parts.csv',
  headings: columns.map(([heading]) => heading),
  columns: columns.map(([, use]) => use),
  firstRow: 2,
  rows,
  decimal: '.',
  resolved: {},
  root: 'van',
  condition: 'kerb',
  frame: 'vehicle',
  howWithInstrument: 'measured',
  howWithout: 'seen',
  by: 'R. Example',
  takenAt: { local: '2026-01-05T08:00:00' },
  ...more,
});

export const LABEL = ['number', { use: 'label' }] as const;
export const property = (
  id: string,
  more: Partial<Extract<ColumnUse, { use: 'property' }>> = {},
): ColumnUse => ({ use: 'property', property: id, ...more });
export const massIn = (
  unit: string,
  more: Partial<Extract<ColumnUse, { use: 'property' }>> = {},
): ColumnUse => property('mass', { kind: 'mass', unit, ...more });
