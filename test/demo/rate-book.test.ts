import { describe, expect, test } from 'vitest';
import { cellText, type TextRow } from '../../demo/csv.ts';
import type { RateBook, RateCell } from '../../src/study/index.ts';
import { committed, committedText } from './record.ts';

// Checks of made-up data: they show that the demo is what it says, and prove nothing else.

const book = (version: string) =>
  JSON.parse(committedText('clean', `rates-${version}.json`)) as RateBook;
const r1 = book('R1');
const r2 = book('R2');

const cell = (of: RateBook, id: string): RateCell | undefined => of.cells.find((c) => c.id === id);

/** The cell of a group with the longest match in the words, if any. */
function matching(group: string, words: string): string | undefined {
  const found = r1.cells
    .filter((c) => c.id.startsWith(group))
    .flatMap((c) => c.match.map((m) => ({ id: c.id, m })))
    .filter(({ m }) => words.toLowerCase().includes(m))
    .sort((a, b) => b.m.length - a.m.length);
  return found[0]?.id;
}

describe('R1', () => {
  test('every cell is a triangle about its value, matches in lower case, with one id each', () => {
    for (const c of r1.cells) {
      expect(c.spread.s, c.id).toBe('triangular');
      if (c.spread.s !== 'triangular') continue;
      expect(c.spread.low, c.id).toBeLessThan(c.x);
      expect(c.spread.high, c.id).toBeGreaterThan(c.x);
      expect(c.match, c.id).toEqual(c.match.map((m) => m.toLowerCase()));
    }
    expect(new Set(r1.cells.map((c) => c.id)).size).toBe(r1.cells.length);
  });

  test('hourly rates are held per second; yields are more than one', () => {
    expect(cell(r1, 'rate/labour')?.x).toBeCloseTo(36 / 3600, 12);
    expect(cell(r1, 'rate/press 2500 t')?.x).toBeCloseTo(205 / 3600, 12);
    for (const c of r1.cells.filter((c) => c.id.startsWith('factor/yield')))
      expect(c.spread.s === 'triangular' && c.spread.low > 1, c.id).toBe(true);
  });

  test('what was quoted is supplied, the rest is guessed, and both say they are invented', () => {
    expect(r1.invented).toBe(true);
    expect(r1.cells.filter((c) => c.how === 'supplied')).toHaveLength(10);
    for (const c of r1.cells) expect(c.source, c.id).toMatch(/invented/);
  });
});

describe('which parts R1 can price', () => {
  const parts = committed('clean', 'parts.csv');
  const priced = (row: TextRow) => {
    const process = cellText(row, 'process');
    return {
      material: matching('material/', cellText(row, 'material')),
      process: matching('process/', process),
      yield: matching('factor/yield', process),
    };
  };

  test('bought-in and assembled things, mixtures and fluids have no process', () => {
    const none = /^(assembly|bought in|mixed|fluid)$/;
    for (const row of parts.filter((row) => none.test(cellText(row, 'process'))))
      expect(priced(row).process, row.number).toBeUndefined();
  });

  test('every part with a process has a yield, and a material but for six', () => {
    const processed = parts.filter((row) => priced(row).process !== undefined);
    expect(processed.filter((row) => priced(row).yield === undefined)).toEqual([]);
    // Mirrors of mixed material, and aluminium of no stated grade.
    expect(
      processed.filter((row) => priced(row).material === undefined).map((row) => row.number),
    ).toEqual(['12-004', '12-005', '50-004', '50-007', '63-011', '70-008']);
  });

  test.each([
    ['40-002', 'material/aluminium extrusion', 'process/extruding and stir welding'],
    ['40-010', 'material/glass-fibre moulding charge', 'process/compression moulding'],
    ['10-001', 'material/dual-phase steel sheet', 'process/stamping and welding'],
    ['10-008', 'material/laminated steel sheet', 'process/stamping'],
    ['10-033', 'material/press-hardening steel sheet', 'process/hot stamping'],
    ['11-013', 'material/rubber compound', 'process/extruding and cutting'],
    ['11-005', 'material/polypropylene compound', 'process/injection moulding'],
    ['50-003', 'material/case-hardening steel', 'process/gear making'],
    ['61-001', 'material/steel tube', 'process/tube bending and welding'],
    ['62-001', 'material/steel sheet', 'process/wheel making'],
    ['63-001', 'material/grey iron', 'process/sand casting and machining'],
    ['11-012', 'material/aluminium sheet', 'process/stamping and hemming'],
  ])('%s by %s and %s', (number, material, process) => {
    const row = parts.find((part) => part.number === number);
    expect(row && priced(row)).toMatchObject({ material, process });
  });
});

test('R2 is R1 later, labour 12 % and aluminium 9 % dearer, each price the same cause', () => {
  expect(r2.date > r1.date).toBe(true);
  expect(r2.cells.map((c) => [c.id, c.cause])).toEqual(r1.cells.map((c) => [c.id, c.cause]));
  const dearer = r2.cells.flatMap((c, i) => {
    const ratio = c.x / (r1.cells[i]?.x ?? Number.NaN);
    return ratio === 1 ? [] : [[c.id, Math.round(ratio * 1000) / 1000]];
  });
  expect(dearer).toEqual([
    ['rate/labour', 1.12],
    ['material/aluminium sheet', 1.09],
    ['material/aluminium extrusion', 1.09],
    ['material/aluminium casting alloy', 1.09],
  ]);
});
