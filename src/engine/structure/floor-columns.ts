import type { ScalarColumn, TableInput } from '../method.ts';
import { word } from './traced.ts';

const WHERE = 'not in the record: state the design';
type DesignColumn = Omit<ScalarColumn, 'in' | 'where' | 'find'>;
const column = (c: DesignColumn): ScalarColumn => ({
  in: 'scalar',
  ...c,
  where: WHERE,
  find: (at) => at.missing(c.meaning, 'no designs are in the record'),
});

const COLUMNS: readonly ScalarColumn[] = [
  column({
    ...{ name: 'thickness', symbol: 't', kind: 'length', unit: 'mm' },
    meaning: 'thickness of the plate, or of both skins together',
    ...{ range: [0.3, 40], bounds: { above: 0 } },
  }),
  column({
    ...{ name: 'core', symbol: 'c', kind: 'length', unit: 'mm', optional: true },
    meaning: 'height of the core between two like skins; none for a solid plate',
    ...{ range: [0, 200], bounds: { atLeast: 0 } },
  }),
  column({
    ...{ name: 'coreMass', symbol: 'mc', kind: 'arealMass', unit: 'kg/m2', optional: true },
    ...{
      meaning: 'mass of the ribs of the core for an area',
      range: [0, 40],
      bounds: { atLeast: 0 },
    },
  }),
  column({
    ...{ name: 'modulus', symbol: 'E', kind: 'stress', unit: 'GPa', meaning: 'Young’s modulus' },
    ...{ range: [0.5, 450], bounds: { above: 0 } },
  }),
  column({
    ...{ name: 'poisson', symbol: 'ν', kind: 'ratio', unit: '1' },
    meaning: 'Poisson ratio of an isotropic material',
    ...{ range: [0.1, 0.49], bounds: { above: -1, below: 0.5 } },
  }),
  column({
    ...{ name: 'limit', symbol: 'σL', kind: 'stress', unit: 'MPa', optional: true },
    meaning: 'stress at which the face yields or first cracks; none leaves strike work empty',
    ...{ range: [10, 2000], bounds: { above: 0 } },
  }),
  column({
    ...{ name: 'density', symbol: 'ρ', kind: 'density', unit: 'kg/m3', meaning: 'density' },
    ...{ range: [500, 12000], bounds: { above: 0 } },
  }),
  column({
    ...{ name: 'beside', symbol: 'm+', kind: 'mass', unit: 'kg', optional: true },
    meaning: 'mass of what the design needs beside it',
    ...{ range: [0, 100], bounds: { atLeast: 0 } },
  }),
  column({
    ...{ name: 'price', symbol: 'p+', kind: 'money', unit: '{u}', optional: true },
    meaning: 'price of what the design needs beside it',
    ...{ range: [0, 1000], bounds: { atLeast: 0 } },
  }),
  column({
    ...{ name: 'edge', symbol: 'l', kind: 'length', unit: 'm', optional: true },
    meaning: 'length of edge to trim or seal',
    ...{ range: [0, 60], bounds: { atLeast: 0 } },
  }),
];

/** Designs of one floor, the one as built first. */
export const DESIGNS: TableInput = {
  in: 'table',
  name: 'designs',
  meaning: 'one design; the first is the floor as built',
  where: WHERE,
  rows: () => [],
  columns: [
    word('design', 'name of the design'),
    word('material', 'material, as the table of materials calls it'),
    word('needs', 'what it needs beside it, in words'),
    ...COLUMNS,
  ],
};
