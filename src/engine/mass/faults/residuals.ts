import { covariance, differenceOf, FormBuilder, type LinearForm } from '../../../quantity/index.ts';
import { productOf } from '../product.ts';
import type { MassRecord, MassRow } from './mass-record.ts';
import type { Matrix } from './small-matrix.ts';

/** One sum that must close: the parts less what the scales say. */
export interface Residual {
  /** `mass`, `x`, `y`, `z` of the whole vehicle, or the label of a module. */
  readonly id: string;
  readonly kind: 'mass' | 'massMoment';
  /** Parts less scales, kg or kg·m. */
  readonly form: LinearForm;
  /** What a kilogram too many in a row adds to it: 1, a coordinate, or 0. */
  readonly perKg: readonly number[];
}

export interface Residuals {
  readonly of: readonly Residual[];
  readonly x: readonly number[];
  readonly cov: Matrix;
  /** What a kilogram too many on each scale does to the residuals. */
  readonly scales: readonly (readonly number[])[];
}

/** Spread of where a part may be that has no position, m: anywhere in the vehicle. */
const NOWHERE_M = 1;

/** Every sum that the record has both sides of. A row without a mass is left out of the parts. */
export function residualsOf(record: MassRecord): Residuals {
  const centre = centreOf(record.rows);
  const whole = (['mass', 'x', 'y', 'z'] as const).flatMap((id, i) => {
    const scales = record.whole[id];
    return scales ? [wholeResidual(record.rows, id, i - 1, scales, centre)] : [];
  });
  const modules = record.modules.map(({ label, mass, holds }) => ({
    id: label,
    kind: 'mass' as const,
    form: differenceOf(
      sumOf(record.rows, (_, i) => holds.has(i)),
      mass,
    ),
    perKg: record.rows.map((_, i) => (holds.has(i) ? 1 : 0)),
  }));
  const of = [...whole, ...modules];
  const cov = of.map((a) => of.map((b) => covariance(a.form, b.form)));
  return { of, x: of.map((r) => r.form.x), cov, scales: scalesOf(record, of) };
}

/** Each corner scale loads the vehicle at its wheel; a module's scale is in its own sum only. */
function scalesOf(record: MassRecord, of: readonly Residual[]): number[][] {
  const wheels = record.whole.wheels ?? [];
  return [
    ...wheels.map(({ x, y }) =>
      of.map(({ id }) => (id === 'mass' ? -1 : id === 'x' ? -x : id === 'y' ? -y : 0)),
    ),
    ...record.modules.map((m) => of.map((r) => (r.id === m.label ? -1 : 0))),
  ];
}

function wholeResidual(
  rows: readonly MassRow[],
  id: 'mass' | 'x' | 'y' | 'z',
  axis: number,
  scales: LinearForm,
  centre: readonly number[],
): Residual {
  if (id === 'mass') {
    const form = differenceOf(
      sumOf(rows, () => true),
      scales,
    );
    return { id, kind: 'mass', form, perKg: rows.map(() => 1) };
  }
  const form = differenceOf(momentOf(rows, axis, centre), scales);
  return {
    id,
    kind: 'massMoment',
    form,
    perKg: rows.map((r) => r.at?.[axis]?.x ?? centre[axis] ?? 0),
  };
}

function sumOf(rows: readonly MassRow[], wanted: (row: MassRow, i: number) => boolean): LinearForm {
  const sum = new FormBuilder();
  for (const [i, row] of rows.entries()) if (row.mass && wanted(row, i)) sum.add(row.mass);
  return sum.done();
}

/** Σ m x along one axis; a part without a position counts at the centre, anywhere in the vehicle. */
function momentOf(rows: readonly MassRow[], axis: number, centre: readonly number[]): LinearForm {
  const sum = new FormBuilder();
  for (const row of rows) {
    if (!row.mass) continue;
    const at = row.at?.[axis] ?? nowhere(row, axis, centre[axis] ?? 0);
    sum.add(productOf(row.mass, at));
  }
  return sum.done();
}

const nowhere = (row: MassRow, axis: number, x: number): LinearForm => ({
  x,
  by: new Map([[`nowhere:${row.number}.${axis}`, NOWHERE_M]]),
});

/** Centre of gravity of the rows that have both mass and position. */
function centreOf(rows: readonly MassRow[]): number[] {
  const placed = rows.filter((r) => r.mass && r.at);
  const mass = placed.reduce((sum, r) => sum + (r.mass?.x ?? 0), 0);
  return [0, 1, 2].map((axis) =>
    mass === 0
      ? 0
      : placed.reduce((s, r) => s + (r.mass?.x ?? 0) * (r.at?.[axis]?.x ?? 0), 0) / mass,
  );
}
