/** Dense matrices of a few rows, by rows, for covariances of residuals. */
export type Matrix = readonly (readonly number[])[];

/** Lower Cholesky factor of a symmetric positive definite matrix. */
export function cholesky(c: Matrix): number[][] {
  const l: number[][] = [];
  for (const [i, row] of c.entries()) {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = row[j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (made[k] ?? 0) * (l[j]?.[k] ?? made[k] ?? 0);
      const pivot = l[j]?.[j] ?? 1;
      made.push(i === j ? Math.sqrt(Math.max(sum, Number.MIN_VALUE)) : sum / pivot);
    }
    l.push(made);
  }
  return l;
}

/** Solves L x = b for a lower factor: whitens `b`. */
export function whitened(l: Matrix, b: ArrayLike<number>): number[] {
  const x: number[] = [];
  for (const [i, row] of l.entries()) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (row[k] ?? 0) * (x[k] ?? 0);
    x.push(sum / (row[i] ?? 1));
  }
  return x;
}

export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** Logarithm of the determinant, from the lower factor. */
export const logDeterminant = (l: Matrix): number =>
  2 * l.reduce((sum, row, i) => sum + Math.log(row[i] ?? 1), 0);

/** c + Σ weight · column columnᵀ. */
export function plusOuter(
  c: Matrix,
  columns: readonly { readonly column: readonly number[]; readonly weight: number }[],
): number[][] {
  return c.map((row, i) =>
    row.map((x, j) =>
      columns.reduce((s, k) => s + k.weight * (k.column[i] ?? 0) * (k.column[j] ?? 0), x),
    ),
  );
}
