import type { ScalarColumn, TableInput, TermColumn } from '../method.ts';
import { expectedByMaterial } from './expected-mass.ts';
import { partAssembly, partCoordinate, partMass } from './part-columns.ts';

/** Numbers by which parts are named in lists of what a module holds. */
const partNumber: TermColumn = {
  in: 'term',
  name: 'number',
  meaning: 'number of the part',
  where: 'number of the part',
  find: (at, row) => at.word(at.view.node(row)?.label ?? ''),
};

/** Parts with mass and place, as a balance sums them. */
export const balanceColumns: TableInput['columns'] = [
  partMass,
  partCoordinate('x', 0, 'distance rearward of the front axle'),
  partCoordinate('y', 1, 'distance to the right of the centre plane'),
  partCoordinate('z', 2, 'height over the ground'),
  partNumber,
];

/** The same with all that a search for slips goes by. */
export const searchColumns: TableInput['columns'] = [
  ...balanceColumns,
  {
    in: 'term',
    name: 'name',
    meaning: 'name of the part: its side, and whether it is a fastener',
    where: 'name of the part',
    find: (at, row) => at.word(at.view.node(row)?.name ?? ''),
  },
  partAssembly,
  {
    in: 'scalar',
    name: 'pieces',
    symbol: 'n',
    kind: 'count',
    unit: '1',
    meaning: 'pieces that were weighed together',
    range: [1, 5000],
    bounds: { atLeast: 0 },
    optional: true,
    where: 'pieces of the part',
    find: (at, row) => at.number(row, 'count'),
  } satisfies ScalarColumn,
  {
    in: 'scalar',
    name: 'expected',
    symbol: 'm₀',
    kind: 'mass',
    unit: 'kg',
    meaning: 'mass expected by other means than a scale',
    range: [0.0001, 500],
    bounds: { above: 0 },
    optional: true,
    where: 'volume or sheet of the part times the density of its material',
    find: (at, row) => expectedByMaterial(at, row),
  } satisfies ScalarColumn,
  {
    in: 'term',
    name: 'instrument',
    meaning: 'scale on which it was weighed',
    where: 'instrument of the mass',
    find: (at, row) => at.word(readingOf(at.view.cell(row, 'mass'))?.instrument ?? ''),
  },
  {
    in: 'term',
    name: 'written',
    meaning: 'the mass as it was written',
    where: 'the mass as written',
    find: (at, row) => at.word(readingOf(at.view.cell(row, 'mass'))?.asWritten ?? ''),
  },
];

type Cell = ReturnType<Parameters<TermColumn['find']>[0]['view']['cell']>;
const readingOf = (cell: Cell) => ('missing' in cell ? undefined : cell.from.at(-1)?.reading);

/** A table of every part below the subject. */
export const partsTable = (columns: TableInput['columns']): TableInput => ({
  in: 'table',
  name: 'parts',
  meaning: 'every part of the vehicle',
  where: 'every part below the subject',
  rows: (at) => at.view.nodes('part', at.subject).map((n) => n.id),
  columns,
});
