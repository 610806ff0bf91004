import { kindWords, type Value } from '../quantity/index.ts';
import {
  type CellRead,
  type ColumnUse,
  propertyDef,
  readCell,
  readVector,
  type TableChunk,
} from '../study/index.ts';
import { couldGroupThousands, type DecimalSign } from './detect.ts';
import type { Problem } from './problems.ts';
import { columnName } from './read-rows.ts';

type PropertyUse = Extract<ColumnUse, { use: 'property' }>;

/** How the cells of a table are to be read: what the fold goes by. */
export type Writing = Pick<TableChunk, 'columns' | 'decimal' | 'frame' | 'headings'>;

/** What a row holds, by column, and what is wrong with it. */
export interface RowRead {
  readonly values: ReadonlyMap<number, Value>;
  readonly problems: readonly Problem[];
}

/** Reads the quantities and words of rows with the fold's own reader, and holds them against their meaning. */
export class CellChecker {
  readonly #writing: Writing;
  readonly #scalars: readonly (readonly [number, PropertyUse])[];
  readonly #vectors: readonly (readonly number[])[];

  constructor(writing: Writing) {
    const uses = writing.columns.flatMap((use, i) =>
      use.use === 'property' ? [[i, use] as const] : [],
    );
    this.#writing = writing;
    this.#scalars = uses.filter(([, use]) => use.component === undefined);
    this.#vectors = vectorColumns(uses);
  }

  read(cells: readonly string[], row: number): RowRead {
    const values = new Map<number, Value>();
    const problems: Problem[] = [];
    for (const [column, use] of this.#scalars) {
      const problem =
        this.#look(cells, row, column, use) ??
        this.#take(readCell(cells, column, this.#writing), cells, row, column, use, values);
      if (problem) problems.push(problem);
    }
    for (const columns of this.#vectors) {
      const problem = this.#readVector(cells, row, columns, values);
      if (problem) problems.push(problem);
    }
    return { values, problems };
  }

  #readVector(
    cells: readonly string[],
    row: number,
    columns: readonly number[],
    values: Map<number, Value>,
  ): Problem | undefined {
    for (const column of columns) {
      const use = this.#writing.columns[column];
      const problem = use?.use === 'property' && this.#look(cells, row, column, use);
      if (problem) return problem;
    }
    const first = columns[0] ?? 0;
    const use = this.#writing.columns[first];
    if (use?.use !== 'property') return undefined;
    return this.#take(readVector(cells, columns, this.#writing), cells, row, first, use, values);
  }

  /** What can be told from the text alone. */
  #look(
    cells: readonly string[],
    row: number,
    column: number,
    use: PropertyUse,
  ): Problem | undefined {
    if (use.kind === undefined) return undefined;
    const text = (cells[column] ?? '').trim();
    const u = use.uColumn === undefined ? '' : (cells[use.uColumn] ?? '').trim();
    if (text === '' && u === '') return undefined;
    if (text === '' && use.component === undefined)
      return this.#at(row, use.uColumn ?? column, u, LONE_SPREAD);
    if (u !== '' && OWN_SPREAD.test(text)) return this.#at(row, column, text, TWO_SPREADS);
    const wrong = wrongSign(text, this.#writing.decimal);
    if (wrong) return this.#at(row, column, text, wrong);
    const wrongU = wrongSign(u, this.#writing.decimal);
    if (wrongU && use.uColumn !== undefined) return this.#at(row, use.uColumn, u, wrongU);
    if (needsUnit(use) && use.unit === undefined && BARE_NUMBER.test(text))
      return this.#at(row, column, text, noUnit(use));
    if (needsUnit(use) && (use.uUnit ?? use.unit) === undefined && BARE_NUMBER.test(u))
      return this.#at(row, use.uColumn ?? column, u, noUnit(use, '.u'));
    return undefined;
  }

  #take(
    cell: CellRead,
    cells: readonly string[],
    row: number,
    column: number,
    use: PropertyUse,
    values: Map<number, Value>,
  ): Problem | undefined {
    if (cell.read === 'empty') return undefined;
    if (cell.read === 'bad')
      return {
        row,
        column: this.#heading(cell.column),
        value: cells[cell.column] ?? '',
        why: cell.why,
        next: sentence(cell.next),
      };
    values.set(column, cell.value);
    const wrong = wrongValue(use.property, cell.value);
    return wrong && { row, column: this.#heading(column), value: cells[column] ?? '', ...wrong };
  }

  #at = (row: number, column: number, value: string, wrong: Wrong): Problem => ({
    row,
    column: this.#heading(column),
    value,
    ...wrong,
  });

  #heading = (column: number): string => columnName(this.#writing.headings, column);
}

function vectorColumns(uses: readonly (readonly [number, PropertyUse])[]): number[][] {
  const found = new Map<string, number[]>();
  for (const [column, use] of uses) {
    if (use.component === undefined) continue;
    const columns = found.get(use.property) ?? [];
    columns[use.component] = column;
    found.set(use.property, columns);
  }
  return [...found.values()];
}

type Wrong = Pick<Problem, 'why' | 'next' | 'once'>;

export const sentence = (text: string): string => (/[.?!…]$/.test(text) ? text : `${text}.`);

export const OWN_SPREAD = /±|\+\/?[-−]/;
const LONE_SPREAD: Wrong = {
  why: 'a standard uncertainty stands without its value',
  next: 'Give the value, or leave the uncertainty empty too.',
};
export const TWO_SPREADS: Wrong = {
  why: 'the cell has a spread of its own and a column gives another',
  next: 'Leave one of the two out.',
};

/** A number, range or ± without any unit. */
export const BARE_NUMBER = /^[\d\s.,+\-−–±/()]*\d[\d\s.,+\-−–±/()]*$/;
const needsUnit = (use: PropertyUse): boolean => use.kind !== 'count' && use.kind !== 'ratio';

function noUnit(use: PropertyUse, suffix = ''): Wrong {
  const unit = propertyDef(use.property)?.unit ?? 'kg';
  return {
    once: true,
    why: 'a quantity has no unit, neither in the heading nor in the cell',
    next: `Say the unit: --unit ${use.property}${suffix}=${unit}, or write it in the heading: ${use.property} [${unit}].`,
  };
}

const NUMBER = /^[-+−]?(\d+)([.,])(\d+)(?![\d.,])/;
const SIGN_WORDS: Readonly<Record<DecimalSign, string>> = { '.': 'point', ',': 'comma' };

/** A number with the other decimal sign, or one that only grouped thousands would explain. */
export function wrongSign(text: string, decimal: DecimalSign): Wrong | undefined {
  const m = NUMBER.exec(text);
  if (!m || m[2] === decimal) return undefined;
  const [, whole = '', sign = '', digits = ''] = m;
  const other: DecimalSign = decimal === '.' ? ',' : '.';
  if (couldGroupThousands(whole, digits))
    return {
      why: `${whole}${sign}${digits} may be ${whole}${digits} or ${whole}${decimal}${digits}`,
      next: `Write the number without grouping, or say that the decimal sign is a ${SIGN_WORDS[other]}: --decimal "${other}".`,
    };
  return {
    why: `a decimal ${SIGN_WORDS[other]} where the table has a decimal ${SIGN_WORDS[decimal]}`,
    next: `Write it with a ${SIGN_WORDS[decimal]}, or say that the decimal sign is a ${SIGN_WORDS[other]}: --decimal "${other}".`,
  };
}

/** Kinds of which no part, joint or vehicle has less than nothing; a place may be behind zero. */
const NEVER_NEGATIVE: ReadonlySet<string> = new Set(['mass', 'length', 'time', 'torque', 'energy']);

/** What a value can not be, whatever the reader makes of the text. */
export function wrongValue(property: string, value: Value): Wrong | undefined {
  if (value.t === 'count') return value.n < 0 ? negative('count') : notWhole(value.n);
  if (value.t !== 'scalar' || value.x >= 0) return undefined;
  const known = propertyDef(property);
  const isWrong = known
    ? known.notNegative === true && NEVER_NEGATIVE.has(value.kind)
    : value.kind === 'mass';
  if (!isWrong) return undefined;
  return negative(kindWords(value.kind));
}

const negative = (what: string): Wrong => ({
  why: `a ${what} is negative`,
  next: what === 'mass' ? 'Check the sign, and the tare of the scale.' : 'Check the sign.',
});

const notWhole = (n: number): Wrong | undefined =>
  Number.isInteger(n)
    ? undefined
    : { why: 'a count is no whole number', next: 'Write how many were counted.' };
