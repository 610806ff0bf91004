import { formatTable } from '../csv.ts';
import { drawnPhoto } from './drawn-photo.ts';
import { OUTLINES, type Outline } from './outlines.ts';

const SEED = 27;

export const PHOTO_HEADINGS = ['file', 'subject', 'caption', 'taken_at'] as const;

const fileName = (outline: Outline, i: number): string =>
  `photos/${String(i + 1).padStart(2, '0')}-${outline.subject.toLowerCase()}.png`;

/** One photograph every seven minutes of a made-up day. */
const takenAt = (i: number): string => {
  const minutes = 9 * 60 + 7 * i;
  const two = (n: number): string => String(n).padStart(2, '0');
  return `2026-10-05T${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
};

/**
 * The drawn photographs and photos.csv that lists them, by path in a record's folder.
 * `names` gives what each subject is called.
 */
export function album(names: ReadonlyMap<string, string>): Map<string, string | Uint8Array> {
  const files = new Map<string, string | Uint8Array>();
  OUTLINES.forEach((outline, i) => {
    const name = names.get(outline.subject) ?? outline.subject;
    files.set(fileName(outline, i), drawnPhoto(outline, name, SEED + i));
  });
  const rows = OUTLINES.map((outline, i) => ({
    file: fileName(outline, i),
    subject: outline.subject,
    caption: `${outline.caption} (drawn, invented)`,
    taken_at: takenAt(i),
  }));
  return files.set('photos.csv', formatTable(PHOTO_HEADINGS, rows));
}
