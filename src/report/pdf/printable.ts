/** Characters that are no glyphs: control characters but line feed, and those a reader never sees. */
const UNSEEN = /[^\P{Cc}\n]|\p{Default_Ignorable_Code_Point}/gu;

/**
 * Text that the report's fonts can set: unseen characters go, one without a glyph is written as
 * its code point, `[U+6F22]`, so that nothing is dropped in silence.
 */
export function printable(text: string, covered: ReadonlySet<number>): string {
  let out = '';
  for (const c of text.replaceAll('\t', ' ').replace(UNSEEN, '')) {
    const code = c.codePointAt(0) ?? 0;
    out +=
      c === '\n' || covered.has(code)
        ? c
        : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
  }
  return out;
}

/** The same for every text in plain data. */
export function printableData(data: unknown, covered: ReadonlySet<number>): unknown {
  if (typeof data === 'string') return printable(data, covered);
  if (Array.isArray(data)) return data.map((item) => printableData(item, covered));
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([k, v]) => [k, printableData(v, covered)]));
}
