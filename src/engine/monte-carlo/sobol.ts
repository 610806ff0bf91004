/**
 * Points of Sobol' with the direction numbers of Joe and Kuo ("Constructing Sobol sequences with
 * better two-dimensional projections", SIAM J. Sci. Comput. 30, 2008; table new-joe-kuo-6): for
 * each dimension from the second on the degree and the middle coefficients of its primitive
 * polynomial, and the first odd direction numbers.
 */
const DIRECTIONS: readonly (readonly [degree: number, middle: number, first: readonly number[]])[] =
  [
    [1, 0, [1]],
    [2, 1, [1, 3]],
    [3, 1, [1, 3, 1]],
    [3, 2, [1, 1, 1]],
    [4, 1, [1, 1, 3, 3]],
    [4, 4, [1, 3, 5, 13]],
    [5, 2, [1, 1, 5, 5, 17]],
    [5, 4, [1, 1, 5, 5, 5]],
    [5, 7, [1, 1, 7, 11, 19]],
    [5, 11, [1, 1, 5, 1, 1]],
    [5, 13, [1, 1, 1, 3, 11]],
    [5, 14, [1, 3, 5, 5, 31]],
    [6, 1, [1, 3, 3, 9, 7, 49]],
    [6, 13, [1, 1, 1, 15, 21, 21]],
    [6, 16, [1, 3, 1, 13, 27, 49]],
    [6, 19, [1, 1, 1, 15, 7, 5]],
    [6, 22, [1, 3, 1, 15, 13, 25]],
    [6, 25, [1, 1, 5, 5, 19, 61]],
    [7, 1, [1, 3, 7, 11, 23, 15, 103]],
    [7, 4, [1, 3, 7, 13, 13, 15, 69]],
    [7, 7, [1, 1, 3, 13, 7, 35, 63]],
    [7, 8, [1, 3, 5, 9, 1, 25, 53]],
    [7, 14, [1, 3, 1, 13, 9, 35, 107]],
    [7, 19, [1, 3, 1, 5, 27, 61, 31]],
    [7, 21, [1, 1, 5, 11, 19, 41, 61]],
    [7, 28, [1, 3, 5, 3, 3, 13, 69]],
    [7, 31, [1, 1, 7, 13, 1, 19, 1]],
    [7, 32, [1, 3, 7, 5, 13, 19, 59]],
    [7, 37, [1, 1, 3, 9, 25, 29, 41]],
    [7, 41, [1, 3, 5, 13, 23, 1, 55]],
    [7, 42, [1, 3, 7, 3, 13, 59, 17]],
  ];

const BITS = 32;
export const SOBOL_DIMENSIONS = DIRECTIONS.length + 1;

/**
 * One coordinate of the first `n` points as fractions of 2³², each point's bits turned over where
 * `shift` has a one: a random shift makes the points a fair sample and keeps them even.
 * @throws RangeError beyond SOBOL_DIMENSIONS.
 */
export function sobolColumn(dimension: number, n: number, shift = 0): Uint32Array {
  const v = directionsOf(dimension);
  const column = new Uint32Array(n);
  let x = 0;
  for (let i = 0; i < n; i++) {
    column[i] = x ^ shift;
    // Gray code order: the next point differs by the direction of the lowest zero bit of i.
    x ^= v[trailingOnes(i)] ?? 0;
  }
  return column;
}

const trailingOnes = (i: number): number => 31 - Math.clz32(~i & -~i);

/** Direction numbers of a dimension from 0, the first bit's at the highest place. */
function directionsOf(dimension: number): Uint32Array {
  if (!(dimension >= 0 && dimension < SOBOL_DIMENSIONS))
    throw new RangeError(`there are ${SOBOL_DIMENSIONS} dimensions, not ${dimension + 1}`);
  const v = new Uint32Array(BITS);
  const row = DIRECTIONS[dimension - 1];
  if (!row) return v.map((_, i) => 2 ** (BITS - 1 - i));
  const [degree, middle, first] = row;
  for (let i = 0; i < BITS; i++)
    v[i] = i < degree ? (first[i] ?? 0) * 2 ** (BITS - 1 - i) : further(v, i, degree, middle);
  return v;
}

/** The recurrence of the polynomial over the bits before. */
function further(v: Uint32Array, i: number, degree: number, middle: number): number {
  const before = v[i - degree] ?? 0;
  let x = before ^ (before >>> degree);
  for (let k = 1; k < degree; k++) if ((middle >> (degree - 1 - k)) & 1) x ^= v[i - k] ?? 0;
  return x >>> 0;
}
