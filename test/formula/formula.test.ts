import { describe, expect, it } from 'vitest';
import { loadAll } from '../../src/engine/index.ts';
import {
  FormulaError,
  formulaMathMl,
  formulaOf,
  formulaText,
  formulaTypst,
  parseFormula,
  withNumbers,
} from '../../src/formula/index.ts';
import { printedFormulas } from './printed-formulas.ts';

const printed = printedFormulas((await loadAll()).values());

describe('formulas of the registry', () => {
  it('are all read, and so are their symbols', () => {
    expect(printed.length).toBeGreaterThan(250);
    const problems = printed.flatMap((text) => {
      try {
        parseFormula(text);
        return [];
      } catch (error) {
        if (error instanceof FormulaError) return [error.message];
        throw error;
      }
    });
    expect(problems).toEqual([]);
  });

  it('read again from their own text are the same', () => {
    const text = (shown: string) => formulaText(parseFormula(shown));
    expect(printed.filter((shown) => text(text(shown)) !== text(shown))).toEqual([]);
  });
});

describe('a formula', () => {
  const text = (shown: string) => formulaText(parseFormula(shown));
  const tree = (shown: string) => JSON.stringify(parseFormula(shown));

  it.each([
    ['X = L (mRL + mRR) / m', 'X = L (mRL + mRR) / m'],
    [
      'Y = (bF (mFR − mFL) + bR (mRR − mRL)) / 2 m',
      'Y = (bF (mFR − mFL) + bR (mRR − mRL)) / (2 m)',
    ],
    ['D = E t³ / (12 (1 − ν²))', 'D = E t³ / (12 (1 − ν²))'],
    ['V/E₂f', 'V / E₂f'],
    ['νxy = −a12 / a11', 'νxy = −a12 / a11'],
    ['as E₂, with Gf, Gm and ξG', 'as E₂, with Gf, Gm and ξG'],
    ['(E₁/E₂)^⅓', '(E₁ / E₂)^⅓'],
    ['Q̄ = T⁻¹ Q T⁻ᵀ', 'Q̄ = T⁻¹ Q T⁻ᵀ'],
  ])('%s is read as it is meant', (shown, expected) => {
    expect(text(shown)).toBe(expected);
  });

  it('divides the whole product by a slash between blanks, and what touches it by one without', () => {
    expect(tree('a b / c d')).toBe(
      JSON.stringify({
        m: 'fraction',
        top: parseFormula('a b'),
        bottom: parseFormula('c d'),
      }),
    );
    expect(tree('a b/c d')).toBe(
      JSON.stringify({
        m: 'product',
        of: [parseFormula('a'), parseFormula('b/c'), parseFormula('d')],
      }),
    );
  });

  it('tells what stands below a letter from the letter, and marks from both', () => {
    const symbol = (shown: string) => {
      const f = parseFormula(shown);
      return f.m === 'symbol' ? [f.letter, f.below, f.mark] : f.m;
    };
    expect(symbol('mRL')).toEqual(['m', 'RL', '']);
    expect(symbol('E₂f')).toEqual(['E', '2f', '']);
    expect(symbol('GIt')).toEqual(['GI', 't', '']);
    expect(symbol('m_V')).toEqual(['m', 'V', '']);
    expect(symbol('w,xx')).toEqual(['w', ',xx', '']);
    expect(symbol('S̄11')).toEqual(['S̄', '11', '']);
    expect(symbol('ΔSx')).toEqual(['ΔS', 'x', '']);
    expect(symbol('M′')).toEqual(['M', '', '′']);
    expect(symbol('m+')).toEqual(['m', '', '+']);
    expect(symbol('tᵈ')).toEqual(['t', '', 'd']);
  });

  it.each(['a + (b', 'a) + b', 'a = €', '√', '|x'])('%s is refused with its place', (shown) => {
    expect(() => parseFormula(shown)).toThrow(FormulaError);
    expect(formulaOf(shown)).toEqual({ m: 'words', text: shown });
  });
});

describe('mathematics of a page', () => {
  it('is MathML: a fraction, letters with what stands below them', () => {
    expect(formulaMathMl(parseFormula('X = L (mRL + mRR) / m'))).toBe(
      '<math><mrow><mi>X</mi><mo>=</mo><mfrac><mrow><mrow><mi>L</mi><mspace width="0.17em"/>' +
        '<mrow><mo>(</mo><mrow><msub><mi>m</mi><mtext>RL</mtext></msub><mo>+</mo>' +
        '<msub><mi>m</mi><mtext>RR</mtext></msub></mrow><mo>)</mo></mrow></mrow></mrow>' +
        '<mrow><mi>m</mi></mrow></mfrac></mrow></math>',
    );
  });

  it('lets nothing of a text through as markup', () => {
    expect(formulaMathMl(formulaOf('a <b onclick="x"> & c'))).toBe(
      '<math><mtext>a &lt;b onclick="x"&gt; &amp; c</mtext></math>',
    );
    expect(formulaTypst({ m: 'words', text: '") #read("/etc/passwd' })).toBe(
      '" \\") #read(\\"/etc/passwd "',
    );
  });
});

describe('numbers in the places of symbols', () => {
  const NUMBERS: Readonly<Record<string, string>> = {
    L: '2 920 mm',
    mRL: '353.5 kg',
    mRR: '372.5 kg',
    m: '1 645.5 kg',
  };
  const put = (shown: string) => {
    const found = withNumbers(parseFormula(shown), (symbol) => NUMBERS[symbol]);
    return found && formulaText(found);
  };

  it('stand with their units, products with a sign', () => {
    expect(put('X = L (mRL + mRR) / m')).toBe('2 920 mm × (353.5 kg + 372.5 kg) / 1 645.5 kg');
    expect(put('L² / m')).toBe('(2 920 mm)² / 1 645.5 kg');
    expect(put('t = 2 L, on the outside')).toBe('2 × 2 920 mm');
  });

  it('stand in none where one is missing, in no sum over rows, and not for a single symbol', () => {
    expect(put('X = L h')).toBeUndefined();
    expect(put('M = Σ m')).toBeUndefined();
    expect(put('X = L')).toBeUndefined();
    expect(put('count of the rows')).toBeUndefined();
  });
});
