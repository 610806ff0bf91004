import { isWay, type Kind, parseQuantity, parseUnit, type Way } from '../../quantity/index.ts';
import { type Refusal, RefusalError } from '../../study/index.ts';
import { phraseWords, type Token } from '../words/tokens.ts';

/** One row of a hand-marked key, found in the text. */
export interface KeyRow {
  readonly id: string;
  readonly kind: 'item' | 'trap' | 'either';
  readonly words: string;
  /** Words from..to of the text. */
  readonly from: number;
  readonly to: number;
  readonly parts: readonly string[];
  /** SI, both ends; a count in ones. */
  readonly quantity?: { readonly low: number; readonly high: number };
  readonly how?: Way;
  readonly what: string;
}

const HEADINGS = ['id', 'kind', 'at', 'words', 'part', 'quantity', 'how'] as const;
const KINDS = ['item', 'trap', 'either'] as const;
/** How far from its time a row's words are looked for. */
const AWAY_S = 20;
const NUMBER = /^([\d.,]+)(?:\s*-\s*([\d.,]+))?\s*(.*)$/;

/**
 * Reads a key and finds its words in the text.
 * @throws RefusalError with every row that can not be read or whose words are not near its time.
 */
export function readKey(
  rows: readonly (readonly string[])[],
  file: string,
  tokens: readonly Token[],
): KeyRow[] {
  const [headings = [], ...body] = rows;
  const missing = HEADINGS.filter((heading) => !headings.includes(heading));
  if (missing.length > 0)
    throw new RefusalError(
      wrong(
        file,
        1,
        missing.join(', '),
        'the key lacks these columns',
        'See the README of the walkarounds.',
      ),
    );
  const bad: Refusal[] = [];
  const read = body.flatMap((cells, i) => {
    const cell = (name: string): string => (cells[headings.indexOf(name)] ?? '').trim();
    const row = keyRow(cell, tokens);
    if (typeof row !== 'string') return [row];
    bad.push(wrong(file, i + 2, cell('words'), row, 'Correct the row.'));
    return [];
  });
  const [first, ...more] = bad;
  if (first) throw new RefusalError(first, ...more);
  return read;
}

const wrong = (file: string, row: number, value: string, why: string, next: string): Refusal => ({
  code: 'bad-table',
  place: { file, row },
  value,
  why,
  next,
});

/** The row, or why it is none. */
function keyRow(cell: (name: string) => string, tokens: readonly Token[]): KeyRow | string {
  const kind = KINDS.find((one) => one === cell('kind'));
  const how = cell('how');
  const quantity = cell('quantity') === '' ? undefined : keyQuantity(cell('quantity'));
  const atS = secondsOf(cell('at'));
  const words = phraseWords(cell('words'));
  if (!kind) return `"${cell('kind')}" is no item, trap or either`;
  if (how !== '' && !isWay(how)) return `"${how}" is no way of knowing`;
  if (quantity === null) return `"${cell('quantity')}" is no quantity`;
  if (atS === undefined) return `"${cell('at')}" is no time`;
  const from = nearest(tokens, words, atS);
  if (from === undefined) return 'these words are not in the text near that time';
  return {
    id: cell('id'),
    kind,
    words: cell('words'),
    from,
    to: from + words.length,
    parts: cell('part')
      .split(/\\?\|/)
      .map((part) => part.trim())
      .filter((part) => part !== ''),
    ...(quantity ? { quantity } : {}),
    ...(isWay(how) ? { how } : {}),
    what: cell('what'),
  };
}

const secondsOf = (text: string): number | undefined => {
  const [all, h = '0', m, s] = /^(?:(\d+):)?(\d{1,2}):(\d{2}(?:\.\d+)?)$/.exec(text) ?? [];
  return all === undefined ? undefined : Number(h) * 3600 + Number(m) * 60 + Number(s);
};

/** Where the words begin that are nearest to a time; undefined when they are not near it. */
function nearest(
  tokens: readonly Token[],
  words: readonly string[],
  atS: number,
): number | undefined {
  let best: { at: number; away: number } | undefined;
  tokens.forEach((token, at) => {
    const away = Math.abs(token.atS - atS);
    if (away > AWAY_S || away >= (best?.away ?? Number.POSITIVE_INFINITY)) return;
    if (words.length > 0 && words.every((word, i) => tokens[at + i]?.word === word))
      best = { at, away };
  });
  return best?.at;
}

/** Both ends in SI; null for what is none. */
function keyQuantity(text: string): KeyRow['quantity'] | null {
  const [, low = '', high = low, unit = ''] = NUMBER.exec(text) ?? [];
  const [a, b] = [low, high].map((end) => inSi(end.replace(/,/g, ''), unit));
  return a === undefined || b === undefined || low === '' ? null : { low: a, high: b };
}

/** Kinds in which a key may write a unit; the first that takes it counts. */
const KEY_KINDS: readonly Kind[] = [
  'length',
  'mass',
  'torque',
  'time',
  'angle',
  'money',
  'force',
  'volume',
  'pressureDiff',
  'energy',
  'specificEnergy',
  'voltage',
  'current',
  'charge',
  'power',
  'stiffness',
  'stress',
  'ratio',
];

function inSi(number: string, unit: string): number | undefined {
  if (unit === '') return Number.isFinite(Number(number)) ? Number(number) : undefined;
  for (const kind of KEY_KINDS) {
    const read = parseQuantity(`${number} ${unit}`, kind, { decimal: '.' });
    if (read.ok) return read.value.x;
  }
  const own = parseUnit(unit);
  return own ? Number(number) * own.factor + (own.offset ?? 0) : undefined;
}
