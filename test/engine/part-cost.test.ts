import { describe, expect, it } from 'vitest';
import type { RateBook, RateCell } from '../../src/study/index.ts';
import { mass, node, read, studyOf, text } from '../study/made-study.ts';
import { askRegistered, out } from './made-question.ts';

/** Prices and factors of a made-up book, each with 10 % as its standard uncertainty. */
const cell = (
  id: string,
  x: number,
  match: string,
  how: RateCell['how'] = 'supplied',
): RateCell => ({
  ...{ cause: id, id, words: id, x, how, source: 'invented', match: [match] },
  kind: id.startsWith('factor') ? 'ratio' : 'moneyPerMass',
  spread: { s: 'normal', u: 0.1 * x },
});
const book = (version: string, date: string, ...cells: RateCell[]): RateBook => ({
  ...{ id: version, version, region: 'none', date, currency: 'u' },
  ...{ volumePerYear: 60_000, years: 5, invented: true, cells },
});
const OVERHEAD = cell('factor/overhead', 1.5, 'overhead');
const R1 = book(
  'R1',
  '2026-01-01',
  OVERHEAD,
  cell('material/steel', 1, 'steel'),
  cell('material/dual-phase steel', 2, 'Dual-Phase Steel'),
  cell('process/stamp', 0.5, 'stamp', 'guessed'),
  cell('factor/yield/stamp', 1.25, 'stamp'),
);
const part = (id: string, kg: number, material: string, process: string) => [
  node(id, 'van'),
  read(id, 'mass', mass(kg, { s: 'exact' })),
  read(id, 'material', text(material), { how: 'seen' }),
  read(id, 'process', text(process), { how: 'seen' }),
];
const study = (books: readonly RateBook[], ...parts: ReturnType<typeof part>) =>
  studyOf(...books.map((b) => ({ v: 1, e: 'rates.put', book: b }) as const), ...parts);

describe('cost of parts', () => {
  const view = study(
    [R1],
    ...part('p1', 10, 'dual-phase steel 600', 'stamp + spot weld'),
    ...part('p2', 30, 'bought in', 'assembly'),
  );

  it('goes by the longest words that fit, with the gross factor of the process', async () => {
    const answer = await askRegistered('part-cost', view);
    expect(out(answer, 'material').x).toBeCloseTo(10 * 2 * 1.25, 9);
    expect(out(answer, 'conversion').x).toBeCloseTo(10 * 0.5, 9);
    expect(out(answer, 'cost').x).toBeCloseTo(1.5 * 30, 9);
    expect(answer.basis).toMatchObject({ rates: 'R1', currency: 'u' });
  });

  it('of a part without a model is not costed, never zero, and is named with its words', async () => {
    const answer = await askRegistered('part-cost', view);
    const [found, ...more] = answer.findings.filter((f) => f.code === 'not-costed');
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      ...{ level: 'gap', value: 'bought in / assembly' },
      place: { subject: 'P2 name of p2' },
    });
    expect(out(answer, 'costedShare').x).toBeCloseTo(10 / 40, 9);
  });

  it('says what share rests on assumed rates', async () => {
    const answer = await askRegistered('part-cost', view);
    expect(out(answer, 'assumedShare').x).toBeCloseTo(5 / 30, 9);
  });

  it('of none at all is no cost', async () => {
    const none = await askRegistered(
      'part-cost',
      study([R1], ...part('p2', 30, 'glass', 'bought')),
    );
    expect(none.outs.cost).toBeUndefined();
    expect(none.findings.map((f) => f.code)).toContain('not-costed');
  });

  it('without a mass is incomplete and named', async () => {
    const [p, , material, process] = part('p3', 1, 'steel', 'stamp');
    if (!p || !material || !process) throw new Error('no part');
    const answer = await askRegistered(
      'part-cost',
      study([R1], ...part('p1', 10, 'steel', 'stamp'), p, material, process),
    );
    expect(out(answer, 'cost').u).toBe('incomplete');
    expect(out(answer, 'cost').missing.map((m) => m.subject)).toEqual(['P3 name of p3']);
    expect(answer.findings.map((f) => f.place.subject)).toContain('P3 name of p3');
  });

  it('without an overhead in the book keeps material and conversion whole', async () => {
    const bare = book('R1', '2026-01-01', ...R1.cells.filter((c) => c !== OVERHEAD));
    const answer = await askRegistered(
      'part-cost',
      study([bare], ...part('p1', 10, 'steel', 'stamp')),
    );
    expect(answer.outs.cost).toBeUndefined();
    expect(out(answer, 'material').u).not.toBe('incomplete');
  });

  it('without any book is refused nothing and says what is missing', async () => {
    const answer = await askRegistered('part-cost', study([], ...part('p1', 10, 'steel', 'stamp')));
    expect(answer.outs.cost).toBeUndefined();
    expect(answer.findings.some((f) => f.what.includes('no rate book'))).toBe(true);
  });

  it('takes the latest book by its date; a second one of the same version changes nothing', async () => {
    const dearer = cell('material/steel', 3, 'steel');
    const parts = part('p1', 10, 'steel', 'stamp');
    const R2 = book('R2', '2026-06-01', dearer, ...R1.cells.slice(2), OVERHEAD);
    const latest = await askRegistered('part-cost', study([R2, R1], ...parts));
    expect(latest.basis.rates).toBe('R2');
    expect(out(latest, 'material').x).toBeCloseTo(10 * 3 * 1.25, 9);
    const edited = { ...R1, id: 'other', cells: [dearer, ...R1.cells] };
    const view2 = study([R1, edited], ...parts);
    expect(view2.findings.map((f) => f.code)).toEqual(['rates-changed']);
    expect(out(await askRegistered('part-cost', view2), 'material').x).toBeCloseTo(12.5, 9);
  });
});

describe('a question that reads another’s answer', () => {
  it('hands on what that one found, and shares its variables', async () => {
    const view = studyOf(
      node('a1', 'van', 'assembly'),
      node('p1', 'a1'),
      node('p2', 'a1'),
      read('p1', 'mass', mass(10, 0.1), { id: 'm1' }),
      read('a1', 'packEnergy', { t: 'scalar', kind: 'energy', x: 3.6e6, spread: { s: 'exact' } }),
    );
    const partial = await askRegistered('pack-energy-density', view, 'a1');
    expect(out(partial, 'specific').u).toBe('incomplete');
    expect(partial.findings.map((f) => [f.code, f.place.subject])).toContainEqual([
      'missing',
      'P2 name of p2',
    ]);
    const parts = studyOf(node('a1', 'van', 'assembly'), node('p1', 'a1'));
    expect((await askRegistered('pack-energy-density', parts, 'a1')).outs).toEqual({});
  });
});
