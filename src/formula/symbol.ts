import type { Formula } from './formula.ts';
import { isLowered, lowered } from './tokens.ts';

const FUNCTIONS = new Set([
  'sin',
  'cos',
  'tan',
  'atan',
  'atan2',
  'tanh',
  'ln',
  'log',
  'exp',
  'min',
  'max',
]);
const SHORT_WORDS = new Set(['as', 'of', 'is', 'on', 'at', 'by', 'in', 'if', 'to', 'or', 'no']);

export const isFunction = (letters: string): boolean => FUNCTIONS.has(letters);

/** Words are told from symbols by their length: symbols have one letter and what stands below it. */
export const isWord = (letters: string): boolean =>
  !isFunction(letters) && (/^[a-z]{3,}$/.test(letters) || SHORT_WORDS.has(letters));

/** "mRL" is m with RL below, "GIt" is GI with t below, "dA" a differential, "E₂,s" E with 2,s below. */
export function symbolOf(written: string): Formula {
  if (/^d[A-Z]$/.test(written))
    return { m: 'product', of: [{ m: 'name', text: 'd' }, symbolOf(written.slice(1))] };
  const mark = /[′~↻°†∥+*!≠]+$/u.exec(written)?.[0] ?? '';
  const body = written.slice(0, written.length - mark.length);
  const letter = /^(?:GI(?=[a-z])|Δ?(?![ₐ-ₜᵢᵣᵤᵥⱼ])\p{L}\p{M}*|Δ)/u.exec(body)?.[0] ?? body;
  const rest = body.slice(letter.length);
  const raised = /^ᵈ$/.test(rest);
  return {
    m: 'symbol',
    written,
    letter,
    below: raised ? '' : belowOf(rest),
    mark: raised ? lowered(rest) + mark : mark,
  };
}

/** What stands below a letter: a comma behind letters keeps its place, an underscore only says "below". */
function belowOf(rest: string): string {
  const text = rest.startsWith('_') ? rest.slice(1) : rest;
  return [...text].map((c) => (isLowered(c) ? lowered(c) : c)).join('');
}
