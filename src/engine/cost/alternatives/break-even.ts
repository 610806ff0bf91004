import { differenceOf, formUncertainty, type LinearForm } from '../../../quantity/index.ts';

/** Where a difference of two costs changes its sign, and between what it is not proven. */
export interface Crossing {
  readonly at: number;
  /** Where the difference leaves twice its standard uncertainty; not there beyond the range. */
  readonly low?: number;
  readonly high?: number;
}

/** Points of a logarithmic scale, both ends included. */
export const logScale = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)));

/** Zero between two points of different sign, by halving on a logarithmic scale. */
function halved(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  const rises = f(b) > 0;
  for (let i = 0; i < 80 && b / a > 1 + 1e-12; i++) {
    const middle = Math.sqrt(a * b);
    if (f(middle) > 0 === rises) b = middle;
    else a = middle;
  }
  return Math.sqrt(a * b);
}

/** Every zero that a function crosses on this scale: between points of it, or by a jump. */
export const zeros = (f: (x: number) => number, scale: readonly number[]): number[] =>
  scale.slice(1).flatMap((x, i) => {
    const before = scale[i] ?? x;
    return f(before) > 0 === f(x) > 0 ? [] : [halved(f, before, x)];
  });

/** A difference at a number, with its spread. */
export type Difference = (at: number) => LinearForm;

/** Crossings of a difference, each with the stretch around it where it stays within 2 u. */
export function crossings(
  nominal: (at: number) => number,
  difference: Difference,
  scale: readonly number[],
): Crossing[] {
  const proven = (sign: 1 | -1) => (x: number) => {
    const d = difference(x);
    return sign * d.x - 2 * formUncertainty(d);
  };
  return zeros(nominal, scale).map((at) => {
    const above = scale.filter((x) => x > at);
    const below = scale.filter((x) => x < at).reverse();
    const edge = (side: readonly number[]): number | undefined => {
      const sign = nominal(side[0] ?? at) > 0 ? 1 : -1;
      const f = proven(sign);
      const i = side.findIndex((x) => f(x) > 0);
      const far = side[i];
      if (far === undefined) return undefined;
      const near = side[i - 1] ?? at;
      return halved(f, Math.min(near, far), Math.max(near, far));
    };
    const [low, high] = [edge(below), edge(above)];
    return { at, ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) };
  });
}

/** Cost of one of `n` pieces at which two designs cost the same: what its design may cost less the rest. */
export const breakEvenEach = (
  other: LinearForm,
  design: LinearForm,
  line: LinearForm,
  n: number,
): LinearForm => {
  const rest = differenceOf(design, line);
  const left = differenceOf(other, rest);
  return { x: left.x / n, by: new Map([...left.by].map(([id, c]) => [id, c / n])) };
};
