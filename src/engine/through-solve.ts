import { FormMaker } from './forms/form-maker.ts';
import type { IndexedForm } from './forms/indexed-form.ts';
import type { Variables } from './forms/variables.ts';
import type { Propagated } from './propagate.ts';

/** Cells whose numbers a variable moves, with its contribution to each. */
export type Shift = readonly [cell: number, c: number];

interface Growing {
  readonly form: FormMaker;
  curvature: number;
  addedVariance: number;
}

/**
 * First-order propagation through a structured body: every variable in turn shifts all the
 * numbers that share it, and the outputs are differenced (JCGM 100:2008, 5.1.3 note 2), with
 * steps of 1/8 and 1/16 of a standard uncertainty and Richardson's extrapolation. Second-order
 * terms are those of each variable alone.
 * `evaluate` takes what is added to which cells and returns the outputs in a fixed order.
 */
export function throughSolve(
  evaluate: (shifts: readonly Shift[]) => readonly number[],
  cells: readonly IndexedForm[],
  variables: Variables,
): Propagated[] {
  const nominal = evaluate([]);
  const outs = nominal.map((x): Growing => {
    const form = new FormMaker(variables);
    form.x = x;
    return { form, curvature: 0, addedVariance: 0 };
  });
  for (const [variable, shifts] of byVariable(cells)) {
    const at = (t: number) => evaluate(shifts.map(([cell, c]) => [cell, t * c]));
    const points = [at(1 / 8), at(-1 / 8), at(1 / 16), at(-1 / 16)];
    for (const [k, out] of outs.entries())
      addMoved(
        out,
        variable,
        nominal[k] ?? 0,
        points.map((p) => p[k] ?? 0),
      );
  }
  return outs.map(({ form, ...rest }) => ({ ...rest, form: form.done(), depends: [] }));
}

function addMoved(out: Growing, variable: number, y: number, points: readonly number[]): void {
  const [p8 = 0, m8 = 0, p16 = 0, m16 = 0] = points;
  const slope = (4 * (p16 - m16) * 8 - (p8 - m8) * 4) / 3;
  if (slope !== 0) out.form.contribute(variable, slope);
  const bend = 64 * (p8 - 2 * y + m8);
  out.curvature += bend / 2;
  out.addedVariance += (bend * bend) / 2;
}

function byVariable(cells: readonly IndexedForm[]): Map<number, Shift[]> {
  const found = new Map<number, Shift[]>();
  for (const [cell, { vars, c }] of cells.entries())
    for (let i = 0; i < vars.length; i++) {
      const variable = vars[i] ?? -1;
      const list = found.get(variable);
      const shift: Shift = [cell, c[i] ?? 0];
      if (list) list.push(shift);
      else found.set(variable, [shift]);
    }
  return found;
}
