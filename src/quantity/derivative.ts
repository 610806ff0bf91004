/**
 * Derivatives by central differences, for linear propagation and its second-order terms.
 *
 * Steps balance truncation against rounding: ε^(1/3) of |x| for the first derivative, ε^(1/4)
 * for the second, ε being the spacing of doubles at 1. They are never below a fixed share of
 * the standard uncertainty: where x is a small correction to a large number (an offset of 0 ± u
 * in a length of metres) a smaller step drowns in the rounding of the large number.
 */
const FIRST_STEP = { ofX: Math.cbrt(Number.EPSILON), ofScale: 1e-3 };
const SECOND_STEP = { ofX: Math.sqrt(Math.sqrt(Number.EPSILON)), ofScale: 2e-2 };

/** A step from x that is exact in binary; never 0. */
function stepAt(x: number, scale: number, share: typeof FIRST_STEP): number {
  const h = Math.max(share.ofX * Math.abs(x), share.ofScale * Math.abs(scale));
  const usable = h > 0 && Number.isFinite(h) ? h : share.ofX;
  return x + usable - x;
}

/**
 * f′(x). `scale` is the standard uncertainty of x, in its unit (0 when exact). Beside the edge
 * of the domain of f, where one side is not finite, the difference is taken on the other side.
 */
export function centralDifference(f: (x: number) => number, x: number, scale: number): number {
  const h = stepAt(x, scale, FIRST_STEP);
  const above = f(x + h);
  const below = f(x - h);
  if (Number.isFinite(above) && Number.isFinite(below)) return (above - below) / (2 * h);
  const side = Number.isFinite(above) ? h : -h;
  return (4 * f(x + side) - f(x + 2 * side) - 3 * f(x)) / (2 * side);
}

/** f″(x), with `scale` as for centralDifference. */
export function secondDifference(f: (x: number) => number, x: number, scale: number): number {
  const h = stepAt(x, scale, SECOND_STEP);
  const above = f(x + h);
  const below = f(x - h);
  if (Number.isFinite(above) && Number.isFinite(below)) return (above - 2 * f(x) + below) / (h * h);
  const side = Number.isFinite(above) ? h : -h;
  return (f(x) - 2 * f(x + side) + f(x + 2 * side)) / (h * h);
}

/** First and second derivatives of f by each argument alone, in the order of its arguments. */
export interface Partials {
  readonly first: Float64Array;
  readonly second: Float64Array;
}

/** Second differences below this many spacings of doubles are rounding: the line is straight. */
const ROUNDING = 8 * Number.EPSILON;

/**
 * Derivatives of f by its argument `i` alone at `at`, written to their place; `y` is f there and
 * `scale` the argument's standard uncertainty. Where three points lie on a line to rounding no
 * further ones are tried: sums and products cost two evaluations an argument.
 */
export function partialInto(
  into: Partials,
  f: (...x: number[]) => number,
  at: number[],
  i: number,
  scale: number,
  y: number,
): void {
  const x = at[i] ?? 0;
  const h = stepAt(x, scale, FIRST_STEP);
  at[i] = x + h;
  const above = f(...at);
  at[i] = x - h;
  const below = f(...at);
  at[i] = x;
  const bend = Math.abs(above - 2 * y + below);
  if (bend <= ROUNDING * Math.max(Math.abs(above), Math.abs(y), Math.abs(below))) {
    into.first[i] = (above - below) / (2 * h);
    into.second[i] = 0;
  } else curvedInto(into, f, at, i, scale);
}

function curvedInto(
  into: Partials,
  f: (...x: number[]) => number,
  at: readonly number[],
  i: number,
  scale: number,
): void {
  const moved = [...at];
  const along = (x: number): number => {
    moved[i] = x;
    return f(...moved);
  };
  into.first[i] = centralDifference(along, at[i] ?? 0, scale);
  into.second[i] = secondDifference(along, at[i] ?? 0, scale);
}

/**
 * Partial derivatives of f at `xs`; `scales` are the standard uncertainties of the arguments.
 * @throws RangeError when the two lists differ in length.
 */
export function partials(
  f: (...x: number[]) => number,
  xs: ArrayLike<number>,
  scales: ArrayLike<number>,
): Partials {
  if (xs.length !== scales.length)
    throw new RangeError(`${xs.length} arguments but ${scales.length} scales`);
  const at = Array.from(xs);
  const into = { first: new Float64Array(at.length), second: new Float64Array(at.length) };
  const y = f(...at);
  for (let i = 0; i < at.length; i++) partialInto(into, f, at, i, scales[i] ?? 0, y);
  return into;
}
