import type { DetailTable, PlainInputs, PlainRow } from '../../method.ts';
import { bendingStiffness, solidPlate } from '../../structure/skins.ts';
import { wholeSets } from '../cost-lines.ts';

/** Word of a line that every design has. */
export const EVERY = 'every design';

/** How plates are sized: as each design says, or so thick that all are as stiff as the first. */
export const SIZINGS = ['as designed', 'equal bending stiffness'] as const;

/** One line of a design, worked out; SI, all its pieces together, before overhead. */
export interface LineFigures {
  readonly design: string;
  readonly name: string;
  readonly isCommon: boolean;
  readonly pieces: number;
  readonly cost: number;
  readonly tooling: number;
  readonly tool: number;
  readonly mass: number;
  readonly time: number;
  readonly crossings: number;
  readonly service: number;
}

/** One design with all its lines. */
export interface DesignFigures {
  readonly name: string;
  readonly lines: readonly LineFigures[];
  /** Lines of its own, and with those that every design has; before overhead. */
  readonly own: number;
  readonly before: number;
  readonly cost: number;
  readonly mass: number;
  readonly time: number;
  readonly tool: number;
  readonly crossings: number;
  readonly service: number;
}

/** An optional cell: nothing when it is empty. */
const orNone = (row: PlainRow, name: string): number => {
  const x = row[name];
  return typeof x === 'number' && Number.isFinite(x) ? x : 0;
};
const orOne = (row: PlainRow, name: string): number => orNone(row, name) || 1;
export const has = (row: PlainRow, name: string): boolean =>
  typeof row[name] === 'number' && Number.isFinite(row[name]);

/** Names of the designs in the order of their first lines. */
export const designsOf = ({ tables }: PlainInputs): string[] => [
  ...new Set((tables.lines ?? []).map((row) => String(row.design)).filter((d) => d !== EVERY)),
];

/** Every design with its figures. */
export function figuresOf(x: PlainInputs): DesignFigures[] {
  const rows = x.tables.lines ?? [];
  const [built = ''] = designsOf(x);
  const stiffness = stiffnessOf(rows.find((row) => row.design === built && has(row, 'modulus')));
  const lines = rows.map((row) =>
    lineOf(row, x, x.terms.sizing === SIZINGS[1] && row.design !== built ? stiffness : undefined),
  );
  return designsOf(x).map((name) => designOf(name, lines, x));
}

function designOf(name: string, all: readonly LineFigures[], x: PlainInputs): DesignFigures {
  const lines = all.filter((line) => line.design === name || line.isCommon);
  const sum = (of: (line: LineFigures) => number) => lines.reduce((s, line) => s + of(line), 0);
  const before = sum((l) => l.cost);
  return {
    ...{ name, lines, before, own: sum((l) => (l.isCommon ? 0 : l.cost)) },
    ...{ cost: (x.scalars.overhead ?? Number.NaN) * before, mass: sum((l) => l.mass) },
    ...{ time: sum((l) => l.time), tool: sum((l) => l.tool) },
    ...{ crossings: sum((l) => l.crossings), service: sum((l) => l.service) },
  };
}

function lineOf(row: PlainRow, x: PlainInputs, stiffness: number | undefined): LineFigures {
  const { labour = Number.NaN, volume = Number.NaN, years = Number.NaN } = x.scalars;
  const pieces = orOne(row, 'pieces');
  const mass = has(row, 'mass') ? orNone(row, 'mass') : plateMass(row, stiffness);
  const each =
    orNone(row, 'price') +
    mass * (orOne(row, 'gross') * orNone(row, 'materialPrice') + orNone(row, 'conversion')) +
    orNone(row, 'time') * labour +
    orNone(row, 'machineTime') * orNone(row, 'machineRate') +
    orNone(row, 'coated') * orNone(row, 'coatPrice');
  const made = volume * years;
  const tool = orNone(row, 'tool');
  const sets = wholeSets(made / (orNone(row, 'toolLife') || made));
  const tooling = tool > 0 ? (tool * sets) / made : 0;
  return {
    ...{ design: String(row.design), name: String(row.line), isCommon: row.design === EVERY },
    ...{ pieces, cost: pieces * each + tooling, tooling, tool: tool * sets, mass: pieces * mass },
    time: pieces * (orNone(row, 'time') + orNone(row, 'machineTime')),
    ...{ crossings: pieces * orNone(row, 'crossings'), service: pieces * orNone(row, 'service') },
  };
}

/** Bending stiffness for a width of a plate or of two skins, N·m. */
function stiffnessOf(row: PlainRow | undefined): number | undefined {
  if (!row) return undefined;
  const half = orNone(row, 'thickness') / 2;
  const { core, modulus, poisson } = plate(row);
  return bendingStiffness({ top: half, bottom: half, core, modulus, poisson });
}

const plate = (row: PlainRow) => ({
  core: orNone(row, 'core'),
  modulus: orNone(row, 'modulus'),
  poisson: orNone(row, 'poisson'),
});

/** Mass of a plate by its thickness, or by the one that gives it a stiffness as a solid plate. */
function plateMass(row: PlainRow, stiffness: number | undefined): number {
  const { modulus, poisson } = plate(row);
  const isSized = stiffness !== undefined && modulus > 0;
  const thickness = isSized
    ? solidThickness(stiffness, modulus, poisson)
    : orNone(row, 'thickness');
  return orNone(row, 'density') * thickness * orNone(row, 'face');
}

/** Plates of the designs: how stiff they are as they say, and how thick they would be as stiff as the first. */
export function platesTable(x: PlainInputs): DetailTable {
  const rows = (x.tables.lines ?? []).filter((row) => has(row, 'modulus'));
  const first = stiffnessOf(rows[0]);
  return {
    title: 'Plates in bending',
    columns: [
      ...[{ name: 'design' }, { name: 'line' }],
      { name: 'bending stiffness for a width', kind: 'flexuralRigidity', unit: 'N.m' },
      { name: 'solid plate as stiff as the first', kind: 'length', unit: 'mm' },
    ],
    rows: rows.map((row) => {
      const { modulus, poisson } = plate(row);
      const own = stiffnessOf(row) ?? Number.NaN;
      return [
        ...[String(row.design), String(row.line), own],
        solidThickness(first ?? Number.NaN, modulus, poisson),
      ];
    }),
  };
}

/** Thickness of a solid plate of this bending stiffness: D grows with its cube. */
const solidThickness = (stiffness: number, modulus: number, poisson: number): number =>
  Math.cbrt(stiffness / bendingStiffness(solidPlate(1, modulus, poisson)));
