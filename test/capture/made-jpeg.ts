/** What a made-up camera writes: time, zone, which way is up, and a place. */
export interface Notes {
  /** "2026:10:05 09:30:00". */
  readonly taken: string;
  readonly orientation?: number;
  readonly gps?: boolean;
}

const text = (s: string): number[] => [...s].map((c) => c.charCodeAt(0));
const u16 = (n: number): number[] => [n >> 8, n & 255];
const u32 = (n: number): number[] => [...u16(n >>> 16), ...u16(n & 0xffff)];
const tag = (id: number, type: number, count: number, value: readonly number[]): number[] => [
  ...[...u16(id), ...u16(type), ...u32(count)],
  ...[...value, 0, 0, 0, 0].slice(0, 4),
];

/** A JPEG's bones: notes as Exif and XMP, then `size` bytes that stand for the picture, made from `seed`. */
export function madeJpeg(
  { taken, orientation = 1, gps = true }: Notes,
  size = 100,
  seed = 1,
): Uint8Array {
  const main = [
    ...u16(gps ? 3 : 2),
    ...tag(0x0112, 3, 1, u16(orientation)),
    ...tag(0x8769, 4, 1, u32(62)),
    ...(gps ? tag(0x8825, 4, 1, u32(120)) : []),
  ];
  const open = [...text('MM'), ...u16(42), ...u32(8), ...main];
  const exif = [...u16(1), ...tag(0x9003, 2, 20, u32(92)), ...u32(0)];
  const tiff = [...pad(open, 62), ...exif];
  const all = [
    ...pad(tiff, 92),
    ...text(`${taken}\0`),
    ...pad([], 8),
    ...text('GPS 52.5 N 13.4 E'),
  ];
  const app1 = [...text('Exif\0\0'), ...all];
  const xmp = text('http://ns.adobe.com/xap/1.0/\0<x exif:GPSLatitude="52.5"/>');
  const head = [...[0xff, 0xd8], ...segment(app1), ...segment(xmp), ...[0xff, 0xda, 0, 2]];
  const bytes = new Uint8Array(head.length + size + 2);
  bytes.set(head);
  let state = seed;
  for (let i = head.length; i < head.length + size; i++) {
    state = (state * 1103515245 + 12345) & 0x7fffffff;
    bytes[i] = (state >> 16) & 0x7f;
  }
  bytes.set([0xff, 0xd9], head.length + size);
  return bytes;
}

const segment = (data: readonly number[]): number[] => [
  0xff,
  0xe1,
  ...u16(data.length + 2),
  ...data,
];
const pad = (data: readonly number[], to: number): number[] => [
  ...data,
  ...new Array<number>(Math.max(0, to - data.length)).fill(0),
];
