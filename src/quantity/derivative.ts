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
  const first = new Float64Array(at.length);
  const second = new Float64Array(at.length);
  let i = 0;
  const along = (x: number): number => {
    at[i] = x;
    return f(...at);
  };
  for (; i < at.length; i++) {
    const x = xs[i] ?? 0;
    const scale = scales[i] ?? 0;
    first[i] = centralDifference(along, x, scale);
    second[i] = secondDifference(along, x, scale);
    at[i] = x;
  }
  return { first, second };
}
