/** Reads numbers as people write them, at the start of a text. */
export type DecimalSign = '.' | ',';

/** A number found at the start of a text. */
export interface NumberRead {
  readonly x: number;
  /** Standard uncertainty from parentheses behind the digits: 12.50(2) has 0.02. */
  readonly u?: number;
  /** What follows the number. */
  readonly rest: string;
}

// Blanks that group digits: plain, no-break, narrow no-break and thin.
const BLANK = '[ \\u00a0\\u202f\\u2009]';
const GROUPED = `\\d{1,3}(?:${BLANK}\\d{3})+(?!\\d)`;
const DIGITS = `(?:(?:${GROUPED})(?:[.,]\\d+)*|[.,]?\\d(?:[\\d.,]*\\d)?)`;
// ISO 80000-1 groups the digits behind the decimal sign too: 100.021 47; but 10⁻⁶ behind it is a unit's.
const LONG_FRACTION = `(?:${GROUPED}|\\d+)[.,]\\d{3}(?:${BLANK}\\d{3})*${BLANK}\\d{1,3}(?![\\d/.,⁻⁰¹²³⁴⁵⁶⁷⁸⁹])`;
const MANTISSA = `(?:${LONG_FRACTION}|${DIGITS})`;
const SIGN = '[-+\\u2212\\u2013]';
const IN_PARENTHESES = `(?:\\(([\\d.,]+(?:${BLANK}\\d+)*)\\))?`;
const POWER_OF_TEN = `(?:[eE]([-+\\u2212]?\\d+)|${BLANK}?[×x·]${BLANK}?10(?:\\^([-+\\u2212]?\\d+)|([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)))?`;

const DECIMAL = new RegExp(`^(${SIGN})?${BLANK}?(${MANTISSA})${IN_PARENTHESES}${POWER_OF_TEN}`);
const EACH_MANTISSA = new RegExp(MANTISSA, 'g');

// A fraction with a third number behind it is a list of three, 30/36/44.
const FRACTION = /^([-+\u2212\u2013])?\s?(?:(\d+)[ -](?=\d+\/))?(\d+)\/(\d+)(?![\d.,]|\s*\/\s*\d)/;
const VULGAR = '½⅓⅔¼¾⅛⅜⅝⅞';
const VULGAR_WORTH = [1 / 2, 1 / 3, 2 / 3, 1 / 4, 3 / 4, 1 / 8, 3 / 8, 5 / 8, 7 / 8];
const VULGAR_FRACTION = new RegExp(`^(${SIGN})?\\s?(\\d+)?\\s?([${VULGAR}])`);
const WORD = /^(?:(\d+) and )?(?:a )?(half|quarter|three[ -]quarters)\b(?:\s+(?:of\s+)?an?\b)?/i;
const WORD_WORTH: Readonly<Record<string, number>> = { half: 0.5, quarter: 0.25 };

/** What most numbers are; a large table has millions of them. */
const PLAIN: Readonly<Record<DecimalSign, RegExp>> = {
  '.': /^-?\d+(?:\.\d+)?$/,
  ',': /^-?\d+(?:,\d+)?$/,
};

/**
 * Reads the number at the start of `text`, its decimal sign being `decimal`. Undefined when none
 * stands there or when its digits are grouped wrongly.
 */
export function readNumber(text: string, decimal: DecimalSign): NumberRead | undefined {
  const start = text.trimStart();
  if (PLAIN[decimal].test(start)) return { x: Number(start.replace(',', '.')), rest: '' };
  return readFraction(start) ?? readVulgar(start) ?? readWord(start) ?? readDecimal(start, decimal);
}

const signOf = (sign: string | undefined): number => (sign && sign !== '+' ? -1 : 1);

function readFraction(text: string): NumberRead | undefined {
  const m = FRACTION.exec(text);
  if (!m) return undefined;
  const part = Number(m[3]) / Number(m[4]);
  // 1-1/2 is one and a half, but 1-3/2 is a range.
  if (!Number.isFinite(part) || (m[2] !== undefined && part >= 1)) return undefined;
  return { x: signOf(m[1]) * (Number(m[2] ?? 0) + part), rest: text.slice(m[0].length) };
}

function readVulgar(text: string): NumberRead | undefined {
  const m = VULGAR_FRACTION.exec(text);
  if (!m) return undefined;
  const part = VULGAR_WORTH[VULGAR.indexOf(m[3] ?? '')] ?? 0;
  return { x: signOf(m[1]) * (Number(m[2] ?? 0) + part), rest: text.slice(m[0].length) };
}

function readWord(text: string): NumberRead | undefined {
  const m = WORD.exec(text);
  if (!m) return undefined;
  const part = WORD_WORTH[m[2]?.toLowerCase() ?? ''] ?? 0.75;
  return { x: Number(m[1] ?? 0) + part, rest: text.slice(m[0].length) };
}

function readDecimal(text: string, decimal: DecimalSign): NumberRead | undefined {
  const m = DECIMAL.exec(text);
  if (!m) return undefined;
  const digits = plainDigits(m[2] ?? '', decimal);
  if (digits === undefined) return undefined;
  const exponent = m[4] ?? m[5] ?? (m[6] ? fromSuperscript(m[6]) : '0');
  const power = Number(exponent.replace('\u2212', '-'));
  const x = signOf(m[1]) * Number(`${digits}e${power}`);
  const rest = text.slice(m[0].length);
  if (m[3] === undefined) return { x, rest };
  const u = inParentheses(m[3], digits, decimal, power);
  return u === undefined ? undefined : { x, u, rest };
}

const fromSuperscript = (power: string): string =>
  power.replace(/./g, (c) => (c === '⁻' ? '-' : String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))));

/**
 * The uncertainty in parentheses (JCGM 100:2008, 7.2.2): in the last places of the number,
 * 100.021 47(35), or with its own decimal sign, 100.021 47(0.000 35).
 */
function inParentheses(
  inside: string,
  digits: string,
  decimal: DecimalSign,
  power: number,
): number | undefined {
  const own = plainDigits(inside, decimal);
  if (own === undefined) return undefined;
  const places = own.includes('.') ? 0 : (digits.split('.')[1] ?? '').length;
  return Number(`${own}e${power - places}`);
}

/** Digits before the decimal sign, grouped by blanks or by the other sign, or not at all. */
const GROUPED_WHOLE: Readonly<Record<DecimalSign, RegExp>> = {
  '.': /^(\d*|\d{1,3}(\s\d{3})+|\d{1,3}(,\d{3})+)$/,
  ',': /^(\d*|\d{1,3}(\s\d{3})+|\d{1,3}(\.\d{3})+)$/,
};

/** The digits with a decimal point and no grouping; undefined when they are grouped wrongly. */
function plainDigits(written: string, decimal: DecimalSign): string | undefined {
  const [whole = '', fraction, ...more] = written.split(decimal);
  if (more.length > 0 || (fraction !== undefined && !/^\d+(\s\d{1,3})*$/.test(fraction)))
    return undefined;
  if (!GROUPED_WHOLE[decimal].test(whole)) return undefined;
  const point = fraction === undefined ? '' : `.${fraction.replace(/\s/g, '')}`;
  return `${whole.replace(/[\s.,]/g, '') || '0'}${point}`;
}

/**
 * The decimal sign that a text must have been written with; 'either' when a single comma stands
 * before exactly three digits (1,645) and nothing else tells; 'both' when its numbers contradict
 * each other. A text without a sign is taken to have a point.
 */
export function decimalSignOf(text: string): DecimalSign | 'either' | 'both' {
  const told = new Set((text.match(EACH_MANTISSA) ?? []).map(toldBy));
  if (told.has('.') && told.has(',')) return 'both';
  if (told.has('.')) return '.';
  if (told.has(',')) return ',';
  return told.has('comma and three') ? 'either' : '.';
}

function toldBy(digits: string): DecimalSign | 'comma and three' | 'point and three' | undefined {
  const signs = digits.replace(/[^.,]/g, '');
  const last = signs.at(-1);
  if (last !== '.' && last !== ',') return undefined;
  const other = last === '.' ? ',' : '.';
  if (signs.length > 1) return signs.includes(other) ? last : other;
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(digits)) return last;
  return last === ',' ? 'comma and three' : 'point and three';
}
