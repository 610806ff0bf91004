import type { NotAnswered } from './build-model.ts';
import type { FindingGroup, ReportAnswer, ReportClaim, UnknownGroup } from './model.ts';

/** Gaps that an answer's results name themselves. */
const NAMED_BY_RESULTS: readonly string[] = ['missing', 'spread-unknown'];

/**
 * All that is not known, in one place: gaps of the record and of answers, questions without an
 * answer, open claims.
 */
export function unknownOf(
  record: readonly FindingGroup[],
  answers: readonly ReportAnswer[],
  notAnswered: readonly NotAnswered[],
  claims: readonly ReportClaim[],
): UnknownGroup[] {
  const open = claims.filter((c) => c.state === 'open').map((c) => `“${c.words}”: ${c.why}`);
  const groups: UnknownGroup[] = [
    ...record.filter(isGap).map((g) => ({ of: '', what: g.what, items: itemsOf(g) })),
    ...answers.flatMap(gapsOf),
    {
      of: '',
      what: 'Questions that could not be answered',
      items: notAnswered.map((n) => `${titled(n.question.title, n.subject)}: ${n.why}`),
    },
    { of: '', what: 'Claims still open', items: open },
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
    { of: title, what: 'no value', items: all('missing') },
    { of: title, what: 'spread not known', items: all('unknownSpread') },
    { of: title, what: 'assumed, not read', items: answer.assumed },
    ...answer.findings
      .filter((g) => isGap(g) && !NAMED_BY_RESULTS.includes(g.code))
      .map((g) => ({ of: title, what: g.what, items: itemsOf(g) })),
  ];
}

const isGap = (g: FindingGroup): boolean => g.level === 'gap';

const itemsOf = (g: FindingGroup): string[] =>
  g.at.map(({ place, value }) => (value === '' ? place : `${place} (${value})`));
