import { describe, expect, test } from 'vitest';
import {
  fitsKind,
  fromSi,
  type Kind,
  parseUnit,
  spokenUnit,
  spreadFromSi,
  spreadToSi,
  toSi,
  unitProblem,
  unitSymbol,
} from '../../src/quantity/index.ts';

describe('parseUnit: factors to SI', () => {
  const check = (code: string, factor: number) =>
    expect(parseUnit(code)?.factor, code).toBe(factor);

  test('prefixes, powers, products and quotients', () => {
    check('mm', 0.001);
    check('mm2', 1e-6);
    check('mm3', 1e-9);
    check('N/mm', 1000);
    check('kN/mm', 1e6);
    check('N.m', 1);
    check('s-1', 1);
    check('/min', 1 / 60);
    check('kW.h', 3.6e6);
    check('g/cm3', 1000);
    check('daN', 10);
    check('um', 1e-6);
    check('t', 1000);
  });

  test('from left to right, parentheses first', () => {
    check('m/s.s', 1);
    check('kg/(W.h)', 1 / 3600);
    check('kg/W.h', 3600);
    check('/(kg.m)', 1);
  });

  test('powers of ten and plain factors', () => {
    check('10*3', 1000);
    check('10^3', 1000);
    check('10*-7', 1e-7);
    check('10*', 10);
    check('12.h', 43200);
  });

  test('an exact name goes before a prefix: min, mol, cd, Pa', () => {
    check('min', 60);
    check('mol', 1);
    check('cd', 1);
    check('Pa', 1);
    check('h', 3600);
    check('d', 86400);
  });
});

describe('parseUnit: dimensions', () => {
  const check = (code: string, kind: Kind) => {
    const unit = parseUnit(code);
    expect(unit && fitsKind(unit, kind), `${code} as ${kind}`).toBe(true);
  };

  test('{u} alone is money; in every other place braces are a remark', () => {
    check('{u}', 'money');
    check('{u}/kg', 'moneyPerMass');
    check('kg{u}', 'mass');
    check('{pcs}', 'count');
    check('{pcs}/h', 'frequency');
  });

  test('an angle is no plain number and a count has no percent', () => {
    check('deg', 'angle');
    expect(unitProblem('deg', 'ratio')).toContain('not of ratio');
    expect(unitProblem('%', 'angle')).toContain('not of angle');
    expect(unitProblem('%', 'count')).toContain('not of count');
    check('N.m/rad', 'torque');
  });
});

describe('parseUnit refuses', () => {
  test.each([
    '',
    'm/',
    '/',
    'm..s',
    'm m',
    'kgs!',
    'KG',
    'iU',
    '(m',
    'm)',
    'ug(8.h)',
    'g/12h',
    '{a}rad2{b}',
    '{',
    'm{ü}',
    'm{a b}',
    '10*999',
    '0.m',
    'constructor',
    '__proto__',
    `${'('.repeat(500)}m${')'.repeat(500)}`,
  ])('%s', (code) => expect(parseUnit(code)).toBeUndefined());
});

describe('toSi and fromSi', () => {
  const check = (x: number, code: string, kind: Kind, si: number) => {
    expect(toSi(x, code, kind), `${x} ${code}`).toBe(si);
    expect(fromSi(si, code, kind), `${si} to ${code}`).toBeCloseTo(x, 11);
  };

  test('whole factors leave no binary remainder', () => {
    check(1.1, 'mm', 'length', 0.0011);
    check(35, 'mm', 'length', 0.035);
    check(1, '[in_i]', 'length', 0.0254);
    check(35, '[lb_av]', 'mass', 15.87573295);
    check(36, '{u}/h', 'moneyPerTime', 0.01);
  });

  test('only an absolute temperature has an offset', () => {
    check(20, 'Cel', 'tempAbs', 293.15);
    check(20, 'Cel', 'tempDiff', 20);
    check(212, '[degF]', 'tempAbs', 373.15);
    check(9, '[degF]', 'tempDiff', 5);
    check(2, 'mbar', 'pressureAbs', 200);
    expect(spreadToSi(2, 'Cel', 'tempAbs')).toBe(2);
    expect(spreadFromSi(2, 'Cel', 'tempAbs')).toBe(2);
  });

  test('a unit of another dimension is refused, both named', () => {
    expect(() => toSi(1, 'mm', 'mass')).toThrow(RangeError);
    expect(() => toSi(1, 'mm', 'mass')).toThrow(
      'mm is a unit of length, not of mass (kg, g, lb, t)',
    );
    expect(() => fromSi(1, 'rad', 'ratio')).toThrow('rad is a unit of angle, not of ratio');
    expect(() => fromSi(1, 'zork', 'mass')).toThrow('"zork" is no unit known here');
    expect(unitProblem('mm5', 'area')).toContain('mm⁵ is a unit of something else, not of area');
    expect(unitProblem('kg', 'mass')).toBeUndefined();
  });
});

describe('unitSymbol', () => {
  const check = (code: string, symbol: string) => expect(unitSymbol(code)).toBe(symbol);

  test('as printed', () => {
    check('N.m', 'N·m');
    check('deg', '°');
    check("'", '′');
    check("''", '″');
    check('mm2', 'mm²');
    check('s-1', 's⁻¹');
    check('10*-7.s', '10⁻⁷·s');
    check('[lb_av]', 'lb');
    check('[lbf_av].[ft_i]', 'lbf·ft');
    check('[in_i]2', 'in²');
    check('{u}', 'u');
    check('{u}/kg', 'u/kg');
    check('Cel', '°C');
    check('W.h/kg', 'W·h/kg');
    check('um', 'µm');
    check('MOhm', 'MΩ');
    check('mm[Hg]', 'mmHg');
    check('cm[H2O]', 'cmH₂O');
    check('/min', '1/min');
    check('1', '');
    check('min', 'min');
    check('mol', 'mol');
    check('kg/(W.h)', 'kg/(W·h)');
    check('m/s2', 'm/s²');
    check('g{dry}/m2', 'g/m²');
    check('{pcs}/h', 'pcs/h');
  });
});

describe('spokenUnit', () => {
  const check = (words: string, code: string | undefined, kind?: Kind) => {
    for (const word of words.split(', ')) expect(spokenUnit(word, kind), word).toBe(code);
  };

  test('mass, length, time', () => {
    check('kg, Kg, KG, kilo, kilos, kilogram', 'kg');
    check('g, gram, grams', 'g');
    check('lb, lbs, LB, pound, pounds', '[lb_av]');
    check('t, tonne, tonnes, metric tons', 't');
    check('mm, MM, millimetre, millimetres, millimeters, Millimetres', 'mm');
    check('in, inch, inches, Inches, ", ″', '[in_i]');
    check('ft, foot, feet', '[ft_i]');
    check('µm, μm, um, micron, microns, micrometres', 'um');
    check('h, hr, hrs, hours', 'h');
    check('min, mins, minute, minutes', 'min');
    check('s, sec, secs, seconds', 's');
  });

  test('force, torque, energy, pressure, temperature', () => {
    check('N·m, N⋅m, N.m, N*m, N m, Nm, newton metre, newton metres', 'N.m');
    check('kWh, kW·h, kW h, kilowatt hours, KWH', 'kW.h');
    check('Wh/kg, W·h/kg, watt hours per kilogram', 'W.h/kg');
    check('kPa, kilopascals', 'kPa');
    check('bar', 'bar');
    check('psi, PSI', '[psi]');
    check('°C, ° C, ℃, degC, deg C, degrees C, degrees Celsius, celsius', 'Cel');
    check('°, deg, degree, degrees', 'deg');
    check('rpm, 1/min, /min', '/min');
    check('Ω, ohm, ohms', 'Ohm');
    check('kΩ, kohm, kilohms', 'kOhm');
    check('MΩ, MOhm, megohms', 'MOhm');
    check('mohm', undefined);
  });

  test('money, shares and powers', () => {
    check('u, {u}', '{u}');
    check('u/h, {u}/h, u / h, u per hour', '{u}/h');
    check('u/kg', '{u}/kg');
    check('%, percent, per cent', '%');
    check('mm², mm2, mm^2, sq mm, square millimetres', 'mm2');
    check('kg/m³, kg/m^3, kg per cubic metre', 'kg/m3');
    check('s⁻¹', 's-1');
    check('km/h, kph, kmh', 'km/h');
    check('lb/ft', '[lb_av]/[ft_i]');
    check('cu ft', '[ft_i]3');
    check('US gal', '[gal_us]');
    check('kg/Wh', 'kg/(W.h)');
  });

  test('the kind settles what has two meanings', () => {
    check('g', 'g', 'mass');
    check('g', '[g]', 'acceleration');
    check('"', "''", 'angle');
    check("'", '[ft_i]', 'length');
    check("'", "'", 'angle');
    check('lb', '[lbf_av]', 'force');
    check('lb/in', '[lbf_av]/[in_i]', 'stiffness');
    check('ft-lb, lb-ft, lb·ft, lbf ft', '[lbf_av].[ft_i]', 'torque');
    check('ft·lb', '[ft_i].[lbf_av]', 'torque');
    check('C, °C', 'Cel', 'tempAbs');
    check('F', 'F');
    check('pcs, pieces', '1', 'count');
  });

  test('anything that is UCUM, and nothing else', () => {
    for (const code of ["[in_i'Hg]", '10*-7.s', 'm[H2O]', '[lb_av]']) check(code, code);
    check('constructor, toString', undefined, 'length');
    check('zorkmids, 5 mm, -5, ±, kg kg!, ', undefined);
  });
});
