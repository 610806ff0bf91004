import type { Place, StudyView } from '../../study/index.ts';
import { bindStudy } from '../bind/bind-study.ts';
import { Kept } from '../bind/kept.ts';
import type { Basis, BoundLook, Cell, Question } from '../method.ts';
import { NEEDED, partCostOf } from './part-formula.ts';

/** One number that a cost is made of, SI, and the reading, cell or assumption that it comes from. */
export interface PricedNumber {
  readonly x: number;
  readonly how: Cell['how'];
  readonly place: Place;
}

/** One part with all that its cost is made of, by the columns of the question of costs. */
export interface PricedPart {
  readonly label: string;
  readonly assembly: string;
  readonly numbers: Readonly<Record<string, PricedNumber>>;
  /** With overhead, tools in the conversion by mass; SI. */
  readonly cost: number;
}

export interface PricedParts {
  readonly parts: readonly PricedPart[];
  /** Parts that have no price: never counted as nothing. */
  readonly without: readonly { readonly label: string; readonly why: string }[];
  readonly overhead: PricedNumber | undefined;
  readonly basis: Basis;
}

/** The rows behind the cost of parts, for a sheet that goes on calculating with them. */
export function pricedParts(question: Question, view: StudyView, rates?: string): PricedParts {
  const bound = bindStudy({
    ...{ question, view, rates, subject: view.root()?.id ?? '', kept: new Kept(view) },
    askWithin: () => 'not asked here',
  });
  const { overhead } = bound.scalars;
  const factor = overhead && !('missing' in overhead) ? numberOf(overhead) : undefined;
  return {
    parts: (bound.tables.parts ?? []).map(({ label, cells, terms }) => {
      const numbers = numbersOf(cells);
      const taken = NEEDED.map((name) => numbers[name]?.x ?? Number.NaN);
      const cost = partCostOf(...taken, factor?.x ?? Number.NaN, 0);
      return { label, assembly: terms.assembly?.text ?? '', numbers, cost };
    }),
    without: (bound.tables.notCosted ?? []).map(({ label, terms }) => ({
      ...{ label, why: terms.why?.text ?? '' },
    })),
    overhead: factor,
    basis: bound.basis,
  };
}

const numbersOf = (cells: BoundLook['scalars']): PricedPart['numbers'] =>
  Object.fromEntries(
    Object.entries(cells).flatMap(([name, cell]) =>
      'missing' in cell ? [] : [[name, numberOf(cell)]],
    ),
  );

/** With the row of the table that its reading came in with, where there is one. */
function numberOf({ form, how, place, from }: Cell): PricedNumber {
  const source = from?.from[0]?.reading.source;
  const row = source ? { file: source.file, row: source.row, column: source.column } : {};
  return { x: form.x, how, place: { ...place, ...row } };
}
