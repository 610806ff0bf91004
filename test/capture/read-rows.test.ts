import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Problems } from '../../src/capture/problems.ts';
import { readRows } from '../../src/capture/read-rows.ts';

async function rowsOf(
  text: string,
  delimiter: string,
  cuts: readonly number[],
): Promise<string[][]> {
  const problems = new Problems('table.csv');
  const at = [0, ...cuts.map((c) => c % (text.length + 1)).sort((a, b) => a - b), text.length];
  async function* pieces() {
    for (let i = 1; i < at.length; i++)
      yield { text: text.slice(at[i - 1], at[i]), done: at[i] as number };
  }
  const rows: string[][] = [];
  const as = { delimiter, newline: '\n' as const, headings: [] };
  for await (const batch of readRows(pieces(), as, problems)) {
    expect(batch.firstRow).toBe(rows.length + 1);
    rows.push(...batch.rows.map((r) => [...r]));
  }
  problems.throwIfAny();
  return rows;
}

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

const cell = fc.string({
  unit: fc.constantFrom('a', '1', ' ', ',', ';', '"', '\n', 'ä', '.'),
  maxLength: 6,
});

describe('rows and cells of any table, in any pieces', () => {
  // csv-parse 7 is a general-purpose reader of RFC 4180 text, written by others.
  it('are those that csv-parse reads', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 }),
        fc.constantFrom(',', ';', '\t', '|'),
        fc.constantFrom('\n', '\r\n'),
        fc.array(fc.nat(), { maxLength: 8 }),
        fc.boolean(),
        async (table, delimiter, newline, cuts, endsOpen) => {
          const needsQuotes = (c: string) => /["\n\r]/.test(c) || c.includes(delimiter);
          const text = table
            .map((row) => row.map((c) => (needsQuotes(c) ? quoted(c) : c)).join(delimiter))
            .join(newline);
          const whole = endsOpen ? text : `${text}${newline}`;
          const theirs = parse(whole, { delimiter, relax_column_count: true }) as string[][];
          expect(await rowsOf(whole, delimiter, cuts)).toEqual(theirs);
          expect(theirs).toEqual(table);
        },
      ),
      { numRuns: 500 },
    );
  });
});
