import { type Kind, kindDef } from './kinds.ts';
import { type DecimalSign, decimalSignOf, type NumberRead, readNumber } from './read-number.ts';
import { unitSymbol } from './unit-symbol.ts';
import { spokenUnit } from './unit-words.ts';
import { fromSi, kindWords, spreadToSi, toSi, unitProblem } from './units.ts';
import type { ScalarValue, Spread } from './value.ts';

export interface ParseOptions {
  /** UCUM code that holds when none is written. */
  readonly unit?: string;
  /** Decimal sign; when absent it is worked out, and refused where it could be either. */
  readonly decimal?: DecimalSign;
  /** Refuse a number without a written unit even where `unit` is given. */
  readonly requireUnit?: boolean;
}

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

/** Carries a refusal up to parseQuantity; never leaves this file. */
class Refused extends Error {
  readonly next: string;
  constructor(why: string, next: string) {
    super(why);
    this.next = next;
  }
}

/** What the helpers below share. */
interface Context {
  readonly kind: Kind;
  readonly decimal: DecimalSign;
  readonly options: ParseOptions;
}

/** A number, the unit code written behind it, and nothing else. */
interface Amount {
  readonly number: NumberRead;
  readonly unit: string | undefined;
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
 * - `30 / 36 / 44 u/h`: low, mode and high of a triangle
 * - `about 2 mm`, `~2 mm`, `35 lb`: spread unknown; `exactly 5 mm`, `= 5 mm`: exact
 * - `3/8 in`, `1 1/2 in`, `half a turn` where the unit is known; `1 645.3`, `1,645.3`, `−3`, `1e-3`
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

/** "12.5 ± 0.2 kg", in the usual unit of the kind. */
function exampleOf(kind: Kind): string {
  if (kind === 'count') return '12';
  return `12.5 ± 0.2 ${unitSymbol(kindDef(kind).show[0])}`.trim();
}

function readQuantity(text: string, kind: Kind, options: ParseOptions): ParsedQuantity {
  const write = `Write a number with its unit, for example ${exampleOf(kind)}`;
  const all = text.trim();
  if (all === '') throw new Refused('nothing is written', write);
  if (all.length > LONGEST_TEXT) throw new Refused(`${all.length} characters are no number`, write);
  const { exact, approximate, core } = stripWords(all);
  const c: Context = { kind, decimal: chooseDecimal(core, options.decimal), options };
  const { x, spread, unit } = readCore(core, c) ?? refuse(text, c, write);
  if (exact && spread.s !== 'unknown')
    throw new Refused('an exact number has no spread', 'Leave out "exactly" or the spread');
  if (kind === 'count') checkCount(x, spread);
  const isCounted = kind === 'count' && spread.s === 'unknown' && !approximate;
  const stated: Spread = exact || isCounted ? { s: 'exact' } : spread;
  return { ok: true, value: { t: 'scalar', kind, x, spread: stated }, unit, approximate };
}

interface Core {
  readonly x: number;
  readonly spread: Spread;
  readonly unit: string;
}

const refuse = (text: string, c: Context, write: string): never => {
  if (c.options.decimal && decimalSignOf(text) !== c.decimal && /\d[.,]\d/.test(text))
    throw new Refused(
      `"${text.trim()}" does not have "${c.decimal}" as its decimal sign`,
      `Write it with "${c.decimal}", or say that the decimal sign is another`,
    );
  throw new Refused(`"${text.trim()}" is no ${kindWords(c.kind)} that can be read`, write);
};

/** Takes off "exactly", "about" and the like, and refuses what only bounds a value. */
function stripWords(all: string): { exact: boolean; approximate: boolean; core: string } {
  const bound = BOUND.exec(all)?.[0].trim();
  if (bound)
    throw new Refused(
      `"${bound}" bounds the value but does not give it`,
      'Write the value, or both ends of a range: 9–10 mm',
    );
  const exact = EXACTLY.test(all);
  const open = all.replace(EXACTLY, '').replace(/\+\/?[-\u2212\u2013]/, '±');
  const core = open.replace(ABOUT, '').replace(ABOUT_BEHIND, '');
  return { exact, approximate: core !== open, core };
}

function chooseDecimal(core: string, asked: DecimalSign | undefined): DecimalSign {
  if (asked) return asked;
  const sign = decimalSignOf(core);
  if (sign === '.' || sign === ',') return sign;
  if (sign === 'both')
    throw new Refused(
      `"${core}" uses point and comma both as decimal signs`,
      'Write all its numbers with the same decimal sign',
    );
  const comma = /\d+,\d+/.exec(core)?.[0] ?? core;
  throw new Refused(
    `"${comma}" may be ${comma.replace(',', '')} or ${comma.replace(',', '.')}`,
    `Write ${comma.replace(',', '')} or ${comma.replace(',', '.')}, or say which decimal sign is meant`,
  );
}

/** The shapes of a quantity, each tried in turn; undefined when the text has none of them. */
const readCore = (core: string, c: Context): Core | undefined =>
  readSpread(core, c) ?? readTriangle(core, c) ?? readSingle(core, c) ?? readRange(core, c);

/** `12.5 ± 0.2 kg`, `(12.5 ± 0.2) kg`, `12.5 kg ± 2 %`. */
function readSpread(core: string, c: Context): Core | undefined {
  const inner = /^\(([^()]*±[^()]*)\)(.*)$/.exec(core);
  const [left = '', right, ...more] = (inner ? `${inner[1]}${inner[2]}` : core).split('±');
  if (right === undefined || more.length > 0) return undefined;
  const value = readAmount(left, c);
  const half = readAmount(right, c);
  if (!value || !half || value.number.u !== undefined || half.number.u !== undefined)
    return undefined;
  const isShare = half.unit === '%' && c.kind !== 'ratio';
  if (c.kind === 'ratio' && !inner) needClearPercent(value, half, c);
  const unit = chooseUnit([value.unit, isShare ? undefined : half.unit], c);
  const x = inSi(value.number.x, unit, c.kind);
  const u = isShare ? shareOf(x, half.number.x, c) : spreadOf(half, unit, c);
  return { x, spread: normal(u), unit };
}

/** 1.18 ± 2 % of a ratio may be a share of it or a difference: neither is guessed. */
function needClearPercent(value: Amount, half: Amount, c: Context): void {
  if (half.unit !== '%' || value.unit !== undefined || c.options.unit === '%') return;
  const [x, u] = [value.number.x, half.number.x];
  throw new Refused(
    `${x} ± ${u} % may be a percentage, or a number whose spread is a share of it`,
    `Write (${x} ± ${u}) %, or the spread as a plain number: ${x} ± ${Math.abs(x * u) / 100}`,
  );
}

function spreadOf(half: Amount, unit: string, c: Context): number {
  const code = half.unit ?? unit;
  needUnit(code, c);
  return spreadToSi(half.number.x, code, c.kind);
}

function shareOf(x: number, percent: number, c: Context): number {
  if (kindDef(c.kind).affine)
    throw new Refused(
      `a share of a ${kindWords(c.kind)} depends on where its scale begins`,
      `Write the spread in a unit: ${exampleOf(c.kind)}`,
    );
  return (Math.abs(x) * percent) / 100;
}

function normal(u: number): Spread {
  if (!Number.isFinite(u) || u <= 0)
    throw new Refused(
      'a spread of zero or less says nothing',
      'Write "exactly" before a number without error, or leave the spread out when it is not known',
    );
  return { s: 'normal', u };
}

/** `30 / 36 / 44 u/h`. */
function readTriangle(core: string, c: Context): Core | undefined {
  const parts = /^([^/]+)\/([^/]+)\/(.+)$/.exec(core);
  const low = readNumber(parts?.[1] ?? '', c.decimal);
  const mode = readNumber(parts?.[2] ?? '', c.decimal);
  const high = readAmount(parts?.[3] ?? '', c);
  if (!low || !mode || !high || low.rest.trim() !== '' || mode.rest.trim() !== '') return undefined;
  const unit = chooseUnit([high.unit], c);
  if (!(low.x <= mode.x && mode.x <= high.number.x && low.x < high.number.x))
    throw new Refused(
      `${low.x} / ${mode.x} / ${high.number.x} do not rise`,
      'Write the low, the most likely and the high value in that order',
    );
  const si = (x: number) => inSi(x, unit, c.kind);
  return {
    x: si(mode.x),
    spread: { s: 'triangular', low: si(low.x), high: si(high.number.x) },
    unit,
  };
}

/** `35 lb`, `3/8 in`, `12.50(2) kg`. */
function readSingle(core: string, c: Context): Core | undefined {
  const amount = readAmount(core, c);
  if (!amount) return undefined;
  const unit = chooseUnit([amount.unit], c);
  const x = inSi(amount.number.x, unit, c.kind);
  const { u } = amount.number;
  const spread =
    u === undefined ? ({ s: 'unknown' } as const) : normal(spreadToSi(u, unit, c.kind));
  return { x, spread, unit };
}

const BETWEEN = /\u2013|\u2014|…|\.{2,3}|\bto\b|-/g;

/** `9–10 mm`, `9 mm to 10 mm`. */
function readRange(core: string, c: Context): Core | undefined {
  const low = readNumber(core, c.decimal);
  if (!low) return undefined;
  for (const sign of low.rest.matchAll(BETWEEN)) {
    const left = writtenUnit(low.rest.slice(0, sign.index), c);
    const high = readAmount(low.rest.slice(sign.index + sign[0].length), c);
    if (left && high) return rangeOf({ number: low, unit: left.code }, high, c);
  }
  return undefined;
}

function rangeOf(low: Amount, high: Amount, c: Context): Core | undefined {
  if (low.number.u !== undefined || high.number.u !== undefined) return undefined;
  const unit = chooseUnit([low.unit, high.unit], c);
  const end = { x: high.number.x, unit: high.unit ?? unit };
  needUnit(end.unit, c);
  const a = low.number.x;
  const b = end.unit === unit ? end.x : fromSi(inSi(end.x, end.unit, c.kind), unit, c.kind);
  if (!(a < b))
    throw new Refused(`the range from ${a} to ${b} does not rise`, 'Write the lower end first');
  const half = spreadToSi((b - a) / 2, unit, c.kind);
  return { x: inSi((a + b) / 2, unit, c.kind), spread: { s: 'rectangular', half }, unit };
}

/** A number and its unit, and nothing behind them. */
function readAmount(text: string, c: Context): Amount | undefined {
  const number = readNumber(text, c.decimal);
  const unit = number && writtenUnit(number.rest, c);
  return number && unit && { number, unit: unit.code };
}

/** The unit that a text is, no code when the text is blank; undefined when it is none. */
function writtenUnit(text: string, c: Context): { code: string | undefined } | undefined {
  const word = text.trim();
  if (word === '') return { code: undefined };
  const code = spokenUnit(word, c.kind);
  return code === undefined ? undefined : { code };
}

/** The first unit written, else the one that holds by default. */
function chooseUnit(written: readonly (string | undefined)[], c: Context): string {
  const code = written.find((one) => one !== undefined);
  const isNumber = c.kind === 'count' || c.kind === 'ratio';
  const fallback = c.options.unit ?? (isNumber ? '1' : undefined);
  const unit = code ?? (c.options.requireUnit && !isNumber ? undefined : fallback);
  if (unit === undefined)
    throw new Refused('no unit is written', `Write the unit: ${exampleOf(c.kind)}`);
  needUnit(unit, c);
  return unit;
}

function needUnit(code: string, c: Context): void {
  const problem = unitProblem(code, c.kind);
  if (problem) throw new Refused(problem, `Write it in another unit: ${exampleOf(c.kind)}`);
}

function inSi(x: number, code: string, kind: Kind): number {
  const si = toSi(x, code, kind);
  if (Number.isFinite(si)) return si;
  throw new Refused('the number is too large', 'Check its exponent');
}

/** A count is whole, unless it is the middle of a range or has a spread of its own. */
function checkCount(x: number, spread: Spread): void {
  const mayBreak = spread.s !== 'unknown' && spread.s !== 'exact';
  if (mayBreak || Number.isInteger(x)) return;
  throw new Refused(`${x} is no whole number`, 'Write how many were counted: 12');
}
