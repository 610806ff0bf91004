import type { Finding } from '../../study/index.ts';

/** Cells of a sheet that deserve a word, by what they are. */
export interface OddCells {
  readonly dates: string[];
  readonly errors: string[];
}

/** "B7": column letters and row, from 0-based places. */
export function cellName(row: number, column: number): string {
  let letters = '';
  for (let rest = column; rest >= 0; rest = Math.floor(rest / 26) - 1)
    letters = String.fromCharCode(65 + (rest % 26)) + letters;
  return `${letters}${row + 1}`;
}

export function sheetNotes(file: string, odd: OddCells, merges: number): Finding[] {
  const note = (what: string, next: string, cells: readonly string[]): Finding => ({
    ...{ code: 'workbook', level: 'doubt', place: { file }, what, next },
    value: cells.slice(0, 10).join(', '),
  });
  return [
    ...(odd.dates.length > 0
      ? [
          note(
            `${odd.dates.length} cells hold a date; each is taken as the words 2026-03-04`,
            'Where it was no date but, say, the number 3-4, make the column text in the spreadsheet and type it again.',
            odd.dates,
          ),
        ]
      : []),
    ...(odd.errors.length > 0
      ? [
          note(
            `${odd.errors.length} cells hold an error of the spreadsheet; its sign is taken as a word`,
            'Mend the formula, or leave the column out.',
            odd.errors,
          ),
        ]
      : []),
    ...(merges > 0
      ? [
          note(
            `${merges} groups of cells are merged; what they hold stands in the first of each only`,
            'Take the merging back in the spreadsheet and fill each cell.',
            [],
          ),
        ]
      : []),
  ];
}
