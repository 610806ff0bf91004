import type { Kind } from '../../quantity/index.ts';
import type { ScalarColumn, TermColumn } from '../method.ts';

/** What must be known of a fastening before it can be compared, or be said not to apply. */
export interface FasteningFigure {
  readonly name: string;
  readonly symbol: string;
  readonly kind: Kind;
  readonly unit: string;
  readonly meaning: string;
  readonly range: readonly [number, number];
  /** Which of the things to be filled it belongs to. */
  readonly about: string;
}

const money = (name: string, symbol: string, meaning: string, about: string): FasteningFigure => ({
  name,
  symbol,
  kind: 'money',
  unit: '{u}',
  meaning,
  range: [0, 1000],
  about,
});
const seconds = (
  name: string,
  symbol: string,
  meaning: string,
  about: string,
): FasteningFigure => ({
  name,
  symbol,
  kind: 'time',
  unit: 's',
  meaning,
  range: [0, 3600],
  about,
});

export const FASTENING_FIGURES: readonly FasteningFigure[] = [
  {
    name: 'count',
    symbol: 'n',
    kind: 'count',
    unit: '1',
    meaning: 'fasteners',
    range: [1, 5000],
    about: 'fastener',
  },
  money('price', 'p', 'price of a fastener', 'fastener'),
  money('nutPrice', 'pₙ', 'price of the nut side, each', 'nut side'),
  seconds('nutTime', 'tₙ', 'time of the nut side, each', 'nut side'),
  money('capital', 'K', 'capital, a vehicle', 'capital'),
  seconds('assembly', 'tₐ', 'time to assemble, each', 'assembly'),
  seconds('removal', 'tᵣ', 'time to remove, each', 'removal'),
  money('renewal', 'q', 'price of what is renewed, a visit', 'renewal'),
  seconds('parting', 't_d', 'time to part the seal, a visit', 'parting'),
  {
    name: 'visits',
    symbol: 'v',
    kind: 'ratio',
    unit: '1',
    meaning: 'visits in a life',
    range: [0, 100],
    about: 'visits',
  },
];

/** A figure of a fastening: optional, since what is open is listed rather than left out. */
export const fasteningColumn = (figure: FasteningFigure): ScalarColumn => ({
  in: 'scalar',
  name: figure.name,
  symbol: figure.symbol,
  kind: figure.kind,
  unit: figure.unit,
  meaning: figure.meaning,
  range: figure.range,
  bounds: { atLeast: 0 },
  where: `${figure.meaning}, of the alternative`,
  optional: true,
  find: (at, row) => at.number(row, `fastening.${figure.name}`),
});

/** Figures that somebody said do not apply to an alternative. */
export const notApplicable: TermColumn = {
  in: 'term',
  name: 'notApplicable',
  meaning: 'figures that do not apply, parted by blanks, e.g. "nutPrice nutTime"',
  where: 'readings of the alternative that say "not applicable"',
  find: (at, row) =>
    at.word(
      FASTENING_FIGURES.map(({ name }) => name)
        .filter((name) => {
          const cell = at.view.cell(row, `fastening.${name}`);
          return 'missing' in cell && cell.why === 'not applicable';
        })
        .join(' '),
    ),
};
