import type { FlatCells } from '../src/engine/flat-cells.ts';
import type { Question } from '../src/engine/index.ts';
import type { Draws } from '../src/engine/monte-carlo/draws.ts';

/**
 * The question's own formulas, one sample after the other, with the same draws: the plain way
 * that columns are held against.
 */
export function sampleBySample({ body }: Question, cells: FlatCells, draws: Draws): Float64Array[] {
  if (body.body !== 'tally') throw new Error('only tallies are timed');
  const names = cells.rows[0]?.names.numbers ?? [];
  const terms = body.terms.map(({ each, needs }) => ({
    each,
    needs: needs.map((name) => names.indexOf(name)),
  }));
  const outs = body.outputs.map(() => new Float64Array(draws.size));
  for (let s = 0; s < draws.size; s++) {
    const sums = terms.map(() => 0);
    for (let i = 0; i < cells.rows.length; i++) {
      const xs = names.map((_, k) => cellAt(cells, i, k, draws, s));
      for (const [t, { each, needs }] of terms.entries()) {
        const args = needs.map((k) => xs[k] ?? Number.NaN);
        if (!args.some(Number.isNaN)) sums[t] = (sums[t] ?? 0) + each(...args);
      }
    }
    for (const [k, { of }] of body.outputs.entries()) (outs[k] as Float64Array)[s] = of(...sums);
  }
  return outs;
}

/** What a cell is worth in one sample. */
function cellAt(cells: FlatCells, i: number, k: number, draws: Draws, s: number): number {
  const { fields, starts, vars, columns } = cells;
  const count = fields.length / 3;
  const endOf = (at: number) => (starts[i] ?? 0) + (fields[2 * count + at]?.[i] ?? 0);
  let x = fields[k]?.[i] ?? Number.NaN;
  for (let at = k === 0 ? (starts[i] ?? 0) : endOf(k - 1); at < endOf(k); at++) {
    const { column, place, sign } = draws.placed(vars[at] ?? -1);
    x += sign * (columns[0]?.[at] ?? 0) * (column[(s + place) % draws.size] ?? Number.NaN);
  }
  return x;
}
