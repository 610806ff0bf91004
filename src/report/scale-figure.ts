import { formatNumber, fromSi, spreadFromSi } from '../quantity/index.ts';
import type { ReportOut, ShownNumber } from './model.ts';
import { shortText } from './wording.ts';

/** Whiskers reach this many standard uncertainties to each side. */
const WHISKER_U = 2;
/** Marks further apart than this many whiskers make a drawing on which no spread can be seen. */
const WIDEST = 200;

/**
 * Numbers drawn on one scale, each a mark with whiskers of two standard uncertainties. Positions
 * are shares of the scale's length, 0 at its left end.
 */
export interface ScaleFigure {
  readonly title: string;
  readonly alt: string;
  readonly symbol: string;
  readonly rows: readonly {
    readonly label: string;
    readonly text: string;
    readonly at: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
  /** Position of zero, where it lies on the scale and means something. */
  readonly zero?: number;
  /** Dimension drawn between the marks of the first two rows. */
  readonly gap?: { readonly from: number; readonly to: number; readonly text: string };
}

interface Row {
  readonly label: string;
  readonly shown: ShownNumber;
}

/** Figures that an answer's results allow: a balance with its gap, and decided numbers against zero. */
export function answerFigures(outs: readonly ReportOut[]): ScaleFigure[] {
  const drawable = outs.filter((o) => hasSpread(o.shown));
  const figures: ScaleFigure[] = [];
  for (const gap of drawable.filter((o) => o.decides)) {
    const sides = balanceSides(gap, drawable);
    const figure = sides ? balance(gap, sides) : againstZero(gap);
    if (figure) figures.push(figure);
  }
  return figures;
}

/** The same result from several questions on one scale; undefined where spreads could not be seen. */
export function comparisonFigure(meaning: string, rows: readonly Row[]): ScaleFigure | undefined {
  const drawable = rows.filter((r) => hasSpread(r.shown));
  return drawable.length < 2 ? undefined : figure(`${meaning}, side by side`, drawable);
}

const hasSpread = (n: ShownNumber): boolean => n.knownU > 0 && Number.isFinite(n.x);

/** The two results of which `gap` is the difference, larger role first; undefined when there are none. */
function balanceSides(
  gap: ReportOut,
  outs: readonly ReportOut[],
): [ReportOut, ReportOut] | undefined {
  const others = outs.filter(
    (o) => o !== gap && o.shown.kind === gap.shown.kind && o.shown.unit === gap.shown.unit,
  );
  const near = 1e-6 * Math.max(...others.map((o) => Math.abs(o.shown.x)), Number.MIN_VALUE);
  for (const a of others)
    for (const b of others)
      if (a !== b && Math.abs(a.shown.x - b.shown.x - gap.shown.x) <= near) return [a, b];
  return undefined;
}

function balance(gap: ReportOut, sides: [ReportOut, ReportOut]): ScaleFigure | undefined {
  const drawn = figure(
    `Balance: ${gap.meaning}`,
    sides.map((o) => ({ label: o.meaning, shown: o.shown })),
  );
  const [a, b] = drawn?.rows ?? [];
  if (!drawn || !a || !b) return undefined;
  const text = shortText(gap.shown);
  return {
    ...drawn,
    alt: `${drawn.alt} The difference is ${text}${gap.decision ? `: ${gap.decision.word}` : ''}.`,
    gap: { from: b.at, to: a.at, text },
  };
}

const againstZero = (out: ReportOut): ScaleFigure | undefined =>
  figure(`${out.meaning}, against zero`, [{ label: out.meaning, shown: out.shown }], true);

function figure(title: string, rows: readonly Row[], withZero = false): ScaleFigure | undefined {
  const spans = rows.map(({ label, shown }) => {
    const x = fromSi(shown.x, shown.unit, shown.kind);
    const reach = WHISKER_U * spreadFromSi(shown.knownU, shown.unit, shown.kind);
    return { label, text: shortText(shown), x, low: x - reach, high: x + reach };
  });
  const ends = [...spans.flatMap((s) => [s.low, s.high]), ...(withZero ? [0] : [])];
  const low = Math.min(...ends);
  const high = Math.max(...ends);
  const widest = Math.max(...spans.map((s) => s.high - s.low));
  if (!(high > low) || high - low > WIDEST * widest) return undefined;
  const step = niceStep(high - low);
  const start = Math.floor(low / step);
  const length = (Math.ceil(high / step) - start) * step;
  const share = (x: number): number => (x - start * step) / length;
  const zero = share(0);
  return {
    title,
    alt: altText(title, spans),
    symbol: rows[0]?.shown.symbol ?? '',
    rows: spans.map((s) => ({
      label: s.label,
      text: s.text,
      at: share(s.x),
      low: share(s.low),
      high: share(s.high),
    })),
    ticks: ticksOf(start, step, Math.round(length / step)),
    ...(withZero || (zero > 0 && zero < 1) ? { zero } : {}),
  };
}

const altText = (title: string, rows: readonly { label: string; text: string }[]): string =>
  `${title}. Scale with ${rows.map((r) => `${r.label} ${r.text}`).join('; ')}. ` +
  'Whiskers of two standard uncertainties.';

/** Step of 1, 2 or 5 times a power of ten that gives about five steps. */
function niceStep(span: number): number {
  const power = 10 ** Math.floor(Math.log10(span / 5));
  return power * ([1, 2, 5].find((n) => span / (n * power) <= 6) ?? 10);
}

function ticksOf(start: number, step: number, count: number): ScaleFigure['ticks'] {
  const decimals = Math.max(-Math.floor(Math.log10(step) + 1e-9), 0);
  return Array.from({ length: count + 1 }, (_, i) => ({
    at: i / count,
    text: formatNumber((start + i) * step, decimals),
  }));
}
