/**
 * Solves A x = b for a small square matrix by rows, with partial pivoting.
 * Undefined when A is singular to within rounding.
 */
export function linearSolve(
  a: readonly (readonly number[])[],
  b: readonly number[],
): number[] | undefined {
  const rows = a.map((row, i) => [...row, b[i] ?? 0]);
  const n = rows.length;
  const largest = Math.max(...a.flat().map(Math.abs));
  for (let k = 0; k < n; k++) {
    const pivot = pivotRow(rows, k);
    const top = rows[pivot] as number[];
    if (!(Math.abs(top[k] ?? 0) > 1e-14 * largest)) return undefined;
    [rows[k], rows[pivot]] = [top, rows[k] as number[]];
    for (let i = k + 1; i < n; i++) eliminate(rows[i] as number[], top, k);
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] as number[];
    let sum = row[n] ?? 0;
    for (let j = i + 1; j < n; j++) sum -= (row[j] ?? 0) * (x[j] ?? 0);
    x[i] = sum / (row[i] ?? 0);
  }
  return x;
}

function pivotRow(rows: readonly (readonly number[])[], k: number): number {
  let best = k;
  for (let i = k + 1; i < rows.length; i++)
    if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[best]?.[k] ?? 0)) best = i;
  return best;
}

function eliminate(row: number[], top: readonly number[], k: number): void {
  const factor = (row[k] ?? 0) / (top[k] ?? 1);
  for (let j = k; j < row.length; j++) row[j] = (row[j] ?? 0) - factor * (top[j] ?? 0);
}

/** Inverse of a small square matrix; undefined when it is singular. */
export function inverse(a: readonly (readonly number[])[]): number[][] | undefined {
  const columns = a.map((_, k) =>
    linearSolve(
      a,
      a.map((_, i) => (i === k ? 1 : 0)),
    ),
  );
  if (columns.some((c) => c === undefined)) return undefined;
  return a.map((_, i) => columns.map((c) => c?.[i] ?? 0));
}
