import { differenceOf, FormBuilder, type LinearForm } from '../../../quantity/index.ts';
import type { PlainInputs } from '../../method.ts';
import { wholeSets } from '../cost-lines.ts';
import { type Crossing, crossings, logScale } from './break-even.ts';
import { EVERY, figuresOf, has } from './design-lines.ts';
import type { LookForms } from './look-forms.ts';

/** Pieces a year over which break-even points are looked for. */
const LOOKED_AT = logScale(1000, 1_000_000, 61);

/** Cost of each design over the pieces a year: what a piece takes, and whole sets of tools shared out. */
export interface VolumeCurves {
  readonly names: readonly string[];
  readonly at: (design: number, volume: number) => LinearForm;
}

interface Tool {
  readonly design: string;
  readonly life: number;
  /** Price of a set with overhead. */
  readonly price: LinearForm;
}

/**
 * Works the costs out once for all volumes, as a sum of forms: only the number of sets and of
 * pieces changes with the volume. Years are taken as exact.
 */
export function volumeCurves(forms: LookForms): VolumeCurves {
  const names = figuresOf(forms.plain).map((d) => d.name);
  const pieces = forms.of((x) => figuresOf(withoutTools(x)).map((d) => d.cost));
  const tools = toolsOf(forms);
  const { years = 1 } = forms.plain.scalars;
  return {
    names,
    at: (design, volume) => {
      const made = volume * years;
      const form = new FormBuilder();
      const piece = pieces[design];
      if (piece) form.add(piece);
      for (const tool of tools)
        if (tool.design === names[design] || tool.design === EVERY)
          form.add(tool.price, wholeSets(made / (tool.life || made)) / made);
      return form.done();
    },
  };
}

const withoutTools = (x: PlainInputs): PlainInputs => ({
  ...x,
  tables: { lines: (x.tables.lines ?? []).map((row) => ({ ...row, tool: Number.NaN })) },
});

function toolsOf(forms: LookForms): Tool[] {
  const rows = forms.plain.tables.lines ?? [];
  const at = rows.flatMap((row, i) => (has(row, 'tool') ? [i] : []));
  const prices = forms.of((x) =>
    at.map((i) => (x.scalars.overhead ?? 1) * Number(x.tables.lines?.[i]?.tool)),
  );
  return at.flatMap((i, k) => {
    const [row, price] = [rows[i], prices[k]];
    if (!row || !price) return [];
    const life = has(row, 'toolLife') ? Number(row.toolLife) : 0;
    return [{ design: String(row.design), life, price }];
  });
}

/** Break-even point of two designs over the pieces a year. */
export interface VolumeCrossing {
  readonly first: string;
  readonly second: string;
  readonly crossing: Crossing;
}

/** Break-even points of every pair of designs. */
export const volumeCrossings = ({ names, at }: VolumeCurves): VolumeCrossing[] =>
  names.flatMap((first, i) =>
    names.slice(i + 1).flatMap((second, k) => {
      const difference = (n: number) => differenceOf(at(i, n), at(i + 1 + k, n));
      const found = crossings((n) => difference(n).x, difference, LOOKED_AT);
      return found.map((crossing) => ({ first, second, crossing }));
    }),
  );
