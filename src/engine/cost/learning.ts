/** Models of a learning curve: what falls by the slope with each doubling. */
export const LEARNING_MODELS = ['unit', 'cumulative average'] as const;
export type LearningModel = (typeof LEARNING_MODELS)[number];

/** Units summed one by one; beyond them the sum is closed by the formula of Euler and Maclaurin. */
const ONE_BY_ONE = 200;

/** Exponent b of a curve that falls to `slope` with each doubling: log₂ of the slope. */
const exponentOf = (slope: number): number => Math.log2(slope);

/** Σ x^b for x from 1 to n. */
function sumOfPowers(b: number, n: number): number {
  const whole = Math.min(Math.floor(n), ONE_BY_ONE);
  let sum = 0;
  for (let x = 1; x <= whole; x++) sum += x ** b;
  return n <= ONE_BY_ONE ? sum + (n - whole) * (whole + 1) ** b : sum + tail(b, whole, n);
}

/** Σ x^b for x above m up to n by Euler and Maclaurin, to the first derivative. */
function tail(b: number, m: number, n: number): number {
  const integral =
    Math.abs(b + 1) < 1e-12 ? Math.log(n / m) : (n ** (b + 1) - m ** (b + 1)) / (b + 1);
  return integral + (n ** b - m ** b) / 2 + (b * (n ** (b - 1) - m ** (b - 1))) / 12;
}

/**
 * Unit number `n` and the mean of the first `n`, over the first unit. In the unit model the time
 * of a unit falls by the slope with each doubling; in the model of the cumulative average the mean
 * of all so far does.
 */
export function learned(
  model: LearningModel,
  slope: number,
  n: number,
): { readonly unit: number; readonly mean: number } {
  const b = exponentOf(slope);
  if (model === 'unit') return { unit: n ** b, mean: sumOfPowers(b, n) / n };
  return { unit: n ** (b + 1) - (n - 1) ** (b + 1), mean: n ** b };
}
