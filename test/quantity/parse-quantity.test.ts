import { describe, expect, test } from 'vitest';
import {
  type Kind,
  type ParseOptions,
  parseQuantity,
  type Spread,
} from '../../src/quantity/index.ts';

/** Numbers of a spread and value are compared to 12 places: 0.0095 m and the like. */
function check(
  text: string,
  kind: Kind,
  x: number,
  spread: Spread,
  unit: string,
  options: ParseOptions & { approximate?: boolean } = {},
): void {
  const parsed = parseQuantity(text, kind, options);
  if (!parsed.ok) throw new Error(`"${text}": ${parsed.why}`);
  expect(parsed.value.kind).toBe(kind);
  expect(parsed.value.x, text).toBeCloseTo(x, 12);
  expect(rounded(parsed.value.spread), text).toEqual(rounded(spread));
  expect(parsed.unit, text).toBe(unit);
  expect(parsed.approximate, text).toBe(options.approximate ?? false);
}

const rounded = (spread: Spread): unknown =>
  JSON.parse(JSON.stringify(spread), (_key, value) =>
    typeof value === 'number' ? Number(value.toPrecision(11)) : value,
  );

/** A refusal says why and what to do next. */
function refuses(text: string, kind: Kind, why: string, options: ParseOptions = {}): void {
  const parsed = parseQuantity(text, kind, options);
  if (parsed.ok) throw new Error(`"${text}" was read as ${parsed.value.x} ${parsed.unit}`);
  expect(parsed.why, text).toContain(why);
  expect(parsed.next, text).toMatch(/^(Write|Leave|Check).*\.$/);
}

const unknown: Spread = { s: 'unknown' };
const exact: Spread = { s: 'exact' };
const normal = (u: number): Spread => ({ s: 'normal', u });
const rectangular = (half: number): Spread => ({ s: 'rectangular', half });

describe('a number and its unit', () => {
  test('spread unknown', () => {
    check('35 lb', 'mass', 15.87573295, unknown, '[lb_av]');
    check('12.5kg', 'mass', 12.5, unknown, 'kg');
    check('95 Nm', 'torque', 95, unknown, 'N.m');
    check('12 s-1', 'frequency', 12, unknown, 's-1');
    check('3 /min', 'frequency', 0.05, unknown, '/min');
    check('25 °C', 'tempAbs', 298.15, unknown, 'Cel');
    check('3.2 W·h/kg', 'specificEnergy', 11520, unknown, 'W.h/kg');
    check('5 %', 'ratio', 0.05, unknown, '%');
    check('1.18', 'ratio', 1.18, unknown, '1');
  });

  test('exact only where it is said', () => {
    check('= 5 mm', 'length', 0.005, exact, 'mm');
    check('exactly 5 mm', 'length', 0.005, exact, 'mm');
    refuses('exactly 5 ± 1 mm', 'length', 'an exact number has no spread');
  });

  test('about', () => {
    for (const text of ['about 2 mm', '~2 mm', '~ 2 mm', '≈2 mm', 'ca. 2 mm', 'ca 2 mm'])
      check(text, 'length', 0.002, unknown, 'mm', { approximate: true });
    for (const text of ['approx 2 mm', 'Approx. 2 mm', 'roughly 2 mm', '2 mm approx', '2 mm or so'])
      check(text, 'length', 0.002, unknown, 'mm', { approximate: true });
    check('about 9–10 mm', 'length', 0.0095, rectangular(0.0005), 'mm', { approximate: true });
  });

  test('the unit that holds by default', () => {
    check('5', 'length', 0.005, unknown, 'mm', { unit: 'mm' });
    check('5 cm', 'length', 0.05, unknown, 'cm', { unit: 'mm' });
    check('12 ± 2 %', 'mass', 12, normal(0.24), 'kg', { unit: 'kg' });
    refuses('5', 'length', 'no unit is written');
    refuses('5', 'length', 'no unit is written', { unit: '1' });
    refuses('5', 'length', 'no unit is written', { unit: 'mm', requireUnit: true });
    check('0.5', 'ratio', 0.5, unknown, '1', { requireUnit: true });
  });

  test('a unit of another dimension is refused, both named', () => {
    refuses('5 mm', 'mass', 'mm is a unit of length, not of mass (kg, g, lb, t)');
    refuses('5 kg ± 2 mm', 'mass', 'mm is a unit of length, not of mass');
    refuses('5 kg to 6 mm', 'mass', 'mm is a unit of length, not of mass');
    refuses('5 %', 'angle', '% is a unit of ratio, not of angle');
  });
});

describe('spreads', () => {
  test('± is one standard uncertainty', () => {
    check('12.5 ± 0.2 kg', 'mass', 12.5, normal(0.2), 'kg');
    check('12.5 +/- 0.2 kg', 'mass', 12.5, normal(0.2), 'kg');
    check('12.5 +- 0.2 kg', 'mass', 12.5, normal(0.2), 'kg');
    check('(12.5 ± 0.2) kg', 'mass', 12.5, normal(0.2), 'kg');
    check('12.5 kg ± 0.2', 'mass', 12.5, normal(0.2), 'kg');
    check('12.5 kg ± 200 g', 'mass', 12.5, normal(0.2), 'kg');
    check('12.5 kg ± 2 %', 'mass', 12.5, normal(0.25), 'kg');
    check('−3 kg ± 2 %', 'mass', -3, normal(0.06), 'kg');
    check('20 ± 2 °C', 'tempAbs', 293.15, normal(2), 'Cel');
    check('4° ± 0.1°', 'angle', (4 * Math.PI) / 180, normal((0.1 * Math.PI) / 180), 'deg');
  });

  test('in the last places, in parentheses', () => {
    check('12.50(2) kg', 'mass', 12.5, normal(0.02), 'kg');
    check('12.50(0.02) kg', 'mass', 12.5, normal(0.02), 'kg');
    check('125(3) mm', 'length', 0.125, normal(0.003), 'mm');
    check('1.25(2)e-3 m', 'length', 0.00125, normal(0.00002), 'm');
  });

  test('a range is rectangular about its middle', () => {
    for (const text of ['9–10 mm', '9-10 mm', '9 - 10 mm', '9 to 10 mm', '9 mm to 10 mm'])
      check(text, 'length', 0.0095, rectangular(0.0005), 'mm');
    check('9 mm – 1 cm', 'length', 0.0095, rectangular(0.0005), 'mm');
    check('9…10 mm', 'length', 0.0095, rectangular(0.0005), 'mm');
    check('-3 - -1 mm', 'length', -0.002, rectangular(0.001), 'mm');
    check('−3–−1 mm', 'length', -0.002, rectangular(0.001), 'mm');
    check('20 to 30 °C', 'tempAbs', 298.15, rectangular(5), 'Cel');
    check(
      '5 ft-lb to 6 ft-lb',
      'torque',
      7.456998715823,
      rectangular(0.67790897416572),
      FOOT_POUND,
    );
    refuses('10–9 mm', 'length', 'does not rise');
    refuses('9–9 mm', 'length', 'does not rise');
  });

  test('three numbers are low, mode and high', () => {
    const spread: Spread = { s: 'triangular', low: 30 / 3600, high: 44 / 3600 };
    check('30 / 36 / 44 {u}/h', 'moneyPerTime', 0.01, spread, '{u}/h');
    check('30/36/44 u/h', 'moneyPerTime', 0.01, spread, '{u}/h');
    check('1.14 / 1.18 / 1.24', 'ratio', 1.18, { s: 'triangular', low: 1.14, high: 1.24 }, '1');
    refuses('44 / 36 / 30 u/h', 'moneyPerTime', 'do not rise');
    refuses('36 / 36 / 36 u/h', 'moneyPerTime', 'do not rise');
  });

  test('what is no spread', () => {
    refuses('12.5 ± 0 kg', 'mass', 'a spread of zero or less');
    refuses('12.5 ± -0.2 kg', 'mass', 'a spread of zero or less');
    refuses('0 kg ± 2 %', 'mass', 'a spread of zero or less');
    refuses('20 °C ± 2 %', 'tempAbs', 'depends on where its scale begins');
    refuses('12 +0.5/-0.2 mm', 'length', 'can be read');
    refuses('1 ± 2 ± 3 kg', 'mass', 'can be read');
  });

  test('a percentage behind a ratio is not guessed', () => {
    check('(5 ± 2) %', 'ratio', 0.05, normal(0.02), '%');
    check('5 % ± 2 %', 'ratio', 0.05, normal(0.02), '%');
    check('5 ± 2 %', 'ratio', 0.05, normal(0.02), '%', { unit: '%' });
    refuses('1.18 ± 2 %', 'ratio', 'may be a percentage');
  });
});

const FOOT_POUND = '[lbf_av].[ft_i]';

describe('numbers', () => {
  const reads = (text: string, mm: number, decimal?: '.' | ',') =>
    check(`${text} mm`, 'length', mm / 1000, unknown, 'mm', decimal ? { decimal } : {});

  test('signs and exponents', () => {
    reads('-3', -3);
    reads('−3', -3);
    reads('- 3', -3);
    reads('+3', 3);
    reads('.5', 0.5);
    reads('1e-3', 1e-3);
    reads('2.5E3', 2500);
    reads('2.5×10^3', 2500);
    reads('2.5 × 10⁻³', 2.5e-3);
    refuses('1e999 mm', 'length', 'too large');
  });

  test('fractions', () => {
    const inches = (text: string, x: number, spread: Spread = unknown) =>
      check(text, 'length', x * 0.0254, spread, '[in_i]');
    inches('3/8 in', 0.375);
    inches('1 1/2 in', 1.5);
    inches('1-1/2 in', 1.5);
    inches('-3/8 in', -0.375);
    inches('½ in', 0.5);
    inches('1½"', 1.5);
    inches('half an inch', 0.5);
    inches('a quarter inch', 0.25);
    inches('three quarters of an inch', 0.75);
    inches('2 and a half inches', 2.5);
    inches('1/4–3/8 in', 0.3125, rectangular(0.0254 / 16));
    inches('1 1/4 to 1 3/8 in', 1.3125, rectangular(0.0254 / 16));
    refuses('3/0 in', 'length', 'can be read');
    refuses('9 / 10 in', 'length', 'can be read');
  });

  test('digits in groups', () => {
    reads('1,645.3', 1645.3);
    reads('1 645.3', 1645.3);
    reads('1\u202f645.3', 1645.3);
    reads('1\u00a0645.3', 1645.3);
    reads('12 345 678', 12345678);
    reads('1,645,300', 1645300);
    reads('1.645.300', 1645300);
    reads('1 645,3', 1645.3);
    reads('1.234 567 8', 1.2345678);
    refuses('12,34.5 mm', 'length', 'can be read');
    refuses('1.2.3 mm', 'length', 'can be read');
    refuses('1 64.3 mm', 'length', 'can be read');
  });

  test('decimal comma, where it can be nothing else', () => {
    reads('12,5', 12.5);
    reads('0,645', 0.645);
    reads('1645,300', 1645.3);
    reads('1.645,3', 1645.3);
    refuses('1,645 mm', 'length', '"1,645" may be 1645 or 1.645');
    refuses('1,645 ± 2 mm', 'length', '"1,645" may be 1645 or 1.645');
    check('1,645 ± 0.2 mm', 'length', 1.645, normal(0.0002), 'mm');
    check('1,645 ± 0,2 mm', 'length', 0.001645, normal(0.0002), 'mm');
    check('9,5–10,5 mm', 'length', 0.01, rectangular(0.0005), 'mm');
    refuses('1,645.3 ± 0,2 mm', 'length', 'point and comma both');
  });

  test('decimal sign said beforehand', () => {
    reads('1,645', 1645, '.');
    reads('1,645', 1.645, ',');
    reads('1.645', 1645, ',');
    reads('1.645,5', 1645.5, ',');
    refuses('12,5 mm', 'length', 'does not have "." as its decimal sign', { decimal: '.' });
    refuses('12.5 mm', 'length', 'does not have "," as its decimal sign', { decimal: ',' });
  });
});

describe('counts', () => {
  test('whole numbers were counted: exact', () => {
    check('12', 'count', 12, exact, '1');
    check('1,645', 'count', 1645, exact, '1');
    check('12 pcs', 'count', 12, exact, '1');
    check('about 12', 'count', 12, unknown, '1', { approximate: true });
    check('10–12', 'count', 11, rectangular(1), '1');
    check('9–10', 'count', 9.5, rectangular(0.5), '1');
    check('12 ± 1', 'count', 12, normal(1), '1');
    refuses('12.5', 'count', '12.5 is no whole number');
    refuses('12 kg', 'count', 'kg is a unit of mass, not of count');
    refuses('5 %', 'count', '% is a unit of ratio, not of count');
  });
});

describe('what is no quantity', () => {
  test.each(['abc', '-', '±', '12.5 ±', '± 3 kg', '12 kg 5', 'NaN kg', 'Infinity kg', '12 zork'])(
    '%s',
    (text) => refuses(text, 'mass', 'is no mass that can be read'),
  );
  test('nothing, bounds and novels', () => {
    refuses('', 'mass', 'nothing is written');
    refuses('   ', 'mass', 'nothing is written');
    refuses('< 5 kg', 'mass', '"<" bounds the value');
    refuses('at least 5 kg', 'mass', '"at least" bounds the value');
    refuses('up to 5 kg', 'mass', '"up to" bounds the value');
    refuses(`${'9'.repeat(300)} kg`, 'mass', 'characters are no number');
  });
  test('12.5 (2) kg: a blank before parentheses may mean anything', () =>
    refuses('12.5 (2) kg', 'mass', 'can be read'));
});
