/** What no cost can be worked out of is refused or found, with its place. */
import { describe, expect, it } from 'vitest';
import { readRateBook } from '../../../src/capture/index.ts';
import type { RateBook } from '../../../src/study/index.ts';
import { RefusalError } from '../../../src/study/index.ts';
import { mass, node, read, studyOf, text } from '../../study/made-study.ts';
import { askRegistered } from '../made-question.ts';
import { asked } from './asked.ts';

/** The one refusal of the build-up with this input. */
async function refusal(input: string, written: string) {
  try {
    await asked('cost-build-up', { [input]: written });
  } catch (error) {
    if (error instanceof RefusalError) return error.refusals[0];
    throw error;
  }
  throw new Error(`${input} of ${written} was taken`);
}

describe('an input that can not be', () => {
  it.each([
    ['labour', '-3 {u}/h', /at least 0/],
    ['machine', '-0.01 {u}/h', /at least 0/],
    ['price', '-2 {u}/kg', /at least 0/],
    ['volume', '0', /above 0/],
    ['years', 'exactly 0', /above 0/],
    ['rejects', 'exactly 120 %', /below 100/],
    ['rejects', 'exactly 100 %', /below 100/],
    ['cavities', '0.5', /whole|counted|count/],
    ['cavities', '0', /at least 1/],
    ['availability', 'exactly 0 %', /above 0/],
  ])('%s of %s is refused, with its place and what to do', async (input, written, why) => {
    const refused = await refusal(input, written);
    expect(refused.place.column).toBe(input);
    expect(refused.value).toContain(written.replace('exactly ', '').slice(0, 1));
    expect(refused.why).toMatch(why);
    expect(refused.next).not.toBe('');
  });

  it('a price in another currency is refused', async () => {
    expect((await refusal('price', '2 EUR/kg')).place.column).toBe('price');
  });
});

const cell = (id: string, kind: string, match: string, more: object = {}) => ({
  ...{ cause: id, id, words: id, kind, x: 1, spread: { s: 'normal', u: 0.1 } },
  ...{ how: 'supplied', source: 'invented', match: [match], ...more },
});
const book = (...cells: object[]) => ({
  ...{ id: 'b', version: 'R1', region: 'none', date: '2025-01-01', currency: 'u' },
  ...{ volumePerYear: 60_000, years: 5, invented: true, cells },
});

describe('a rate book', () => {
  it('that mixes currencies is refused at the cell', () => {
    const mixed = book(
      cell('rate/labour', 'moneyPerTime', 'labour', { currency: 'u' }),
      cell('material/steel', 'moneyPerMass', 'steel', { currency: 'v' }),
    );
    expect(() => readRateBook(JSON.stringify(mixed), 'rates.json')).toThrow(
      /rates.json, row 2, column material\/steel currency: .*another currency.*"v"/,
    );
  });

  it('with a rate that has expired is found, with version and cell', async () => {
    const rates = (expires: string): RateBook => {
      const cells = [
        cell('material/steel', 'moneyPerMass', 'steel', { expires }),
        cell('process/stamp', 'moneyPerMass', 'stamp'),
        cell('factor/overhead', 'ratio', 'overhead'),
      ];
      return readRateBook(JSON.stringify(book(...cells)), 'rates.json');
    };
    const found = async (expires: string) => {
      const view = studyOf(
        { v: 1, e: 'rates.put', book: rates(expires) },
        ...[node('p', 'van'), read('p', 'mass', mass(2, { s: 'exact' }))],
        ...[read('p', 'material', text('steel')), read('p', 'process', text('stamp'))],
      );
      const answer = await askRegistered('part-cost', view);
      return answer.findings.filter((f) => f.code === 'expired-rate');
    };
    expect(await found('2025-12-31')).toMatchObject([
      { value: '2025-12-31', place: { subject: 'rate book R1', property: 'material/steel' } },
    ]);
    expect(await found('2027-12-31')).toEqual([]);
  });
});

it('a line that can not be priced is named and not counted as zero', async () => {
  const answer = await asked('alternative-costs', {
    lines: [
      { design: 'a', line: 'plate', mass: 'exactly 2 kg' },
      { design: 'a', line: 'screws', pieces: 'exactly 4', price: 'exactly 1 {u}' },
      { design: 'b', line: 'weld', machineTime: 'exactly 20 s', price: 'exactly 3 {u}' },
    ],
  });
  const open = answer.findings.filter((f) => f.code === 'line-open');
  expect(open.map((f) => `${f.value} ${/lacks [^:]*/.exec(f.what)?.[0]}`)).toEqual([
    'plate lacks a price of its material',
    'plate lacks any price or time',
    'weld lacks the rate of its machine',
  ]);
});
