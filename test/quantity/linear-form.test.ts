import { describe, expect, test } from 'vitest';
import {
  covariance,
  differenceOf,
  exactForm,
  FormBuilder,
  formUncertainty,
  type LinearForm,
} from '../../src/quantity/index.ts';

const form = (x: number, by: Record<string, number>): LinearForm => ({
  x,
  by: new Map(Object.entries(by)),
});

describe('what two numbers share', () => {
  const scale = { gain: 3 };
  const a = form(10, { ...scale, own: 4 });
  const b = form(8, { ...scale, other: 4 });

  test('cancels in a difference and adds up in a sum', () => {
    expect(differenceOf(a, b).x).toBe(2);
    expect(formUncertainty(differenceOf(a, b))).toBeCloseTo(Math.sqrt(32), 12);
    const sum = new FormBuilder().add(a).add(b).done();
    expect(formUncertainty(sum)).toBeCloseTo(Math.sqrt(36 + 32), 12);
    expect(covariance(a, b)).toBe(9);
  });

  test('x − x has no spread at all', () => {
    expect(differenceOf(a, a).x).toBe(0);
    expect(formUncertainty(differenceOf(a, a))).toBe(0);
  });

  test('an exact number adds none', () => {
    const shifted = new FormBuilder().add(a).add(exactForm(5)).done();
    expect(shifted.x).toBe(15);
    expect(formUncertainty(shifted)).toBe(5);
  });
});
