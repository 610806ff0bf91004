import type { Kind } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import type { DetailTable, Formula, OutputSpec, RowBody, Solved } from '../method.ts';

/** Short form of an output. */
export const output = (
  name: string,
  symbol: string,
  kind: Kind,
  unit: string,
  meaning: string,
  shown: string,
): OutputSpec => ({ name, symbol, kind, unit, meaning, shown });

/** An output of a row, with its own formula. */
export const worked = (
  ...[name, symbol, kind, unit, meaning, shown, of]: [...Parameters<typeof output>, of: Formula]
): RowBody['outputs'][number] => ({ ...output(name, symbol, kind, unit, meaning, shown), of });

/** An answer that can't be given: all outputs left out, with the reason. */
export const refused = (
  code: string,
  column: string,
  what: string,
  next: string,
  value?: string,
): Solved => ({ outputs: {}, findings: [finding('gap', code, column, what, next, value)] });

/** A finding about one input. */
export const finding = (
  level: Finding['level'],
  code: string,
  column: string,
  what: string,
  next: string,
  value?: string,
): Finding => ({
  code,
  level,
  place: { column },
  ...(value === undefined ? {} : { value }),
  what,
  next,
});

/** How each quantity was worked out, and the exponent with which it depends on the thickness. */
export const formsTable = (
  rows: readonly (readonly [quantity: string, form: string, exponent: number | ''])[],
): DetailTable => ({
  title: 'Forms used, and exponent of the wall thickness',
  columns: [{ name: 'quantity' }, { name: 'form' }, { name: 'exponent of the thickness' }],
  rows,
});

/** Relative step of the logarithmic derivatives: rounding and truncation are both far below 1e-6. */
const STEP = 1e-4;

/**
 * Exponent with which each of several quantities depends on a thickness, at the values at hand:
 * d ln f / d ln t by a central difference. `at` takes the factor on the thickness.
 */
export function exponents<N extends string>(
  at: (factor: number) => Readonly<Record<N, number>>,
): Record<N, number> {
  const [above, below] = [at(1 + STEP), at(1 - STEP)];
  const names = Object.keys(above) as N[];
  const over = Math.log((1 + STEP) / (1 - STEP));
  return Object.fromEntries(names.map((n) => [n, Math.log(above[n] / below[n]) / over])) as Record<
    N,
    number
  >;
}
