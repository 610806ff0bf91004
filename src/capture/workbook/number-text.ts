import type { DecimalSign } from '../detect.ts';

/**
 * A number of a spreadsheet as one would write it: all of its digits, not only those shown, with
 * what its number format shows beside it (`12.5 kg`, `15 %`, `00123`). What can't be written so
 * comes out with its format, which no reader of quantities takes.
 */
export function numberText(x: number, format: string | undefined, decimal: DecimalSign): string {
  const [shape = ''] = (format ?? '').split(';');
  if (/^0{2,}$/.test(shape) && Number.isInteger(x) && x >= 0)
    return String(x).padStart(shape.length, '0');
  const { before, after, digits } = partsOf(shape);
  const isPercent = digits.includes('%');
  const written = withSign(isPercent ? hundredfold(x) : String(x), decimal);
  if (SCALED.test(digits)) return `${written} [${shape}]`;
  const unit = isPercent ? '%' : after;
  return `${before}${written}${unit === '' ? '' : ` ${unit}`}`;
}

/** A comma after the last digit shows thousands: the number itself is not what is seen. */
const SCALED = /[0#?],+(?![0#?,.])/;

/** 0.07 is 7 %, and not 7.000000000000001 %. */
const hundredfold = (x: number): string => String(Number((x * 100).toPrecision(15)));

const withSign = (text: string, decimal: DecimalSign): string =>
  decimal === '.' ? text : text.replace('.', decimal);

interface Shape {
  /** Words shown before the digits and after them. */
  readonly before: string;
  readonly after: string;
  readonly digits: string;
}

/** Quoted words, escaped signs and currencies are words; colours, conditions and blanks are left out. */
const PIECES = /"([^"]*)"|\\(.)|\[\$([^\]-]*)[^\]]*\]|\[[^\]]*\]|_.|\*.|([0#?.,%]+|E[+-]0+)|(.)/gi;

function partsOf(shape: string): Shape {
  const found = { before: '', after: '', digits: '' };
  if (/^general$/i.test(shape)) return found;
  for (const [, quoted, escaped, currency, digits] of shape.matchAll(PIECES)) {
    const words = quoted ?? escaped ?? currency ?? '';
    if (digits !== undefined) found.digits += digits;
    else if (found.digits === '') found.before += words;
    else found.after += words;
  }
  return { ...found, before: found.before.trimStart(), after: found.after.trim() };
}
