import { describe, expect, test } from 'vitest';
import {
  type FormatOptions,
  formatNumber,
  formatQuantity,
  formatTogether,
  type Kind,
  roundToUncertainty,
  type Shown,
} from '../../src/quantity/index.ts';

describe('roundToUncertainty: u to two digits, x to the same place', () => {
  const check = (x: number, u: number, rounded: [x: string, u: string, place: number]) => {
    const r = roundToUncertainty(x, u);
    expect([r.x, r.u, r.place]).toEqual(rounded);
  };

  test('places', () => {
    check(1645.291, 0.198, ['1645.29', '0.20', 2]);
    check(1645.5, 1.02, ['1645.5', '1.0', 1]);
    check(123456, 1234, ['123500', '1200', -2]);
    check(0.00012345, 0.0000067, ['0.0001235', '0.0000067', 7]);
    check(0, 0.5, ['0.00', '0.50', 2]);
    check(3, 250, ['0', '250', -1]);
  });

  test('a u that rounds up to the next power of ten keeps two digits', () => {
    check(5, 0.0996, ['5.00', '0.10', 2]);
    check(5, 9.96, ['5', '10', 0]);
    check(5, 99.6, ['10', '100', -1]);
  });

  test('as written, not as held in binary', () => {
    check(1.005, 0.11, ['1.01', '0.11', 2]);
    check(0.1 + 0.2, 0.1, ['0.30', '0.10', 2]);
    check(-2.675, 0.35, ['−2.68', '0.35', 2]);
  });

  test('no number, no print', () => {
    for (const [x, u] of [
      [Number.NaN, 1],
      [Infinity, 1],
      [1, Number.NaN],
      [1, 0],
      [1, -1],
      [1, Infinity],
    ])
      expect(() => roundToUncertainty(x as number, u as number), `${x} ${u}`).toThrow(RangeError);
  });
});

describe('formatNumber', () => {
  const check = (x: number, decimals: number, text: string, group?: string) =>
    expect(formatNumber(x, decimals, group)).toBe(text);

  test('sign, groups and decimals', () => {
    check(1645.291, 2, '1\u202f645.29');
    check(1645.291, 2, '1,645.29', ',');
    check(-0.209, 1, '−0.2');
    check(-0.04, 1, '0.0');
    check(-0, 0, '0');
    check(999, 0, '999');
    check(1234567, 0, '1,234,567', ',');
    check(1234567, -3, '1,235,000', ',');
    check(400, -3, '0');
    check(0.05, 1, '0.1');
    check(1e21, 0, '1000000000000000000000', '');
    check(1e-9, 12, '0.000000001000');
  });

  test('no number, no print', () => {
    expect(() => formatNumber(Number.NaN, 1)).toThrow(RangeError);
    expect(() => formatNumber(-Infinity, 1)).toThrow(RangeError);
    expect(() => formatNumber(1, 0.5)).toThrow(RangeError);
    expect(() => formatNumber(1, 1e9)).toThrow(RangeError);
  });
});

describe('formatQuantity', () => {
  const check = (
    x: number,
    u: Shown['u'],
    unit: string,
    kind: Kind,
    text: string,
    options: FormatOptions = { group: ' ' },
  ) => expect(formatQuantity({ x, u, unit, kind }, options)).toBe(text);

  test('from SI, with its spread', () => {
    check(1645.291, 0.198, 'kg', 'mass', '1 645.29 ± 0.20 kg');
    check(1645.291, 0.198, 'kg', 'mass', '1,645.29 ± 0.20 kg', { group: ',' });
    check(1645.291, 0.198, 'kg', 'mass', '1\u202f645.29 ± 0.20 kg', {});
    check(1645.291, 0.198, 'kg', 'mass', '1 645.29 ± 0.20', { group: ' ', withUnit: false });
    check(0.5217, 0.0064, 'mm', 'length', '521.7 ± 6.4 mm');
    check(293.15, 2, 'Cel', 'tempAbs', '20.0 ± 2.0 °C');
    check(0.01, 0.0008, '{u}/h', 'moneyPerTime', '36.0 ± 2.9 u/h');
    check(0.12, 0.011, '%', 'ratio', '(12.0 ± 1.1) %');
    check(1.18, 0.02, '1', 'ratio', '1.180 ± 0.020');
    check(Math.PI / 15, Math.PI / 1800, 'deg', 'angle', '12.00° ± 0.10°');
  });

  test('a spread that is not known is said', () => {
    check(1645.291, 'incomplete', 'kg', 'mass', '1 645 kg, spread incomplete');
    check(1645.291, undefined, 'kg', 'mass', '1 645 kg, spread incomplete');
    check(16452.91, undefined, 'kg', 'mass', '16 450 kg, spread incomplete');
    check(0.0123456, 'incomplete', 'mm', 'length', '12.35 mm, spread incomplete');
    check(0, undefined, 'kg', 'mass', '0 kg, spread incomplete');
    check(1.23456, undefined, 'kg', 'mass', '1.2 kg, spread incomplete', { digits: 2 });
  });

  test('exact numbers and counts stand alone', () => {
    check(0.005, 0, 'mm', 'length', '5 mm');
    check(0.0254, 0, 'mm', 'length', '25.4 mm');
    check(31, undefined, '1', 'count', '31');
    check(31, 'incomplete', '1', 'count', '31, spread incomplete');
    check(11, 0.58, '1', 'count', '11.00 ± 0.58');
  });

  test('no number, no print; no unit of another dimension', () => {
    const shown = { x: 1, u: 1, unit: 'kg', kind: 'mass' } as const;
    for (const bad of [{ x: Number.NaN }, { x: Infinity }, { u: Number.NaN }, { u: -1 }])
      expect(() => formatQuantity({ ...shown, ...bad })).toThrow(RangeError);
    expect(() => formatQuantity({ ...shown, unit: 'mm' })).toThrow(RangeError);
  });
});

describe('formatTogether: one place for all', () => {
  const check = (list: [x: number, u: Shown['u']][], texts: string[], options = {}) =>
    expect(
      formatTogether(
        list.map(([x, u]) => ({ x, u, unit: 'kg', kind: 'mass' })),
        { group: ',', ...options },
      ),
    ).toEqual(texts);

  test('that of the largest spread to two digits', () => {
    check(
      [
        [1645.291, 0.198],
        [1645.5, 1],
        [-0.209, 1.02],
      ],
      ['1,645.3 ± 0.2', '1,645.5 ± 1.0', '−0.2 ± 1.0'],
    );
    check([[1645.291, 0.198]], ['1,645.29 ± 0.20 kg'], { withUnit: true });
  });

  test('a spread below the place is not printed as zero', () =>
    check(
      [
        [5, 0.01],
        [5, 1],
      ],
      ['5.0 ± <0.1', '5.0 ± 1.0'],
    ));

  test('exact and incomplete ones beside', () =>
    check(
      [
        [5, 0],
        [7.1234, undefined],
        [5, 1],
      ],
      ['5.0', '7.1, spread incomplete', '5.0 ± 1.0'],
    ));

  test('without any spread', () => {
    check(
      [
        [0.001234, undefined],
        [1645.29, undefined],
      ],
      ['0, spread incomplete', '1,645, spread incomplete'],
    );
    check(
      [
        [5, 0],
        [2.25, 0],
      ],
      ['5.00', '2.25'],
    );
    check([], []);
  });

  test('units that differ are refused', () =>
    expect(() =>
      formatTogether([
        { x: 1, u: 1, unit: 'kg', kind: 'mass' },
        { x: 1, u: 1, unit: 'g', kind: 'mass' },
      ]),
    ).toThrow(RangeError));
});
