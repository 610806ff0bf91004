/**
 * Student's t: NIST Technical Note 1297 (1994), Appendix B, Table B.1, "Value of t_p(ν) from the
 * t-distribution", which prints the same numbers as JCGM 100:2008, Table G.2.
 * Status: seen (www.nist.gov, appendix B of the note). Tolerance: half of the last printed digit.
 */
import { describe, expect, test } from 'vitest';
import { studentT } from '../../src/quantity/index.ts';

/** The columns headed 68.27, 95.45 and 99.73 are 1, 2 and 3 standard deviations of the normal. */
const FRACTIONS = [0.6826894921, 0.9, 0.95, 0.9544997361, 0.99, 0.9973002039];

const TABLE: Readonly<Record<string, readonly string[]>> = {
  1: ['1.84', '6.31', '12.71', '13.97', '63.66', '235.80'],
  2: ['1.32', '2.92', '4.30', '4.53', '9.92', '19.21'],
  3: ['1.20', '2.35', '3.18', '3.31', '5.84', '9.22'],
  4: ['1.14', '2.13', '2.78', '2.87', '4.60', '6.62'],
  5: ['1.11', '2.02', '2.57', '2.65', '4.03', '5.51'],
  6: ['1.09', '1.94', '2.45', '2.52', '3.71', '4.90'],
  7: ['1.08', '1.89', '2.36', '2.43', '3.50', '4.53'],
  8: ['1.07', '1.86', '2.31', '2.37', '3.36', '4.28'],
  9: ['1.06', '1.83', '2.26', '2.32', '3.25', '4.09'],
  10: ['1.05', '1.81', '2.23', '2.28', '3.17', '3.96'],
  12: ['1.04', '1.78', '2.18', '2.23', '3.05', '3.76'],
  16: ['1.03', '1.75', '2.12', '2.17', '2.92', '3.54'],
  20: ['1.03', '1.72', '2.09', '2.13', '2.85', '3.42'],
  30: ['1.02', '1.70', '2.04', '2.09', '2.75', '3.27'],
  50: ['1.01', '1.68', '2.01', '2.05', '2.68', '3.16'],
  100: ['1.005', '1.660', '1.984', '2.025', '2.626', '3.077'],
  Infinity: ['1.000', '1.645', '1.960', '2.000', '2.576', '3.000'],
};

describe('Table B.1', () => {
  test.each(Object.entries(TABLE))('%s degrees of freedom', (dof, printed) => {
    printed.forEach((text, i) => {
      const places = text.split('.')[1]?.length ?? 0;
      const t = studentT(FRACTIONS[i] ?? Number.NaN, Number(dof));
      expect(Math.abs(t - Number(text)), `${t} for ${text}`).toBeLessThanOrEqual(
        0.501 * 10 ** -places,
      );
    });
  });
});
