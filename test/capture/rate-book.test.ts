import { describe, expect, it } from 'vitest';
import { readRateBook } from '../../src/capture/index.ts';
import { RefusalError } from '../../src/study/index.ts';

const CELL = {
  cause: 'labour',
  id: 'rate/labour',
  words: 'labour',
  kind: 'moneyPerTime',
  x: 0.01,
  spread: { s: 'triangular', low: 0.008, high: 0.012 },
  how: 'supplied',
  source: 'invented',
  match: [],
};
const BOOK = {
  id: 'r1',
  version: 'R1',
  region: 'nowhere (invented)',
  date: '2026-03-02',
  currency: 'u',
  volumePerYear: 60000,
  years: 5,
  invented: true,
  cells: [CELL],
};

/** A rate book with changes is refused at one place. */
function check(name: string, book: object, column: string, value: string, why: RegExp): void {
  it(name, () => {
    try {
      readRateBook(JSON.stringify({ ...BOOK, ...book }), 'rates.json');
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(RefusalError);
      const { refusals } = error as RefusalError;
      expect(refusals.map((r) => [r.place.column, r.value])).toEqual([[column, value]]);
      expect(refusals[0].place.file).toBe('rates.json');
      expect(refusals[0].why).toMatch(why);
      expect(refusals[0].next).not.toBe('');
    }
  });
}

const cells = (...changes: readonly object[]) => ({
  cells: changes.map((c) => ({ ...CELL, ...c })),
});

describe('a rate book', () => {
  it('is read as it stands', () => {
    expect(readRateBook(JSON.stringify(BOOK), 'rates.json')).toEqual(BOOK);
  });

  check('a negative rate', cells({ x: -1 }), 'rate/labour x', '-1', /negative/);
  check(
    'low above high',
    cells({ spread: { s: 'triangular', low: 2, high: 1 } }),
    'rate/labour spread',
    '{"s":"triangular","low":2,"high":1}',
    /low end is above the high/,
  );
  check(
    'a rate outside its ends',
    cells({ x: 3, spread: { s: 'triangular', low: 1, high: 2 } }),
    'rate/labour spread',
    '{"s":"triangular","low":1,"high":2}',
    /outside its own/,
  );
  check(
    'a low end below zero',
    cells({ spread: { s: 'triangular', low: -1, high: 2 } }),
    'rate/labour spread',
    '{"s":"triangular","low":-1,"high":2}',
    /low end is negative/,
  );
  check(
    'a negative standard uncertainty',
    cells({ spread: { s: 'normal', u: -1 } }),
    'rate/labour spread',
    '{"s":"normal","u":-1}',
    /negative/,
  );
  check(
    'a spread of no shape',
    cells({ spread: 0.1 }),
    'rate/labour spread',
    '0.1',
    /can not be read/,
  );
  check('a rate that is no number', cells({ x: '30' }), 'rate/labour x', '30', /no number/);
  check(
    'an id twice',
    cells({}, { x: 0.01 }),
    'rate/labour id',
    'rate/labour',
    /cell 1 has the same id/,
  );
  check(
    'an unknown kind',
    cells({ kind: 'money per hour' }),
    'rate/labour kind',
    'money per hour',
    /no such kind/,
  );
  check(
    'an unknown way of knowing',
    cells({ how: 'heard' }),
    'rate/labour how',
    'heard',
    /no such way/,
  );
  check('no source', cells({ source: '' }), 'rate/labour source', '', /no source/);
  check(
    'no words to match',
    cells({ match: 'steel' }),
    'rate/labour match',
    'steel',
    /no list of words/,
  );
  check(
    'an expiry that is no day',
    cells({ expires: 'soon' }),
    'rate/labour expires',
    'soon',
    /expiry/,
  );
  check('no id of a cell', cells({ id: '' }), 'cell 1 id', '', /no id/);
  check('no version', { version: '' }, 'version', '', /no version/);
  check('no date', { date: 'March' }, 'date', 'March', /no date/);
  check('no currency', { currency: undefined }, 'currency', '', /no currency/);
  check('no volume', { volumePerYear: 0 }, 'volumePerYear', '0', /no number above zero/);
  check('not said whether invented', { invented: 'yes' }, 'invented', 'yes', /invented/);
  check('no cells', { cells: [] }, 'cells', '', /no cells/);

  it('a file that is no JSON', () =>
    expect(() => readRateBook('number,rate', 'rates.json')).toThrow(/no JSON/));
  it('JSON that is no rate book', () =>
    expect(() => readRateBook('[1, 2]', 'rates.json')).toThrow(/no rate book/));
});
