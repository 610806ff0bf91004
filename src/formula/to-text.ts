import type { Formula } from './formula.ts';

/** A formula as one line of text, brackets put back where a fraction needs them. */
export function formulaText(f: Formula): string {
  switch (f.m) {
    case 'row':
      return rowText(f.of);
    case 'product':
      return f.of.map(factorText).join(f.of.some(isQuantity) ? ' × ' : ' ');
    case 'symbol':
      return f.written;
    case 'power':
      return `${inBrackets(f.base, isComposite(f.base))}${raised(f.exponent)}`;
    case 'fraction':
      return `${inBrackets(f.top, f.top.m === 'row')} / ${inBrackets(f.bottom, isLong(f.bottom))}`;
    case 'root':
      return `√(${formulaText(f.of)})`;
    case 'group':
      return `${f.open}${formulaText(f.of)}${f.close}${f.below}`;
    default:
      return f.text;
  }
}

const isQuantity = (f: Formula): boolean =>
  f.m === 'quantity' || (f.m === 'power' && f.base.m === 'quantity');

const isComposite = (f: Formula): boolean =>
  f.m === 'row' || f.m === 'product' || f.m === 'fraction' || f.m === 'quantity';

/** Behind a slash everything but one factor stands in brackets, so that nobody reads it otherwise. */
const isLong = (f: Formula): boolean => f.m === 'row' || f.m === 'product' || f.m === 'fraction';

const inBrackets = (f: Formula, wanted: boolean): string =>
  wanted ? `(${formulaText(f)})` : formulaText(f);

/** A factor that is a fraction would run into its neighbours. */
const factorText = (f: Formula): string => inBrackets(f, f.m === 'fraction' || f.m === 'row');

/** Signs stand between blanks, a comma at what is before it, a sign of a number at the number. */
function rowText(items: readonly Formula[]): string {
  let text = '';
  for (const [i, item] of items.entries()) {
    const close = item.m === 'operator' && ',;:'.includes(item.text);
    const before = items[i - 1];
    const signOfNumber =
      before?.m === 'operator' &&
      before.text === '−' &&
      (i === 1 || items[i - 2]?.m === 'operator');
    text += `${i === 0 || close || signOfNumber ? '' : ' '}${formulaText(item)}`;
  }
  return text;
}

const RAISED = new Map([...'0123456789−+T'].map((c, i) => [c, [...'⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺ᵀ'][i] ?? c]));
const raised = (exponent: string): string =>
  [...exponent].every((c) => RAISED.has(c))
    ? [...exponent].map((c) => RAISED.get(c)).join('')
    : `^${exponent}`;
