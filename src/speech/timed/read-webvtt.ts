import type { Finding } from '../../study/index.ts';
import { atLine, type Cue } from './cue.ts';
import { namedSpeaker, plainWords } from './plain-words.ts';
import { timingLine } from './timestamp.ts';

export interface ReadCues {
  readonly cues: Cue[];
  readonly findings: Finding[];
}

/** Lines with a place in them: a block is read from here on. */
interface Cursor {
  readonly lines: readonly string[];
  at: number;
}

interface Block {
  /** 0-based line with the times. */
  readonly line: number;
  readonly times: { readonly fromS: number; readonly toS: number };
  readonly text: string;
}

/** True for the signature of the format on its first line. */
export const hasSignature = (line: string): boolean => /^WEBVTT(?:[ \t]|$)/.test(line);

/**
 * Reads cues by "collect a WebVTT block" of W3C WebVTT. Of what the standard passes over in
 * silence (a line of times that can not be read) and of what it keeps though it can't be (a cue
 * that ends before it starts) there is a finding each. Notes, styles and regions are passed over.
 */
export function readWebvtt(lines: readonly string[], file: string): ReadCues {
  const read: ReadCues = { cues: [], findings: [] };
  const cursor: Cursor = { lines, at: 0 };
  if (hasSignature(lines[0] ?? '')) skipHeader(cursor);
  while (cursor.at < lines.length) {
    if (lines[cursor.at] === '') cursor.at++;
    else keep(read, nextBlock(cursor, read, file), file);
  }
  return read;
}

/** Lines of the header go up to a blank line or to the first line of times. */
function skipHeader(cursor: Cursor): void {
  cursor.at = 1;
  while (cursor.at < cursor.lines.length) {
    const line = cursor.lines[cursor.at] ?? '';
    if (line === '' || line.includes('-->')) return;
    cursor.at++;
  }
}

function nextBlock(cursor: Cursor, read: ReadCues, file: string): Block | undefined {
  const { lines } = cursor;
  const start = cursor.at;
  const timed = (lines[start] ?? '').includes('-->') ? start : start + 1;
  const timing = lines[timed] ?? '';
  if (!timing.includes('-->')) {
    skipText(cursor);
    return undefined;
  }
  const times = timingLine(timing, '.');
  cursor.at = timed + 1;
  const from = cursor.at;
  skipText(cursor);
  if (times) return { line: timed, times, text: lines.slice(from, cursor.at).join('\n') };
  read.findings.push(badTimes(file, timed + 1, timing, lines.slice(from, cursor.at).join(' ')));
  return undefined;
}

/** Steps over text up to a blank line or the times of the next cue. */
function skipText(cursor: Cursor): void {
  while (cursor.at < cursor.lines.length) {
    const line = cursor.lines[cursor.at] ?? '';
    if (line === '' || line.includes('-->')) return;
    cursor.at++;
  }
}

export const badTimes = (file: string, row: number, line: string, lost: string): Finding =>
  atLine(
    file,
    row,
    'cue-without-times',
    line,
    `the times can not be read, so these words are left out: ${lost === '' ? 'none' : `"${lost.slice(0, 60)}"`}`,
    'Write the times as 00:01:02.500 --> 00:01:05.000 and read the file again.',
  );

function keep(read: ReadCues, block: Block | undefined, file: string): void {
  if (block) addCue(read, block.text, block.times, block.line + 1, file);
}

/** Adds a cue with its markup taken off; findings for markup of another kind and for its times. */
export function addCue(
  read: ReadCues,
  raw: string,
  times: { readonly fromS: number; readonly toS: number },
  line: number,
  file: string,
): void {
  const { text, who, foreign } = plainWords(raw);
  const named = who === undefined ? namedSpeaker(text) : { who, text };
  if (foreign.length > 0)
    read.findings.push(
      atLine(
        file,
        line,
        'markup-in-cue',
        foreign.join(' '),
        'markup was taken off; it is never run or shown as markup',
        'Look whether words are missing there.',
      ),
    );
  if (times.toS < times.fromS)
    read.findings.push(
      atLine(
        file,
        line,
        'cue-ends-before-it-starts',
        `${times.fromS} s to ${times.toS} s`,
        'the cue ends before it starts; its words are kept at its start',
        'Correct the times if the place in the recording matters.',
      ),
    );
  read.cues.push({ ...times, ...named, line });
}
