import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FlatCells } from '../src/engine/flat-cells.ts';
import type { Draws } from '../src/engine/monte-carlo/draws.ts';

const SOURCE = fileURLToPath(new URL('strict.c', import.meta.url));
/** Strict: no flag that lets the compiler change the order or kind of operations. */
export const FLAGS = ['-O3', '-std=c11'];

export interface StrictRun {
  readonly seconds: number;
  /** The results' columns one after the other. */
  readonly results: Float64Array;
}

/** Runs the same arithmetic on the same draws in C; undefined where there is no compiler. */
export function runStrict(tables: readonly StrictTable[], draws: Draws): StrictRun | undefined {
  if (spawnSync('gcc', ['--version']).status !== 0) return undefined;
  const dir = mkdtempSync(join(tmpdir(), 'hoistside-bench-'));
  try {
    const [program, input, output] = ['strict', 'input', 'output'].map((f) => join(dir, f));
    if (!program || !input || !output) return undefined;
    execFileSync('gcc', [...FLAGS, SOURCE, '-o', program, '-lm']);
    writeFileSync(input, inputOf(tables, draws));
    const seconds = Number(execFileSync(program, [input, output], { encoding: 'utf8' }));
    const bytes = readFileSync(output);
    return { seconds, results: new Float64Array(new Uint8Array(bytes).buffer) };
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

/** Rows with the places of the columns that the program takes. */
export interface StrictTable {
  readonly cells: FlatCells;
  readonly columns: readonly string[];
}

/** All as doubles: the columns of draws, then each table's cells with their causes. */
function inputOf(tables: readonly StrictTable[], draws: Draws): Float64Array {
  const columns = new Map<Float64Array, number>();
  const numbers: number[] = [];
  for (const { cells, columns: names } of tables) {
    const all = cells.rows[0]?.names.numbers ?? [];
    const places = names.map((name) => all.indexOf(name));
    numbers.push(cells.rows.length, places.length);
    for (let i = 0; i < cells.rows.length; i++)
      for (const k of places) putCell(numbers, cells, i, k, draws, columns);
  }
  const list = [...columns.keys()];
  const head = new Float64Array(2 + list.length * draws.size);
  head.set([draws.size, list.length]);
  for (const [i, column] of list.entries()) head.set(column, 2 + i * draws.size);
  const whole = new Float64Array(head.length + numbers.length);
  whole.set(head);
  whole.set(numbers, head.length);
  return whole;
}

function putCell(
  numbers: number[],
  { fields, starts, vars, columns: factors }: FlatCells,
  i: number,
  k: number,
  draws: Draws,
  columns: Map<Float64Array, number>,
): void {
  const count = fields.length / 3;
  const endOf = (at: number) => (starts[i] ?? 0) + (fields[2 * count + at]?.[i] ?? 0);
  const [from, to] = [k === 0 ? (starts[i] ?? 0) : endOf(k - 1), endOf(k)];
  numbers.push(fields[k]?.[i] ?? Number.NaN, to - from);
  for (let at = from; at < to; at++) {
    const { column, place, sign } = draws.placed(vars[at] ?? -1);
    const index = columns.get(column) ?? columns.size;
    columns.set(column, index);
    numbers.push(index, place, sign * (factors[0]?.[at] ?? 0));
  }
}
