import type { Common } from '../app/index.ts';
import { formatNumber } from '../quantity/index.ts';
import { textTable, wrap } from '../report/index.ts';
import { heardText } from '../speech/index.ts';
import type { Finding, StandingDraft, StudyView } from '../study/index.ts';

const column = (head: string, numbers = false) => ({ head, numbers });

/** Minutes and seconds into a recording. */
export const clockText = (seconds: number): string => {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
};

/** Drafts with their numbers: the ones to be settled, or all. */
export function draftsText(
  drafts: readonly StandingDraft[],
  view: StudyView,
  all: boolean,
): string {
  const rows = drafts.flatMap(({ draft, settled }, i) =>
    settled && !all
      ? []
      : [
          [
            String(i + 1),
            clockText(draft.fromS),
            draft.kind,
            draft.about.map((id) => view.node(id)?.label ?? id).join(' or ') || '?',
            heardText(draft),
            draft.how,
            settled?.as ?? '',
            draft.words,
          ],
        ],
  );
  if (rows.length === 0) return 'No draft waits to be settled.\n';
  const columns = [
    column('no', true),
    column('at', true),
    column('kind'),
    column('of'),
    column('heard'),
    column('known'),
    column(''),
    column('words'),
  ];
  return `${[...textTable(columns, rows, ''), `${rows.length} drafts; none is in the study until accepted`].join('\n')}\n`;
}

export const findingLines = (findings: readonly Finding[]): string[] =>
  findings.flatMap(({ place, what, value, next }) =>
    wrap(`line ${place.row ?? 1}: ${what} (${value ?? ''}). ${next}`, '  note ', '       '),
  );

export function commonText({ words, proportion: p, having, without, invented }: Common): string {
  const percent = (x: number): string => `${formatNumber(100 * x, 0)} %`;
  return `${[
    `"${words}" is in ${p.hits} of ${p.of} studies; among vehicles like these between ${percent(p.low)} and ${percent(p.high)} (Wilson, 95 %).`,
    `  in: ${having.join('; ') || 'none'}`,
    `  not in: ${without.join('; ') || 'none'}`,
    ...(invented > 0 ? [`  ${invented} of them invented`] : []),
    '  A study that never looked there counts as one that has it not.',
  ].join('\n')}\n`;
}
