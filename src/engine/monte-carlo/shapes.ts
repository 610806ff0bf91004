import { normalQuantile, studentQuantile } from '../../quantity/index.ts';
import type { Variable } from '../method.ts';

/**
 * The distribution assigned to a variable (JCGM 101:2008, 6.4), in standard uncertainties from
 * its nominal value. Variables of one key are distributed alike.
 */
export interface Shape {
  readonly key: string;
  /** Value below which a share `p` of it lies, p in (0, 1). */
  readonly quantile: (p: number) => number;
  readonly isSymmetric: boolean;
}

const NORMAL: Shape = { key: 'normal', quantile: normalQuantile, isSymmetric: true };
const RECTANGULAR: Shape = {
  key: 'rectangular',
  quantile: (p) => Math.sqrt(3) * (2 * p - 1),
  isSymmetric: true,
};
/** Of half-width √2 u: a sine of which every phase is as likely (6.4.6). */
const ARCSINE: Shape = {
  key: 'arcsine',
  quantile: (p) => Math.SQRT2 * Math.sin(Math.PI * (p - 0.5)),
  isSymmetric: true,
};

/** Repeats and few degrees of freedom: Student's t, shifted and scaled by s/√n (6.4.9). */
const student = (dof: number): Shape => ({
  key: `student ${dof}`,
  quantile: tabled((p) => studentQuantile(p, dof)),
  isSymmetric: true,
});

/** Steps of a table of quantiles, and the share at either end that is worked out as it stands. */
const [STEPS, ENDS] = [4096, 1 / 64];

/** A quantile that is slow to find, from a table filled as it is used: good to 10⁻⁵ u within. */
function tabled(quantile: (p: number) => number): (p: number) => number {
  const table = new Float64Array(STEPS + 1).fill(Number.NaN);
  const at = (i: number): number => {
    const held = table[i] ?? Number.NaN;
    if (!Number.isNaN(held)) return held;
    table[i] = quantile(i / STEPS);
    return table[i] ?? Number.NaN;
  };
  return (p) => {
    if (p < ENDS || p > 1 - ENDS) return quantile(p);
    const i = Math.floor(p * STEPS);
    return at(i) + (p * STEPS - i) * (at(i + 1) - at(i));
  };
}

export function shapeOf({ spread, u, shift, dof }: Variable): Shape {
  switch (spread.s) {
    case 'rectangular':
      return RECTANGULAR;
    case 'arcsine':
      return ARCSINE;
    case 'triangular':
      return triangular((spread.high - spread.low) / u, 3 * shift);
    default:
      return dof === null ? NORMAL : student(dof);
  }
}

/** A triangle about its mode: `width` from limit to limit, `lean` by which more of it is above. */
function triangular(width: number, lean: number): Shape {
  const [below, above] = [(width - lean) / 2, (width + lean) / 2];
  const share = below / width;
  return {
    key: `triangular ${width} ${lean}`,
    quantile: (p) =>
      p < share ? Math.sqrt(p * width * below) - below : above - Math.sqrt((1 - p) * width * above),
    isSymmetric: lean === 0,
  };
}
