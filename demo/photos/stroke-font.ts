import type { Line, Point } from './line.ts';

/**
 * A single-stroke alphabet of our own, so that labels need no font file. Each glyph stands on a
 * grid 4 wide and 6 high from the baseline up; `00-26-40` is a stroke through (0,0), (2,6), (4,0);
 * `a` and `b` stand for one and two below the baseline.
 */
const GLYPHS: Readonly<Record<string, string>> = {
  A: '00-26-40 13-33',
  B: '03-33-44-45-36-06-00-30-41-42-33',
  C: '45-36-16-05-01-10-30-41',
  D: '00-06-26-44-42-20-00',
  E: '46-06-00-40 03-33',
  F: '46-06-00 03-33',
  G: '45-36-16-05-01-10-30-41-43-23',
  H: '00-06 40-46 03-43',
  I: '20-26',
  J: '01-10-30-41-46',
  K: '00-06 46-03-40',
  L: '06-00-40',
  M: '00-06-23-46-40',
  N: '00-06-40-46',
  O: '10-01-05-16-36-45-41-30-10',
  P: '00-06-36-45-44-33-03',
  Q: '10-01-05-16-36-45-41-30-10 22-40',
  R: '00-06-36-45-44-33-03 23-40',
  S: '45-36-16-05-04-13-33-42-41-30-10-01',
  T: '06-46 26-20',
  U: '06-01-10-30-41-46',
  V: '06-20-46',
  W: '06-10-24-30-46',
  X: '00-46 06-40',
  Y: '06-23-46 23-20',
  Z: '06-46-00-40',
  a: '40-44 43-34-14-03-01-10-30-41',
  b: '06-00 01-10-30-41-43-34-14-03',
  c: '43-34-14-03-01-10-30-41',
  d: '46-40 41-30-10-01-03-14-34-43',
  e: '02-42-43-34-14-03-01-10-30-41',
  f: '36-26-15-10 04-34',
  g: '44-4a-3b-1b-0a 43-34-14-03-01-10-30-41',
  h: '06-00 03-14-34-43-40',
  i: '20-24 25-26',
  j: '24-2a-1b-0b 25-26',
  k: '06-00 34-02-40',
  l: '26-20',
  m: '00-04 03-14-23-20 23-34-43-40',
  n: '00-04 03-14-34-43-40',
  o: '10-01-03-14-34-43-41-30-10',
  p: '04-0b 03-14-34-43-41-30-10-01',
  q: '44-4b 43-34-14-03-01-10-30-41',
  r: '00-04 03-14-34',
  s: '43-34-14-03-12-32-41-30-10-01',
  t: '16-11-20-30 04-34',
  u: '04-01-10-30-41 44-40',
  v: '04-20-44',
  w: '04-10-23-30-44',
  x: '00-44 04-40',
  y: '04-20 44-1b',
  z: '04-44-00-40',
  '0': '10-01-05-16-36-45-41-30-10',
  '1': '15-26-20',
  '2': '05-16-36-45-44-00-40',
  '3': '05-16-36-45-44-33-42-41-30-10-01 33-23',
  '4': '30-36-02-42',
  '5': '46-06-04-34-43-41-30-10-01',
  '6': '45-36-16-05-01-10-30-41-42-33-13-02',
  '7': '06-46-10',
  '8': '13-04-05-16-36-45-44-33-13-02-01-10-30-41-42-33',
  '9': '01-10-30-41-45-36-16-05-04-13-33-44',
  '-': '13-33',
  '.': '20-21',
  ',': '21-10',
  ':': '21-22 24-25',
  '/': '00-46',
  '+': '13-33 22-24',
  '(': '36-14-12-30',
  ')': '16-34-32-10',
  '°': '15-26-35-24-15',
  ' ': '',
};

/** From the start of one glyph to the start of the next, on the grid. */
const ADVANCE = 6;
const HEIGHT = 6;

const ROWS = 'ba0123456';
const BELOW = 2;

const gridPoint = (pair: string): Point => [Number(pair[0]), ROWS.indexOf(pair.charAt(1)) - BELOW];

/** @throws RangeError when the alphabet has no such character. */
function glyph(char: string): readonly Line[] {
  const strokes = GLYPHS[char];
  if (strokes === undefined) throw new RangeError(`the stroke font has no "${char}"`);
  return strokes === ''
    ? []
    : strokes.split(' ').map((s) => ({ points: s.split('-').map(gridPoint) }));
}

/** Text as lines, its first baseline point at `at`; y grows downward, `height` is of a capital. */
export function textLines(text: string, at: Point, height: number): Line[] {
  const scale = height / HEIGHT;
  return [...text].flatMap((char, i) =>
    glyph(char).map(({ points }) => ({
      points: points.map(([x, y]): Point => [at[0] + (i * ADVANCE + x) * scale, at[1] - y * scale]),
    })),
  );
}
