import type { Partials } from '../../quantity/index.ts';
import type { Formula } from '../method.ts';

/** One product of a sum: a factor and the arguments it multiplies. */
interface Product {
  readonly factor: number;
  readonly args: readonly number[];
}

/** Formulas of more arguments have too many corners to look at. */
const MOST_ARGUMENTS = 8;
/** Sum and formula agree when they differ by rounding only, relative to the largest product. */
const ROUNDING = 64 * Number.EPSILON;

/**
 * A formula that is a sum of products of its arguments, each at most once in a product: nearly
 * every term of a sum over parts is. It is found by asking the formula itself at the corners of
 * the unit cube, so there is no second copy of it to keep; its slopes then cost no further
 * evaluations. At every point it is checked against the formula's value, for a formula may bend
 * somewhere else.
 */
export class Multilinear {
  private constructor(private readonly products: readonly Product[]) {}

  /** The sum of products that a formula is, looked for once; undefined when it is none. */
  static of(f: Formula, args: number): Multilinear | undefined {
    if (!FOUND.has(f)) FOUND.set(f, Multilinear.#find(f, args));
    return FOUND.get(f);
  }

  static #find(f: Formula, args: number): Multilinear | undefined {
    if (args > MOST_ARGUMENTS) return undefined;
    const corners = Array.from({ length: 2 ** args }, (_, set) =>
      f(...Array.from({ length: args }, (__, i) => (isIn(set, i) ? 1 : 0))),
    );
    const products = corners.flatMap((_, set) => {
      const factor = factorOf(corners, set);
      const members = Array.from({ length: args }, (__, i) => i).filter((i) => isIn(set, i));
      return factor === 0 ? [] : [{ factor, args: members }];
    });
    const made = new Multilinear(products);
    const slopes = { first: new Float64Array(args), second: new Float64Array(args) };
    const isSum = (at: readonly number[]) => made.slopesInto(slopes, at, f(...at.slice(0, args)));
    return PROBES.every(isSum) ? made : undefined;
  }

  /**
   * Partial derivatives at `xs`, exact to rounding; by one argument alone it never bends. False
   * when the formula, which gives `y` there, is not this sum: the slopes are none then.
   */
  slopesInto({ first, second }: Partials, xs: readonly number[], y: number): boolean {
    first.fill(0);
    second.fill(0);
    for (const { factor, args } of this.products)
      for (let k = 0; k < args.length; k++) addSlope(first, factor, args, k, xs);
    return this.isAt(xs, y);
  }

  /** Whether the formula, which gives `y` at `xs`, is this sum there to rounding. */
  isAt(xs: readonly number[], y: number): boolean {
    let sum = 0;
    let largest = Math.abs(y);
    for (const { factor, args } of this.products) {
      let product = factor;
      for (let k = 0; k < args.length; k++) product *= xs[args[k] ?? 0] ?? 0;
      sum += product;
      largest = Math.max(largest, Math.abs(product));
    }
    return Math.abs(sum - y) <= ROUNDING * largest;
  }

  /** Adds the sum of products to a column, sample by sample. */
  addTo(into: Float64Array, columns: readonly Float64Array[]): void {
    for (const { factor, args } of this.products) addProduct(into, factor, args, columns);
  }
}

/** Adds one product of columns; up to three factors are spelled out, for speed. */
function addProduct(
  into: Float64Array,
  factor: number,
  args: readonly number[],
  columns: readonly Float64Array[],
): void {
  const at = (k: number): Float64Array => columns[args[k] ?? 0] ?? into;
  const [a, b, c] = [at(0), at(1), at(2)];
  if (args.length === 1) addColumn(into, factor, a);
  else if (args.length === 2) addTwo(into, factor, a, b);
  else if (args.length === 3) addThree(into, factor, a, b, c);
  else
    for (let i = 0; i < into.length; i++) {
      const product = args.reduce((p, k) => p * (columns[k]?.[i] ?? Number.NaN), factor);
      into[i] = (into[i] as number) + product;
    }
}

/** Adds `factor` times a column; four at a step, for a loop costs as much as what is in it. */
export function addColumn(into: Float64Array, factor: number, a: Float64Array): void {
  const n = into.length;
  let i = 0;
  for (; i + 3 < n; i += 4) {
    into[i] = (into[i] as number) + factor * (a[i] as number);
    into[i + 1] = (into[i + 1] as number) + factor * (a[i + 1] as number);
    into[i + 2] = (into[i + 2] as number) + factor * (a[i + 2] as number);
    into[i + 3] = (into[i + 3] as number) + factor * (a[i + 3] as number);
  }
  for (; i < n; i++) into[i] = (into[i] as number) + factor * (a[i] as number);
}

function addTwo(into: Float64Array, factor: number, a: Float64Array, b: Float64Array): void {
  const n = into.length;
  let i = 0;
  for (; i + 3 < n; i += 4) {
    into[i] = (into[i] as number) + factor * (a[i] as number) * (b[i] as number);
    into[i + 1] = (into[i + 1] as number) + factor * (a[i + 1] as number) * (b[i + 1] as number);
    into[i + 2] = (into[i + 2] as number) + factor * (a[i + 2] as number) * (b[i + 2] as number);
    into[i + 3] = (into[i + 3] as number) + factor * (a[i + 3] as number) * (b[i + 3] as number);
  }
  for (; i < n; i++) into[i] = (into[i] as number) + factor * (a[i] as number) * (b[i] as number);
}

function addThree(
  into: Float64Array,
  factor: number,
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
): void {
  const n = into.length;
  for (let i = 0; i < n; i++)
    into[i] = (into[i] as number) + factor * (a[i] as number) * (b[i] as number) * (c[i] as number);
}

/** Adds the slope of one product by its k-th factor. */
function addSlope(
  into: Float64Array,
  factor: number,
  args: readonly number[],
  k: number,
  xs: readonly number[],
): void {
  let slope = factor;
  for (let j = 0; j < args.length; j++) if (j !== k) slope *= xs[args[j] ?? 0] ?? 0;
  const at = args[k] ?? 0;
  into[at] = (into[at] ?? 0) + slope;
}

const FOUND = new WeakMap<Formula, Multilinear | undefined>();

const isIn = (set: number, i: number): boolean => ((set >> i) & 1) === 1;

/** Σ over the parts of a set, signs by what they leave out: the factor of the product of all of it. */
function factorOf(corners: readonly number[], set: number): number {
  let sum = 0;
  for (let part = 0; part <= set; part++)
    if ((part & set) === part) {
      const left = countOf(set) - countOf(part);
      sum += (left % 2 === 0 ? 1 : -1) * (corners[part] ?? Number.NaN);
    }
  return sum;
}

function countOf(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest >>= 1) count += rest & 1;
  return count;
}

/** Points off the corners, of either sign and of several sizes. */
const PROBES: readonly (readonly number[])[] = [
  [1.7, -2.3, 0.31, 5.9, -0.47, 3.1, 0.83, -1.9],
  [-41.3, 0.013, 7.7, -0.29, 230.1, -6.1, 19.3, 0.57],
  [0.0041, 93.7, -0.71, 1.13, 0.37, 12.9, -3.7, 41],
];
