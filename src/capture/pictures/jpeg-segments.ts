/** A segment of a JPEG file before its picture data: marker, and where it lies, marker included. */
export interface Segment {
  readonly marker: number;
  readonly from: number;
  readonly to: number;
}

const START_OF_SCAN = 0xda;

export const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === 0xff && bytes[1] === 0xd8;

/** Segments up to the picture data, as far as the bytes reach. */
export function jpegSegments(bytes: Uint8Array): Segment[] {
  const segments: Segment[] = [];
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    const length = ((bytes[at + 2] ?? 0) << 8) + (bytes[at + 3] ?? 0);
    if (marker === START_OF_SCAN || length < 2) break;
    segments.push({ marker, from: at, to: at + 2 + length });
    at += 2 + length;
  }
  return segments;
}

/** True when a segment's data open with these characters. */
export const opensWith = (bytes: Uint8Array, { from }: Segment, text: string): boolean =>
  [...text].every((char, i) => bytes[from + 4 + i] === char.charCodeAt(0));
