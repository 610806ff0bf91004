import type { Formula } from './formula.ts';

/** A formula as one MathML element, for a page: MathML Core, no attributes but those of space. */
export const formulaMathMl = (f: Formula): string => `<math>${element(f)}</math>`;

const THIN = '<mspace width="0.17em"/>';

function element(f: Formula): string {
  switch (f.m) {
    case 'row':
      return row(f.of.map(element).join(''));
    case 'product':
      return row(f.of.map(element).join(f.of.some(isQuantity) ? sign('×') : THIN));
    case 'number':
      return `<mn>${escaped(f.text)}</mn>`;
    case 'symbol':
      return symbol(f);
    case 'name':
      return `<mi mathvariant="normal">${escaped(f.text)}</mi>`;
    case 'operator':
      return sign(f.text);
    case 'power':
      return `<msup>${raisable(f.base)}<mn>${escaped(f.exponent)}</mn></msup>`;
    case 'fraction':
      return `<mfrac>${row(element(f.top))}${row(element(f.bottom))}</mfrac>`;
    case 'root':
      return `<msqrt>${element(f.of)}</msqrt>`;
    case 'group':
      return group(f);
    case 'quantity':
    case 'words':
      return `<mtext>${escaped(f.text)}</mtext>`;
  }
}

const isQuantity = (f: Formula): boolean =>
  f.m === 'quantity' || (f.m === 'power' && f.base.m === 'quantity');

const row = (inside: string): string => `<mrow>${inside}</mrow>`;
/** A sum's sign is the one that stands large, not the letter. */
const sign = (text: string): string => `<mo>${escaped(text === 'Σ' ? '∑' : text)}</mo>`;

/** A quantity is raised with its unit, in brackets. */
const raisable = (f: Formula): string =>
  f.m === 'quantity' || f.m === 'fraction'
    ? row(`${sign('(')}${element(f)}${sign(')')}`)
    : row(element(f));

function symbol({ letter, below, mark }: Extract<Formula, { m: 'symbol' }>): string {
  const base = `<mi>${escaped(letter)}</mi>`;
  const under = `<mtext>${escaped(below)}</mtext>`;
  const behind = `<mo>${escaped(mark)}</mo>`;
  if (below !== '' && mark !== '') return `<msubsup>${base}${under}${behind}</msubsup>`;
  if (below !== '') return `<msub>${base}${under}</msub>`;
  return mark === '' ? base : `<msup>${base}${behind}</msup>`;
}

function group({ open, close, of, below }: Extract<Formula, { m: 'group' }>): string {
  const inside = row(`${sign(open)}${element(of)}${sign(close)}`);
  return below === '' ? inside : `<msub>${inside}<mtext>${escaped(below)}</mtext></msub>`;
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
