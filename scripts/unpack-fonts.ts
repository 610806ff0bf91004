import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { unpackWoff } from './woff.ts';

/**
 * Unpacks the fonts of printed reports from the font packages into src/report/fonts, as TrueType
 * files that the typesetter reads, with their licences. Run again when a package is updated:
 * `node bin/run-ts.js scripts/unpack-fonts.ts`.
 *
 * The families get names of their own: a font of the same name installed on the machine can then
 * never step in, and the subsets of one design can stand side by side, for the typesetter falls
 * back from family to family and not from file to file.
 */
const ROOT = new URL('../', import.meta.url);
const OUT = new URL('src/report/fonts/', ROOT);
const WEIGHTS = { 400: 'Regular', 500: 'Medium', 600: 'SemiBold' } as const;

const packageFile = (name: string, file: string): Buffer =>
  readFileSync(new URL(`node_modules/@fontsource/${name}/${file}`, ROOT));

/** Every font file of the report by its name, made from the packages. */
export function reportFonts(): Map<string, Buffer> {
  const fonts = new Map<string, Buffer>();
  for (const [stem, prefix, width] of [
    ['barlow', 'Barlow', ''],
    ['barlow-semi-condensed', 'BarlowSemiCondensed', ' Semi Condensed'],
  ] as const)
    for (const [weight, style] of Object.entries(WEIGHTS)) {
      const subset = (name: string) =>
        packageFile(stem, `files/${stem}-${name}-${weight}-normal.woff`);
      fonts.set(
        `${prefix}-${style}.ttf`,
        unpackWoff(subset('latin'), `Hoistside Sheet${width}`, style),
      );
      fonts.set(
        `${prefix}-${style}-ExtendedLatin.ttf`,
        unpackWoff(subset('latin-ext'), `Hoistside Sheet Extended${width}`, style),
      );
    }
  const symbols = packageFile('dejavu-sans', 'files/dejavu-sans-latin-400-normal.woff');
  fonts.set('DejaVuSans.ttf', unpackWoff(symbols, 'Hoistside Symbols', 'Regular'));
  return fonts;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(OUT, { recursive: true });
  for (const [name, bytes] of reportFonts()) writeFileSync(new URL(name, OUT), bytes);
  writeFileSync(new URL('OFL-Barlow.txt', OUT), packageFile('barlow', 'LICENSE'));
  writeFileSync(
    new URL('OFL-BarlowSemiCondensed.txt', OUT),
    packageFile('barlow-semi-condensed', 'LICENSE'),
  );
  writeFileSync(new URL('LICENSE-DejaVu.txt', OUT), packageFile('dejavu-sans', 'LICENSE'));
}
