/**
 * Half of the last digit of a spread written with so many digits: ½ 10ˡ where u is c × 10ˡ
 * (JCGM 101:2008, 7.9.2).
 */
export function toleranceOf(u: number, digits: 1 | 2): number {
  if (!(u > 0)) return 0;
  const written = Number(u.toExponential(digits - 1));
  return 0.5 * 10 ** (Math.floor(Math.log10(written)) - (digits - 1));
}
