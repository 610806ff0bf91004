import type { Spread } from './value.ts';

export const meanOf = (xs: readonly number[]): number =>
  xs.reduce((sum, x) => sum + x, 0) / xs.length;

/** Experimental standard deviation of the mean, s/√n (JCGM 100:2008, 4.2.3). */
function deviationOfMean(xs: readonly number[]): number {
  const m = meanOf(xs);
  const squares = xs.reduce((sum, x) => sum + (x - m) ** 2, 0);
  return Math.sqrt(squares / (xs.length - 1) / xs.length);
}

/**
 * Standard uncertainty in SI of a value `x` with this spread: half-width a gives a/√3
 * (rectangular) or a/√2 (arcsine), JCGM 100:2008, 4.3.7 and H.1.3.4; a triangle with limits
 * a, b and mode c = x has the variance (a² + b² + c² − ab − ac − bc)/18.
 * Undefined when the spread is unknown; 0 when the value is exact.
 */
export function standardUncertainty(spread: Spread, x: number): number | undefined {
  switch (spread.s) {
    case 'exact':
      return 0;
    case 'unknown':
      return undefined;
    case 'normal':
      return spread.u;
    case 'rectangular':
      return spread.half / Math.sqrt(3);
    case 'arcsine':
      return spread.half / Math.SQRT2;
    case 'triangular':
      return triangularDeviation(x - spread.low, spread.high - x);
    case 'repeats':
      return deviationOfMean(spread.xs);
  }
}

/** From the mode down to the low limit and up to the high one; the same variance, without cancellation. */
const triangularDeviation = (below: number, above: number): number =>
  Math.sqrt((below * below + above * above + below * above) / 18);

/** Degrees of freedom of the standard uncertainty; Infinity where none are stated. */
export function degreesOfFreedom(spread: Spread): number {
  if (spread.s === 'repeats') return spread.xs.length - 1;
  return spread.s === 'normal' ? (spread.dof ?? Infinity) : Infinity;
}

/** Mean of the distribution less the nominal value `x`, in SI: not zero for a leaning triangle. */
export const meanShift = (spread: Spread, x: number): number =>
  spread.s === 'triangular' ? (spread.low - x + (spread.high - x)) / 3 : 0;

/** What is wrong with a spread for a value `x`, in words, or undefined when nothing is. */
export function checkSpread(spread: Spread, x: number): string | undefined {
  if (!Number.isFinite(x)) return `the value is ${x}, not a number that can be used`;
  switch (spread.s) {
    case 'exact':
    case 'unknown':
      return undefined;
    case 'normal':
      return checkSize('standard uncertainty', spread.u) ?? checkDof(spread.dof);
    case 'rectangular':
    case 'arcsine':
      return checkSize('half-width', spread.half);
    case 'triangular':
      return checkLimits(spread.low, x, spread.high);
    case 'repeats':
      return checkRepeats(spread.xs, x);
  }
}

function checkSize(name: string, size: number): string | undefined {
  if (!Number.isFinite(size)) return `the ${name} is ${size}, not a number that can be used`;
  return size < 0 ? `the ${name} ${size} is negative` : undefined;
}

const checkDof = (dof: number | undefined): string | undefined =>
  dof === undefined || dof > 0 ? undefined : `${dof} degrees of freedom are not above zero`;

function checkLimits(low: number, x: number, high: number): string | undefined {
  if (!Number.isFinite(low) || !Number.isFinite(high))
    return `the limits ${low} and ${high} are not numbers that can be used`;
  if (low > high) return `the low limit ${low} is above the high limit ${high}`;
  return x < low || x > high ? `the value ${x} is outside its limits ${low} to ${high}` : undefined;
}

function checkRepeats(xs: readonly number[], x: number): string | undefined {
  if (xs.length < 2) return 'fewer than two repeats say nothing of the spread';
  if (!xs.every(Number.isFinite)) return 'one of the repeats is not a number that can be used';
  const off = Math.abs(meanOf(xs) - x);
  const scale = Math.max(...xs.map(Math.abs));
  return off > 1e-9 * scale
    ? `the value ${x} is not the mean ${meanOf(xs)} of its repeats`
    : undefined;
}
