import {
  altText,
  type FigureTable,
  figureTable,
  type KindNumber,
  type Layout,
  layOut,
  nominalText,
  type Picture,
  pieces,
} from '../drawing/index.ts';
import type { Figure, FigureNumber } from '../engine/index.ts';
import type { ShownNumber } from './model.ts';
import { type NumberGiven, numberText, shortText, shownNumber } from './wording.ts';

/** Width of the text on a sheet, in units of a picture: 168 mm. */
const SHEET_WIDTH = 728;
/** Room for a picture on a sheet below its heading, in the same. */
const SHEET_HEIGHT = 900;

/** A figure as printed: laid out for a sheet, with its words and its numbers in rows. */
export interface ReportFigure {
  readonly figure: Figure;
  readonly alt: string;
  /** One, or several where it is higher than a sheet. */
  readonly pictures: readonly Picture[];
  readonly table: FigureTable;
}

export const reportFigure = (figure: Figure): ReportFigure => ({
  figure,
  alt: altText(figure, sayNumber),
  pictures: pieces(layOut(figure, { width: SHEET_WIDTH, say: sayNumber }), SHEET_HEIGHT),
  table: figureTable(figure, sayNumber),
});

/** A number of a figure in the words and the rounding of reports. */
export const sayNumber: Layout['say'] = (number, beside = []) => {
  if (number.u === undefined) return { text: nominalText(number, beside), lack: '' };
  const shown = shownNumber(given(number), beside.map(given));
  const { incomplete } = shown;
  const text =
    incomplete === '' ? numberText(shown) : shortText({ ...shown, incomplete: '', spread: '' });
  return { text, lack: incomplete };
};

const given = (n: KindNumber): NumberGiven => ({ ...n, u: n.u ?? 0, how: 'calculated' });

/** The same result from several questions on one scale; undefined where no spread could be seen. */
export function comparisonFigure(
  meaning: string,
  rows: readonly { readonly label: string; readonly shown: ShownNumber }[],
): ReportFigure | undefined {
  const drawable = rows.filter(({ shown }) => shown.knownU > 0 && Number.isFinite(shown.x));
  const [first] = drawable;
  if (!first || drawable.length < 2) return undefined;
  const { kind, unit } = first.shown;
  return reportFigure({
    f: 'bars',
    title: `${meaning}, side by side`,
    alt: 'A mark for each way it was found, on one scale.',
    kind,
    unit,
    from: 'nearest',
    rows: drawable.map(({ label, shown }) => ({
      label,
      number: numberOf(shown),
      ...(shown.incomplete === '' ? {} : { word: shown.incomplete }),
    })),
  });
}

const numberOf = ({ x, u, knownU }: ShownNumber): FigureNumber => ({ x, u, knownU });
