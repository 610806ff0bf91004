import type { Formula } from './formula.ts';

/** A formula as the typesetter's mathematics, to be evaluated in its math mode. */
export function formulaTypst(f: Formula): string {
  switch (f.m) {
    case 'row':
      return f.of.map(formulaTypst).join(' ');
    case 'product':
      return f.of.map(formulaTypst).join(f.of.some(isQuantity) ? ' times ' : ' thin ');
    case 'number':
      return quoted(f.text);
    case 'symbol':
      return symbol(f);
    case 'name':
      return `upright(${quoted(f.text)})`;
    case 'operator':
      return OPERATORS.get(f.text) ?? quoted(f.text);
    case 'power':
      return `attach(${raisable(f.base)}, t: ${quoted(f.exponent)})`;
    case 'fraction':
      return `frac(${formulaTypst(f.top)}, ${formulaTypst(f.bottom)})`;
    case 'root':
      return `sqrt(${formulaTypst(f.of)})`;
    case 'group':
      return group(f);
    case 'quantity':
      return quoted(f.text);
    case 'words':
      return `" ${escaped(f.text)} "`;
  }
}

const isQuantity = (f: Formula): boolean =>
  f.m === 'quantity' || (f.m === 'power' && f.base.m === 'quantity');

/** Signs by the names under which the typesetter spaces them. */
const OPERATORS: ReadonlyMap<string, string> = new Map([
  ['=', 'eq'],
  ['+', 'plus'],
  ['−', 'minus'],
  ['·', 'dot.op'],
  ['×', 'times'],
  ['≠', 'eq.not'],
  ['≤', 'lt.eq'],
  ['≥', 'gt.eq'],
  ['<', 'lt'],
  ['>', 'gt'],
  ['Σ', 'sum'],
  ['∫', 'integral'],
  [',', 'comma'],
  [';', 'semi'],
  [':', 'colon'],
  ['/', 'slash'],
]);

/** Brackets that grow with what they hold. */
const LEFT: ReadonlyMap<string, string> = new Map([
  ['(', 'paren.l'],
  ['[', 'bracket.l'],
  ['|', 'bar.v'],
]);
const RIGHT: ReadonlyMap<string, string> = new Map([
  [')', 'paren.r'],
  [']', 'bracket.r'],
  ['|', 'bar.v'],
]);

const raisable = (f: Formula): string =>
  f.m === 'quantity' || f.m === 'fraction' ? bracketed('(', formulaTypst(f), ')') : formulaTypst(f);

const bracketed = (open: string, inside: string, close: string): string =>
  `lr(${LEFT.get(open) ?? ''} ${inside} ${RIGHT.get(close) ?? ''})`;

/** One letter stands slanted; two are no name of a variable but letters. */
function symbol({ letter, below, mark }: Extract<Formula, { m: 'symbol' }>): string {
  const base = letters(letter);
  const parts = [
    ...(mark === '' ? [] : [`t: ${marks(mark)}`]),
    ...(below === '' ? [] : [`b: ${quoted(below)}`]),
  ];
  return parts.length === 0 ? base : `attach(${base}, ${parts.join(', ')})`;
}

function letters(text: string): string {
  const [first = '', ...rest] = [...text.normalize('NFD')];
  const isBarred = rest.includes('\u0304');
  const plain = `italic(${quoted([first, ...rest.filter((c) => c !== '\u0304')].join(''))})`;
  return isBarred ? `overline(${plain})` : plain;
}

const marks = (mark: string): string =>
  /^′+$/.test(mark) ? [...mark].map(() => 'prime').join(' ') : quoted(mark);

function group({ open, close, of, below }: Extract<Formula, { m: 'group' }>): string {
  const inside = bracketed(open, formulaTypst(of), close);
  return below === '' ? inside : `attach(${inside}, b: ${quoted(below)})`;
}

const quoted = (text: string): string => `"${escaped(text)}"`;
const escaped = (text: string): string => text.replaceAll('\\', '\\\\').replaceAll('"', '\\"');
