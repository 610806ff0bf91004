import { describe, expect, it } from 'vitest';
import { type InForce, isMissing, type Reading, type StudyView } from '../../src/study/index.ts';
import { askRegistered, out } from '../engine/made-question.ts';
import { count, later, mass, node, point, read, studyOf, text } from './made-study.ts';

const part = node('p1', 'van');
type Reads = Parameters<typeof read>;
const withMasses = (...readings: Reads[]) => studyOf(part, ...readings.map((r) => read(...r)));

function cell(view: StudyView, property = 'mass', condition?: string): InForce {
  const found = view.cell('p1', property, condition);
  if (isMissing(found)) throw new Error(`missing: ${found.why}`);
  return found;
}
const why = (view: StudyView, property = 'mass') => {
  const found = view.cell('p1', property);
  return isMissing(found) ? found.why : undefined;
};
const x = ({ value }: InForce): number => (value.t === 'scalar' ? value.x : Number.NaN);
const codes = (c: InForce) => c.findings.map((f) => f.code);
const ids = (c: InForce) => c.from.map((f) => f.reading.id);
const absent = (reason: 'not taken' | 'destroyed'): Reading['value'] => ({
  t: 'absent',
  why: reason,
});

describe('value in force', () => {
  it('is the only reading', () => {
    const c = cell(withMasses(['p1', 'mass', mass(10, 0.1)]));
    expect([x(c), c.rule, c.how, codes(c)]).toEqual([10, 'only reading', 'measured', []]);
  });

  it('is the best way of knowing, earlier or later', () => {
    for (const order of [0, 1]) {
      const both: Reads[] = [
        ['p1', 'mass', mass(10, 0.1), { id: 'best' }],
        ['p1', 'mass', mass(10.1, 0.5), { how: 'guessed' }],
      ];
      const c = cell(withMasses(...(order ? both.reverse() : both)));
      expect([ids(c), c.rule, codes(c)]).toEqual([['best'], 'best way of knowing', []]);
    }
  });

  it('of agreeing readings of the best way is their mean by inverse variance', () => {
    const c = cell(withMasses(['p1', 'mass', mass(10, 0.1)], ['p1', 'mass', mass(10.2, 0.2)]));
    expect(c.rule).toBe('weighted mean');
    expect(x(c)).toBeCloseTo((10 / 0.01 + 10.2 / 0.04) / (1 / 0.01 + 1 / 0.04), 12);
    expect(c.from.map((f) => f.weight)).toEqual([expect.closeTo(0.8, 12), expect.closeTo(0.2, 12)]);
    expect(c.value).toMatchObject({ spread: { s: 'normal', u: expect.closeTo(0.0894, 4) } });
  });

  it('of readings that disagree is the latest, with a finding that quotes both', () => {
    const c = cell(
      withMasses(
        ['p1', 'mass', mass(10, 0.1), { asWritten: '10 kg' }],
        ['p1', 'mass', mass(12, 0.1), { asWritten: '12 kg' }],
      ),
    );
    expect([x(c), c.rule, codes(c)]).toEqual([12, 'best way of knowing', ['readings-disagree']]);
    expect(c.findings[0]?.value).toBe('12 kg against 10 kg; En 7.07');
  });

  it('is never a mean in which two disagree, though each agrees with a third', () => {
    const c = cell(
      withMasses(
        ['p1', 'mass', mass(10, 0.1)],
        ['p1', 'mass', mass(10.5, 0.1)],
        ['p1', 'mass', mass(10.25, 0.1)],
      ),
    );
    expect([x(c), codes(c)]).toEqual([10.25, ['readings-disagree']]);
  });

  it('names a spoken value that disagrees with the gauge', () => {
    const c = cell(
      withMasses(['p1', 'mass', mass(2, 0.01)], ['p1', 'mass', mass(2.5, 0.1), { how: 'guessed' }]),
    );
    expect([x(c), codes(c)]).toEqual([2, ['readings-disagree']]);
  });

  it('is no mean where a spread is unknown', () => {
    const c = cell(withMasses(['p1', 'mass', mass(10)], ['p1', 'mass', mass(11, 0.1)]));
    expect([x(c), c.rule]).toEqual([11, 'best way of knowing']);
  });

  it('of two counts, two texts and two exact values that differ is the latest and found', () => {
    const of = (property: string, ...values: Reading['value'][]) =>
      codes(cell(withMasses(...values.map((v): Reads => ['p1', property, v])), property));
    expect(of('count', count(17), count(18))).toEqual(['readings-disagree']);
    expect(of('material', text('steel'), text('aluminium'))).toEqual(['readings-disagree']);
    expect(of('mass', mass(1, { s: 'exact' }), mass(2, { s: 'exact' }))).toHaveLength(1);
    expect(of('count', count(18), count(18))).toEqual([]);
  });

  it('of two positions apart, or in two frames, is the latest and found', () => {
    const of = (...points: Reading['value'][]) =>
      codes(cell(withMasses(...points.map((p): Reads => ['p1', 'position', p])), 'position'));
    expect(of(point([1, 0, 0], 0.01), point([1.02, 0, 0], 0.01))).toEqual([]);
    expect(of(point([1, 0, 0], 0.01), point([1, 0, 0.5], 0.01))).toEqual(['readings-disagree']);
    expect(of(point([1, 0, 0], 0.01), point([1, 0, 0], 0.01, 'pack'))).toEqual([
      'readings-disagree',
    ]);
  });
});

describe('choice and absence', () => {
  const of = { subject: 'p1', property: 'mass', condition: 'kerb' };
  const two = () =>
    withMasses(
      ['p1', 'mass', mass(10, 0.1), { id: 'first' }],
      ['p1', 'mass', mass(12, 0.1), { id: 'second' }],
    );

  it('a chosen reading is in force until it is withdrawn', () => {
    const chosen = later(two(), { v: 1, e: 'choose', of, reading: 'first' });
    expect([x(cell(chosen)), cell(chosen).rule, codes(cell(chosen))]).toEqual([10, 'chosen', []]);
    const without = later(chosen, {
      ...{ v: 1, e: 'reading.withdraw', id: 'first', subject: 'p1', why: 'tare' },
    } as const);
    expect(x(cell(without))).toBe(12);
    expect(without.readings('p1', 'mass')[0]?.withdrawn).toEqual({
      why: 'tare',
      by: 'R. Example',
    });
  });

  it('a choice of a reading that stands in another cell has no effect', () => {
    const other = later(two(), read('p1', 'thickness', mass(1), { id: 'other' }));
    expect(x(cell(later(other, { v: 1, e: 'choose', of, reading: 'other' })))).toBe(12);
  });

  it('nothing read, and why, is told apart from what was not taken or destroyed', () => {
    expect(why(withMasses())).toBe('no reading');
    expect(why(withMasses(['p1', 'mass', absent('not taken')]))).toBe('not taken');
    const both = withMasses(['p1', 'mass', mass(10, 0.1)], ['p1', 'mass', absent('destroyed')]);
    expect(x(cell(both))).toBe(10);
  });

  it('an absence that was chosen is in force', () => {
    const view = withMasses(
      ['p1', 'mass', mass(10, 0.1)],
      ['p1', 'mass', absent('not taken'), { id: 'none' }],
    );
    expect(why(later(view, { v: 1, e: 'choose', of, reading: 'none' }))).toBe('not taken');
  });
});

describe('conditions', () => {
  const view = studyOf(
    { v: 1, e: 'condition.put', id: 'dry', words: 'fluids out' },
    { v: 1, e: 'condition.put', id: 'kerb', words: 'as received' },
    part,
    node('p2', 'van'),
    read('p1', 'mass', mass(10, 0.1)),
    read('p1', 'mass', mass(8, 0.1), { condition: 'dry' }),
    read('p2', 'mass', mass(5, 0.1), { condition: 'dry' }),
  );

  it('are not mixed', () => {
    expect(x(cell(view))).toBe(10);
    expect(x(cell(view, 'mass', 'dry'))).toBe(8);
    expect(cell(view).findings).toEqual([]);
  });

  it('are named where a reading stands in another one only', async () => {
    const answer = await askRegistered('mass-roll-up', view);
    expect(out(answer, 'mass')).toMatchObject({ x: 10, u: 'incomplete' });
    const gap = answer.findings.find((f) => f.code === 'missing' && f.place.property === 'mass');
    expect(gap?.what).toContain('read in the condition "fluids out" only, not in "as received"');
    expect(answer.basis.conditions).toEqual(['as received']);
  });
});
