import { Resvg } from '@resvg/resvg-js';
import { mulberry32 } from '../prng.ts';
import { box, fine, type Line, type Point, polyline } from './line.ts';
import type { Outline } from './outlines.ts';
import { textLines } from './stroke-font.ts';

const WIDTH = 960;
const HEIGHT = 640;
/** Where the part lies, in pixels: left, top, right, bottom. */
const BENCH = { left: 80, top: 60, right: 880, bottom: 480 } as const;
const STRIP_TOP = 530;
const INK = '#20262e';
const FILLS = { part: '#d9d6cd', hole: '#8f938f' } as const;
const PAPER = '#efece4';

/** How a drawing in mm is laid on the photograph. */
interface Layout {
  readonly pixelsPerMm: number;
  readonly place: (p: Point) => Point;
}

/** Fits the lines on the bench, turned a little, as a part lies when it is put down by hand. */
function layOut(lines: readonly Line[], random: () => number): Layout {
  const xs = lines.flatMap((line) => line.points.map(([x]) => x));
  const ys = lines.flatMap((line) => line.points.map(([, y]) => y));
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const pixelsPerMm = Math.min(
    (BENCH.right - BENCH.left) / (x1 - x0),
    (BENCH.bottom - BENCH.top) / (y1 - y0),
  );
  const turn = (random() - 0.5) * 0.04;
  const [cos, sin] = [Math.cos(turn) * pixelsPerMm, Math.sin(turn) * pixelsPerMm];
  const [cx, cy] = [(BENCH.left + BENCH.right) / 2, (BENCH.top + BENCH.bottom) / 2];
  const place = ([x, y]: Point): Point => {
    const [dx, dy] = [x - (x0 + x1) / 2, y - (y0 + y1) / 2];
    return [cx + dx * cos - dy * sin, cy + dx * sin + dy * cos];
  };
  return { pixelsPerMm, place };
}

const LONGEST_STROKE = 60;

/** The stretch from a to b, without a, in short strokes that stray by less than a pixel. */
function strokes(a: Point, b: Point, random: () => number): Point[] {
  const steps = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / LONGEST_STROKE));
  return Array.from({ length: steps }, (_, i): Point => {
    const t = (i + 1) / steps;
    const stray = (): number => (random() - 0.5) * 1.2;
    return [a[0] + (b[0] - a[0]) * t + stray(), a[1] + (b[1] - a[1]) * t + stray()];
  });
}

function byHand(line: Line, place: Layout['place'], random: () => number): Line {
  const placed = line.points.map(place);
  const [first] = placed;
  if (first === undefined) return line;
  const drawn = placed.flatMap((p, i) => (i === 0 ? [p] : strokes(placed[i - 1] ?? p, p, random)));
  const last = placed[placed.length - 1] ?? first;
  // The stroke that closes an outline ends where it began.
  const closing = line.closed ? strokes(last, first, random).slice(0, -1) : [];
  return { ...line, points: [...drawn, ...closing] };
}

const coordinate = (x: number): string => x.toFixed(2);

function pathElement(line: Line): string {
  const [first, ...rest] = line.points.map(([x, y]) => `${coordinate(x)} ${coordinate(y)}`);
  const d = `M${first}L${rest.join('L')}${line.closed ? 'Z' : ''}`;
  const fill = line.fill === undefined ? 'none' : FILLS[line.fill];
  const width = line.pen === 'fine' ? 1.2 : 2.4;
  return `<path d="${d}" fill="${fill}" stroke="${INK}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;
}

/** The bar with its ends and its length, at the right of the strip. */
function scaleBar(barMm: number, pixelsPerMm: number): Line[] {
  const [right, y] = [WIDTH - 60, STRIP_TOP + 70];
  const left = right - barMm * pixelsPerMm;
  const ticks = [left, (left + right) / 2, right].map((x) => polyline([x, y - 8], [x, y + 8]));
  return [
    polyline([left, y], [right, y]),
    ...ticks,
    ...textLines(`${barMm} mm`, [left, y - 18], 14),
  ];
}

function strip(outline: Outline, name: string, pixelsPerMm: number): Line[] {
  const title = outline.subject === name ? name : `${outline.subject}  ${name}`;
  return [
    polyline([0, STRIP_TOP], [WIDTH, STRIP_TOP]),
    ...textLines(title, [40, STRIP_TOP + 36], 15),
    ...textLines(outline.caption, [40, STRIP_TOP + 64], 12).map(fine),
    ...textLines('drawn, invented', [40, STRIP_TOP + 92], 13),
    ...scaleBar(outline.barMm, pixelsPerMm),
  ];
}

/**
 * A photograph drawn of one outline: the part, its label, a scale bar and the words "drawn,
 * invented". `name` is what the part is called. PNG, the same bytes for the same seed.
 */
export function drawnPhoto(outline: Outline, name: string, seed: number): Uint8Array {
  const random = mulberry32(seed);
  const { pixelsPerMm, place } = layOut(outline.lines, random);
  const lines = [
    fine(box(20, 20, WIDTH - 40, STRIP_TOP - 40)),
    ...outline.lines.map((line) => byHand(line, place, random)),
    ...strip(outline, name, pixelsPerMm),
  ];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}"><rect width="${WIDTH}" height="${HEIGHT}" fill="${PAPER}"/>${lines.map(pathElement).join('')}</svg>`;
  return new Resvg(svg, { font: { loadSystemFonts: false } }).render().asPng();
}
