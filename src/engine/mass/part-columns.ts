import type { ScalarColumn, TermColumn } from '../method.ts';

/** Columns of tables of parts that several questions share. */
export const partMass: ScalarColumn = {
  in: 'scalar',
  name: 'mass',
  symbol: 'm',
  kind: 'mass',
  unit: 'kg',
  meaning: 'mass of the part, all pieces',
  range: [0.0001, 500],
  bounds: { atLeast: 0 },
  where: 'mass of the part',
  find: (at, row) => at.number(row, 'mass'),
};

/** One coordinate of a part's centre of gravity. */
export const partCoordinate = (
  name: 'x' | 'y' | 'z',
  component: 0 | 1 | 2,
  meaning: string,
): ScalarColumn => ({
  in: 'scalar',
  name,
  symbol: name,
  kind: 'length',
  unit: 'mm',
  meaning,
  range: [-3000, 8000],
  where: 'position of the part',
  find: (at, row) => at.number(row, 'position', component),
});

/** Number and name of the node a part belongs to. */
export const partAssembly: TermColumn = {
  in: 'term',
  name: 'assembly',
  meaning: 'assembly it belongs to',
  where: 'parent of the part',
  find: (at, row) => {
    const parent = at.view.node(at.view.node(row)?.parent ?? '');
    return at.word(parent ? `${parent.label} ${parent.name}` : '');
  },
};
