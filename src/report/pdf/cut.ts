import { type Formula, formulaOf, formulaText, formulaTypst } from '../../formula/index.ts';
import type { ReportFigure } from '../figures.ts';
import type { FindingGroup, ReportModel, ReportStep } from '../model.ts';

/** Beyond these a list of places is for the record, not for paper. */
const LISTED = 1000;

const cutFinding = (g: FindingGroup) => ({ ...g, at: g.at.slice(0, LISTED), count: g.at.length });

/** Of a figure, what is set: neither its data nor the table of its numbers. */
const asSet = ({ figure: { title }, alt, pictures }: ReportFigure) => ({ title, alt, pictures });

/** Mathematics for the typesetter, and as it is read aloud. */
const inMath = (f: Formula) => ({ set: formulaTypst(f), alt: formulaText(f) });
const symbolInMath = (symbol: string) => (symbol === '' ? null : inMath(formulaOf(symbol)));

const stepAsSet = ({ worked: { symbol, formula, numbers }, ...step }: ReportStep) => ({
  ...step,
  symbol: step.symbol === '' ? null : inMath(symbol),
  ...(formula ? { formula: inMath(formula) } : {}),
  ...(numbers ? { numbers: inMath(numbers) } : {}),
});

/** The model with its lists of places cut to what is printed, and how many there are; formulas for the typesetter. */
export function cut(model: ReportModel) {
  return {
    ...model,
    findings: model.findings.map(cutFinding),
    unknown: model.unknown.map((u) => ({
      ...u,
      items: u.items.slice(0, LISTED),
      count: u.items.length,
    })),
    sections: model.sections.map((section) => ({
      ...section,
      comparisons: section.comparisons.map(({ figure, ...rest }) => ({
        ...rest,
        ...(figure ? { figure: asSet(figure) } : {}),
      })),
      answers: section.answers.map((a) => ({
        ...a,
        findings: a.findings.map(cutFinding),
        figures: a.figures.map(asSet),
        // Named under "What is not known"; the results themselves say only that they are open.
        outs: a.outs.map((o) => ({
          ...o,
          symbol: symbolInMath(o.symbol),
          missing: [],
          unknownSpread: [],
        })),
        steps: a.steps.map(stepAsSet),
      })),
    })),
    methods: model.methods.map((m) => ({
      ...m,
      formulas: m.formulas.map(({ symbol, shown, ...f }) => ({
        ...{ ...f, symbol: symbolInMath(symbol), formula: inMath(formulaOf(shown)) },
      })),
      inputs: m.inputs.map((i) => ({ ...i, symbol: symbolInMath(i.symbol) })),
    })),
  };
}
