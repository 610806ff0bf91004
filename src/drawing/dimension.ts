import { arrowHead, type Ink, line, words } from './picture.ts';
import { textWidth } from './text-width.ts';

/** Arrows stand inside from this length on, else they come from outside. */
const INSIDE = 26;

/**
 * A level dimension line with its words, after ISO 129-1 (from memory): arrows inside where there
 * is room; words above it, or beside it where they are longer than the line, within `room`.
 */
export function dimension(
  x1: number,
  x2: number,
  y: number,
  text: string,
  room: { readonly from: number; readonly to: number },
): Ink[] {
  const [a, b] = x1 < x2 ? [x1, x2] : [x2, x1];
  const outside = b - a < INSIDE;
  const reach = outside ? 18 : 0;
  return [
    line('narrow', [a - reach, y], [b + reach, y]),
    arrowHead([a, y], [outside ? 1 : -1, 0]),
    arrowHead([b, y], [outside ? -1 : 1, 0]),
    dimensionWords(a - reach, b + reach, y, text, room, outside),
  ];
}

function dimensionWords(
  a: number,
  b: number,
  y: number,
  text: string,
  room: { readonly from: number; readonly to: number },
  outside: boolean,
): Ink {
  const size = textWidth(text);
  if (!outside && size < b - a) return words([(a + b) / 2, y - 8], text, { anchor: 'middle' });
  if (b + 6 + size < room.to) return words([b + 6, y], text, { onPaper: true });
  if (a - 6 - size > room.from) return words([a - 6, y], text, { anchor: 'end', onPaper: true });
  const middle = Math.min(Math.max((a + b) / 2, room.from + size / 2), room.to - size / 2);
  return words([middle, y - 9], text, { anchor: 'middle' });
}
