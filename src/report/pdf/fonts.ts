import { readdirSync, readFileSync } from 'node:fs';

const FONTS = new URL('../fonts/', import.meta.url);

/** The report's own font files. */
export const fontFiles = (): Buffer[] =>
  readdirSync(FONTS)
    .filter((name) => name.endsWith('.ttf'))
    .sort()
    .map((name) => readFileSync(new URL(name, FONTS)));

/** Code points for which at least one of the fonts has a glyph. */
export function coverageOf(fonts: readonly Buffer[]): ReadonlySet<number> {
  const covered = new Set<number>();
  for (const font of fonts)
    for (const [first, last] of characterRanges(tableOf(font, 'cmap')))
      for (let c = first; c <= last; c++) covered.add(c);
  return covered;
}

/** One table of a TrueType file (OpenType specification 1.9, "Font file"). @throws Error when absent. */
function tableOf(font: Buffer, tag: string): Buffer {
  for (let i = 0; i < font.readUInt16BE(4); i++) {
    const entry = 12 + 16 * i;
    if (font.toString('latin1', entry, entry + 4) !== tag) continue;
    const offset = font.readUInt32BE(entry + 8);
    return font.subarray(offset, offset + font.readUInt32BE(entry + 12));
  }
  throw new Error(`font has no table ${tag}`);
}

/** Ranges of code points mapped by subtables of the formats 4 and 12 (OpenType, "cmap"). */
function characterRanges(cmap: Buffer): [first: number, last: number][] {
  return Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => {
    const table = cmap.subarray(cmap.readUInt32BE(8 + 8 * i));
    const format = table.readUInt16BE(0);
    return format === 4 ? segmentRanges(table) : format === 12 ? groupRanges(table) : [];
  }).flat();
}

function segmentRanges(table: Buffer): [number, number][] {
  const double = table.readUInt16BE(6);
  return Array.from({ length: double / 2 }, (_, i): [number, number] => [
    table.readUInt16BE(16 + double + 2 * i),
    table.readUInt16BE(14 + 2 * i),
  ]).filter(([first]) => first !== 0xffff);
}

const groupRanges = (table: Buffer): [number, number][] =>
  Array.from({ length: table.readUInt32BE(12) }, (_, i) => [
    table.readUInt32BE(16 + 12 * i),
    table.readUInt32BE(20 + 12 * i),
  ]);
