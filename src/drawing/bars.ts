import type { BarRow, Bars } from '../engine/index.ts';
import { fromSi, unitSymbol } from '../quantity/index.ts';
import { dimension } from './dimension.ts';
import { type KindNumber, type Layout, NARROW } from './layout.ts';
import { box, type Ink, line, type Picture, words } from './picture.ts';
import { niceScale, type Scale, shownSpan } from './scale.ts';
import { brokenText, cutText, textWidth } from './text-width.ts';

/** Heights of a row: with its words beside the scale, with two lines of them, with them above it. */
const ROW = { plain: 24, tall: 36, stacked: 46 } as const;
const BAR = 13;
const GAP_HEIGHT = 34;
const LINE_HEIGHT = 17;
/** With more rows than these the scale stands above them as well. */
const LONG = 24;
const SCALE_HEIGHT = 18;

/** A row with what is drawn of it, in the unit shown. */
interface Row {
  readonly label: string;
  readonly text: string;
  readonly open: boolean;
  readonly span?: { readonly x: number; readonly reach: number };
  /** Where its bar begins, of a row of steps. */
  readonly start?: number;
}

/** Where labels, scale and numbers stand. */
interface Frame {
  readonly stacked: boolean;
  readonly labelWidth: number;
  readonly left: number;
  readonly length: number;
  readonly top: number;
  /** Upper end of each row. */
  readonly tops: readonly number[];
  readonly foot: number;
  readonly at: (x: number) => number;
  /** Middle of a row's bar. */
  readonly y: (row: number) => number;
}

/** Numbers side by side on one scale: bars from zero, or marks, all with their whiskers. */
export function barsPicture(f: Bars, { width, say }: Layout): Picture {
  const rows = f.rows.map((row) => rowOf(row, f, say));
  const scale = scaleOf(f, rows);
  const frame = frameOf(f, rows, scale, width);
  const { tops, foot } = frame;
  return {
    width,
    height: foot + 20,
    inks: [
      ...axisInks(f, scale, frame),
      ...rows.flatMap((row, i) => rowInks(row, frame.y(i), f, frame)),
      ...zeroInks(scale, frame),
      ...rows.flatMap((row, i) => labelInks(row, i, frame, width)),
      ...lineInks(f, frame, width),
      ...gapInks(f, rows, frame, { width, say }),
    ],
    cuts: f.gap ? [] : tops,
  };
}

export const kindNumber = (
  number: NonNullable<BarRow['number']>,
  { kind, unit }: { readonly kind: Bars['kind']; readonly unit: string },
): KindNumber => ({ ...number, kind, unit });

function rowOf({ label, number, word, start }: BarRow, f: Bars, say: Layout['say']): Row {
  if (!number) return { label, text: word ?? 'not known', open: true };
  const beside = f.rows.flatMap((r) => (r.number ? [kindNumber(r.number, f)] : []));
  const { text, lack } = say(kindNumber(number, f), beside);
  const said = word ?? lack;
  return {
    label,
    text: said === '' ? text : `${text}, ${said}`,
    open: lack !== '',
    ...spanOf(shownSpan(number, f.kind, f.unit), start, f),
  };
}

/** A step ends its number further than it begins, with the spread of the number. */
function spanOf(
  span: NonNullable<Row['span']>,
  start: number | undefined,
  f: Bars,
): Pick<Row, 'span' | 'start'> {
  if (start === undefined) return { span };
  const from = fromSi(start, f.unit, f.kind);
  return { span: { x: from + span.x, reach: span.reach }, start: from };
}

function scaleOf(f: Bars, rows: readonly Row[]): Scale {
  const ends = [
    ...rows.flatMap(({ span }) => (span ? [span.x - span.reach, span.x + span.reach] : [])),
    ...rows.flatMap(({ start }) => start ?? []),
    ...(f.lines ?? []).map((l) => fromSi(l.x, f.unit, f.kind)),
    ...(f.from === 'zero' ? [0] : []),
  ];
  return ends.length === 0 ? niceScale(0, 1) : niceScale(Math.min(...ends), Math.max(...ends));
}

/** Zero where there are no texts. */
const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map((t) => textWidth(t)));

function frameOf(f: Bars, rows: readonly Row[], scale: Scale, width: number): Frame {
  const stacked = width < NARROW;
  const numbers = Math.min(widest(rows.map((r) => r.text)) + 12, 0.4 * width);
  const labels = Math.min(widest(rows.map((r) => r.label)) + 14, 0.34 * width);
  const ticks = scale.ticks.map((t) => textWidth(t.text, 'small') / 2);
  const [first = 0, last = 0] = [ticks[0], ticks.at(-1)];
  const left = stacked ? first + 2 : labels;
  const unit = textWidth(unitSymbol(f.unit), 'small');
  const length = stacked ? width - first - last - 8 - unit : width - labels - numbers - 14;
  const above = (f.gap ? GAP_HEIGHT : 4) + LINE_HEIGHT * (f.lines?.length ?? 0);
  const top = above + (rows.length > LONG ? SCALE_HEIGHT : 0);
  const heights = rows.map((r) =>
    stacked ? ROW.stacked : textWidth(r.label) > labels - 10 ? ROW.tall : ROW.plain,
  );
  const tops = heights.map((_, i) => heights.slice(0, i).reduce((sum, h) => sum + h, top));
  return {
    ...{ stacked, labelWidth: labels - 10, left, length, top, tops },
    foot: heights.reduce((sum, h) => sum + h, top) + 4,
    at: (x) => left + ((x - scale.low) / (scale.high - scale.low)) * length,
    y: (row) => {
      const height = heights[row] ?? ROW.plain;
      return (tops[row] ?? top) + (stacked ? height - 14 : height / 2);
    },
  };
}

function axisInks(f: Bars, scale: Scale, { at, top, tops, foot, left, length }: Frame): Ink[] {
  const right = left + length;
  const ends = tops.length > LONG ? [top - 10, foot + 11] : [foot + 11];
  const symbol = unitSymbol(f.unit);
  return [
    ...scale.ticks.flatMap(({ x, text }) => [
      line('hair', [at(x), top], [at(x), foot]),
      ...ends.map((y) =>
        words([at(x), y], text, { anchor: 'middle', size: 'small', tone: 'soft' }),
      ),
    ]),
    line('narrow', [left, foot], [right, foot]),
    ...(symbol === '' ? [] : [unitWords(symbol, scale, right, foot)]),
  ];
}

/** Zero, over the bars and whiskers that reach it. */
const zeroInks = ({ low, high }: Scale, { at, top, foot }: Frame): Ink[] =>
  low <= 0 && high >= 0 ? [line('medium', [at(0), top], [at(0), foot])] : [];

/** The unit stands behind the last number of the scale. */
function unitWords(symbol: string, { ticks }: Scale, right: number, foot: number): Ink {
  const half = textWidth(ticks.at(-1)?.text ?? '', 'small') / 2;
  return words([right + half + 5, foot + 11], symbol, { size: 'small', tone: 'soft' });
}

function labelInks(row: Row, i: number, frame: Frame, width: number): Ink[] {
  const { stacked, labelWidth, left, length, tops } = frame;
  const tone = row.open ? 'open' : 'strong';
  if (stacked) {
    const y = (tops[i] ?? 0) + 12;
    const number = cutText(row.text, 0.6 * width);
    const label = cutText(row.label, width - textWidth(number) - 16);
    return [
      words([0, y], label, { onPaper: true }),
      words([width, y], number, { tone, anchor: 'end', onPaper: true }),
    ];
  }
  const y = frame.y(i);
  const lines = brokenText(row.label, labelWidth, 2);
  const first = y - 7 * (lines.length - 1);
  return [
    ...lines.map((text, n) => words([0, first + 14 * n], text)),
    words([left + length + 14, y], cutText(row.text, width - left - length - 14), { tone }),
  ];
}

/** A bar or a mark, and the band between its whiskers. */
/** A row's bar, mark or step; nothing where nothing is known. */
function rowInks({ span, start }: Row, y: number, f: Bars, frame: Frame): Ink[] {
  if (!span) return [];
  return start === undefined ? spanInks(span, y, f, frame) : stepInks(span, start, y, frame);
}

/** The bar of a step, from where it begins to where it ends, with its whisker there. */
function stepInks(span: NonNullable<Row['span']>, start: number, y: number, { at }: Frame): Ink[] {
  const [from, to] = [Math.min(at(start), at(span.x)), Math.max(at(start), at(span.x))];
  const [low, high] = [at(span.x - span.reach), at(span.x + span.reach)];
  return [
    box(from, y - BAR / 2, to - from, BAR, 'narrow', 'lines'),
    line('medium', [at(start), y - BAR], [at(start), y + BAR / 2]),
    ...(high - low > 1.5 ? whisker(low, high, y) : []),
    line('wide', [at(span.x), y - BAR / 2 - 1], [at(span.x), y + BAR / 2 + 1]),
  ];
}

function spanInks({ x, reach }: NonNullable<Row['span']>, y: number, f: Bars, frame: Frame): Ink[] {
  const { at } = frame;
  const [low, here, high] = [at(x - reach), at(x), at(x + reach)];
  const half = BAR / 2;
  if (f.from === 'nearest')
    return [
      ...(reach > 0 ? [box(low, y - half + 2, high - low, BAR - 4, 'narrow', 'lines')] : []),
      box(here - 1.5, y - half - 1, 3, BAR + 2, 'none', 'ink'),
    ];
  const [from, to] = here < at(0) ? [here, at(0)] : [at(0), here];
  return [
    box(from, y - half, to - from, BAR, 'narrow', 'lines'),
    ...(high - low > 1.5 ? whisker(low, high, y) : []),
    line('wide', [here, y - half - 1], [here, y + half + 1]),
  ];
}

const whisker = (low: number, high: number, y: number): Ink[] => [
  box(low, y - 2.5, high - low, 5, 'none', 'paper'),
  line('medium', [low, y], [high, y]),
  ...[low, high].map((x) => line('medium', [x, y - 4], [x, y + 4])),
];

/** What is demanded, across all rows, its words above them. */
function lineInks(f: Bars, { at, foot }: Frame, width: number): Ink[] {
  return (f.lines ?? []).flatMap(({ label, x }, i) => {
    const here = at(fromSi(x, f.unit, f.kind));
    const y = (f.gap ? GAP_HEIGHT : 4) + LINE_HEIGHT * i + 8;
    const toLeft = here + textWidth(label) + 8 > width;
    const anchor = toLeft ? 'end' : 'start';
    return [
      line('dashed', [here, y - 6], [here, foot]),
      words([here + (toLeft ? -5 : 5), y], label, { anchor }),
    ];
  });
}

/** The difference between two rows, as a dimension above them. */
function gapInks(
  { gap, kind, unit }: Bars,
  rows: readonly Row[],
  frame: Frame,
  { width, say }: Layout,
): Ink[] {
  const [a, b] = gap ? [rows[gap.of]?.span, rows[gap.less]?.span] : [];
  if (!gap || !a || !b) return [];
  const { at, y } = frame;
  const { text, lack } = say(kindNumber(gap.number, { kind, unit }));
  const said = gap.word ?? lack;
  const ends = [
    { x: at(a.x), row: gap.of },
    { x: at(b.x), row: gap.less },
  ];
  return [
    ...ends.map((e) => line('hair', [e.x, 14], [e.x, y(e.row) - BAR / 2])),
    ...dimension(at(a.x), at(b.x), 18, said === '' ? text : `${text}, ${said}`, {
      from: 0,
      to: width,
    }),
  ];
}
