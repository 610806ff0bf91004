import { type Place, type Refusal, RefusalError } from '../study/index.ts';

/** What is wrong at one place of a table, and what to do about it. */
export interface Problem {
  readonly row: number;
  readonly column: string;
  readonly value: string;
  readonly why: string;
  readonly next: string;
  /** Every row may have it: one mention for the column is enough. */
  readonly once?: true;
}

/** As many as one can work through at a time; the check stops there. */
export const MOST_PROBLEMS = 50;
const LONGEST_VALUE = 80;

/** Collects what is wrong with one file. */
export class Problems {
  readonly #file: string;
  readonly #found: Problem[] = [];
  /** Columns and complaints of which one mention is enough. */
  readonly #said = new Set<string>();

  constructor(file: string) {
    this.#file = file;
  }

  add(problem: Problem): void {
    const complaint = `${problem.column}\u0000${problem.why}`;
    if (this.full || (problem.once && this.#said.has(complaint))) return;
    this.#said.add(complaint);
    this.#found.push(problem);
  }

  get any(): boolean {
    return this.#found.length > 0;
  }
  get full(): boolean {
    return this.#found.length >= MOST_PROBLEMS;
  }

  /** In the order of the rows. */
  refusals(): readonly Refusal[] {
    return [...this.#found].sort((a, b) => a.row - b.row).map((p) => this.#refusal(p));
  }

  /** @throws RefusalError with every problem, when there is any. */
  throwIfAny(): void {
    const [first, ...more] = this.refusals();
    if (first) throw new RefusalError(first, ...more);
  }

  #refusal({ row, column, value, why, next }: Problem): Refusal {
    const place: Place = { file: this.#file, row, column };
    return { code: 'bad-table', place, value: shortened(value), why, next };
  }
}

const shortened = (text: string): string =>
  text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE)}…` : text;
