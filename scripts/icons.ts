/** Draws the icons of the installed application from the mark: `node bin/run-ts.js scripts/icons.ts`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { ROOT } from './root.ts';

const PUBLIC = join(ROOT, 'web/public');
const mark = readFileSync(join(PUBLIC, 'mark.svg'));
for (const size of [192, 512]) {
  const image = new Resvg(mark, { fitTo: { mode: 'width', value: size } }).render();
  writeFileSync(join(PUBLIC, `icon-${size}.png`), image.asPng());
}
