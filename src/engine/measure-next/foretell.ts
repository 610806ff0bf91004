import { standardUncertainty } from '../../quantity/index.ts';
import type { InForce, Reading, StudyView } from '../../study/index.ts';
import { choleskyRow } from '../bind/cells.ts';
import type { Contributions } from './contributions.ts';

/**
 * Standard uncertainty of an output when one cell is read once more with a spread of `u`, the
 * value staying as it is: by the rule of values in force the reading is combined with measured
 * ones of the same cell, or takes the place of what is less well known. Undefined where the
 * output's slope by the cell can't be told from its contributions.
 */
export function foretold(
  form: Contributions,
  cell: InForce,
  u: number,
  view: StudyView,
): number | undefined {
  const slopes = cell.from.map(({ reading, weight }) => slopesBy(form, reading, weight));
  const slope = slopes.find((s) => s !== undefined);
  if (!slope) return undefined;
  const { own, old } = weightsThen(cell, u);
  let variance = form.u * form.u;
  const causes = new Map<string, { now: number; after: number }>();
  for (const [i, { reading, weight }] of cell.from.entries()) {
    const scale = weight === 0 ? 0 : (old[i] ?? 0) / weight;
    for (const id of ownIds(reading)) variance -= form.of(id) ** 2 * (1 - scale * scale);
    noteCauses(causes, form, reading, weight, slope, scale, view);
  }
  for (const { now, after } of causes.values()) variance += after * after - now * now;
  variance += slope.reduce((sum, s) => sum + (s * own * u) ** 2, 0);
  return Math.sqrt(Math.max(0, variance));
}

/** Weights by which the new reading and the old ones would be in force. */
function weightsThen(
  { from, how, rule, value }: InForce,
  u: number,
): { readonly own: number; readonly old: readonly number[] } {
  const us = from.map(({ reading }) => uOf(reading));
  const combines =
    how === 'measured' &&
    value.t === 'scalar' &&
    (rule === 'only reading' || rule === 'weighted mean') &&
    u > 0 &&
    us.every((known) => known > 0);
  if (!combines) return { own: 1, old: from.map(() => 0) };
  const total = us.reduce((sum, known) => sum + 1 / (known * known), 1 / (u * u));
  return { own: 1 / (u * u) / total, old: us.map((known) => 1 / (known * known) / total) };
}

/** Standard uncertainty of a reading by itself; 0 when it is exact, unknown or no single number. */
const uOf = ({ value }: Reading): number =>
  value.t === 'scalar' ? (standardUncertainty(value.spread, value.x) ?? 0) : 0;

const ownIds = ({ id, value }: Reading): readonly string[] =>
  value.t === 'vector' ? value.x.map((_, j) => `${id}~${'xyz'[j] ?? j}`) : [id];

/** Slopes of the output by the components of a reading, from what it contributes now. */
function slopesBy(form: Contributions, reading: Reading, weight: number): number[] | undefined {
  if (weight === 0) return undefined;
  const cs = ownIds(reading).map((id) => form.of(id));
  if (cs.every((c) => c === 0)) return undefined;
  const { value } = reading;
  if (value.t === 'vector') return solveLower(value.cov, value.x.length, cs, weight);
  const u = form.spreadOf(reading.id);
  return u > 0 ? [(cs[0] ?? 0) / (weight * u)] : undefined;
}

/** Slopes s with c = w Lᵀ s, L being the lower Cholesky factor of the covariance. */
function solveLower(
  cov: readonly number[],
  n: number,
  cs: readonly number[],
  weight: number,
): number[] {
  const rows = Array.from({ length: n }, (_, i) => choleskyRow(cov, n, i));
  const slopes = new Array<number>(n).fill(0);
  for (let j = n - 1; j >= 0; j--) {
    let left = (cs[j] ?? 0) / weight;
    for (let i = j + 1; i < n; i++) left -= (rows[i]?.[j] ?? 0) * (slopes[i] ?? 0);
    const pivot = rows[j]?.[j] ?? 0;
    slopes[j] = pivot === 0 ? 0 : left / pivot;
  }
  return slopes;
}

/** What is left of common causes when a reading that shares them counts for less. */
function noteCauses(
  causes: Map<string, { now: number; after: number }>,
  form: Contributions,
  reading: Reading,
  weight: number,
  slope: readonly number[],
  scale: number,
  view: StudyView,
): void {
  const all = slope.reduce((a, b) => a + b, 0);
  for (const share of reading.causes) {
    const cause = view.cause(share.cause);
    const u = cause ? (standardUncertainty(cause.spread, 0) ?? 0) : 0;
    const now = form.of(share.cause);
    const held = causes.get(share.cause) ?? { now, after: now };
    held.after -= all * weight * share.effect * u * (1 - scale);
    causes.set(share.cause, held);
  }
}
