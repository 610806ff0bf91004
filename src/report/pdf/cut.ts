import type { ReportFigure } from '../figures.ts';
import type { FindingGroup, ReportModel } from '../model.ts';

/** Beyond these a list of places is for the record, not for paper. */
const LISTED = 1000;

const cutFinding = (g: FindingGroup) => ({ ...g, at: g.at.slice(0, LISTED), count: g.at.length });

/** Of a figure, what is set: neither its data nor the table of its numbers. */
const asSet = ({ figure: { title }, alt, pictures }: ReportFigure) => ({ title, alt, pictures });

/** The model with its lists of places cut to what is printed, and how many there are. */
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
        outs: a.outs.map((o) => ({ ...o, missing: [], unknownSpread: [] })),
      })),
    })),
  };
}
