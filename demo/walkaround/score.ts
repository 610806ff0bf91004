import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import type { Proportion } from '../../src/quantity/index.ts';
import {
  ENGLISH,
  readDrafts,
  readKey,
  readSpeech,
  type Score,
  type SpokenPart,
  scoreDrafts,
} from '../../src/speech/index.ts';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const TABLES = join(HERE, '../tables/van-27-clean');

const table = (file: string): Record<string, string>[] =>
  parse(readFileSync(file), { columns: true, bom: true });

/** The parts tree of VAN-27 by its tables. */
export function vanParts(): SpokenPart[] {
  const part = (
    label: string,
    name: string,
    kind: SpokenPart['kind'],
    parent: string | null,
  ): SpokenPart => ({ id: label, label, name, kind, parent });
  return [
    part('VAN-27', 'van', 'vehicle', null),
    ...table(join(TABLES, 'assemblies.csv')).map((row) =>
      part(row.number ?? '', row.name ?? '', 'assembly', 'VAN-27'),
    ),
    ...table(join(TABLES, 'parts.csv')).map((row) =>
      part(row.number ?? '', row.name ?? '', 'part', row.assembly ?? null),
    ),
  ];
}

/** A text and its key, both as files. */
export interface Pair {
  readonly text: string;
  readonly key: string;
}

/** Every text of a folder that has a key beside it. */
export const pairsIn = (folder: string): Pair[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.key.csv'))
    .sort()
    .map((file) => ({
      text: join(folder, file.replace(/\.key\.csv$/, '.vtt')),
      key: join(folder, file),
    }));

export const WALKAROUNDS = HERE;

/** Texts that the rules were written or mended with: their scores say nothing of a new text. */
const PRACTISED: ReadonlySet<string> = new Set(['first.vtt', 'practice-1.vtt', 'practice-2.vtt']);

const nameOf = ({ text }: Pair): string =>
  `${basename(text)} (${PRACTISED.has(basename(text)) ? 'the rules were written with it' : 'no rule was written with it'})`;

export function scorePair({ text, key }: Pair): Score {
  const { cues } = readSpeech(readFileSync(text), text);
  const { tokens, drafts } = readDrafts(cues, vanParts(), ENGLISH);
  const rows: string[][] = parse(readFileSync(key), { bom: true });
  return scoreDrafts(drafts, readKey(rows, key, tokens));
}

const percent = (x: number): string => (Number.isNaN(x) ? '-' : `${(100 * x).toFixed(1)} %`);
const proportionText = ({ hits, of, share, low, high }: Proportion): string =>
  `${percent(share)} (${hits} of ${of}; ${percent(low)} to ${percent(high)})`;

export function scoreText(name: string, score: Score, all: boolean): string {
  return [
    `${name}: ${score.items} items, ${score.traps} traps, ${score.drafts} drafts judged`,
    ...score.fields.map(
      ({ field, precision, recall }) =>
        `  ${field.padEnd(15)} precision ${proportionText(precision)}   recall ${proportionText(recall)}`,
    ),
    `  traps that caught it: ${score.caught.length} of ${score.traps}${score.caught.length > 0 ? ` (${score.caught.join(', ')})` : ''}`,
    ...(all
      ? [
          ...score.wrong.map((line) => `  wrong  ${line}`),
          ...score.missed.map((line) => `  missed ${line}`),
        ]
      : []),
    '',
  ].join('\n');
}

/** Prints the scores of the pairs named, of every pair here when none is; --all lists each miss. */
function main(args: readonly string[]): void {
  const files = args.filter((arg) => arg !== '--all');
  const [text, key] = files;
  const pairs = text !== undefined && key !== undefined ? [{ text, key }] : pairsIn(text ?? HERE);
  for (const pair of pairs)
    process.stdout.write(scoreText(nameOf(pair), scorePair(pair), args.includes('--all')));
  process.stdout.write('Intervals: Wilson, 95 %.\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main(process.argv.slice(2));
