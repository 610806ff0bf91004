import { addCue, badTimes, type ReadCues } from './read-webvtt.ts';
import { timingLine } from './timestamp.ts';

/** True for a line of times with commas before the thousandths, as SubRip has them. */
export const isSubripTiming = (line: string): boolean => timingLine(line, ',') !== undefined;

/**
 * Reads SubRip: a number, a line of times with commas, text up to a blank line. No standard
 * describes it. A cue also ends where the next number and times follow without a blank line.
 */
export function readSubrip(lines: readonly string[], file: string): ReadCues {
  const read: ReadCues = { cues: [], findings: [] };
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at] ?? '';
    if (!line.includes('-->')) continue;
    const end = textEnd(lines, at + 1);
    const text = lines.slice(at + 1, end).join('\n');
    const times = timingLine(line, ',');
    if (times) addCue(read, text, times, at + 1, file);
    else read.findings.push(badTimes(file, at + 1, line, text));
    at = end - 1;
  }
  return read;
}

function textEnd(lines: readonly string[], from: number): number {
  let at = from;
  while (at < lines.length && (lines[at] ?? '').trim() !== '') {
    const numbered = /^\s*\d+\s*$/.test(lines[at] ?? '') && (lines[at + 1] ?? '').includes('-->');
    if (numbered || (lines[at] ?? '').includes('-->')) return at;
    at++;
  }
  return at;
}
