import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { reportFonts } from '../../scripts/unpack-fonts.ts';
import { coverageOf, fontFiles } from '../../src/report/pdf/fonts.ts';
import { printable } from '../../src/report/pdf/printable.ts';
import { GLYPHS } from './signs.ts';

const FOLDER = new URL('../../src/report/fonts/', import.meta.url);
const covered = coverageOf(fontFiles());

describe('fonts of the report', () => {
  it('are those of the packages, unpacked', () => {
    const made = reportFonts();
    const kept = readdirSync(FOLDER).filter((name) => name.endsWith('.ttf'));
    expect(kept.sort()).toEqual([...made.keys()].sort());
    for (const name of kept)
      expect(readFileSync(new URL(name, FOLDER)).equals(made.get(name) ?? Buffer.alloc(0))).toBe(
        true,
      );
  });

  it('come with their licences', () => {
    expect(readdirSync(FOLDER).filter((name) => name.endsWith('.txt'))).toHaveLength(3);
  });

  it('cover the signs of the trade', () => {
    expect(printable(GLYPHS, covered)).toBe(GLYPHS);
  });
});

describe('printable text', () => {
  it('writes the code of what no font has, and drops what nobody sees', () => {
    expect(printable('漢\u200b \u0007a\tb\nc \ud800', covered)).toBe('[U+6F22] a b\nc [U+D800]');
  });
});
