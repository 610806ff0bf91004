import { once } from 'node:events';
import { createWriteStream } from 'node:fs';

const HEADINGS =
  'number,assembly,name,pieces,material,process,thickness_mm,mass_kg,mass_u_kg,instrument,x_mm,y_mm,z_mm,position_u_mm';
const ROWS_AT_ONCE = 1000;

/** A row of made-up numbers that differ from row to row. */
function partRow(n: number): string {
  const number = `P${String(n).padStart(8, '0')}`;
  const mass = ((n * 7919) % 5000) / 1000;
  const thickness = 0.6 + ((n * 31) % 30) / 10;
  const [x, y, z] = [(n * 17) % 4000, ((n * 13) % 1800) - 900, (n * 11) % 1800];
  return `${number},10,part ${n},${1 + (n % 4)},steel sheet,stamp,${thickness.toFixed(1)},${mass.toFixed(3)},0.0104,scale B,${x}.0,${y}.5,${z}.0,5`;
}

/** Writes a valid table of parts of at least `bytes` bytes; returns its rows. */
export async function writeLargeParts(path: string, bytes: number): Promise<number> {
  const file = createWriteStream(path);
  file.write(`${HEADINGS}\n`);
  let rows = 0;
  for (let written = 0; written < bytes; ) {
    const lines = Array.from({ length: ROWS_AT_ONCE }, (_, i) => partRow(rows + i + 1));
    const text = `${lines.join('\n')}\n`;
    rows += ROWS_AT_ONCE;
    written += text.length;
    if (!file.write(text)) await once(file, 'drain');
  }
  file.end();
  await once(file, 'finish');
  return rows;
}
