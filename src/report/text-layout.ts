/** Lines of text for a terminal: at most `WIDTH` columns, padded and wrapped by characters. */
export const WIDTH = 100;

const lengthOf = (text: string): number => [...text].length;
export const padEnd = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(width - lengthOf(text), 0));
export const padStart = (text: string, width: number): string =>
  ' '.repeat(Math.max(width - lengthOf(text), 0)) + text;

/**
 * Text as a terminal can show it: control characters would move the cursor and become spaces,
 * digits are grouped by commas.
 */
export const plain = (text: string): string =>
  text
    .replace(/\p{Cc}+/gu, ' ')
    .replace(/(?<=\d)\u202f(?=\d{3})/g, ',')
    .replaceAll('\u00a0', ' ');

/** Wraps words into lines of `width`; words longer than a line are cut. Every line is indented. */
export function wrap(text: string, indent = '', hanging = indent, width = WIDTH): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of wordsOf(plain(text), width - hanging.length)) {
    const start = line === indent || line === hanging;
    if (!start && lengthOf(line) + 1 + lengthOf(word) > width) {
      lines.push(line);
      line = hanging + word;
    } else line += start ? word : ` ${word}`;
  }
  return [...lines, line].map((l) => l.trimEnd());
}

function wordsOf(text: string, longest: number): string[] {
  return text
    .split(' ')
    .filter((word) => word !== '')
    .flatMap((word) => {
      const letters = [...word];
      const pieces: string[] = [];
      for (let i = 0; i < letters.length; i += longest)
        pieces.push(letters.slice(i, i + longest).join(''));
      return pieces;
    });
}

/** A table with its columns two spaces apart; numbers to the right, the last column of words wrapped. */
export function textTable(
  columns: readonly { readonly head: string; readonly numbers: boolean }[],
  rows: readonly (readonly string[])[],
  indent = '  ',
): string[] {
  const all = [columns.map((c) => plain(c.head)), ...rows.map((row) => row.map(plain))];
  const widths = fitted(
    columns.map((_, i) => all.reduce((most, row) => Math.max(most, lengthOf(row[i] ?? '')), 0)),
    WIDTH - indent.length,
  );
  return all.flatMap((row) => tableRow(row, columns, widths, indent));
}

/** Narrows the widest columns until the row fits. */
function fitted(widths: number[], width: number): number[] {
  const out = [...widths];
  const total = (): number => out.reduce((sum, w) => sum + w + 2, -2);
  while (total() > width && Math.max(...out) > 8) {
    const widest = out.indexOf(Math.max(...out));
    out[widest] = (out[widest] ?? 0) - 1;
  }
  return out;
}

function tableRow(
  row: readonly string[],
  columns: readonly { readonly numbers: boolean }[],
  widths: readonly number[],
  indent: string,
): string[] {
  const cells = row.map((cell, i) => wrap(cell, '', '', widths[i] ?? WIDTH));
  const height = Math.max(...cells.map((c) => c.length));
  return Array.from({ length: height }, (_, line) => {
    const texts = cells.map((cell, i) => {
      const pad = columns[i]?.numbers ? padStart : padEnd;
      return pad(cell[line] ?? '', widths[i] ?? 0);
    });
    return `${indent}${texts.join('  ')}`.trimEnd();
  });
}
