/**
 * Units against two sources outside the project.
 *
 * 1. The functional tests of the Unified Code for Units of Measure, file
 *    `src/test/resources/UcumFunctionalTests.xml` of the open repository FHIR/Ucum-java
 *    (G. Grieve and others, history up to 11 October 2018, EPL): validity cases 1-… and k=1=…
 *    that need no unit of medicine, and all conversion cases 3-… but 3-124, whose magnetic
 *    constant the tool has no use for. Status: inputs and outcomes seen.
 * 2. `@lhncbc/ucum-lhc` 7.1.10, a general library of the US National Library of Medicine: every
 *    unit that a kind shows, and every atom of the tool's table. Status: computed at each run.
 */
import ucum from '@lhncbc/ucum-lhc';
import { describe, expect, test } from 'vitest';
import { KINDS, parseUnit, sameDimension } from '../../src/quantity/index.ts';
import { ATOMS } from '../../src/quantity/unit-table.ts';

describe('UCUM functional tests: validity', () => {
  const words = (list: string): string[] => list.trim().split(/\s+/);

  const VALID = words(`
    m /m 10*3/ul 10*-3/ul 10*+3/ul m[H2O] 10*23 rad2 m3.kg-1.s-2 4.[pi].10*-7.N/A2 rad2{a}
    {a}.rad2{b} 1{c} {e} % [ft_i] [in_i] [yd_i] [lb_av] [oz_av] [sft_i] [sin_i] 1/d 1/min a cm cm2
    cm3 d dg dl g g/d g/l h kg l mm m2 mg mg/d min ml ml/s mm[Hg] mm2 mm3 mmol mmol/l mol ms ng nl
    pg/ml s ug ug/min ul umol umol/l wk deg km /L /mL /mmol 10*12/L Cel cm/s fL fmol/L g/g g/L L/L
    mg/g mg/mL mm/h mmol/kg nmol/h/mL um/s umol/2.h K/W cm[H2O] kg{body_wt} cm[H2O].s/L kg/m2
    mmol/(8.h.kg) cm[H2O]/(s.m) kg/h L/(8.h) g{creat} ms/s Ms g.m/m2{hb} {od} g.m/{hb} pA [ppb]
    g/(8.kg.h) Pa [ppm] [ppth] S [in_i'Hg] mL/{hb}.m2 /{tot} 10*3{rbc} 10.L/(min.m2) mL/cm[H2O] bar
    L.s /kg g/m2 /m3 cm2/s hL J/L mol/(kg.s) nm m/s2 Ohm Ohm.m kg.m/s kg/(s.m2) mbar mbar.s/L mV
    kg/m3 g.m mL/mbar pm ps us kPa pt uV 10.L/min ks V a/m t Wb`);
  test.each(VALID)('%s', (code) => expect(parseUnit(code)).toBeDefined());

  const INVALID = words(`
    m/ 10+3/ul rad2{錠} {a}rad2{b} {|}1 iU molv [BETH'U] [iIU] [iIU]/d g/12h g/48h g/4h g/72h
    m[iIU]/L mg/12h mL/10h mL/8h mmol/12h mmol/kg[H20] U/1h u[iIU]/mL cm[H20] ug(8.h) ug(8hr)`);
  test.each(INVALID)('not %s', (code) => expect(parseUnit(code)).toBeUndefined());
});

describe('UCUM functional tests: conversion', () => {
  // Outcomes are rounded to the figures of the value given: half of the last place is allowed.
  const check = (value: string, from: string, to: string, outcome: string) => {
    const [a, b] = [parseUnit(from), parseUnit(to)];
    if (!a || !b) throw new Error(`${from} or ${to} not read`);
    expect(sameDimension(a.dim, b.dim), `${from} → ${to}`).toBe(true);
    const found = (Number(value) * a.factor) / b.factor;
    const half = Math.max(halfOfLastPlace(outcome), 1e-12 * Math.abs(found));
    expect(Math.abs(found - Number(outcome)), `${found} for ${outcome}`).toBeLessThanOrEqual(half);
  };

  function halfOfLastPlace(outcome: string): number {
    const [mantissa = '', power = '0'] = outcome.split('e');
    return 0.5 * 10 ** (Number(power) - (mantissa.split('.')[1] ?? '').length);
  }

  test.each([
    ['6.3', 'm', 'm', '6.3'],
    ['6.3', 'mm', 'm', '0.0063'],
    ['6.3', 'mm', 'cm', '0.63'],
    ['6.3', 's.m-1', 's/m', '6.3'],
    ['6.3', 's.mm-1', 's.m-1', '6300'],
    ['6.3', 's.mm-2', 's.m-2', '6300000'],
    ['6.3', 's/m/g', 's.m-1.g-1', '6.3'],
    ['6.3', 'ms/m/g', 's.m-1.g-1', '0.0063'],
    ['6.3', 's/mm/g', 's.m-1.g-1', '6300'],
    ['6.3', 's/m/mg', 's.m-1.g-1', '6300'],
    ['6.3', 's/m.mg', 's.m-1.g', '0.0063'],
    ['6.3', 'ms/m', 's/m', '0.0063'],
    ['6.3', '4.s/m', 's/m', '25'],
    ['6.30', '4.s/m', 's/m', '25.2'],
    ['6.3', 's/4/m', 's/m', '1.6'],
    ['6.3', 's/mm', 's/m', '6300'],
    ['6.3', 'ms/mm', 's/m', '6.3'],
    ['6.30', '[in_i]', 'm', '0.160'],
    ['6.300', '[in_i]', 'cm', '16.0'],
    ['6.3', 'g.m.s-2.A-2', 'g.m.C-2', '6.3'],
    ['1', '10*-7.s', 's', '1e-7'],
    ['1', '4.[pi].10*-7.s', 's', '0.00000125663706143591729538506'],
    ['1', '4.[pi].10*-7.N', 'N', '0.00000125663706143591729538506'],
    ['1', 'm[Hg]', 'g.s-2.m-1', '133322000'],
    ['1', 'S', 'g-1.m-2.C2.s', '0.001'],
    ['1', '[ly]', 'cm', '946073047258080000'],
    ['1', '1/[ly]', 'cm-1', '1.05700083402461546370946e-18'],
    ['1.2', 'g.m', 'm.g', '1.2'],
  ])('%s %s in %s is %s', check);
});

describe('a general UCUM library agrees', () => {
  const library = ucum.UcumLhcUtils.getInstance();

  /** Coherent SI unit of one of our units, written so that the library can be asked for it. */
  function siCode(code: string): string {
    const unit = parseUnit(code);
    const bases = ['m', 'kg', 's', 'A', 'K', 'mol', 'cd', '{u}'];
    const powers = unit?.dim.map((n, i) => (n === 0 || i === 7 ? '' : `${bases[i]}${n}`)) ?? [];
    if (unit && unit.angle !== 0) powers.push(`rad${unit.angle}`);
    return powers.filter((p) => p !== '').join('.') || '1';
  }

  /** SI value of 1 of the unit, as the library has it. To it `{u}` is a remark worth 1. */
  function libraryOne(code: string): number {
    const found = library.convertUnitTo(code, 1, siCode(code));
    if (found.status !== 'succeeded') throw new Error(`${code}: ${found.msg.join('; ')}`);
    return found.toVal;
  }

  const check = (code: string) => {
    const unit = parseUnit(code);
    const ours = (unit?.factor ?? 0) + (unit?.offset ?? 0);
    expect(ours / libraryOne(code), code).toBeCloseTo(1, 12);
  };

  const shown = new Set(Object.values(KINDS).flatMap(({ si, show }) => [si, ...show]));
  test.each([...shown])('shown unit %s', check);
  test.each(Object.keys(ATOMS))('atom %s', check);
});
