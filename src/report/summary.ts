import type { ReportAnswer, SummaryLine } from './model.ts';

/** An answer in short. */
export function summaryLine(answer: ReportAnswer): SummaryLine {
  return {
    title: answer.title,
    subject: answer.subject,
    outs: answer.outs.map((o) => ({
      meaning: o.meaning,
      shown: o.shown,
      ...(o.decision ? { word: o.decision.word } : {}),
    })),
    open: openWords(answer),
  };
}

/** What keeps an answer open: readings that are missing, or whose spread is not known. */
function openWords(answer: ReportAnswer): string {
  if (answer.outs.length === 0) return 'no number could be worked out';
  const missing = new Set(answer.outs.flatMap((o) => o.missing)).size;
  const unknown = new Set(answer.outs.flatMap((o) => o.unknownSpread)).size;
  const words = [
    ...(missing > 0 ? [`${missing} missing`] : []),
    ...(unknown > 0 ? [`${unknown} without a known spread`] : []),
  ];
  return words.length === 0 ? '' : `not complete: ${words.join(', ')}`;
}
