import type { Way } from '../../../src/quantity/index.ts';

/** How a number is known, defaults and definitions included. */
export type How = Way | 'assumed' | 'exact';

/** Line under a number, after the line types of drawings (ISO 128). */
export type Line = 'continuous' | 'chain' | 'dashed' | 'dotted' | 'none';

const LINES: Readonly<Record<How, Line>> = {
  measured: 'continuous',
  supplied: 'continuous',
  calculated: 'chain',
  seen: 'dashed',
  inferred: 'dashed',
  guessed: 'dotted',
  assumed: 'dotted',
  exact: 'none',
};

export const lineOf = (how: How): Line => LINES[how];

/** What the lines stand for. */
export const LINE_KEY: readonly { readonly line: Line; readonly words: string }[] = [
  { line: 'continuous', words: 'measured or supplied' },
  { line: 'chain', words: 'calculated' },
  { line: 'dashed', words: 'seen or inferred' },
  { line: 'dotted', words: 'guessed or assumed' },
];
