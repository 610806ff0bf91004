import { type Formula, FormulaError } from './formula.ts';
import { isFunction, isWord, symbolOf } from './symbol.ts';
import { exponentOf, type Token, tokensOf } from './tokens.ts';

/** Signs that part terms; a sign of a product or fraction between blanks parts factors loosely. */
const BETWEEN = new Set(['=', '+', '−', '-', '·', '×', ';', ',', ':', '≠', '≤', '≥', '<', '>']);
const CLOSING = { '(': ')', '[': ']', '|': '|' } as const;
type Opening = keyof typeof CLOSING;

/**
 * Reads a formula as questions print it: `X = L (mRL + mRR) / m`. A blank between factors is a
 * product; ` / ` between blanks divides the whole product before it by the whole one behind it,
 * `a/b` without blanks only what touches it; words of the trade may stand beside.
 * @throws FormulaError naming the place of what can't be read.
 */
export function parseFormula(text: string): Formula {
  const parser = new Parser(text, tokensOf(text));
  const row = parser.row(undefined);
  parser.end();
  return row;
}

/** The formula, or its text as words where it can't be read. */
export function formulaOf(text: string): Formula {
  try {
    return parseFormula(text);
  } catch (error) {
    if (error instanceof FormulaError) return { m: 'words', text };
    throw error;
  }
}

class Parser {
  #next = 0;

  constructor(
    private readonly text: string,
    private readonly tokens: readonly Token[],
  ) {}

  end(): void {
    const left = this.#peek();
    if (left) throw new FormulaError(this.text, left.at, `"${left.text}" closes nothing`);
  }

  /** Terms and the signs between them, up to a closing sign or the end. */
  row(closing: string | undefined): Formula {
    const items: Formula[] = [];
    for (let token = this.#peek(); token; token = this.#peek()) {
      if (
        token.t === 'sign' &&
        (token.text === closing || token.text === ')' || token.text === ']')
      )
        break;
      items.push(this.#item(token, closing));
    }
    const [only] = items;
    return items.length === 1 && only ? only : { m: 'row', of: items };
  }

  #item(token: Token, closing: string | undefined): Formula {
    if (token.t === 'sign' && BETWEEN.has(token.text)) return this.#sign();
    if (this.#isWord(this.#next)) return this.#words();
    // A slash between words divides nothing.
    if (token.text === '/') return this.#sign();
    return this.#term(closing);
  }

  #sign(): Formula {
    const text = this.#take().text;
    return { m: 'operator', text: text === '-' ? '−' : text };
  }

  #words(): Formula {
    const words: string[] = [];
    while (this.#isWord(this.#next)) words.push(this.#take().text);
    return { m: 'words', text: words.join(' ') };
  }

  /** A word, or the article among words. */
  #isWord(i: number): boolean {
    const token = this.tokens[i];
    if (token?.t !== 'letters') return false;
    if (isWord(token.text)) return true;
    const word = (other: Token | undefined) => other?.t === 'letters' && isWord(other.text);
    return token.text === 'a' && word(this.tokens[i - 1]) && word(this.tokens[i + 1]);
  }

  /** A product, divided by another where a slash between blanks stands behind it. */
  #term(closing: string | undefined): Formula {
    let term = this.#product(closing);
    while (this.#isLooseSlash() && this.#startsFactor(this.#next + 1, closing)) {
      this.#take();
      term = { m: 'fraction', top: bare(term), bottom: bare(this.#product(closing)) };
    }
    return term;
  }

  #product(closing: string | undefined): Formula {
    const factors: Formula[] = [this.#factor()];
    while (this.#startsFactor(this.#next, closing)) factors.push(this.#factor());
    const [only] = factors;
    return factors.length === 1 && only ? only : { m: 'product', of: factors };
  }

  #startsFactor(i: number, closing: string | undefined): boolean {
    const token = this.tokens[i];
    if (!token || this.#isWord(i)) return false;
    if (token.t === 'number' || token.t === 'letters') return true;
    return token.t === 'sign' && token.text !== closing && '([|√∫Σ'.includes(token.text);
  }

  #factor(): Formula {
    let factor = this.#powers(this.#primary());
    while (this.#isTightSlash()) {
      this.#take();
      const bottom = this.#powers(this.#primary());
      factor = { m: 'fraction', top: bare(factor), bottom: bare(bottom) };
    }
    return factor;
  }

  #powers(base: Formula): Formula {
    let found = base;
    while (this.#peek()?.t === 'power')
      found = { m: 'power', base: found, exponent: exponentOf(this.#take().text) };
    return found;
  }

  #primary(): Formula {
    const token = this.#take();
    if (token.t === 'number') return { m: 'number', text: token.text };
    if (token.t === 'letters') return this.#lettered(token);
    const { text } = token;
    if (text === '√') return { m: 'root', of: bare(this.#primary()) };
    if (text === '∫' || text === 'Σ') return { m: 'operator', text };
    if (text === '(' || text === '[' || text === '|') return this.#group(text, token);
    throw new FormulaError(this.text, token.at, `"${text}" stands where a number or symbol should`);
  }

  /** A symbol, or a function with its argument where that is in brackets. */
  #lettered({ text }: Token): Formula {
    if (!isFunction(text)) return symbolOf(text);
    const name: Formula = { m: 'name', text };
    const next = this.#peek();
    if (next?.text !== '(' || next.spaced) return name;
    return { m: 'product', of: [name, this.#primary()] };
  }

  #group(open: Opening, token: Token): Formula {
    const close = CLOSING[open];
    const of = this.row(close);
    if (this.#peek()?.text !== close)
      throw new FormulaError(this.text, token.at, `"${open}" is not closed`);
    this.#take();
    const behind = this.#peek();
    const isBelow = open === '|' && behind?.t === 'letters' && !behind.spaced;
    return { m: 'group', open, close, of, below: isBelow ? this.#take().text : '' };
  }

  #isLooseSlash(): boolean {
    const [token, behind] = [this.#peek(), this.tokens[this.#next + 1]];
    return token?.text === '/' && token.spaced && behind?.spaced === true;
  }
  #isTightSlash(): boolean {
    const [token, behind] = [this.#peek(), this.tokens[this.#next + 1]];
    return token?.text === '/' && !token.spaced && behind?.spaced === false;
  }

  #peek(): Token | undefined {
    return this.tokens[this.#next];
  }
  #take(): Token {
    const token = this.tokens[this.#next++];
    if (!token) throw new FormulaError(this.text, this.text.length, 'it ends too early');
    return token;
  }
}

/** Without the brackets that a fraction's bar or a root's roof makes needless. */
function bare(formula: Formula): Formula {
  return formula.m === 'group' && formula.open === '(' && formula.below === ''
    ? formula.of
    : formula;
}
