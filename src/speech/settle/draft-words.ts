import { formatNumber, fromSi, unitSymbol } from '../../quantity/index.ts';
import type { SpeechDraft } from '../../study/index.ts';

/** A quantity in the unit it was said in; a material, process or comparison in words. */
export function heardText({ quantity: q, term }: SpeechDraft): string {
  if (!q) return term ?? '';
  const number = (x: number): string => trimmed(formatNumber(fromSi(x, q.unit, q.kind), 3, ''));
  const ends = q.low === q.high ? number(q.low) : `${number(q.low)} to ${number(q.high)}`;
  return `${ends} ${unitSymbol(q.unit)}`.trim();
}

const trimmed = (text: string): string => (text.includes('.') ? text.replace(/\.?0+$/, '') : text);
