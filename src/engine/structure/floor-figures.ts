import { formUncertainty } from '../../quantity/index.ts';
import type { BarRow, Bars, FigureNumber } from '../figure.ts';
import type { BoundLook, Cell, Found, FoundRow, Looked } from '../method.ts';
import { linearised } from '../propagate.ts';
import { conductivitySpread, type Design, designOf } from './floor-designs.ts';

type Shown = Pick<Bars, 'title' | 'kind' | 'unit'> & {
  readonly first: string;
  /** NaN where the design lacks what it needs. */
  readonly of: (d: Design) => number;
  /** Relative standard uncertainty that a material's table brings beside the cells. */
  readonly tabled?: (material: string) => number | undefined;
};

const orNaN = (x: number | ''): number => (x === '' ? Number.NaN : x);

/** What designs are weighed by, each with its own bars. */
const SHOWN: readonly Shown[] = [
  {
    ...{ title: 'Mass of the designs, with all they need', kind: 'mass', unit: 'kg' },
    ...{ first: 'lightest', of: (d) => d.mass },
  },
  {
    ...{ title: 'Bending stiffness of the designs', kind: 'flexuralRigidity', unit: 'N.m' },
    ...{ first: 'softest', of: (d) => d.d },
  },
  {
    ...{ title: 'Shear stiffness of the designs in their plane', kind: 'stiffness' },
    ...{ unit: 'kN/mm', first: 'softest', of: (d) => d.gt },
  },
  {
    ...{ title: 'Mass of the designs for an area, nothing beside them', kind: 'arealMass' },
    ...{ unit: 'kg/m2', first: 'lightest', of: (d) => d.arealMass },
  },
  {
    ...{ title: 'Price of what the designs need beside them', kind: 'money', unit: '{u}' },
    ...{ first: 'cheapest', of: (d) => d.price },
  },
  {
    ...{ title: 'Edge of the designs to trim or seal', kind: 'length', unit: 'm' },
    ...{ first: 'shortest', of: (d) => d.edge },
  },
  {
    ...{ title: 'Strike work of the designs', kind: 'energy', unit: 'J' },
    ...{ first: 'weakest', of: (d) => orNaN(d.strike) },
  },
  {
    ...{ title: 'Thermal resistance of the designs', kind: 'thermalResistance' },
    ...{ unit: 'm2.K/W', first: 'least', of: (d) => orNaN(d.resistance) },
    tabled: conductivitySpread,
  },
];

/** Designs ranked by what they are weighed by, each with its own spread. */
export function lookAtDesigns(bound: BoundLook): Looked {
  const designs = bound.tables.designs ?? [];
  if (designs.length < 2) return {};
  const ranked = (shown: Shown): BarRow[] =>
    designs
      .map((row, i) => rowOf(row, bound, shown, i === 0))
      .sort((a, b) => (a.number?.x ?? Infinity) - (b.number?.x ?? Infinity));
  return {
    figures: SHOWN.map((shown) => ({
      ...bars(shown.title, `A bar for each design, the ${shown.first} first.`),
      ...{ kind: shown.kind, unit: shown.unit, rows: ranked(shown) },
    })),
  };
}

const bars = (title: string, alt: string): Pick<Bars, 'f' | 'title' | 'alt' | 'from'> => ({
  ...{ f: 'bars', title, alt, from: 'zero' },
});

function rowOf(row: FoundRow, bound: BoundLook, shown: Shown, isBuilt: boolean): BarRow {
  const label = row.terms.design?.text || row.label;
  const number = numberOf(row, bound, shown);
  return { label, ...(number ? { number } : {}), ...(isBuilt ? { word: 'as built' } : {}) };
}

/** A number of one design with the spread of the cells it hangs on; undefined when one is missing. */
function numberOf(
  row: FoundRow,
  { scalars }: BoundLook,
  { of, tabled }: Shown,
): FigureNumber | undefined {
  const sides = ['length', 'width', 'patch'].flatMap((name) => found(name, scalars[name]));
  const cells = [...sides, ...Object.entries(row.cells).flatMap(([name, c]) => found(name, c))];
  const terms = Object.fromEntries(Object.entries(row.terms).map(([k, t]) => [k, t.text]));
  const formula = (...xs: number[]): number => {
    const at = Object.fromEntries(cells.map(([name], i) => [name, xs[i] ?? Number.NaN]));
    const { length = Number.NaN, width = Number.NaN, patch = Number.NaN } = at;
    return of(designOf({ ...terms, ...at }, { length, width, patch }));
  };
  const { form } = linearised(
    formula,
    cells.map(([, cell]) => cell.form),
  );
  if (!Number.isFinite(form.x)) return undefined;
  const share = tabled ? tabled(terms.material ?? '') : 0;
  const u = Math.hypot(formUncertainty(form), form.x * (share ?? 0));
  const isWhole = share !== undefined && cells.every(([, cell]) => cell.unknownSpread !== true);
  return isWhole ? { x: form.x, u } : { x: form.x, u: 'incomplete', knownU: u };
}

const found = (name: string, cell: Found | undefined): (readonly [string, Cell])[] =>
  cell && !('missing' in cell) ? [[name, cell]] : [];
