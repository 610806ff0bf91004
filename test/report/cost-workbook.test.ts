/** The workbook of costs: its formulas, worked out here anew from its cells, give the engine's numbers. */
import { readXlsx, type Sheet } from 'hucre/xlsx';
import { describe, expect, it } from 'vitest';
import { costDifference, costSheets, costsOf } from '../../src/app/index.ts';
import { demoStudy } from '../engine/joining/demo-study.ts';
import { out } from '../engine/made-question.ts';

const view = await demoStudy('clean');
const book = await readXlsx(await costSheets(view, 'R1'));
const sheet = (name: string): Sheet => {
  const found = book.sheets.find((s) => s.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
};
const columnOf = (letter: string): number => letter.charCodeAt(0) - 65;

/** Value of a cell, its formula worked out anew. */
function valueAt(name: string, letter: string, row: number): number {
  const key = `${row - 1},${columnOf(letter)}`;
  const text = sheet(name).cells?.get(key)?.formula;
  if (text !== undefined) return worked(name, text.replace(/\$/g, ''));
  return Number(sheet(name).rows[row - 1]?.[columnOf(letter)] ?? Number.NaN);
}

const column = (name: string, letter: string, from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => valueAt(name, letter, from + i));

/** The few functions that the workbook uses. */
function worked(name: string, text: string): number {
  const sum = /^SUM\(([A-Z])(\d+):[A-Z](\d+)\)$/.exec(text);
  if (sum)
    return column(name, sum[1] ?? '', Number(sum[2]), Number(sum[3])).reduce((a, b) => a + b, 0);
  const some = /^SUMIF\(Parts!B(\d+):B(\d+),A(\d+),Parts!([A-Z])\d+:[A-Z]\d+\)$/.exec(text);
  if (some) {
    const wanted = sheet(name).rows[Number(some[3]) - 1]?.[0];
    const rows = Array.from(
      { length: Number(some[2]) - Number(some[1]) + 1 },
      (_, i) => i + Number(some[1]),
    );
    return rows
      .filter((r) => sheet('Parts').rows[r - 1]?.[1] === wanted)
      .reduce((s, r) => s + valueAt('Parts', some[4] ?? '', r), 0);
  }
  const plain = text
    .replace(/Basis!([A-Z])(\d+)/g, (_, c: string, r: string) =>
      String(valueAt('Basis', c, Number(r))),
    )
    .replace(/\b([A-Z])(\d+)\b/g, (_, c: string, r: string) => String(valueAt(name, c, Number(r))))
    .replace(/MAX\(/g, 'Math.max(')
    .replace(/ROUNDUP\((.*?),0\)/g, 'Math.ceil($1)');
  return Number(new Function(`return ${plain}`)());
}

describe('workbook of costs', () => {
  const parts = sheet('Parts').rows.length - 2;

  it('has each part with a formula that gives its cost, and a live sum of all', async () => {
    const { parts: answer } = await costsOf(view, 'R1');
    expect(parts).toBeGreaterThan(150);
    expect(valueAt('Parts', 'J', parts + 2)).toBeCloseTo(out(answer, 'cost').x, 6);
    expect(sheet('Parts').cells?.get(`${parts + 1},9`)?.formula).toMatch(/^SUM\(J2:J\d+\)$/);
  });

  it('sums by assembly to the same', () => {
    const last = sheet('Assemblies').rows.length;
    expect(valueAt('Assemblies', 'C', last)).toBeCloseTo(valueAt('Parts', 'J', parts + 2), 6);
  });

  it('says what it rests on, that it is invented, and where each number comes from', () => {
    const basis = sheet('Basis').rows.map((row) => row.join(' '));
    expect(basis[0]).toContain('INVENTED');
    expect(basis).toContain('rates version R1');
    const from = sheet('Where from').rows.slice(1);
    expect(from.length).toBeGreaterThan(7 * 150);
    expect(from.every((row) => row[3] !== '' && row[4] !== '')).toBe(true);
    expect(from.some((row) => /rate book R1, material\//.test(String(row[4])))).toBe(true);
    expect(from.some((row) => /parts\.csv, row \d+/.test(String(row[4])))).toBe(true);
    expect(sheet('Not costed').rows.length).toBeGreaterThan(1);
  });
});

it('rates that the study does not have are refused by name', async () => {
  await expect(costDifference({ view, rates: 'R9' }, { view })).rejects.toThrow(
    /R9.*Its versions are: R1/,
  );
  await expect(costSheets(view, 'R9')).rejects.toThrow(/no rate book of this version/);
});
