import type { Id } from '../study/index.ts';
import type { Found, FoundRow, FoundTerm, PlainRow } from './method.ts';

/** A bound row, which keeps what was worked out of it. */
export class BoundRow implements FoundRow {
  #plain: PlainRow | undefined;

  constructor(
    readonly subject: Id,
    readonly label: string,
    readonly cells: Readonly<Record<string, Found>>,
    readonly terms: Readonly<Record<string, FoundTerm>>,
  ) {}

  /** Its words and nominal values, NaN for what is missing. */
  get plain(): PlainRow {
    this.#plain ??= plainRow(this);
    return this.#plain;
  }
}

function plainRow({ label, cells, terms }: FoundRow): PlainRow {
  const row: Record<string, number | string> = { subject: label };
  for (const name in terms) row[name] = terms[name]?.text ?? '';
  for (const name in cells) row[name] = nominalOf(cells[name]);
  return row;
}

const nominalOf = (cell: Found | undefined): number =>
  cell === undefined || 'missing' in cell ? Number.NaN : cell.form.x;
