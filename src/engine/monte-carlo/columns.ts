import type { Formula } from '../method.ts';

type Columns = readonly Float64Array[];

/**
 * Adds a formula's values, sample by sample, to a column. The formula is the question's own, called
 * with plain numbers: spelled out by the count of its arguments, for a call with a list of them
 * costs several times as much.
 */
export function addApplied(into: Float64Array, f: Formula, args: Columns): void {
  const n = into.length;
  const at = (k: number): Float64Array => args[k] ?? into;
  const [a, b, c, d, e] = [at(0), at(1), at(2), at(3), at(4)] as [
    ...[Float64Array, Float64Array, Float64Array, Float64Array, Float64Array],
  ];
  switch (args.length) {
    case 1:
      for (let i = 0; i < n; i++) add(into, i, f(get(a, i)));
      return;
    case 2:
      for (let i = 0; i < n; i++) add(into, i, f(get(a, i), get(b, i)));
      return;
    case 3:
      for (let i = 0; i < n; i++) add(into, i, f(get(a, i), get(b, i), get(c, i)));
      return;
    case 4:
      for (let i = 0; i < n; i++) add(into, i, f(get(a, i), get(b, i), get(c, i), get(d, i)));
      return;
    case 5:
      for (let i = 0; i < n; i++)
        add(into, i, f(get(a, i), get(b, i), get(c, i), get(d, i), get(e, i)));
      return;
    default:
      addMany(into, f, args);
  }
}

function addMany(into: Float64Array, f: Formula, args: Columns): void {
  const xs = new Array<number>(args.length).fill(0);
  for (let i = 0; i < into.length; i++) {
    for (let k = 0; k < args.length; k++) xs[k] = get(args[k] as Float64Array, i);
    add(into, i, f(...xs));
  }
}

const get = (column: Float64Array, i: number): number => column[i] as number;
const add = (column: Float64Array, i: number, x: number): void => {
  column[i] = (column[i] as number) + x;
};

/** A formula's values, sample by sample. */
export function applied(f: Formula, args: Columns, size: number): Float64Array {
  const out = new Float64Array(size);
  addApplied(out, f, args);
  return out;
}
