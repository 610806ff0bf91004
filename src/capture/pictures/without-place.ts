import { isJpeg, jpegSegments } from './jpeg-segments.ts';
import { readExif } from './read-exif.ts';

/** Segments that a picture needs, and colour profiles: all other notes (APP1 to APP15, comments) may hold a place. */
const isNote = (marker: number): boolean =>
  (marker >= 0xe1 && marker <= 0xef && marker !== 0xe2 && marker !== 0xee) || marker === 0xfe;
/** Chunks of PNG in which notes stand (PNG third edition: eXIf, tEXt, zTXt, iTXt). */
const NOTE_CHUNKS: ReadonlySet<string> = new Set(['eXIf', 'tEXt', 'zTXt', 'iTXt']);
const PNG = [0x89, 0x50, 0x4e, 0x47];

/**
 * A copy of a picture for others: without Exif, XMP, IPTC and comments, and so without the place
 * where it was taken, its camera's number or its owner. Which way is up is kept. The picture data
 * stay as they are, byte for byte; the original is not touched.
 */
export function withoutPlace(bytes: Uint8Array): Uint8Array {
  if (isJpeg(bytes)) return jpegWithout(bytes);
  return PNG.every((byte, i) => bytes[i] === byte) ? pngWithout(bytes) : bytes;
}

function jpegWithout(bytes: Uint8Array): Uint8Array {
  const segments = jpegSegments(bytes);
  const { orientation } = readExif(bytes);
  const end = segments.at(-1)?.to ?? 2;
  const kept = segments.filter((s) => !isNote(s.marker)).map((s) => bytes.subarray(s.from, s.to));
  const upright = orientation > 1 && orientation <= 8 ? [orientationOnly(orientation)] : [];
  return joined([bytes.subarray(0, 2), ...upright, ...kept, bytes.subarray(end)]);
}

/** An Exif segment that says which way is up and nothing else. */
const orientationOnly = (orientation: number): Uint8Array =>
  new Uint8Array([
    ...[0xff, 0xe1, 0, 34, 0x45, 0x78, 0x69, 0x66, 0, 0],
    ...[0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1],
    ...[0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0],
  ]);

function pngWithout(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kept = [bytes.subarray(0, 8)];
  let at = 8;
  while (at + 12 <= bytes.length) {
    const to = at + 12 + view.getUint32(at);
    const kind = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (!NOTE_CHUNKS.has(kind)) kept.push(bytes.subarray(at, to));
    at = to;
  }
  return joined(kept);
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
