/** Solves a · x = b by elimination with row exchange; `a` by rows. */
function solved(a: readonly (readonly number[])[], b: readonly number[]): number[] {
  const m = a.map((row, i) => [...row, b[i] ?? 0]);
  const at = (i: number, j: number): number => m[i]?.[j] ?? 0;
  const n = m.length;
  for (let k = 0; k < n; k++) {
    const below = m.slice(k).map((_, i) => i + k);
    const pivot = below.reduce((p, i) => (Math.abs(at(i, k)) > Math.abs(at(p, k)) ? i : p), k);
    [m[k], m[pivot]] = [m[pivot] ?? [], m[k] ?? []];
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const f = at(i, k) / at(k, k);
      m[i] = (m[i] ?? []).map((x, j) => x - f * at(k, j));
    }
  }
  return m.map((_, i) => at(i, n) / at(i, i));
}

const STEP = 1e-6;
const SETTLED = 1e-9;
const ROUNDS = 20;

/** Derivatives of each of `f` by each of `x`, by rows, from small differences. */
function jacobian(f: (x: readonly number[]) => number[], x: readonly number[]): number[][] {
  const here = f(x);
  const columns = x.map((_, j) => f(x.map((v, k) => (k === j ? v + STEP : v))));
  return here.map((v, i) => columns.map((column) => ((column[i] ?? 0) - v) / STEP));
}

/**
 * An x at which all of `f` are zero, by Newton's rule from `start`; as many of `f` as of `x`.
 * @throws when it does not settle.
 */
export function rootOf(f: (x: readonly number[]) => number[], start: readonly number[]): number[] {
  let x = [...start];
  for (let round = 0; round < ROUNDS; round++) {
    const r = f(x);
    if (Math.max(...r.map(Math.abs)) < SETTLED) return x;
    const change = solved(jacobian(f, x), r);
    x = x.map((v, j) => v - (change[j] ?? 0));
  }
  throw new Error(`no root found in ${ROUNDS} rounds`);
}
