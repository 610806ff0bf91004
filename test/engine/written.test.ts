import { describe, expect, it } from 'vitest';
import { askStudy, askWritten, loadQuestion, type WrittenInputs } from '../../src/engine/index.ts';
import { type Refusal, RefusalError } from '../../src/study/index.ts';
import { mass, read, studyOf } from '../study/made-study.ts';
import { formula, madeQuestion, number, out } from './made-question.ts';

const CORNERS = {
  ...{ fl: '452 ± 0.5 kg', fr: '438 ± 0.5 kg', rl: '381 ± 0.5 kg', rr: '369 ± 0.5 kg' },
  ...{ wheelbase: '2700 ± 2 mm', frontTrack: '1560 ± 3 mm', rearTrack: '1540 ± 3 mm' },
};
const { question: corners } = await loadQuestion('cg-from-corners');
const { question: census } = await loadQuestion('joint-census');
const { question: rollUp } = await loadQuestion('mass-roll-up');

function refused(act: () => unknown): readonly Refusal[] {
  try {
    act();
  } catch (error) {
    if (error instanceof RefusalError) return error.refusals;
    throw error;
  }
  return [];
}
const ofCorners = (more: WrittenInputs) =>
  refused(() => askWritten(corners, { ...CORNERS, ...more }));

describe('written inputs', () => {
  it('are read with their units', () => {
    const pounds = { ...CORNERS, fl: '1000 lb ± 1 lb', wheelbase: '2.7 m ± 2 mm' };
    const answer = askWritten(corners, pounds);
    expect(out(answer, 'total').x).toBeCloseTo(453.59237 + 438 + 381 + 369, 9);
    expect(answer.basis).toEqual({ conditions: ['as given'] });
  });

  it.each([
    ['another unit', { fl: '452 mm' }, 'fl', 'bad-value', 'length'],
    ['words', { rr: 'heavy' }, 'rr', 'bad-value', 'can be read'],
    ['a bound', { rl: '> 300 kg' }, 'rl', 'bad-value', 'bounds the value'],
    ['less than none', { fl: '-1 ± 0.5 kg' }, 'fl', 'out-of-range', 'at least 0 kg'],
    [
      'a wheelbase of zero',
      { wheelbase: 'exactly 0 mm' },
      'wheelbase',
      'out-of-range',
      'above 0 mm',
    ],
    ['an unknown name', { fll: '452 kg' }, 'fll', 'bad-value', 'no input "fll"'],
    ['a list', { fl: [{ fl: '452 kg' }] }, 'fl', 'bad-value', 'one value'],
  ])('with %s are refused by name', (_, more, column, code, why) => {
    const found = ofCorners(more as WrittenInputs);
    expect(found).toMatchObject([{ code, place: { column } }]);
    expect(found[0]?.why).toContain(why);
    expect(found[0]?.next).toMatch(/\.$/);
  });

  it('are refused all at once', () => {
    const found = ofCorners({ fl: 'heavy', fr: '-1 kg', hl: '1 kg' });
    expect(found.map((r) => r.place.column).sort()).toEqual(['fl', 'fr', 'hl']);
  });

  it('name row and column of a table', () => {
    const parts = [{ mass: '1 ± 0.1 kg' }, { mass: 'one', weight: '1 kg' }];
    expect(refused(() => askWritten(rollUp, { parts }))).toMatchObject([
      { place: { row: 2, column: 'weight' } },
      { place: { row: 2, column: 'mass' }, value: 'one' },
    ]);
    const text = refused(() => askWritten(rollUp, { parts: '1 kg' }));
    expect(text[0]?.why).toContain('takes a list of rows');
  });

  it('that are not given are missing, by name', () => {
    const { fl: _, ...without } = CORNERS;
    const answer = askWritten(corners, without);
    expect(answer.outs).toEqual({});
    expect(answer.findings.find((f) => f.code === 'missing')?.place).toEqual({ column: 'fl' });
  });

  it('of numbers without a spread leave the answer incomplete', () => {
    expect(out(askWritten(corners, { ...CORNERS, fl: '452 kg' }), 'total')).toMatchObject({
      ...{ u: 'incomplete', unknownSpread: [{ column: 'fl' }] },
    });
  });

  it('of counts are exact, but not when said to be about so many', () => {
    const of = (count: string) => out(askWritten(census, { joints: [{ count }] }), 'elements').u;
    expect(of('62')).toBe(0);
    expect(of('about 62')).toBe('incomplete');
  });
});

describe('assumed values and words', () => {
  const options = ['normal time', 'shift'];
  const find = () => ({ text: '', how: 'missing', place: {} }) as const;
  const question = madeQuestion(
    [
      number('a', 'length', 'mm', { assumed: '10 ± 1 mm' }),
      { in: 'term', name: 'basis', meaning: 'basis', options, where: 'nowhere', find },
    ],
    formula((a) => 2 * (a ?? 0)),
  );

  it('stand in, marked as assumed', () => {
    const answer = askWritten(question, {});
    expect(out(answer, 'y').x).toBeCloseTo(0.02, 12);
    expect(answer.steps[0]?.how).toBe('assumed');
    expect(askWritten(question, { a: '5 ± 1 mm' }).steps[0]?.how).toBe('supplied');
  });

  it('a word that is none of the options is refused, with the options', () => {
    expect(refused(() => askWritten(question, { basis: 'shift' }))).toEqual([]);
    expect(refused(() => askWritten(question, { basis: 'day' }))).toMatchObject([
      { place: { column: 'basis' }, value: 'day', next: 'Its words are: normal time, shift.' },
    ]);
    expect(refused(() => askWritten(question, { basis: [{}] }))).toHaveLength(1);
  });
});

describe('values written over a study’s', () => {
  const loads = ['FL', 'FR', 'RL', 'RR'].map((c) => read('van', `cornerLoad.${c}`, mass(400, 0.5)));
  const view = studyOf(...loads);
  const over = (values: WrittenInputs) =>
    askStudy(corners, new Map([[corners.id, corners]]), { view, over: values });

  it('take the place of those named only', () => {
    expect(out(over({}), 'total').x).toBe(1600);
    const answer = over({ fl: '500 ± 2 kg', wheelbase: '2 m ± 1 mm' });
    expect(out(answer, 'total').x).toBe(1700);
    expect(out(answer, 'total').u).toBeCloseTo(Math.hypot(2, 0.5, 0.5, 0.5), 9);
    expect(out(answer, 'x').x).toBeCloseTo((2 * 800) / 1700, 12);
    expect(answer.outs.y).toBeUndefined();
  });

  it('give another key, the same values the same one', () => {
    expect(over({ fl: '500 ± 2 kg' }).key).toBe(over({ fl: '500 ± 2 kg' }).key);
    expect(over({ fl: '500 ± 2 kg' }).key).not.toBe(over({ fl: '500 ± 1 kg' }).key);
  });

  it('are refused as without a study', () => {
    expect(refused(() => over({ fll: '500 kg' }))).toHaveLength(1);
  });
});
