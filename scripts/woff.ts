import { inflateSync } from 'node:zlib';

/** One table of a TrueType font: its four-letter tag and its bytes. */
interface FontTable {
  readonly tag: string;
  readonly bytes: Buffer;
}

const pad4 = (n: number): number => (n + 3) & ~3;

/**
 * The TrueType font inside a WOFF 1.0 file (W3C Recommendation, 2012-12-13, sections 3 to 5: a
 * header of 44 bytes, a directory of 20 bytes a table, each table plain or zlib-compressed),
 * under another family and style name.
 * @throws Error when the bytes are no WOFF 1.0 file.
 */
export function unpackWoff(woff: Buffer, family: string, style: string): Buffer {
  if (woff.toString('latin1', 0, 4) !== 'wOFF') throw new Error('not a WOFF 1.0 file');
  const tables = readTables(woff).map((t) =>
    t.tag === 'name' ? { tag: t.tag, bytes: renamed(t.bytes, family, style) } : t,
  );
  return sfnt(woff.readUInt32BE(4), tables);
}

function readTables(woff: Buffer): FontTable[] {
  return Array.from({ length: woff.readUInt16BE(12) }, (_, i) => {
    const entry = 44 + i * 20;
    const offset = woff.readUInt32BE(entry + 4);
    const packed = woff.readUInt32BE(entry + 8);
    const stored = woff.subarray(offset, offset + packed);
    const bytes = packed < woff.readUInt32BE(entry + 12) ? inflateSync(stored) : stored;
    return { tag: woff.toString('latin1', entry, entry + 4), bytes };
  });
}

/** Lays tables out as an sfnt file (OpenType specification 1.9, "Font file"). */
function sfnt(flavor: number, tables: readonly FontTable[]): Buffer {
  const head = 12 + 16 * tables.length;
  const out = Buffer.alloc(tables.reduce((end, t) => end + pad4(t.bytes.length), head));
  const power = 2 ** Math.floor(Math.log2(tables.length));
  out.writeUInt32BE(flavor, 0);
  out.writeUInt16BE(tables.length, 4);
  out.writeUInt16BE(power * 16, 6);
  out.writeUInt16BE(Math.log2(power), 8);
  out.writeUInt16BE((tables.length - power) * 16, 10);
  let offset = head;
  tables.forEach((t, i) => {
    const bytes = t.tag === 'head' ? withoutChecksum(t.bytes) : t.bytes;
    bytes.copy(out, offset);
    const entry = 12 + 16 * i;
    out.write(t.tag, entry, 'latin1');
    out.writeUInt32BE(checksum(out.subarray(offset, offset + pad4(bytes.length))), entry + 4);
    out.writeUInt32BE(offset, entry + 8);
    out.writeUInt32BE(bytes.length, entry + 12);
    offset += pad4(bytes.length);
  });
  return withChecksum(out, tables);
}

function withoutChecksum(headTable: Buffer): Buffer {
  const copy = Buffer.from(headTable);
  copy.writeUInt32BE(0, 8);
  return copy;
}

/** Sets head.checkSumAdjustment: the whole file then sums to 0xB1B0AFBA. */
function withChecksum(font: Buffer, tables: readonly FontTable[]): Buffer {
  const entry = 12 + 16 * tables.findIndex((t) => t.tag === 'head');
  const at = font.readUInt32BE(entry + 8) + 8;
  font.writeUInt32BE((0xb1b0afba - checksum(font)) >>> 0, at);
  return font;
}

function checksum(words: Buffer): number {
  let sum = 0;
  for (let i = 0; i < words.length; i += 4) sum = (sum + words.readUInt32BE(i)) >>> 0;
  return sum;
}

/** The font's names with family, style, full and PostScript name replaced; copyright and licence stay. */
function renamed(table: Buffer, family: string, style: string): Buffer {
  const kept = readNames(table).filter(([id]) => !REPLACED_NAMES.includes(id));
  return nameTable(
    [
      ...kept,
      [1, `${family} ${style}`] as const,
      [2, 'Regular'] as const,
      [4, `${family} ${style}`] as const,
      [6, `${family}-${style}`.replaceAll(' ', '')] as const,
      [16, family] as const,
      [17, style] as const,
    ].sort(([a], [b]) => a - b),
  );
}

const REPLACED_NAMES: readonly number[] = [1, 2, 3, 4, 6, 16, 17, 18, 21, 22, 25];
const WINDOWS_UNICODE_ENGLISH = [3, 1, 0x409] as const;

/** Name records in Windows Unicode, US English (OpenType specification 1.9, "name"). */
function readNames(table: Buffer): (readonly [id: number, text: string])[] {
  const texts = table.readUInt16BE(4);
  const records = Array.from({ length: table.readUInt16BE(2) }, (_, i) => {
    const [platform, encoding, language, id, length, offset] = [0, 2, 4, 6, 8, 10].map((o) =>
      table.readUInt16BE(6 + 12 * i + o),
    ) as [number, number, number, number, number, number];
    const bytes = Buffer.from(table.subarray(texts + offset, texts + offset + length));
    return { key: [platform, encoding, language].join(), id, bytes };
  });
  return records
    .filter((r) => r.key === WINDOWS_UNICODE_ENGLISH.join())
    .map((r) => [r.id, r.bytes.swap16().toString('utf16le')] as const);
}

function nameTable(names: readonly (readonly [id: number, text: string])[]): Buffer {
  const texts = names.map(([, text]) => Buffer.from(text, 'utf16le').swap16());
  const head = Buffer.alloc(6 + 12 * names.length);
  head.writeUInt16BE(names.length, 2);
  head.writeUInt16BE(head.length, 4);
  let offset = 0;
  names.forEach(([id], i) => {
    const length = texts[i]?.length ?? 0;
    [...WINDOWS_UNICODE_ENGLISH, id, length, offset].forEach((x, j) => {
      head.writeUInt16BE(x, 6 + 12 * i + 2 * j);
    });
    offset += length;
  });
  return Buffer.concat([head, ...texts]);
}
