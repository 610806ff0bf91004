import type { Id } from '../study/index.ts';
import type { Found, FoundRow, FoundTerm, PlainRow, TableInput } from './method.ts';

/** Names of a table's columns: those of its numbers, and those of its words. */
export interface ColumnNames {
  readonly numbers: readonly string[];
  readonly words: readonly string[];
}

const NAMES = new WeakMap<TableInput, ColumnNames>();

/** One list of names for all rows of a table. */
export function columnNames(input: TableInput): ColumnNames {
  const of = (what: 'scalar' | 'term') =>
    input.columns.filter((c) => c.in === what).map((c) => c.name);
  const held = NAMES.get(input) ?? { numbers: of('scalar'), words: of('term') };
  NAMES.set(input, held);
  return held;
}

/** A bound row: what stands in its columns, in the order of their names. */
export class BoundRow implements FoundRow {
  #plain: PlainRow | undefined;

  constructor(
    readonly subject: Id,
    readonly label: string,
    readonly names: ColumnNames,
    readonly numbers: readonly Found[],
    readonly words: readonly FoundTerm[],
  ) {}

  get cells(): Readonly<Record<string, Found>> {
    return byName(this.names.numbers, this.numbers);
  }

  get terms(): Readonly<Record<string, FoundTerm>> {
    return byName(this.names.words, this.words);
  }

  /** The word in a column; empty when it has none. */
  word(column: string): string {
    return this.words[this.names.words.indexOf(column)]?.text ?? '';
  }

  /** Its words and nominal values, NaN for what is missing. */
  get plain(): PlainRow {
    this.#plain ??= this.#toPlain();
    return this.#plain;
  }

  #toPlain(): PlainRow {
    const row: Record<string, number | string> = { subject: this.label };
    for (const [i, name] of this.names.words.entries()) row[name] = this.words[i]?.text ?? '';
    for (const [i, name] of this.names.numbers.entries()) row[name] = nominalOf(this.numbers[i]);
    return row;
  }
}

const byName = <T>(names: readonly string[], items: readonly T[]): Record<string, T> =>
  Object.fromEntries(names.map((name, i) => [name, items[i] as T]));

const nominalOf = (cell: Found | undefined): number =>
  cell === undefined || 'missing' in cell ? Number.NaN : cell.form.x;
