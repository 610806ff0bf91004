import type { Ink, Picture, Spot, Words } from '../../src/drawing/index.ts';
import { textWidth } from '../../src/drawing/text-width.ts';

export const spotsOf = (ink: Ink): readonly Spot[] =>
  ink.i === 'line' ? ink.spots : ink.i === 'area' ? ink.rings.flat() : [ink.at];

export const wordsOf = (p: Picture): Words[] =>
  p.inks.filter((ink): ink is Words => ink.i === 'words');

type Box = readonly [left: number, top: number, right: number, bottom: number];

/** What a line of text takes of the paper. */
export function boxOf({ at: [x, y], text, size, anchor, turned }: Words): Box {
  const long = textWidth(text, size);
  const from = anchor === 'start' ? 0 : anchor === 'end' ? -long : -long / 2;
  return turned
    ? [x - 5, y - from - long, x + 5, y - from]
    : [x + from, y - 5, x + from + long, y + 5];
}

/** Ink beyond the edges of the paper, and words that reach over its sides. */
export function offPaper(p: Picture): string[] {
  const isOff = ([x, y]: Spot): boolean =>
    !(x >= -0.01 && x <= p.width + 0.01 && y >= -0.01 && y <= p.height + 0.01);
  const inks = p.inks.filter((ink) => spotsOf(ink).some(isOff));
  const said = wordsOf(p).filter((w) => boxOf(w)[0] < -1 || boxOf(w)[2] > p.width + 1);
  return [
    ...inks.map((ink) => (ink.i === 'words' ? ink.text : ink.i)),
    ...said.map((w) => `${w.text} is too wide`),
  ];
}

/** Pairs of words that are set over one another. */
export function wordsOverWords(p: Picture): string[] {
  const all = wordsOf(p).map((w) => ({ text: w.text, box: boxOf(w) }));
  return all.flatMap((a, i) =>
    all
      .slice(i + 1)
      .filter((b) => overlap(a.box, b.box))
      .map((b) => `${a.text} / ${b.text}`),
  );
}

const overlap = (a: Box, b: Box): boolean =>
  a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
