/**
 * A formula as a tree, read from the line of text that a question prints: the same tree is set
 * by a browser, by the typesetter and as text.
 */
export type Formula =
  /** One after the other: factors of a product stand without a sign. */
  | { readonly m: 'row'; readonly of: readonly Formula[] }
  | { readonly m: 'product'; readonly of: readonly Formula[] }
  | { readonly m: 'number'; readonly text: string }
  /** A letter with what stands below and behind it; `written` is how it was typed. */
  | {
      readonly m: 'symbol';
      readonly written: string;
      readonly letter: string;
      readonly below: string;
      readonly mark: string;
    }
  /** The name of a function, or the d of a differential. */
  | { readonly m: 'name'; readonly text: string }
  | { readonly m: 'operator'; readonly text: string }
  | { readonly m: 'power'; readonly base: Formula; readonly exponent: string }
  | { readonly m: 'fraction'; readonly top: Formula; readonly bottom: Formula }
  | { readonly m: 'root'; readonly of: Formula }
  | {
      readonly m: 'group';
      readonly open: '(' | '[' | '|';
      readonly close: ')' | ']' | '|';
      readonly of: Formula;
      /** Words behind it: |y|max. */
      readonly below: string;
    }
  /** A number with its unit, put in the place of a symbol. */
  | { readonly m: 'quantity'; readonly text: string }
  | { readonly m: 'words'; readonly text: string };

/** Why a text is no formula, and where. */
export class FormulaError extends Error {
  constructor(
    readonly text: string,
    readonly at: number,
    why: string,
  ) {
    super(`${JSON.stringify(text)}, character ${at + 1}: ${why}`);
    this.name = 'FormulaError';
  }
}
