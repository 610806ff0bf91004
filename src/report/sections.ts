import type { Question } from '../engine/index.ts';
import { comparisonFigure } from './figures.ts';
import type { Comparison, ReportAnswer, ReportSection } from './model.ts';
import { sideBySide } from './wording.ts';

interface Placed {
  readonly question: Question;
  readonly report: ReportAnswer;
}

/** Answers by the section their question names, sections by their order. */
export function sectionsOf(pairs: readonly Placed[]): ReportSection[] {
  const sections = new Map<string, Placed[]>();
  for (const pair of pairs) {
    const { id } = pair.question.section;
    sections.set(id, [...(sections.get(id) ?? []), pair]);
  }
  return [...sections.values()]
    .map(sectionOf)
    .sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));
}

/** Answers that decide something stand before those that only tell. */
const decidedFirst = (answers: readonly ReportAnswer[]): ReportAnswer[] => {
  const decides = (a: ReportAnswer): boolean => a.outs.some((o) => o.decides);
  return [...answers.filter(decides), ...answers.filter((a) => !decides(a))];
};

function sectionOf(pairs: readonly Placed[]): ReportSection {
  const [first] = pairs as [Placed, ...Placed[]];
  const answers = decidedFirst(pairs.map((p) => p.report));
  return { ...first.question.section, comparisons: comparisonsOf(answers), answers };
}

/**
 * Results alike, of one kind and unit, that more than one question of a section gives for one
 * subject: set side by side, told apart, and not combined.
 */
function comparisonsOf(answers: readonly ReportAnswer[]): Comparison[] {
  const byName = new Map<string, { meaning: string; entries: Comparison['entries'][number][] }>();
  for (const answer of answers)
    for (const out of answer.outs) {
      const key = [answer.subject, out.alike, out.shown.kind, out.shown.unit].join('\n');
      const held = byName.get(key) ?? { meaning: out.meaning, entries: [] };
      byName.set(key, held);
      if (!held.entries.some((e) => e.from === answer.title))
        held.entries.push({ from: answer.title, shown: out.shown });
    }
  return [...byName.values()]
    .filter((c) => c.entries.length > 1)
    .map(({ meaning, entries }) => withFigure({ meaning, entries: toOnePlace(entries) }));
}

function toOnePlace(entries: Comparison['entries']): Comparison['entries'] {
  const shown = sideBySide(entries.map((e) => e.shown));
  return entries.map((e, i) => ({ ...e, shown: shown[i] ?? e.shown }));
}

function withFigure({ meaning, entries }: Omit<Comparison, 'figure'>): Comparison {
  const rows = entries.map((e) => ({ label: e.from, shown: e.shown }));
  const figure = comparisonFigure(meaning, rows);
  return { meaning, entries, ...(figure ? { figure } : {}) };
}
