import { expect, it } from 'vitest';
import { loadAll } from '../../src/engine/index.ts';
import { formulaTypst, parseFormula } from '../../src/formula/index.ts';
import { Typst } from '../../src/report/pdf/typst.ts';
import { printedFormulas } from '../formula/printed-formulas.ts';

it('every printed formula of the registry is set by the typesetter, with a glyph for each letter', async () => {
  const typst = new Typst();
  const formulas = printedFormulas((await loadAll()).values()).map((shown) => ({
    set: formulaTypst(parseFormula(shown)),
    alt: shown,
  }));
  typst.layData('formulas.json', formulas);
  const template = `#import "look.typ": *
#set document(title: "formulas")
#set text(font: families)
#for f in json("formulas.json") { par(formula(f, large: true)) }`;
  typst.lay('formulas.typ', Buffer.from(template));
  expect(new TextDecoder().decode(typst.pdf('formulas.typ').slice(0, 5))).toBe('%PDF-');
});
