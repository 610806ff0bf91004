import type { Cue } from './cue.ts';
import { addCue, type ReadCues } from './read-webvtt.ts';

/** `[00:01:12] lead: words`, `1:12 words`, `00:01:12.5 - words`. */
const TIMED =
  /^\s*[[(]?(?:(\d{1,3}):)?(\d{1,2}):(\d{2})(?:[.,](\d{1,3}))?[\])]?(?:\s*[-–—:]\s+|\s+|$)(.*)$/;

/** Seconds that a word takes, for the end of the last words of a file. Common practice: 150 words a minute. */
const S_A_WORD = 0.4;

const startOf = (line: string): { fromS: number; text: string } | undefined => {
  const [all, h = '0', m, s, part = '0', text = ''] = TIMED.exec(line) ?? [];
  if (all === undefined || Number(s) > 59) return undefined;
  return { fromS: Number(h) * 3600 + Number(m) * 60 + Number(s) + Number(`0.${part}`), text };
};

export const isTimedLine = (line: string): boolean => startOf(line) !== undefined;

/** Reads text whose lines open with a time; lines without one go on with the words before. */
export function readTimedText(lines: readonly string[], file: string): ReadCues {
  const opened: { fromS: number; text: string; line: number }[] = [];
  lines.forEach((line, i) => {
    const start = startOf(line);
    const last = opened.at(-1);
    if (start) opened.push({ ...start, line: i + 1 });
    else if (last && line.trim() !== '') last.text += ` ${line}`;
  });
  const read: ReadCues = { cues: [], findings: [] };
  opened.forEach((one, i) => {
    const next = opened[i + 1]?.fromS;
    const spoken = one.fromS + one.text.split(/\s+/).length * S_A_WORD;
    addCue(read, one.text, { fromS: one.fromS, toS: next ?? spoken }, one.line, file);
  });
  return read;
}

/** The last second in which something is said. */
export const lastS = (cues: readonly Cue[]): number =>
  cues.reduce((last, cue) => Math.max(last, cue.fromS, cue.toS), 0);
