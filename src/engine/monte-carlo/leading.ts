import { isMissing } from '../body-out.ts';
import type { BoundInputs } from '../bound-inputs.ts';
import type { IndexedForm } from '../forms/indexed-form.ts';
import type { Found } from '../method.ts';
import { SOBOL_DIMENSIONS } from './sobol.ts';

/** Variables beyond the evenly spaced ones that still have a column of their own. */
export const LEADING = 2 * SOBOL_DIMENSIONS;

/**
 * All variables that the inputs move with, those first on which some result hangs most by its
 * linear form; one that counts for nothing to first order may still do so in the whole. Equal ones
 * stand in the order of their ids, so that edits which lead to the same study lead to the same
 * samples.
 */
export function rankedVariables(bound: BoundInputs, forms: readonly IndexedForm[]): number[] {
  const shares = new Map<number, number>();
  for (const form of inputForms(bound)) addShares(shares, form, false);
  for (const form of forms) addShares(shares, form, true);
  const id = (number: number): string => bound.variables.at(number).id;
  return [...shares]
    .sort(([a, sa], [b, sb]) => sb - sa || (id(a) < id(b) ? -1 : 1))
    .map(([number]) => number);
}

function addShares(
  shares: Map<number, number>,
  { vars, c, u }: IndexedForm,
  isResult: boolean,
): void {
  for (let i = 0; i < vars.length; i++) {
    const number = vars[i] ?? -1;
    const share = isResult && u > 0 ? ((c[i] ?? 0) / u) ** 2 : 0;
    shares.set(number, Math.max(shares.get(number) ?? 0, share));
  }
}

function* inputForms({ scalars, tables, variables }: BoundInputs): Generator<IndexedForm> {
  const form = (found: Found) => (isMissing(found) ? undefined : variables.form(found.form));
  for (const found of Object.values(scalars)) {
    const own = form(found);
    if (own) yield own;
  }
  for (const rows of Object.values(tables))
    for (const { numbers } of rows)
      for (const found of numbers) {
        const own = form(found);
        if (own) yield own;
      }
}
