/** A cell of a table: bars and line breaks would end it. */
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll(/\s*\n\s*/g, ' ');

const line = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

/** A table; '' when it has no rows. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return '';
  return [line(head), `|${head.map(() => '---|').join('')}`, ...rows.map(line)].join('\n');
}

export const list = (items: readonly string[]): string =>
  items.map((item) => `- ${item.replaceAll(/\s*\n\s*/g, ' ')}`).join('\n');

export const code = (text: string): string => (text === '' ? '' : `\`${text}\``);

/** A heading with its body, and nothing at all when there is no body. */
export const section = (heading: string, body: string): string =>
  body === '' ? '' : `${heading}\n\n${body}`;

/** Blocks with a blank line between them, empty ones left out, and one newline at the end. */
export const page = (...blocks: readonly string[]): string =>
  `${blocks.filter((block) => block !== '').join('\n\n')}\n`;

/** First line of every page made here: tells people not to edit it, and the script what is its own. */
export const MADE_MARK =
  '<!-- Made from the questions by scripts/registry.ts: run `npm run registry`, do not edit. -->';
