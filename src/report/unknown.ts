import type { NotAnswered } from './build-model.ts';
import type { ReportAnswer, ReportClaim, UnknownGroup } from './model.ts';

/** All that is not known, in one place: gaps of answers, questions without one, open claims. */
export function unknownOf(
  answers: readonly ReportAnswer[],
  notAnswered: readonly NotAnswered[],
  claims: readonly ReportClaim[],
): UnknownGroup[] {
  const open = claims.filter((c) => c.state === 'open').map((c) => `“${c.words}”: ${c.why}`);
  const groups: UnknownGroup[] = [
    ...answers.flatMap(gapsOf),
    {
      what: 'Questions that could not be answered',
      items: notAnswered.map((n) => `${titled(n.question.title, n.subject)}: ${n.why}`),
    },
    { what: 'Claims still open', items: open },
  ];
  return groups.filter((g) => g.items.length > 0);
}

const titled = (title: string, subject: string): string =>
  subject === '' ? title : `${title}, ${subject}`;

function gapsOf(answer: ReportAnswer): UnknownGroup[] {
  const title = titled(answer.title, answer.subject);
  const all = (of: 'missing' | 'unknownSpread'): string[] => [
    ...new Set(answer.outs.flatMap((o) => o[of])),
  ];
  return [
    { what: `${title}: no value for`, items: all('missing') },
    { what: `${title}: spread not known for`, items: all('unknownSpread') },
    { what: `${title}: assumed, not read`, items: answer.assumed },
  ];
}
