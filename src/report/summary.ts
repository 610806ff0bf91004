import { lackWords } from '../quantity/index.ts';
import type { ReportAnswer, ReportOut, SummaryLine } from './model.ts';

/** An answer in short. */
export function summaryLine(answer: ReportAnswer): SummaryLine {
  return {
    title: answer.title,
    subject: answer.subject,
    outs: answer.outs.map((o) => ({
      meaning: o.meaning,
      shown: o.shown,
      ...(o.decision ? { word: o.decision.says } : {}),
    })),
    open: answer.outs.length === 0 ? 'no number could be worked out' : openWords(answer.outs),
  };
}

/** What keeps results open: readings that are missing, or whose spread is not known; empty when nothing does. */
export function openWords(outs: readonly Pick<ReportOut, 'missing' | 'unknownSpread'>[]): string {
  const missing = new Set(outs.flatMap((o) => o.missing)).size;
  const unknown = new Set(outs.flatMap((o) => o.unknownSpread)).size;
  if (missing + unknown === 0) return '';
  const words = lackWords({ u: 'incomplete', lacks: missing });
  const without = `${unknown} without a known spread`;
  return unknown === 0 ? words : `${words}${missing > 0 ? ', ' : ': '}${without}`;
}
