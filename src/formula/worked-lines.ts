import type { Formula } from './formula.ts';
import { formulaOf } from './parse-formula.ts';
import { withNumbers } from './with-numbers.ts';

/** A line of a working as it is printed. */
export interface PrintedLine {
  readonly symbol: string;
  /** Its formula, or the words that it was read from. */
  readonly shown: string;
  readonly isFormula: boolean;
  /** Its number with its unit and without its spread. */
  readonly number: string;
}

/** A line of a working in mathematics. */
export interface WorkedLine {
  readonly symbol: Formula;
  readonly formula?: Formula;
  /** The formula with the numbers of the other lines in the places of their symbols. */
  readonly numbers?: Formula;
}

/** Sets the lines of a working; a symbol that stands for two numbers is put nowhere. */
export function workedLines(lines: readonly PrintedLine[]): WorkedLine[] {
  const numberOf = numbersBySymbol(lines);
  return lines.map(({ symbol, shown, isFormula }) => {
    if (!isFormula) return { symbol: formulaOf(symbol) };
    const formula = formulaOf(shown);
    const others = (written: string) => (written === symbol ? undefined : numberOf.get(written));
    const numbers = withNumbers(formula, others);
    return { symbol: formulaOf(symbol), formula, ...(numbers ? { numbers } : {}) };
  });
}

function numbersBySymbol(lines: readonly PrintedLine[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const twice = new Set<string>();
  for (const { symbol, number } of lines) {
    if ((found.get(symbol) ?? number) !== number) twice.add(symbol);
    found.set(symbol, number);
  }
  for (const symbol of twice) found.delete(symbol);
  return found;
}
