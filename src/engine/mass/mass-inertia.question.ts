import type { Finding, Id } from '../../study/index.ts';
import {
  type BoundLook,
  type Finder,
  type Formula,
  type Found,
  type OutputSpec,
  question,
  type ScalarColumn,
  type TallyBody,
} from '../method.ts';
import { BALANCE } from '../sections.ts';
import { balanceColumns } from './balance-parts.ts';
import { partsInModule } from './module-inputs.ts';
import { productCell } from './product.ts';

/** Parts of the subject: below it, or what was weighed with it where it is a trial. */
const partsOf = ({ view, subject }: Finder): readonly Id[] =>
  view.node(subject)?.kind === 'trial'
    ? partsInModule(view, subject)
    : view.nodes('part', subject).map((n) => n.id);

const SIDES = { x: 'length', y: 'width', z: 'height' } as const;
type Axis = keyof typeof SIDES;

/** Own inertia of a part as a box that its envelope fills, about one axis; exactly nothing where it has none. */
const own = (axis: Axis): ScalarColumn => ({
  in: 'scalar',
  name: `own${axis.toUpperCase()}`,
  symbol: `J${axis}`,
  kind: 'inertia',
  unit: 'kg.m2',
  meaning: `own inertia about ${axis.toUpperCase()}, as a box; 0 without an envelope`,
  range: [0, 5000],
  bounds: { atLeast: 0 },
  where: 'envelope and mass of the part: m (b² + c²) / 12',
  find: (at, row) => boxInertia(at, row, axis),
});

function boxInertia(at: Finder, row: Id, axis: Axis): Found {
  const across = (Object.keys(SIDES) as Axis[]).filter((a) => a !== axis);
  const sides = across.map((a) => at.number(row, `envelope.${SIDES[a]}`));
  const mass = at.number(row, 'mass');
  if (sides.some((s) => 'missing' in s) || 'missing' in mass) return at.exact(0, 'no envelope');
  const twelfth = at.exact(1 / 12, 'a box');
  return at.sum(
    'own inertia as a box',
    sides.map((s) => productCell('a box', [mass, s, s, twelfth])),
  );
}

type Term = TallyBody['terms'][number];
const placed = (name: string, symbol: string, kind: Term['kind'], each: Formula): Term => ({
  ...{ name, symbol, kind, each },
  shown: `Σ ${symbol.slice(1)}`,
  needs: ['mass', 'x', 'y', 'z'],
});
const ownTerm = (axis: Axis): Term => ({
  name: `own${axis.toUpperCase()}`,
  symbol: `ΣJ${axis}`,
  kind: 'inertia',
  shown: `Σ J${axis}`,
  needs: ['mass', 'x', 'y', 'z', `own${axis.toUpperCase()}`],
  each: (_m, _x, _y, _z, j) => j ?? Number.NaN,
});

/** In the order of the terms. */
type Sums = readonly number[];
const s = (x: Sums, i: number): number => x[i] ?? Number.NaN;
/** Second moment of the masses about the centre, of two axes by their place among the terms. */
const about = (x: Sums, i: number, j: number, ij: number): number =>
  s(x, ij) - (s(x, i) * s(x, j)) / s(x, 0);
const xx = (x: Sums) => about(x, 1, 1, 4);
const yy = (x: Sums) => about(x, 2, 2, 5);
const zz = (x: Sums) => about(x, 3, 3, 6);

const out = (name: string, symbol: string, meaning: string, shown: string): OutputSpec => ({
  ...{ name, symbol, kind: 'inertia', unit: 'kg.m2', meaning, shown },
});
const length = (name: string, symbol: string, axis: string): OutputSpec => ({
  ...{ name, symbol, kind: 'length', unit: 'mm' },
  meaning: `centre of gravity, ${axis}`,
  shown: `${symbol} = Σ m ${axis.toLowerCase()} / m`,
});

export default question({
  id: 'mass-inertia',
  version: 1,
  title: 'Inertia about the centre of gravity, from the parts',
  wording: 'How hard is it to turn, about its own centre of gravity?',
  subject: 'study',
  section: BALANCE,
  onRequest: true,
  inputs: [
    {
      in: 'table',
      name: 'parts',
      meaning: 'the parts of the subject',
      where: 'every part below the subject, or what was weighed with it',
      rows: partsOf,
      columns: [...balanceColumns.filter((c) => c.in === 'scalar'), own('x'), own('y'), own('z')],
    },
  ],
  body: {
    body: 'tally',
    table: 'parts',
    terms: [
      placed('mass', 'Σm', 'mass', (m, _x, _y, _z) => m),
      placed('momentX', 'Σm x', 'massMoment', (m, x, _y, _z) => m * x),
      placed('momentY', 'Σm y', 'massMoment', (m, _x, y, _z) => m * y),
      placed('momentZ', 'Σm z', 'massMoment', (m, _x, _y, z) => m * z),
      placed('secondX', 'Σm x²', 'inertia', (m, x, _y, _z) => m * x * x),
      placed('secondY', 'Σm y²', 'inertia', (m, _x, y, _z) => m * y * y),
      placed('secondZ', 'Σm z²', 'inertia', (m, _x, _y, z) => m * z * z),
      placed('productXY', 'Σm x y', 'inertia', (m, x, y, _z) => m * x * y),
      placed('productXZ', 'Σm x z', 'inertia', (m, x, _y, z) => m * x * z),
      placed('productYZ', 'Σm y z', 'inertia', (m, _x, y, z) => m * y * z),
      ownTerm('x'),
      ownTerm('y'),
      ownTerm('z'),
    ],
    outputs: [
      {
        ...{ name: 'mass', symbol: 'm', kind: 'mass', unit: 'kg', shown: 'm = Σ m' },
        meaning: 'mass of the parts with a position',
        alike: 'mass with a position',
        of: (...x) => s(x, 0),
      },
      { ...length('x', 'X', 'X'), of: (...x) => s(x, 1) / s(x, 0) },
      { ...length('y', 'Y', 'Y'), of: (...x) => s(x, 2) / s(x, 0) },
      { ...length('z', 'Z', 'Z'), of: (...x) => s(x, 3) / s(x, 0) },
      {
        ...out('roll', 'Ixx', 'inertia about the X axis (roll)', 'Σ m (Δy² + Δz²) + Σ Jx'),
        of: (...x) => yy(x) + zz(x) + s(x, 10),
      },
      {
        ...out('pitch', 'Iyy', 'inertia about the Y axis (pitch)', 'Σ m (Δx² + Δz²) + Σ Jy'),
        of: (...x) => xx(x) + zz(x) + s(x, 11),
      },
      {
        ...out('yaw', 'Izz', 'inertia about the Z axis (yaw)', 'Σ m (Δx² + Δy²) + Σ Jz'),
        of: (...x) => xx(x) + yy(x) + s(x, 12),
      },
      {
        ...out('ixy', 'Ixy', 'element xy of the inertia matrix', '− Σ m Δx Δy'),
        of: (...x) => -about(x, 1, 2, 7),
      },
      {
        ...out('ixz', 'Ixz', 'element xz of the inertia matrix', '− Σ m Δx Δz'),
        of: (...x) => -about(x, 1, 3, 8),
      },
      {
        ...out('iyz', 'Iyz', 'element yz of the inertia matrix', '− Σ m Δy Δz'),
        of: (...x) => -about(x, 2, 3, 9),
      },
    ],
  },
  look: (bound) => ({ findings: omitted(bound) }),
  modelError: {},
  sources: [
    { title: 'Parallel-axis theorem; inertia of a box m (b² + c²) / 12', status: 'from memory' },
  ],
  assumptions: [
    'A part with an envelope turns as a box that fills it; one without is a point at its centre of gravity, and its own inertia is left out.',
    'Pieces of one row are at their common centre of gravity: what they are apart is left out.',
    'Axes are those of the vehicle; elements off the diagonal are the negatives of the products.',
  ],
  cautions: [],
  checks: [
    {
      what: 'boxes that make up a larger box; two points at a distance',
      source: 'parallel-axis theorem and inertia of a box (textbook formulas)',
      status: 'from memory, recomputed',
      test: 'test/published/polyhedra.test.ts',
    },
  ],
  example: {
    parts: [
      box('85 ± 0.1 kg', 34, 18, 347, '1.9 ± 0.2 kg.m2'),
      box('33 ± 0.1 kg', 60, 0, 262, '1.3 ± 0.2 kg.m2'),
    ],
  },
});

function box(mass: string, x: number, y: number, z: number, own: string): Record<string, string> {
  const at = { x: `${x} ± 5 mm`, y: `${y} ± 5 mm`, z: `${z} ± 5 mm` };
  return { mass, ...at, ownX: own, ownY: own, ownZ: own };
}

/** Parts whose own inertia is left out, said with their share of the mass. */
function omitted({ tables }: BoundLook): Finding[] {
  const parts = (tables.parts ?? []).map((row) => row.cells);
  const number = (cell: Found | undefined) => (cell && !('missing' in cell) ? cell.form.x : 0);
  const points = parts.filter((c) => number(c.ownX) + number(c.ownY) + number(c.ownZ) === 0);
  if (points.length === 0) return [];
  const sum = (list: typeof parts) => list.reduce((t, c) => t + number(c.mass), 0);
  const share = (100 * sum(points)) / sum(parts);
  return [
    {
      code: 'own-inertia-left-out',
      level: 'note',
      place: { property: 'envelope.length' },
      value: `${points.length} of ${parts.length} parts, ${share.toPrecision(3)} % of the mass`,
      what: 'parts without an envelope count as points: the inertia is too small by what they have of their own',
      next: 'Enter length, width and height of the large and heavy parts first.',
    },
  ];
}
