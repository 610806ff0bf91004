import { materialOf } from '../../data/index.ts';
import {
  type PlainInputs,
  type PlainRow,
  question,
  type ScalarColumn,
  type Solved,
} from '../method.ts';
import { PLATES } from '../sections.ts';
import { isotropicShear } from './fibre-mixture.ts';
import { scalarsOf, size } from './inputs.ts';
import { finding, output, refused } from './outputs.ts';
import { bendingStiffness, ribStiffness, type Skins, skinExponent } from './skins.ts';
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

export default question({
  id: 'floor-options',
  version: 1,
  title: 'Floor or cover plate as built, and its alternatives',
  wording:
    'How stiff and how heavy would the floor be in another design, with all it needs beside it?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    size('length', 'L', 'length of the floor', [50, 6000], 'envelope.length'),
    size('width', 'B', 'width of the floor', [50, 3000], 'envelope.width'),
    {
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
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      output(
        'D',
        'D₀',
        'flexuralRigidity',
        'N.m',
        'bending stiffness for a width, as built',
        'D = E ((c + t)³ − c³) / (12 (1 − ν²))',
      ),
      output(
        'Gt',
        'G t₀',
        'stiffness',
        'kN/mm',
        'shear stiffness in the plane, as built',
        'G t = E t / (2 (1 + ν))',
      ),
      output(
        'arealMass',
        'm₀',
        'arealMass',
        'kg/m2',
        'mass for an area, as built, without what it needs beside it',
        'm = ρ t + mc',
      ),
      output(
        'mass',
        'M₀',
        'mass',
        'kg',
        'mass of the floor as built, with what it needs beside it',
        'M = (ρ t + mc) L B + m+',
      ),
      {
        ...output(
          'saved',
          'ΔM',
          'mass',
          'kg',
          'mass saved by the lightest alternative with all it needs; below zero it is heavier',
          'ΔM = M₀ − min M',
        ),
        decides: 'difference',
      },
      output(
        'stiffnessRatio',
        'D/D₀',
        'ratio',
        '1',
        'bending stiffness of that alternative over that as built',
        'D / D₀',
      ),
      output(
        'shearRatio',
        'G t/G t₀',
        'ratio',
        '1',
        'shear stiffness of that alternative over that as built',
        'G t / G t₀',
      ),
    ],
    solve,
  },
  modelError: {},
  sources: [
    {
      title: 'Parallel-axis theorem and plate theory, closed form',
      status: 'common practice, no source',
    },
    {
      title: 'Table of materials of this tool',
      at: 'conductivity and expansion, each with its source',
      status: 'published',
    },
  ],
  assumptions: [
    'Isotropic materials; two like skins where there is a core, ribs of their material along one way only.',
    'D is that of the skins; ribs stand apart. Seams, joints and beads of a stamped floor are left out.',
    'Strikes from below are not worked out: what guards against them is what a design needs beside it.',
    'The lightest alternative is the one of least mass with all it needs; to see the spread of another, leave the lighter ones out.',
  ],
  cautions: [],
  checks: [
    {
      what: 'planks of two skins against stamped and moulded plates: D, G t, masses',
      source: 'closed forms, worked out independently',
      status: 'own inputs, published formula',
      test: 'test/published/plate-substitution.test.ts',
    },
  ],
  example: {
    length: '1520 ± 2 mm',
    width: '1250 ± 2 mm',
    designs: [
      {
        ...{ design: 'planks of two skins, as built', material: 'Al 6005A-T6', needs: '' },
        ...{ thickness: '4 ± 0.1 mm', core: '10 ± 0.1 mm', coreMass: '2.1 ± 0.2 kg/m2' },
        ...{ modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01', density: '2700 ± 20 kg/m3' },
        ...{ beside: 'exactly 0 kg', price: 'exactly 0 {u}', edge: 'exactly 0 m' },
      },
      {
        ...{ design: 'stamped aluminium', material: 'aluminium', needs: 'stone shield' },
        ...{ thickness: '2.5 ± 0.05 mm', core: '', coreMass: '' },
        ...{ modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01', density: '2700 ± 20 kg/m3' },
        ...{ beside: '11 ± 1.7 kg', price: '35 ± 6 {u}', edge: '' },
      },
      {
        ...{ design: 'stamped steel', material: 'steel', needs: 'stone shield' },
        ...{ thickness: '1.2 ± 0.03 mm', core: '', coreMass: '' },
        ...{ modulus: '210 ± 4 GPa', poisson: '0.3 ± 0.01', density: '7850 ± 40 kg/m3' },
        ...{ beside: '11 ± 1.7 kg', price: '35 ± 6 {u}', edge: '' },
      },
      {
        ...{ design: 'moulded plate', material: 'glass-fibre', needs: 'edge trimmed and sealed' },
        ...{ thickness: '5.2 ± 0.1 mm', core: '', coreMass: '' },
        ...{ modulus: '20 ± 2 GPa', poisson: '0.333 ± 0.02', density: '1900 ± 40 kg/m3' },
        ...{ beside: '', price: '', edge: '5.54 ± 0.02 m' },
      },
    ],
  },
});

interface Design {
  readonly name: string;
  readonly needs: string;
  readonly skins: Skins;
  readonly d: number;
  readonly ribs: number;
  readonly gt: number;
  readonly arealMass: number;
  readonly mass: number;
  readonly price: number;
  readonly edge: number;
  readonly resistance: number | '';
  readonly growth: number | '';
}

/** An optional cell: nothing when it is empty. */
const orNone = (cell: number | string | undefined): number =>
  typeof cell === 'number' && Number.isFinite(cell) ? cell : 0;

function designOf(row: PlainRow, length: number, width: number): Design {
  const [t, core, modulus] = [Number(row.thickness), orNone(row.core), Number(row.modulus)];
  const [density, poisson] = [Number(row.density), Number(row.poisson)];
  const skins = { top: t / 2, bottom: t / 2, core, modulus, poisson };
  const coreMass = orNone(row.coreMass);
  const arealMass = density * t + coreMass;
  const material = materialOf(String(row.material ?? ''));
  const expansion = material?.expansion?.x;
  return {
    name: String(row.design),
    needs: String(row.needs ?? ''),
    skins,
    d: bendingStiffness(skins),
    ribs: ribStiffness(skins, coreMass, density),
    gt: isotropicShear(modulus, poisson) * t,
    arealMass,
    mass: arealMass * length * width + orNone(row.beside),
    price: orNone(row.price),
    edge: orNone(row.edge),
    resistance: resistanceOf(t, core, coreMass / density, material?.conductivity?.x),
    growth: expansion === undefined ? '' : 1e3 * expansion * length,
  };
}

/** Thermal resistance through a floor, m²·K/W: skins, and ribs as straight conductors. */
function resistanceOf(t: number, core: number, ribs: number, k: number | undefined): number | '' {
  if (k === undefined || (core > 0 && ribs === 0)) return '';
  return core > 0 ? (t + core ** 2 / ribs) / k : t / k;
}

function solve(x: PlainInputs): Solved {
  const { length, width } = scalarsOf(x, 'length', 'width');
  const designs = (x.tables.designs ?? []).map((row) => designOf(row, length, width));
  const [built, ...others] = designs;
  if (!built || others.length === 0)
    return refused(
      'too-few-designs',
      'designs',
      'there is nothing to compare',
      'Give the floor as built and at least one alternative.',
    );
  const best = others.reduce((a, b) => (b.mass < a.mass ? b : a));
  return {
    outputs: {
      D: built.d,
      Gt: built.gt,
      arealMass: built.arealMass,
      mass: built.mass,
      saved: built.mass - best.mass,
      stiffnessRatio: best.d / built.d,
      shearRatio: best.gt / built.gt,
    },
    findings: [
      finding(
        'note',
        'lightest-alternative',
        'designs',
        `the lightest alternative is: ${best.name}${best.needs ? `; it needs: ${best.needs}` : ''}`,
        'Weigh stiffness, edge work, heat and price beside its mass.',
      ),
    ],
    detail: optionsTable(designs),
  };
}

const optionsTable = (designs: readonly Design[]) => ({
  title: 'Options, as built first',
  columns: [
    { name: 'design' },
    { name: 'D, skins', kind: 'flexuralRigidity' as const, unit: 'N.m' },
    { name: 'ribs, along them', kind: 'flexuralRigidity' as const, unit: 'N.m' },
    { name: 'exponent of D in the thickness' },
    { name: 'G t', kind: 'stiffness' as const, unit: 'kN/mm' },
    { name: 'mass for an area', kind: 'arealMass' as const, unit: 'kg/m2' },
    { name: 'mass with what it needs', kind: 'mass' as const, unit: 'kg' },
    { name: 'needs beside it' },
    { name: 'price of that', kind: 'money' as const, unit: '{u}' },
    { name: 'edge to trim or seal', kind: 'length' as const, unit: 'm' },
    { name: 'thermal resistance, m²·K/W' },
    { name: 'growth of its length, mm/K' },
  ],
  rows: designs.map((o) => [
    o.name,
    o.d,
    o.ribs,
    skinExponent(o.skins),
    o.gt,
    o.arealMass,
    o.mass,
    o.needs || 'nothing named',
    o.price,
    o.edge,
    o.resistance,
    o.growth,
  ]),
});
