import Papa from 'papaparse';
import type { TableChunk } from '../study/index.ts';
import type { Head } from './text-source.ts';

export const DELIMITERS = [',', ';', '\t', '|'] as const;
export type Delimiter = (typeof DELIMITERS)[number];

export type DecimalSign = TableChunk['decimal'];

/** Something guessed or given, why, and what else it might be. */
export interface Guess<T> {
  readonly value: T;
  readonly why: string;
  /** Said by the user. */
  readonly given: boolean;
  readonly others: readonly { readonly value: T; readonly why: string }[];
}

const given = <T>(value: T): Guess<T> => ({ value, why: 'as you said', given: true, others: [] });

export const DELIMITER_WORDS: Readonly<Record<Delimiter, string>> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'bar',
};

/** Rows of the head, the last left out when it may go on. */
export function headRows(head: Head, delimiter: Delimiter, most: number): string[][] {
  const parser = new Papa.Parser({ delimiter, newline: head.newline });
  const { data } = parser.parse(head.text, 0, !head.whole) as { data: string[][] };
  if (data.length === 0 || (head.whole && data.at(-1)?.join('') === '')) data.pop();
  const rows = data.length > 0 ? data : [head.text.split(head.newline)[0]?.split(delimiter) ?? []];
  return rows.slice(0, most).map((row) => row.map((cell) => cell.trim()));
}

const ROWS_LOOKED_AT = 200;

interface Candidate {
  readonly delimiter: Delimiter;
  readonly columns: number;
  /** Share of rows with as many cells as headings. */
  readonly even: number;
  /** Headings that the form knows. */
  readonly known: number;
}

/**
 * The delimiter under which the first rows have as many cells as headings; of several, the one
 * under which most headings are known.
 */
export function guessDelimiter(
  head: Head,
  isKnown: (heading: string) => boolean,
  said?: Delimiter,
): Guess<Delimiter> {
  if (said) return given(said);
  const candidates = DELIMITERS.map((d) => candidate(head, d, isKnown)).sort(
    (a, b) =>
      b.known - a.known ||
      Number(b.columns > 1) - Number(a.columns > 1) ||
      b.even - a.even ||
      b.columns - a.columns,
  );
  const [best, ...others] = candidates as [Candidate, ...Candidate[]];
  return {
    value: best.delimiter,
    why: delimiterWhy(best),
    given: false,
    others: others
      .filter((c) => c.columns > 1 && c.even === 1)
      .map((c) => ({ value: c.delimiter, why: delimiterWhy(c) })),
  };
}

function candidate(
  head: Head,
  delimiter: Delimiter,
  isKnown: (heading: string) => boolean,
): Candidate {
  const [headings = [], ...rows] = headRows(head, delimiter, ROWS_LOOKED_AT);
  const filled = rows.filter((r) => r.length > 1 || r[0] !== '');
  const even = filled.filter((r) => r.length === headings.length).length;
  return {
    delimiter,
    columns: headings.length,
    even: filled.length === 0 ? 1 : even / filled.length,
    known: headings.filter(isKnown).length,
  };
}

const delimiterWhy = (c: Candidate): string =>
  c.columns === 1
    ? 'the headings make one column only'
    : `${c.columns} headings parted by a ${DELIMITER_WORDS[c.delimiter]}, ${c.known} of them known; ` +
      (c.even === 1 ? 'all rows looked at have as many cells' : 'not all rows have as many cells');

const NUMBER = /^[-+−]?(\d+)([.,])(\d+)(?![\d.,])/;

/**
 * The decimal sign that the numbers of the first rows must have been written with. A single
 * sign before three digits (1,645) could group thousands and tells nothing.
 * @param cells of columns that hold quantities.
 */
export function guessDecimal(cells: readonly string[], said?: DecimalSign): Guess<DecimalSign> {
  if (said) return given(said);
  const seen: Record<DecimalSign, string | undefined> = { '.': undefined, ',': undefined };
  for (const cell of cells) {
    const sign = signTold(cell);
    if (sign) seen[sign] ??= cell;
  }
  const sign = seen['.'] === undefined && seen[','] !== undefined ? ',' : '.';
  const other = sign === '.' ? ',' : '.';
  const why = seen[sign] ? `from "${seen[sign]}"` : 'no number in the first rows tells, so a point';
  const others = seen[other] ? [{ value: other, why: `from "${seen[other]}"` } as const] : [];
  return { value: sign, why, given: false, others };
}

function signTold(cell: string): DecimalSign | undefined {
  const m = NUMBER.exec(cell);
  if (!m) return undefined;
  const [, whole = '', sign, digits = ''] = m;
  return couldGroupThousands(whole, digits) ? undefined : (sign as DecimalSign);
}

/** 1,645 may be one and a bit or over a thousand; 0,645 and 1,64 may not. */
export const couldGroupThousands = (whole: string, digits: string): boolean =>
  digits.length === 3 && whole.length <= 3 && !whole.startsWith('0');
