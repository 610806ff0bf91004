import { isJpeg, jpegSegments, opensWith } from './jpeg-segments.ts';

/** What a camera wrote beside its picture (Exif 2.32, JEITA CP-3451): the parts that matter here. */
export interface CameraNotes {
  /** ISO 8601 local time by the camera's clock; Exif times have no zone unless one stands beside them. */
  readonly takenAt?: string;
  /** "+02:00". */
  readonly zone?: string;
  /** 1 to 8; 1 is upright. */
  readonly orientation: number;
  readonly hasPlace: boolean;
}

const NONE: CameraNotes = { orientation: 1, hasPlace: false };
const TAG = {
  orientation: 0x0112,
  exif: 0x8769,
  gps: 0x8825,
  taken: 0x9003,
  zone: 0x9011,
} as const;
const EXIF_HEADER = 6;
const MOST_TAGS = 500;

/** Reads the camera's notes from a JPEG's first bytes; nothing of a file without them or with broken ones. */
export function readExif(bytes: Uint8Array): CameraNotes {
  if (!isJpeg(bytes)) return NONE;
  const segment = jpegSegments(bytes).find((s) => s.marker === 0xe1 && opensWith(bytes, s, 'Exif'));
  if (!segment) return NONE;
  const tiff = bytes.subarray(segment.from + 4 + EXIF_HEADER, segment.to);
  try {
    return notesOf(new Tiff(tiff));
  } catch (error) {
    if (error instanceof RangeError) return NONE;
    throw error;
  }
}

function notesOf(tiff: Tiff): CameraNotes {
  const main = tiff.directory(tiff.u32(4));
  const exif = main.get(TAG.exif);
  const more = exif === undefined ? new Map<number, number>() : tiff.directory(tiff.u32(exif));
  const [taken, zone] = [more.get(TAG.taken), more.get(TAG.zone)].map((at) =>
    at === undefined ? '' : tiff.text(at),
  );
  const orientation = main.get(TAG.orientation);
  const [, date, time] = /^(\d{4}:\d\d:\d\d) (\d\d:\d\d:\d\d)/.exec(taken ?? '') ?? [];
  return {
    ...(date && time ? { takenAt: `${date.replace(/:/g, '-')}T${time}` } : {}),
    ...(/^[+-]\d\d:\d\d/.test(zone ?? '') ? { zone: (zone ?? '').slice(0, 6) } : {}),
    orientation: orientation === undefined ? 1 : tiff.u16(orientation),
    hasPlace: main.has(TAG.gps),
  };
}

/** A TIFF block: directories of tags. Reading beyond its end throws RangeError. */
class Tiff {
  readonly #view: DataView;
  readonly #little: boolean;

  constructor(bytes: Uint8Array) {
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.#little = bytes[0] === 0x49;
  }

  u16 = (at: number): number => this.#view.getUint16(at, this.#little);
  u32 = (at: number): number => this.#view.getUint32(at, this.#little);

  /** Where the value of each tag stands. */
  directory(at: number): Map<number, number> {
    const tags = new Map<number, number>();
    const count = Math.min(this.u16(at), MOST_TAGS);
    for (let i = 0; i < count; i++) {
      const entry = at + 2 + 12 * i;
      tags.set(this.u16(entry), entry + 8);
    }
    return tags;
  }

  /** Text of the tag whose value stands here; texts of more than four bytes stand elsewhere. */
  text(valueAt: number): string {
    const length = this.u32(valueAt - 4);
    const from = length > 4 ? this.u32(valueAt) : valueAt;
    let text = '';
    for (let i = 0; i < Math.min(length, 64); i++)
      text += String.fromCharCode(this.#view.getUint8(from + i));
    return text.replace(/\0.*$/s, '');
  }
}
