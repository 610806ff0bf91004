import { type PropertyId, propertyWords } from '../../study/index.ts';
import type { PlainInputs, ScalarInput } from '../method.ts';

const MEASURE = 'not in the record: measure it on the part';

/** A length of a part, mm; `from` is the property of the part that holds it, when one does. */
export const size = (
  name: string,
  symbol: string,
  meaning: string,
  range: ScalarInput['range'],
  from?: PropertyId,
): ScalarInput => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'length',
  unit: 'mm',
  meaning,
  range,
  bounds: { above: 0 },
  where: from === undefined ? MEASURE : `${propertyWords(from)} of the part`,
  find: (at) => (from === undefined ? at.missing(meaning, MEASURE) : at.number(at.subject, from)),
});

/** A radius of a corner, mm; 0 for a sharp one. */
export const radius = (name: string, symbol: string, meaning: string): ScalarInput => ({
  ...size(name, symbol, meaning, [0, 60]),
  bounds: { atLeast: 0 },
});

/** A number that no record holds: what to take is said in `where`. */
export const stated = (
  input: Omit<ScalarInput, 'in' | 'find' | 'where'>,
  where: string,
): ScalarInput => ({
  in: 'scalar',
  ...input,
  where,
  find: (at) => at.missing(input.meaning, where),
});

/** A choice with a usual value, exact: `usual` as people write it and in SI. */
export const chosen = (
  input: Omit<ScalarInput, 'in' | 'find' | 'where' | 'assumed'>,
  usual: { readonly written: string; readonly x: number },
  where: string,
): ScalarInput => ({
  in: 'scalar',
  ...input,
  where,
  assumed: usual.written,
  find: (at) => at.exact(usual.x, input.meaning),
});

/** Scalars of plain inputs by name; NaN for what is missing. */
export const scalarsOf = <N extends string>(
  x: PlainInputs,
  ...names: readonly N[]
): Record<N, number> =>
  Object.fromEntries(names.map((n) => [n, x.scalars[n] ?? Number.NaN])) as Record<N, number>;
