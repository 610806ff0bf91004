import { FormulaError } from './formula.ts';

/** A piece of a formula's text, and whether blanks stand on its sides. */
export interface Token {
  readonly t: 'number' | 'letters' | 'power' | 'sign';
  readonly text: string;
  readonly at: number;
  readonly spaced: boolean;
}

/** Letters of other heights, as the plain letters that they stand for. */
const LOWERED = pairs('₀₁₂₃₄₅₆₇₈₉ₐₑₕᵢⱼₖₗₘₙₒₚᵣₛₜᵤᵥₓ', '0123456789aehijklmnoprstuvx');
const RAISED = pairs('⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺ᵀᵈ', '0123456789−+Td');

function pairs(from: string, to: string): ReadonlyMap<string, string> {
  const plain = [...to];
  return new Map([...from].map((c, i) => [c, plain[i] ?? '']));
}

export const isLowered = (c: string): boolean => LOWERED.has(c);
export const lowered = (text: string): string =>
  [...text].map((c) => LOWERED.get(c) ?? RAISED.get(c) ?? c).join('');

const NUMBER = /\d+(?:\.\d+)?|[½⅓⅔¼¾]/uy;
/**
 * A symbol or a word: a letter with its bars, then letters, digits and lowered ones; below an
 * underscore or behind a comma that no blank follows; primes and other marks close behind it.
 */
const LETTERS =
  /(?!Σ)Δ?\p{L}\p{M}*(?:[\p{L}\p{M}\d](?<![⁰-⁹ᵀ])|[₀-₉ₐ-ₜᵢᵣᵤᵥⱼ])*(?:_[\p{L}₀-₉]+|,(?=\p{L})\p{L}+)*(?:′|[~↻°†∥]|[+*!≠](?=$|[\s)]))*/uy;
const POWER = /[⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺]+ᵀ?|ᵀ|\^(?:[½⅓⅔¼¾]|−?\d+)/uy;
const SIGN = /[-=+−·×/()[\]|√∫Σ;,:≠≤≥<>]/uy;
const KINDS = [
  ['number', NUMBER],
  ['power', POWER],
  ['letters', LETTERS],
  ['sign', SIGN],
] as const;

/** @throws FormulaError at a character that stands in no formula. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let spaced = false;
  while (at < text.length) {
    if (/\s/.test(text[at] ?? '')) {
      at++;
      spaced = true;
      continue;
    }
    const token = tokenAt(text, at, spaced);
    tokens.push(token);
    at += token.text.length;
    spaced = false;
  }
  return tokens;
}

function tokenAt(text: string, at: number, spaced: boolean): Token {
  for (const [t, pattern] of KINDS) {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found) return { t, text: found, at, spaced };
  }
  throw new FormulaError(text, at, `"${text[at]}" stands in no formula`);
}

/** "²" or "^⅓" as the plain text of an exponent. */
export const exponentOf = (power: string): string =>
  power.startsWith('^') ? power.slice(1) : lowered(power);
