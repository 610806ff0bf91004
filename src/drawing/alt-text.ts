import type { Figure } from '../engine/index.ts';
import { figureTable } from './figure-table.ts';
import type { Layout } from './layout.ts';

/** Rows beyond these are left to the table beside the figure. */
const SPOKEN = 12;
const WHISKERS = 'Whiskers of two standard uncertainties.';

/** What is to be seen and its numbers, in sentences, for who can't see the figure. */
export function altText(f: Figure, say: Layout['say']): string {
  const { rows } = figureTable(f, say);
  const said = rows
    .slice(0, SPOKEN)
    .map(([first = '', ...more]) =>
      [first, more.filter((cell) => cell !== '').join(', ')].join(' ').trim(),
    );
  const more = rows.length > SPOKEN ? [`and ${rows.length - SPOKEN} more`] : [];
  const numbers =
    said.length === 0 || f.f === 'isolines' ? '' : `${[...said, ...more].join('; ')}.`;
  return [`${f.title}.`, f.alt, numbers, hasWhiskers(f) ? WHISKERS : '']
    .filter((part) => part !== '')
    .join(' ');
}

const hasWhiskers = (f: Figure): boolean =>
  f.f === 'bars' && f.rows.some(({ number: n }) => (n?.knownU ?? n?.u ?? 0) !== 0);
