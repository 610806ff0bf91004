import { type BagLabel, codeModules, type LabelSheet } from './bag-labels.ts';

const COLUMNS = 3;
/** Millimetres. */
const WIDTH = 63;
const HEIGHT = 36;
const CODE = 27;
const GAP = 2;
/** Characters that a line beside the code has room for. */
const LINE = 20;

/** A sheet of labels as one SVG, in millimetres, as long as it needs to be. */
export function labelsSvg(sheet: LabelSheet): string {
  const rows = Math.ceil(sheet.labels.length / COLUMNS);
  const [width, height] = [COLUMNS * (WIDTH + GAP) + GAP, rows * (HEIGHT + GAP) + GAP];
  const labels = sheet.labels.map((label, i) => {
    const x = GAP + (i % COLUMNS) * (WIDTH + GAP);
    const y = GAP + Math.floor(i / COLUMNS) * (HEIGHT + GAP);
    return labelSvg(label, x, y, footOf(sheet));
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" font-family="Barlow Semi Condensed, Arial Narrow, sans-serif">`,
    `<title>${escaped(sheet.title)}</title>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    ...labels,
    '</svg>\n',
  ].join('\n');
}

/** What every label says of where it comes from. */
export const footOf = ({ study, revision, date, invented }: LabelSheet): string =>
  [study, revision, date, invented ? 'invented' : ''].filter((t) => t !== '').join(' · ');

function labelSvg(label: BagLabel, x: number, y: number, foot: string): string {
  const { side, dark } = codeModules(label.code);
  const scale = CODE / side;
  const lines = [
    ...wrapped(label.joint === '' ? 'no joint written' : `joint ${label.joint}`),
    ...wrapped(label.spec),
    ...wrapped(label.counts),
    ...wrapped(label.holds),
  ].slice(0, 7);
  const left = CODE + 3;
  return [
    `<g transform="translate(${x} ${y})">`,
    `<title>bag ${escaped(label.bag)}</title>`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="none" stroke="#16242c" stroke-width="0.15"/>`,
    `<path transform="translate(1 1) scale(${scale.toFixed(5)})" d="${dark}" fill="#000"/>`,
    `<text x="${left}" y="6" font-size="5" font-weight="600" fill="#16242c">${escaped(label.bag)}</text>`,
    ...lines.map(
      (line, i) =>
        `<text x="${left}" y="${(10.5 + 3.2 * i).toFixed(1)}" font-size="2.8" fill="#16242c">${escaped(line)}</text>`,
    ),
    `<text x="2" y="${HEIGHT - 2}" font-size="2.3" fill="#4a5961">${escaped(foot)}</text>`,
    '</g>',
  ].join('\n');
}

/** Words in lines that have room beside the code. */
function wrapped(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= LINE)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

const escaped = (text: string): string => text.replace(/[&<>"]/g, (c) => ENTITIES[c] ?? c);
