import { expect, it } from 'vitest';
import { loadAll } from '../../src/engine/index.ts';
import { formulaOf, formulaTypst } from '../../src/formula/index.ts';
import { methodOf } from '../../src/report/methods.ts';
import { Typst } from '../../src/report/pdf/typst.ts';
import { printedFormulas } from '../formula/printed-formulas.ts';

it('every printed formula and symbol of the registry is set by the typesetter, with a glyph for each letter', async () => {
  const typst = new Typst();
  const all = [...(await loadAll()).values()];
  const symbols = all.flatMap((q) => methodOf(q)).flatMap((m) => [...m.formulas, ...m.inputs]);
  const lines = [...printedFormulas(all), ...symbols.map((s) => s.symbol).filter((s) => s !== '')];
  const formulas = lines.map((shown) => ({
    set: formulaTypst(formulaOf(shown)),
    alt: shown,
  }));
  // Letters that the font for mathematics lacks come from the report's own.
  const rare = { set: '"ₓ" "Δₐ" "₀₁" "€"', alt: 'rare' };
  typst.layData('formulas.json', [...formulas, rare]);
  const template = `#import "look.typ": *
#set document(title: "formulas")
#set text(font: families)
#for f in json("formulas.json") { par(formula(f, large: true)) }`;
  typst.lay('formulas.typ', Buffer.from(template));
  expect(new TextDecoder().decode(typst.pdf('formulas.typ').slice(0, 5))).toBe('%PDF-');
});
