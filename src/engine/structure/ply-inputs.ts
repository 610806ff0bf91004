import type {
  PlainInputs,
  PlainRow,
  ScalarColumn,
  ScalarInput,
  Solved,
  TableInput,
  TermInput,
} from '../method.ts';
import { stated } from './inputs.ts';
import { type Ply, plyFault } from './lamina.ts';
import { type LaidPly, type PlacedPly, placedPlies } from './laminate.ts';
import { refused } from './outputs.ts';
import { word } from './traced.ts';

const WHERE = 'not in the record: from the data sheet or a test of the ply';

type Constant = Pick<
  ScalarColumn,
  'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range' | 'bounds'
>;

/** Elastic constants of a ply. */
const CONSTANTS: readonly (Constant & { readonly bounds: object })[] = [
  {
    ...{ name: 'e1', symbol: 'E₁', kind: 'stress', unit: 'GPa' },
    ...{ meaning: 'modulus along the fibre', range: [0.1, 700], bounds: { above: 0 } },
  },
  {
    ...{ name: 'e2', symbol: 'E₂', kind: 'stress', unit: 'GPa' },
    ...{ meaning: 'modulus across the fibre', range: [0.1, 300], bounds: { above: 0 } },
  },
  {
    ...{ name: 'g12', symbol: 'G₁₂', kind: 'stress', unit: 'GPa' },
    ...{ meaning: 'shear modulus in the plane', range: [0.05, 120], bounds: { above: 0 } },
  },
  {
    ...{ name: 'nu12', symbol: 'ν₁₂', kind: 'ratio', unit: '1' },
    ...{ meaning: 'major Poisson ratio', range: [0, 0.6], bounds: {} },
  },
];

/** The constants as single inputs. */
export const PLY_CONSTANTS: readonly ScalarInput[] = CONSTANTS.map((c) => stated(c, WHERE));

export const plyColumn = (c: Constant): ScalarColumn => ({
  in: 'scalar',
  ...c,
  where: WHERE,
  find: (at) => at.missing(c.meaning, 'no ply is in the record'),
});

/** Materials of the plies, by name: plies of one name share its constants. */
export const materialTable = (...more: readonly ScalarColumn[]): TableInput => ({
  in: 'table',
  name: 'materials',
  meaning: 'one ply material',
  where: WHERE,
  rows: () => [],
  columns: [word('material', 'name of the ply material'), ...CONSTANTS.map(plyColumn), ...more],
});

/** The plies in the order in which they lie. */
export const PLIES: TableInput = {
  in: 'table',
  name: 'plies',
  meaning: 'one ply, in the order in which they lie',
  where: 'not in the record: from the ply book, or by counting and burning off the resin',
  rows: () => [],
  columns: [
    word('material', 'name of the ply material'),
    plyColumn({
      ...{ name: 'angle', symbol: 'θ', kind: 'angle', unit: 'deg' },
      ...{ meaning: 'fibre to the x axis, against the clock seen from +z', range: [-90, 90] },
    }),
    plyColumn({
      ...{ name: 'thickness', symbol: 't', kind: 'length', unit: 'mm' },
      ...{ meaning: 'thickness of the ply', range: [0.02, 5], bounds: { above: 0 } },
    }),
  ],
};

const TOP = 'first ply at the top (+z)';
const BOTTOM = 'first ply at the bottom (-z)';

/** Where the first ply of the list lies. */
export const FIRST_PLY: TermInput = {
  in: 'term',
  name: 'order',
  meaning: 'where the first ply of the list lies',
  options: [TOP, BOTTOM],
  where: 'not in the record: by the ply book',
  find: (at) => at.word(''),
};

/** The plies of plain inputs in their places, from the bottom up, or why there are none. */
export function pliesOf(x: PlainInputs): { plies: PlacedPly[] } | { refusal: Solved } {
  const order = x.terms.order;
  if (order !== TOP && order !== BOTTOM)
    return no(
      'order',
      'it is not said where the first ply lies, which sets the sign of B',
      `Give ${TOP} or ${BOTTOM}.`,
    );
  const materials = new Map(
    (x.tables.materials ?? []).map((row) => [String(row.material), plyOf(row)]),
  );
  for (const [name, ply] of materials) {
    const fault = plyFault(ply);
    if (fault)
      return no(
        'materials',
        `"${name}" can be no material: ${fault}`,
        'Look the constants up again.',
        name,
      );
  }
  const laid: LaidPly[] = [];
  for (const row of x.tables.plies ?? []) {
    const material = String(row.material);
    const ply = materials.get(material);
    if (!ply)
      return no(
        'plies',
        'a ply names a material that is not listed',
        'List the material.',
        material,
      );
    laid.push({ ply, material, angle: Number(row.angle), thickness: Number(row.thickness) });
  }
  if (laid.length === 0) return no('plies', 'there are no plies', 'List the plies.');
  return { plies: placedPlies(laid, order === TOP ? 'top' : 'bottom') };
}

const no = (column: string, what: string, next: string, value?: string) => ({
  refusal: refused('no-such-laminate', column, what, next, value),
});

export const plyOf = (row: PlainRow): Ply => ({
  e1: Number(row.e1),
  e2: Number(row.e2),
  g12: Number(row.g12),
  nu12: Number(row.nu12),
});

/** What every answer about a laminate takes for granted. */
export const LAMINATE_ASSUMPTIONS: readonly string[] = [
  'Classical lamination theory: thin, plane sections stay plane, plies bonded without slip, no shear through the thickness.',
  'z points upwards from the middle plane. The list of plies begins where the input "order" says; the other choice turns the sign of B.',
  'Angles are from x to the fibre, against the clock seen from +z; shear strains are engineering ones (γ).',
];
