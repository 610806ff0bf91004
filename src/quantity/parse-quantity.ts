import type { Kind } from './kinds.ts';
import { readShape } from './quantity-shapes.ts';
import { type Context, exampleOf, type ParseOptions, Refused } from './read-amount.ts';

export type { ParseOptions } from './read-amount.ts';

import { type DecimalSign, decimalSignOf } from './read-number.ts';
import { kindWords } from './units.ts';
import type { ScalarValue, Spread } from './value.ts';

export interface ParsedQuantity {
  readonly ok: true;
  readonly value: ScalarValue;
  /** UCUM code of the unit as written, or the one that held. */
  readonly unit: string;
  /** Said with "about", "~" or the like. */
  readonly approximate: boolean;
}

/** Why a text is no quantity of the kind wanted, and what to write instead. */
export interface NotParsed {
  readonly ok: false;
  readonly why: string;
  readonly next: string;
}

const LONGEST_TEXT = 200;
const EXACTLY = /^(?:=|exactly\b|exact\b)\s*/i;
const ABOUT = /^(?:~|≈|about\b|approximately\b|approx\b\.?|ca\b\.?|circa\b|around\b|roughly\b)\s*/i;
const ABOUT_BEHIND = /[\s,(]*\b(?:approximately|approx\.?|or so|roughly)\)?$/i;
const BOUND =
  /^(?:<|>|≤|≥|at least\b|at most\b|less than\b|more than\b|under\b|over\b|up to\b|min\.?\s|max\.?\s)/i;

/**
 * Reads a quantity as people write it, and gives it in SI.
 *
 * - `12.5 ± 0.2 kg`, `12.5 kg ± 2 %`, `12.50(2) kg`: what follows ± is one standard uncertainty
 * - `9–10 mm`, `9 to 10 mm`: the middle of the range, rectangular between its ends
 * - `12.1; 12.3; 12.2 kg`: repeated readings: their mean, its spread by their scatter
 * - `30 / 36 / 44 u/h`: low, mode and high of a triangle
 * - `about 2 mm`, `~2 mm`, `35 lb`: spread unknown; `exactly 5 mm`, `= 5 mm`: exact
 * - `3/8 in`, `1 1/2 in`, `half an inch`; `1 645.3`, `1,645.3`, `−3`, `1e-3`
 *
 * A plain whole number of the kind `count` is exact: it was counted.
 */
export function parseQuantity(
  text: string,
  kind: Kind,
  options: ParseOptions = {},
): ParsedQuantity | NotParsed {
  try {
    return readQuantity(text, kind, options);
  } catch (problem) {
    if (!(problem instanceof Refused)) throw problem;
    return { ok: false, why: problem.message, next: problem.next };
  }
}

function readQuantity(text: string, kind: Kind, options: ParseOptions): ParsedQuantity {
  const all = text.trim();
  if (all === '') throw new Refused('nothing is written', writeNumber(kind));
  if (all.length > LONGEST_TEXT)
    throw new Refused(`${all.length} characters are no number`, writeNumber(kind));
  const { exact, approximate, core } = stripWords(all);
  const c: Context = { kind, decimal: options.decimal ?? chooseDecimal(core, kind), options };
  const { x, spread, unit } = readShape(core, c) ?? refuse(text, c);
  if (exact && spread.s !== 'unknown')
    throw new Refused('an exact number has no spread', 'Leave out "exactly" or the spread.');
  if (kind === 'count') checkCount(x, spread);
  const isCounted = kind === 'count' && spread.s === 'unknown' && !approximate;
  const stated: Spread = exact || isCounted ? { s: 'exact' } : spread;
  return { ok: true, value: { t: 'scalar', kind, x, spread: stated }, unit, approximate };
}

const writeNumber = (kind: Kind): string =>
  `Write a number with its unit, for example ${exampleOf(kind)}.`;

const refuse = (text: string, c: Context): never => {
  if (c.options.decimal && decimalSignOf(text) !== c.decimal && /\d[.,]\d/.test(text))
    throw new Refused(
      `"${text.trim()}" does not have "${c.decimal}" as its decimal sign`,
      `Write it with "${c.decimal}", or say that the decimal sign is another.`,
    );
  throw new Refused(
    `"${text.trim()}" is no ${kindWords(c.kind)} that can be read`,
    writeNumber(c.kind),
  );
};

/** Takes off "exactly", "about" and the like, and refuses what only bounds a value. */
function stripWords(all: string): { exact: boolean; approximate: boolean; core: string } {
  const bound = BOUND.exec(all)?.[0].trim();
  if (bound)
    throw new Refused(
      `"${bound}" bounds the value but does not give it`,
      'Write the value, or both ends of a range: 9–10 mm.',
    );
  const exact = EXACTLY.test(all);
  const open = all.replace(EXACTLY, '').replace(/\+\/?[-\u2212\u2013]/, '±');
  const core = open.replace(ABOUT, '').replace(ABOUT_BEHIND, '');
  return { exact, approximate: core !== open, core };
}

function chooseDecimal(core: string, kind: Kind): DecimalSign {
  const sign = decimalSignOf(core);
  if (sign === '.' || sign === ',') return sign;
  if (sign === 'both')
    throw new Refused(
      `"${core}" uses point and comma both as decimal signs`,
      'Write all its numbers with the same decimal sign.',
    );
  // A count has no decimals: 1,645 pieces are 1645.
  if (kind === 'count') return '.';
  const comma = /\d+,\d+/.exec(core)?.[0] ?? core;
  throw new Refused(
    `"${comma}" may be ${comma.replace(',', '')} or ${comma.replace(',', '.')}`,
    `Write ${comma.replace(',', '')} or ${comma.replace(',', '.')}, or say which decimal sign is meant.`,
  );
}

/** A count is whole, unless it is the middle of a range or has a spread of its own. */
function checkCount(x: number, spread: Spread): void {
  const mayBreak = spread.s !== 'unknown' && spread.s !== 'exact';
  if (mayBreak || Number.isInteger(x)) return;
  throw new Refused(`${x} is no whole number`, 'Write how many were counted: 12.');
}
