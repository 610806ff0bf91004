/** Text heights in units. */
export const SIZES = { plain: 13, small: 12 } as const;

/**
 * Advance widths of Barlow Semi Condensed Medium from the space to the tilde, in hundredths of the
 * type size, as the font file's table "hmtx" has them.
 */
const WIDTHS =
  '20 30 29 63 50 81 62 14 27 27 38 47 23 36 24 40 51 31 48 47 51 47 47 43 48 46 29 26 47 47 47 44 ' +
  '79 53 54 53 54 52 49 54 56 24 51 54 49 62 59 54 52 52 53 51 51 56 53 76 53 51 48 36 40 36 43 45 ' +
  '20 47 49 47 49 48 33 48 49 23 23 47 21 74 49 49 50 50 34 44 32 49 45 66 45 43 41 31 17 31 49';
const BY_CODE = WIDTHS.split(' ').map((w) => Number(w) / 100);
const FIRST = 32;
/** Figures are set to one width. */
const DIGIT = 0.52;
/** Letters beyond those of ASCII: about as wide as a wide letter. */
const OTHER = 0.6;
const NARROW_OTHERS = /[\u202f\u00a0·²³°¹]/;

/** Width of a line of text, in units; strong type is a little wider. */
export function textWidth(text: string, size: keyof typeof SIZES = 'plain'): number {
  let width = 0;
  for (const c of text) {
    if (/\d/.test(c)) width += DIGIT;
    else width += BY_CODE[(c.codePointAt(0) ?? 0) - FIRST] ?? (NARROW_OTHERS.test(c) ? 0.3 : OTHER);
  }
  return width * SIZES[size] * 1.03;
}

/** Text cut with an ellipsis where it is wider than the room. */
export function cutText(text: string, room: number, size: keyof typeof SIZES = 'plain'): string {
  if (textWidth(text, size) <= room) return text;
  const letters = [...text];
  while (letters.length > 1 && textWidth(`${letters.join('')}…`, size) > room) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

/** Words broken into at most `most` lines; the last is cut where they are too many. */
export function brokenText(text: string, room: number, most: number): string[] {
  const lines: string[] = [];
  let now = '';
  for (const word of text.split(' ')) {
    const longer = now === '' ? word : `${now} ${word}`;
    if (now !== '' && lines.length < most - 1 && textWidth(longer) > room) {
      lines.push(now);
      now = word;
    } else now = longer;
  }
  return [...lines, now].map((l) => cutText(l, room));
}
