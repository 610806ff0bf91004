import { checkSpread, isKind, isWay, KIND_NAMES, type Spread, WAYS } from '../quantity/index.ts';
import { type RateBook, type RateCell, RefusalError } from '../study/index.ts';
import { Problems } from './problems.ts';

type Json = Readonly<Record<string, unknown>>;
type Complain = (column: string, value: unknown, why: string, next: string) => void;

/**
 * Reads a rate book from JSON of the shape of RateBook, numbers in SI, and checks every cell.
 * @throws RefusalError with every problem; `row` counts the cells from 1, `column` names the cell
 *   and its field.
 */
export function readRateBook(text: string, file: string): RateBook {
  const problems = new Problems(file);
  const json = parseJson(text, file);
  const complain =
    (row: number, id: string): Complain =>
    (column, value, why, next) =>
      problems.add({
        row,
        column: id === '' ? column : `${id} ${column}`,
        value: shown(value),
        why,
        next,
      });
  checkBook(json, complain(0, ''));
  const cells = Array.isArray(json.cells) ? json.cells : [];
  const seen = new Map<string, number>();
  for (const [i, cell] of cells.entries()) {
    const at = isObject(cell) ? cell : {};
    const id = typeof at.id === 'string' && at.id !== '' ? at.id : `cell ${i + 1}`;
    checkCell(at, complain(i + 1, id));
    if (at.currency !== undefined && at.currency !== json.currency)
      complain(i + 1, id)(
        'currency',
        at.currency,
        `the cell is in another currency than its book, which is in ${shown(json.currency)}`,
        'Convert it at a rate and day that you name in its source, or make a book of its own.',
      );
    const earlier = seen.get(id);
    if (earlier !== undefined)
      complain(i + 1, id)(
        'id',
        id,
        `cell ${earlier} has the same id`,
        'Give each cell an id of its own.',
      );
    seen.set(id, i + 1);
  }
  problems.throwIfAny();
  return json as unknown as RateBook;
}

const isObject = (x: unknown): x is Json =>
  typeof x === 'object' && x !== null && !Array.isArray(x);
const shown = (x: unknown): string =>
  x === undefined ? '' : typeof x === 'string' ? x : JSON.stringify(x);

function parseJson(text: string, file: string): Json {
  try {
    const json: unknown = JSON.parse(text.replace(/^\ufeff/, ''));
    if (isObject(json)) return json;
  } catch (error) {
    throw noBook(file, text, `the file is no JSON: ${error instanceof Error ? error.message : ''}`);
  }
  throw noBook(file, text, 'the file is JSON, but no rate book');
}

const noBook = (file: string, text: string, why: string): RefusalError =>
  new RefusalError({
    code: 'bad-value',
    place: { file, row: 1, column: 'version' },
    value: text.slice(0, 40),
    why,
    next: 'Hand in a rate book: an object with id, version, region, date, currency and cells.',
  });

const isFilled = (x: unknown): x is string => typeof x === 'string' && x.trim() !== '';
const isDate = (x: unknown): boolean =>
  typeof x === 'string' && /^\d{4}-\d\d-\d\d$/.test(x) && !Number.isNaN(Date.parse(x));
const isPositive = (x: unknown): boolean => typeof x === 'number' && Number.isFinite(x) && x > 0;

function checkBook(book: Json, complain: Complain): void {
  for (const field of ['id', 'version', 'region', 'currency'])
    if (!isFilled(book[field]))
      complain(field, book[field], `the rate book has no ${field}`, `Write its ${field} as text.`);
  if (!isDate(book.date))
    complain(
      'date',
      book.date,
      'the rate book has no date',
      'Write the day of its prices as 2026-03-02.',
    );
  for (const field of ['volumePerYear', 'years'])
    if (!isPositive(book[field]))
      complain(
        field,
        book[field],
        `${field} is no number above zero`,
        'Write what the rates hold for.',
      );
  if (typeof book.invented !== 'boolean')
    complain(
      'invented',
      book.invented,
      'it is not said whether the book is invented',
      'Write true or false.',
    );
  if (!Array.isArray(book.cells) || book.cells.length === 0)
    complain('cells', undefined, 'the rate book has no cells', 'Give it at least one rate.');
}

function checkCell(cell: Json, complain: Complain): void {
  for (const field of ['id', 'cause', 'words', 'source'] satisfies (keyof RateCell)[])
    if (!isFilled(cell[field]))
      complain(field, cell[field], `the cell has no ${field}`, `Write its ${field} as text.`);
  if (typeof cell.kind !== 'string' || !isKind(cell.kind))
    complain(
      'kind',
      cell.kind,
      'no such kind of quantity',
      `Write one of ${KIND_NAMES.filter((k) => /money|ratio/.test(k)).join(', ')}.`,
    );
  if (typeof cell.how !== 'string' || !isWay(cell.how))
    complain('how', cell.how, 'no such way of knowing', `Write one of ${WAYS.join(', ')}.`);
  if (!Array.isArray(cell.match) || !cell.match.every(isFilled))
    complain(
      'match',
      cell.match,
      'match is no list of words',
      'Write the words it applies to, or [].',
    );
  if (cell.expires !== undefined && !isDate(cell.expires))
    complain(
      'expires',
      cell.expires,
      'the day of expiry can not be read',
      'Write it as 2026-12-31.',
    );
  checkRate(cell, complain);
}

function checkRate({ x, spread: written }: Json, complain: Complain): void {
  const spread = spreadOf(written);
  if (typeof x !== 'number' || !Number.isFinite(x))
    complain('x', x, 'the rate is no number', 'Write it as a number in SI units.');
  else if (x < 0) complain('x', x, 'the rate is negative', 'Check the sign.');
  else if (spread === undefined)
    complain('spread', written, 'the spread can not be read', WRITE_SPREAD);
  else {
    const wrong = wrongSpread(spread, x);
    if (wrong) complain('spread', written, wrong, 'Correct the spread or the rate.');
  }
}

const WRITE_SPREAD =
  'Write {"s":"triangular","low":…,"high":…}, another spread, or {"s":"unknown"}.';

function wrongSpread(spread: Spread, x: number): string | undefined {
  if (spread.s === 'triangular') {
    if (spread.low > spread.high) return 'the low end is above the high end';
    if (spread.low > x || spread.high < x) return 'the rate is outside its own low and high ends';
    if (spread.low < 0) return 'the low end is negative';
  }
  return checkSpread(spread, x);
}

/** A spread of the right shape; undefined for anything else. */
function spreadOf(x: unknown): Spread | undefined {
  if (!isObject(x)) return undefined;
  const has = (...fields: string[]) =>
    fields.every((f) => typeof x[f] === 'number' && Number.isFinite(x[f]));
  const isShaped =
    x.s === 'exact' ||
    x.s === 'unknown' ||
    (x.s === 'normal' && has('u')) ||
    ((x.s === 'rectangular' || x.s === 'arcsine') && has('half')) ||
    (x.s === 'triangular' && has('low', 'high')) ||
    (x.s === 'repeats' &&
      Array.isArray(x.xs) &&
      x.xs.every((v) => typeof v === 'number' && Number.isFinite(v)));
  return isShaped ? (x as unknown as Spread) : undefined;
}
