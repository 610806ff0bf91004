/**
 * Share of an investment that is paid back each period over `n` periods at the interest `i` a
 * period: i (1 + i)^n / ((1 + i)^n − 1), and 1/n without interest. As a quotient of exponentials
 * of small arguments it stays smooth down to i = 0.
 */
export const capitalRecovery = (i: number, n: number): number =>
  Math.abs(i) < 1e-9 ? 1 / n + (i * (n + 1)) / (2 * n) : i / -Math.expm1(-n * Math.log1p(i));
