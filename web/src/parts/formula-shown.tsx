import { type Formula, formulaMathMl } from '../../../src/formula/index.ts';

/** A formula set in mathematics by the browser, which also reads it aloud. */
export const FormulaShown = ({ formula }: { readonly formula: Formula }) => (
  <span
    className="formula"
    // biome-ignore lint/security/noDangerouslySetInnerHtml: MathML of our own, all text in it escaped
    dangerouslySetInnerHTML={{ __html: formulaMathMl(formula) }}
  />
);
