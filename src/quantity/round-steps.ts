/** The next larger of 1, 2 and 5 times a power of ten: steps of scales and of levels. */
export function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return power * ([1, 2, 5].find((n) => n * power >= least * (1 - 1e-9)) ?? 10);
}
