import { FormBuilder, type LinearForm } from '../../quantity/index.ts';
import type { Cell, Found } from '../method.ts';

/** Product of two numbers to first order: their shared variables are kept. */
export function productOf(a: LinearForm, b: LinearForm): LinearForm {
  const { by } = new FormBuilder().add(a, b.x).add(b, a.x);
  return { x: a.x * b.x, by };
}

/** Product of several cells; missing when one of them is. */
export function productCell(label: string, factors: readonly Found[]): Found {
  let form: LinearForm = { x: 1, by: new Map() };
  let unknown = false;
  for (const factor of factors) {
    if ('missing' in factor) return factor;
    form = productOf(form, factor.form);
    unknown ||= factor.unknownSpread === true;
  }
  const cell: Cell = { form, how: 'calculated', place: { subject: label }, label };
  return unknown ? { ...cell, unknownSpread: true } : cell;
}
