import { type Kind, kindDef } from './kinds.ts';
import { type DecimalSign, type NumberRead, readNumber } from './read-number.ts';
import { unitSymbol } from './unit-symbol.ts';
import { spokenUnit } from './unit-words.ts';
import { toSi, unitProblem } from './units.ts';

export interface ParseOptions {
  /** UCUM code that holds when none is written. */
  readonly unit?: string;
  /** Decimal sign; when absent it is worked out, and refused where it could be either. */
  readonly decimal?: DecimalSign;
  /** Refuse a number without a written unit even where `unit` is given. */
  readonly requireUnit?: boolean;
}

/** Carries a refusal up to parseQuantity; never leaves the parser. */
export class Refused extends Error {
  readonly next: string;
  constructor(why: string, next: string) {
    super(why);
    this.next = next;
  }
}

/** What the helpers below share. */
export interface Context {
  readonly kind: Kind;
  readonly decimal: DecimalSign;
  readonly options: ParseOptions;
}

/** A number, the unit code written behind it, and nothing else. */
export interface Amount {
  readonly number: NumberRead;
  readonly unit: string | undefined;
}

/** "12.5 ± 0.2 kg", in the usual unit of the kind. */
export function exampleOf(kind: Kind): string {
  if (kind === 'count') return '12';
  return `12.5 ± 0.2 ${unitSymbol(kindDef(kind).show[0])}`.trim();
}

/** A number and its unit, and nothing behind them. */
export function readAmount(text: string, c: Context): Amount | undefined {
  const number = readNumber(text, c.decimal);
  const unit = number && writtenUnit(number.rest, c);
  return number && unit && { number, unit: unit.code };
}

/** The unit that a text is, no code when the text is blank; undefined when it is none. */
export function writtenUnit(text: string, c: Context): { code: string | undefined } | undefined {
  const word = text.trim();
  if (word === '') return { code: undefined };
  const code = spokenUnit(word, c.kind);
  return code === undefined ? undefined : { code };
}

/** The first unit written, else the one that holds by default. */
export function chooseUnit(written: readonly (string | undefined)[], c: Context): string {
  const code = written.find((one) => one !== undefined);
  const isNumber = c.kind === 'count' || c.kind === 'ratio';
  const fallback = c.options.unit ?? (isNumber ? '1' : undefined);
  const unit = code ?? (c.options.requireUnit && !isNumber ? undefined : fallback);
  // A plain number is no default for a kind that has units.
  if (unit === undefined || (code === undefined && unit === '1' && !isNumber))
    throw new Refused('no unit is written', `Write the unit: ${exampleOf(c.kind)}.`);
  needUnit(unit, c);
  return unit;
}

export function needUnit(code: string, c: Context): void {
  const problem = unitProblem(code, c.kind);
  if (problem) throw new Refused(problem, `Write it in another unit: ${exampleOf(c.kind)}.`);
}

export function inSi(x: number, code: string, kind: Kind): number {
  const si = toSi(x, code, kind);
  if (Number.isFinite(si)) return si;
  throw new Refused('the number is too large', 'Check its exponent.');
}
