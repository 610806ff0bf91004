/** A square matrix by rows. */
export interface Square {
  readonly n: number;
  readonly at: Float64Array;
}

export const square = (n: number): Square => ({ n, at: new Float64Array(n * n) });

/**
 * Lower Cholesky factor of a symmetric matrix; undefined when it is not positive definite to
 * within rounding.
 */
export function cholesky({ n, at }: Square): Square | undefined {
  const l = square(n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = at[i * n + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (l.at[i * n + k] ?? 0) * (l.at[j * n + k] ?? 0);
      if (i === j) {
        if (!(sum > 1e-13 * (at[i * n + i] ?? 0))) return undefined;
        l.at[i * n + i] = Math.sqrt(sum);
      } else l.at[i * n + j] = sum / (l.at[j * n + j] ?? 1);
    }
  return l;
}

/** L x = b in place. */
export function forward({ n, at }: Square, b: Float64Array): Float64Array {
  for (let i = 0; i < n; i++) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (at[i * n + k] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (at[i * n + i] ?? 1);
  }
  return b;
}

/** Lᵀ x = b in place. */
export function backward({ n, at }: Square, b: Float64Array): Float64Array {
  for (let i = n - 1; i >= 0; i--) {
    const x = (b[i] ?? 0) / (at[i * n + i] ?? 1);
    b[i] = x;
    for (let k = 0; k < i; k++) b[k] = (b[k] ?? 0) - (at[i * n + k] ?? 0) * x;
  }
  return b;
}

/** L⁻¹ A L⁻ᵀ for a symmetric A. */
export function congruent(l: Square, a: Square): Square {
  const { n } = a;
  const half = square(n);
  // Rows of A are its columns: each solved row is a column of L⁻¹ A.
  for (let i = 0; i < n; i++) half.at.set(forward(l, a.at.slice(i * n, i * n + n)), i * n);
  const out = square(n);
  for (let j = 0; j < n; j++) {
    const column = new Float64Array(n);
    for (let i = 0; i < n; i++) column[i] = half.at[i * n + j] ?? 0;
    out.at.set(forward(l, column), j * n);
  }
  return out;
}

/** Eigenvalues of a symmetric matrix, ascending: Householder's reduction, then QL with shifts. */
export function eigenvalues(matrix: Square): Float64Array {
  const { d, e } = tridiagonal(matrix);
  return qlValues(d, e).sort();
}

/** Diagonal and subdiagonal of a tridiagonal matrix of the same eigenvalues. */
function tridiagonal({ n, at }: Square): { d: Float64Array; e: Float64Array } {
  const a = at.slice();
  const [d, e] = [new Float64Array(n), new Float64Array(n)];
  for (let i = n - 1; i > 0; i--) {
    let h = 0;
    let scale = 0;
    for (let k = 0; k < i; k++) scale += Math.abs(a[i * n + k] ?? 0);
    if (i > 1 && scale > 0) h = reflect(a, n, i, scale, e);
    else e[i] = a[i * n + i - 1] ?? 0;
    d[i] = h;
  }
  for (let i = 0; i < n; i++) d[i] = a[i * n + i] ?? 0;
  return { d, e };
}

/** One Householder reflection on row i; leaves the subdiagonal in e[i]. */
function reflect(a: Float64Array, n: number, i: number, scale: number, e: Float64Array): number {
  const row = a.subarray(i * n, i * n + i);
  let h = 0;
  for (let k = 0; k < i; k++) {
    row[k] = (row[k] ?? 0) / scale;
    h += (row[k] ?? 0) ** 2;
  }
  const f = row[i - 1] ?? 0;
  const g = f >= 0 ? -Math.sqrt(h) : Math.sqrt(h);
  e[i] = scale * g;
  h -= f * g;
  row[i - 1] = f - g;
  let along = 0;
  for (let j = 0; j < i; j++) {
    let sum = 0;
    for (let k = 0; k <= j; k++) sum += (a[j * n + k] ?? 0) * (row[k] ?? 0);
    for (let k = j + 1; k < i; k++) sum += (a[k * n + j] ?? 0) * (row[k] ?? 0);
    e[j] = sum / h;
    along += (e[j] ?? 0) * (row[j] ?? 0);
  }
  const shift = along / (h + h);
  for (let j = 0; j < i; j++) {
    const fj = row[j] ?? 0;
    const gj = (e[j] ?? 0) - shift * fj;
    e[j] = gj;
    for (let k = 0; k <= j; k++)
      a[j * n + k] = (a[j * n + k] ?? 0) - fj * (e[k] ?? 0) - gj * (row[k] ?? 0);
  }
  return h;
}

/** Most sweeps for one eigenvalue; two or three are usual. */
const SWEEPS = 60;

/** Eigenvalues of a tridiagonal matrix by the implicit QL method, in `d`. */
function qlValues(d: Float64Array, e: Float64Array): Float64Array {
  const n = d.length;
  for (let i = 1; i < n; i++) e[i - 1] = e[i] ?? 0;
  if (n > 0) e[n - 1] = 0;
  for (let l = 0; l < n; l++)
    for (let sweep = 0; sweep < SWEEPS; sweep++) {
      let m = l;
      while (m < n - 1 && Math.abs(e[m] ?? 0) > negligible(d, m)) m++;
      if (m === l) break;
      qlSweep(d, e, l, m);
    }
  return d;
}

const negligible = (d: Float64Array, m: number): number =>
  Number.EPSILON * (Math.abs(d[m] ?? 0) + Math.abs(d[m + 1] ?? 0));

function qlSweep(d: Float64Array, e: Float64Array, l: number, m: number): void {
  const el = e[l] ?? 0;
  const p0 = ((d[l + 1] ?? 0) - (d[l] ?? 0)) / (2 * el);
  const r0 = Math.hypot(p0, 1);
  let g = (d[m] ?? 0) - (d[l] ?? 0) + el / (p0 + (p0 >= 0 ? r0 : -r0));
  let [s, c, p] = [1, 1, 0];
  for (let i = m - 1; i >= l; i--) {
    const [f, b] = [s * (e[i] ?? 0), c * (e[i] ?? 0)];
    const r = Math.hypot(f, g);
    e[i + 1] = r;
    if (r === 0) {
      d[i + 1] = (d[i + 1] ?? 0) - p;
      e[m] = 0;
      return;
    }
    s = f / r;
    c = g / r;
    const q = (d[i + 1] ?? 0) - p;
    const t = ((d[i] ?? 0) - q) * s + 2 * c * b;
    p = s * t;
    d[i + 1] = q + p;
    g = c * t - b;
  }
  d[l] = (d[l] ?? 0) - p;
  e[l] = g;
  e[m] = 0;
}

/**
 * Groups of indices that no entry of any of the matrices couples: symmetric plates fall apart
 * into even and odd deflections, and each group is a far smaller problem.
 */
export function uncoupled(matrices: readonly Square[]): number[][] {
  const n = matrices[0]?.n ?? 0;
  const groupOf = new Int32Array(n).fill(-1);
  const groups: number[][] = [];
  for (let start = 0; start < n; start++) {
    if (groupOf[start] !== -1) continue;
    const group = [start];
    groupOf[start] = groups.length;
    for (let at = 0; at < group.length; at++)
      for (let j = 0; j < n; j++) {
        if (groupOf[j] !== -1) continue;
        if (matrices.every((m) => m.at[(group[at] ?? 0) * n + j] === 0)) continue;
        groupOf[j] = groups.length;
        group.push(j);
      }
    groups.push(group);
  }
  return groups;
}

/** Rows and columns of a matrix. */
export function submatrix({ n, at }: Square, group: readonly number[]): Square {
  const out = square(group.length);
  for (const [i, gi] of group.entries())
    for (const [j, gj] of group.entries()) out.at[i * out.n + j] = at[gi * n + gj] ?? 0;
  return out;
}
