import type { LinePlot } from '../engine/index.ts';
import { fromSi, unitSymbol } from '../quantity/index.ts';
import { type Layout, NARROW } from './layout.ts';
import { type Fill, type Ink, line, type Pen, type Picture, type Spot, words } from './picture.ts';
import { niceScale, type Scale, shownSpan } from './scale.ts';
import { brokenText, textWidth } from './text-width.ts';

const HEIGHT = 260;
const TOP = 26;
/** A mark's words stand above the field, each on a line of its own. */
const MARK = 17;
const BANDS: readonly Fill[] = ['lines', 'lines back', 'levels', 'dots'];

/** A series in units of paper. */
interface Drawn {
  readonly label: string;
  readonly pen: Pen;
  readonly band: Fill;
  readonly spots: readonly Spot[];
  readonly low: readonly Spot[];
  readonly high: readonly Spot[];
}

interface Field {
  readonly x: Scale;
  readonly y: Scale;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly at: (x: number, y: number) => Spot;
}

/** Lines over a number with their bands, what is demanded across, and places marked upright. */
export function linePicture(f: LinePlot, { width, say }: Layout): Picture {
  const field = fieldOf(f, width);
  const drawn = f.series.map((series, i) => drawnSeries(f, series, i, field));
  return {
    width,
    height: field.bottom + 44,
    inks: [
      ...gridInks(f, field),
      ...drawn.flatMap(bandInks),
      ...drawn.map(({ pen, spots }) => line(pen, ...spots)),
      ...demandInks(f, field),
      ...markInks(f, field, say),
      ...nameInks(drawn, field, width),
    ],
    cuts: [],
  };
}

function fieldOf(f: LinePlot, width: number): Field {
  const [xs, ys] = [reachX(f), reachY(f)];
  const x = niceScale(Math.min(...xs), Math.max(...xs), width < NARROW ? 4 : 7);
  const y = niceScale(Math.min(...ys), Math.max(...ys), 6);
  const ticks = Math.max(...y.ticks.map((t) => textWidth(t.text, 'small')));
  const names = width < NARROW ? 0 : Math.min(width / 4, widest(f.series.map((s) => s.label)));
  const top = TOP + MARK * (f.marks?.length ?? 0);
  const last = textWidth(x.ticks.at(-1)?.text ?? '', 'small') / 2;
  const [left, right, bottom] = [ticks + 12, width - Math.max(names + 16, last + 2), top + HEIGHT];
  const at = (a: number, b: number): Spot => [
    left + ((a - x.low) / (x.high - x.low)) * (right - left),
    bottom - ((b - y.low) / (y.high - y.low)) * (bottom - top),
  ];
  return { x, y, left, right, top, bottom, at };
}

const widest = (labels: readonly string[]): number =>
  labels.reduce((most, label) => Math.max(most, textWidth(label) + 10), 0);

const reachX = ({ series, marks, x }: LinePlot): number[] => [
  ...series.flatMap((s) => s.points.map((p) => fromSi(p.at, x.unit, x.kind))),
  ...(marks ?? []).map((m) => fromSi(m.number.x, x.unit, x.kind)),
];

const reachY = ({ series, demands, y }: LinePlot): number[] => [
  ...series.flatMap((s) =>
    s.points.flatMap((p) => {
      const span = shownSpan(p, y.kind, y.unit);
      return [span.x - span.reach, span.x + span.reach];
    }),
  ),
  ...(demands ?? []).map((d) => fromSi(d.y, y.unit, y.kind)),
];

function drawnSeries(
  f: LinePlot,
  series: LinePlot['series'][number],
  i: number,
  { at }: Field,
): Drawn {
  const points = series.points.map((p) => ({
    at: fromSi(p.at, f.x.unit, f.x.kind),
    ...shownSpan(p, f.y.kind, f.y.unit),
  }));
  return {
    label: series.label,
    pen: series.line === 'continuous' ? 'wide' : series.line,
    band: BANDS[i % BANDS.length] ?? 'lines',
    spots: points.map((p) => at(p.at, p.x)),
    low: points.map((p) => at(p.at, p.x - p.reach)),
    high: points.map((p) => at(p.at, p.x + p.reach)),
  };
}

function bandInks({ low, high, band }: Drawn): Ink[] {
  const isThin = high.every(([, y], i) => Math.abs(y - (low[i]?.[1] ?? y)) < 1);
  if (isThin) return [];
  return [{ i: 'area', rings: [[...high, ...[...low].reverse()]], pen: 'hair', fill: band }];
}

function gridInks(f: LinePlot, { x, y, left, right, top, bottom, at }: Field): Ink[] {
  const small = { size: 'small', tone: 'soft' } as const;
  return [
    ...x.ticks.flatMap((t): Ink[] => {
      const [here] = at(t.x, y.low);
      return [
        line('hair', [here, top], [here, bottom]),
        words([here, bottom + 11], t.text, { ...small, anchor: 'middle' }),
      ];
    }),
    ...y.ticks.flatMap((t): Ink[] => {
      const [, here] = at(x.low, t.x);
      return [
        line('hair', [left, here], [right, here]),
        words([left - 6, here], t.text, { ...small, anchor: 'end' }),
      ];
    }),
    line('narrow', [left, top], [left, bottom], [right, bottom]),
    words([0, 8], named(f.y)),
    words([right, bottom + 30], named(f.x), { anchor: 'end' }),
  ];
}

const named = ({ label, unit }: LinePlot['x']): string =>
  unitSymbol(unit) === '' ? label : `${label}, ${unitSymbol(unit)}`;

function demandInks(f: LinePlot, { x, left, right, at }: Field): Ink[] {
  return (f.demands ?? []).flatMap(({ label, y }): Ink[] => {
    const [, here] = at(x.low, fromSi(y, f.y.unit, f.y.kind));
    return [
      line('chain', [left, here], [right, here]),
      words([left + 8, here - 9], label, { onPaper: true }),
    ];
  });
}

function markInks(f: LinePlot, { y, bottom, at, left, right }: Field, say: Layout['say']): Ink[] {
  return (f.marks ?? []).flatMap(({ label, number }, i): Ink[] => {
    const { kind, unit } = f.x;
    const span = shownSpan(number, kind, unit);
    const [here] = at(span.x, y.low);
    const [from, to] = [at(span.x - span.reach, y.low)[0], at(span.x + span.reach, y.low)[0]];
    const height = TOP + MARK * i;
    const { text, lack } = say({ ...number, kind, unit });
    const said = [`${label} ${text}`, lack].filter((t) => t !== '').join(', ');
    const toLeft = here + textWidth(said) + 6 > right;
    return [
      line('dashed', [here, height - 6], [here, bottom]),
      ...(to - from > 3
        ? [line('medium', [Math.max(from, left), bottom - 5], [Math.min(to, right), bottom - 5])]
        : []),
      words([here + (toLeft ? -5 : 5), height], said, {
        anchor: toLeft ? 'end' : 'start',
        tone: lack === '' ? 'strong' : 'open',
      }),
    ];
  });
}

/** Names at the ends of their lines, clear of one another; over the lines on narrow paper. */
function nameInks(drawn: readonly Drawn[], { right, top, bottom }: Field, width: number): Ink[] {
  const room = width - right - 8;
  const isBeside = width >= NARROW;
  const ends = drawn
    .map(({ label, spots }) => ({ label, end: spots.at(-1) ?? ([right, bottom] as const) }))
    .sort((a, b) => a.end[1] - b.end[1]);
  let free = top - 8;
  return ends.flatMap(({ label, end: [x, y] }) => {
    const lines = isBeside ? brokenText(label, room, 2) : [label];
    const first = Math.max(y - 7 * (lines.length - 1) - (isBeside ? 0 : 12), free + 14);
    free = first + 14 * (lines.length - 1);
    return lines.map((text, n) =>
      isBeside
        ? words([x + 8, first + 14 * n], text)
        : words([Math.min(x, right - 4), first + 14 * n], text, { anchor: 'end', onPaper: true }),
    );
  });
}
