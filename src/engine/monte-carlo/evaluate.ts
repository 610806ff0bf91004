import { formsOf } from '../body-out.ts';
import type { BoundInputs } from '../bound-inputs.ts';
import { flatCells } from '../flat-cells.ts';
import type { IndexedForm } from '../forms/indexed-form.ts';
import type { Found, Question, RowBody, Run, SolveBody, TallyBody } from '../method.ts';
import { scalarsOf } from '../run-body.ts';
import { Layout } from '../run-solve.ts';
import { applied } from './columns.ts';
import type { Drawn } from './draws.ts';
import { RowSums } from './row-sums.ts';

/** Columns of samples under way: gives the share that is done, so that one may stop in between. */
export type Sampling = Generator<number, readonly Float64Array[], undefined>;
/** Samples of each output of a body, in the order of its outputs. */
export type Sampler = (drawn: Drawn) => Sampling;

/**
 * Makes the sampler of a question: the same body over columns of samples in place of nominal
 * values. What a cell is worth in a sample follows from the variables it moves with, so that cells
 * which share one move together; answers of other questions come in by their linear form. Errors
 * of the question's own method are not in it.
 */
export function samplerOf(question: Question, bound: BoundInputs): Sampler {
  const { body } = question;
  const scalars = scalarsOf(question, bound);
  if (body.body === 'row') return rowSampler(body, bound, scalars);
  if (body.body === 'tally') return tallySampler(body, bound, scalars);
  return solveSampler(body, bound);
}

const rowSampler = (
  body: RowBody,
  { variables }: BoundInputs,
  scalars: readonly Found[],
): Sampler => {
  const forms = formsOf(scalars, variables);
  return function* (drawn) {
    const args = forms.map((form) => columnOf(form, drawn));
    return body.outputs.map(({ of }) => applied(of, args, drawn.size));
  };
};

/** What a number is worth, sample by sample. */
function columnOf({ x, vars, c }: IndexedForm, drawn: Drawn): Float64Array {
  const column = new Float64Array(drawn.size).fill(x);
  for (let i = 0; i < vars.length; i++) drawn.addTo(column, vars[i] ?? -1, c[i] ?? 0);
  return column;
}

function tallySampler(body: TallyBody, bound: BoundInputs, scalars: readonly Found[]): Sampler {
  const { variables } = bound;
  const cells = bound.cells ?? flatCells(bound.tables[body.table] ?? [], variables);
  const forms = formsOf(scalars, variables);
  const sums = new RowSums(body, cells);
  return function* (drawn) {
    const args = [...(yield* sums.sample(drawn)), ...forms.map((form) => columnOf(form, drawn))];
    return body.outputs.map(({ of }) => applied(of, args, drawn.size));
  };
}

/** Samples of a structured body between two words of progress. */
const TOLD = 64;

/** A structured body is asked again for every sample. */
const solveSampler = (body: SolveBody, bound: BoundInputs): Sampler => {
  const layout = new Layout(bound);
  const forms = layout.cells.map((cell) => bound.variables.form(cell.form));
  return function* (drawn) {
    const columns = forms.map((form) => (form.u > 0 ? columnOf(form, drawn) : undefined));
    const outs = body.outputs.map(() => new Float64Array(drawn.size));
    for (let s = 0; s < drawn.size; s++) {
      if (s % TOLD === 0) yield s / drawn.size;
      const moved = columns.flatMap((column, i) =>
        column ? [[i, (column[s] ?? Number.NaN) - (forms[i]?.x ?? 0)] as const] : [],
      );
      const { outputs } = body.solve(layout.shifted(moved), NO_PROGRESS);
      for (const [k, { name }] of body.outputs.entries())
        (outs[k] as Float64Array)[s] = outputs[name] ?? Number.NaN;
    }
    return outs;
  };
};

const NO_PROGRESS: Run = { tick: () => undefined };
