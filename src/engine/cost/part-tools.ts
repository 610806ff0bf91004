import { type Kind, parseQuantity } from '../../quantity/index.ts';
import type { Finder, Found, ScalarColumn, ScalarInput, TermInput } from '../method.ts';

/** A figure of the tools of a process; what stands in where the rate book has none. */
export const toolColumn = (
  group: 'tool' | 'life',
  symbol: string,
  kind: Kind,
  unit: string,
  meaning: string,
  range: readonly [number, number],
  without: number,
): ScalarColumn => ({
  ...{ in: 'scalar', name: group, symbol, kind, unit, meaning, range },
  bounds: { atLeast: 0 },
  where: `rate book, ${group} that fits the process; ${without} where there is none`,
  find: (at, row) => {
    const cell = at.rate(group, at.text(row, 'process').text);
    return 'missing' in cell ? at.exact(without, `no ${group} in the rate book`) : cell;
  },
});

export const pieces: ScalarColumn = {
  ...{ in: 'scalar', name: 'pieces', symbol: 'n', kind: 'count', unit: '1' },
  ...{ meaning: 'pieces of the part', range: [1, 5000], bounds: { above: 0 } },
  where: 'pieces of the part; one where none are counted',
  find: (at, row) => {
    const count = at.number(row, 'count');
    return 'missing' in count ? at.exact(1, 'one piece') : count;
  },
};

const MADE = 'vehicles made in all years';

/** Vehicles made in all years: as asked for, as the study says, or as the rate book holds for. */
export const madeColumn: ScalarColumn = {
  ...{ in: 'scalar', name: 'made', symbol: 'N', kind: 'count', unit: '1' },
  ...{ meaning: MADE, range: [100, 1e8], bounds: { above: 0 } },
  where: 'pieces a year of the vehicle or of the rate book, by its years',
  find: (at): Found => {
    const book = at.view.rates(at.ratesVersion);
    if (!book) return at.missing(MADE, 'no rate book in the study');
    const asked = at.given('volume');
    const volume = asked === '' ? saidOf(at, book.volumePerYear) : numberIn(asked);
    if (!(volume > 0)) return at.missing(MADE, `"${asked}" is no number of pieces above zero`);
    return at.exact(book.years * volume, `rate book ${book.version}`);
  },
};

function saidOf(at: Finder, ofBook: number): number {
  const root = at.view.root();
  const said = root ? at.number(root.id, 'cost.volume') : undefined;
  return said && !('missing' in said) ? said.form.x : ofBook;
}

function numberIn(text: string): number {
  const parsed = parseQuantity(text, 'count', { unit: '1' });
  return parsed.ok ? parsed.value.x : Number.NaN;
}

/** Pieces a year other than those of the book or the study: looked at by the column of vehicles made. */
export const otherVolume: TermInput = {
  ...{ in: 'term', name: 'volume', meaning: 'pieces a year, where others are asked for' },
  where: 'not in a study: as asked; those of the vehicle or of the rate book when nothing is said',
  find: (at) => at.word(at.given('volume')),
};

/** How tools are counted: the method of the whole. */
export const toolsApart: ScalarInput = {
  ...{ in: 'scalar', name: 'apart', symbol: 'δ', kind: 'ratio', unit: '1' },
  ...{ meaning: '1 where tools are counted apart, 0 where the conversion by mass holds them' },
  ...{ range: [0, 1], bounds: { atLeast: 0 }, assumed: 'exactly 0' },
  where: 'not in a study: as asked; 0 when nothing is said',
  find: (at) => at.exact(0, 'tools are in the conversion by mass'),
};
