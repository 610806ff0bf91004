import { type Finding, RefusalError } from '../../study/index.ts';
import { atLine, type Cue, type SpeechFormat, type TimedSpeech } from './cue.ts';
import { isSubripTiming, readSubrip } from './read-subrip.ts';
import { isTimedLine, readTimedText } from './read-timed-text.ts';
import { hasSignature, type ReadCues, readWebvtt } from './read-webvtt.ts';

const READERS: Readonly<
  Record<SpeechFormat, (lines: readonly string[], file: string) => ReadCues>
> = {
  WebVTT: readWebvtt,
  SubRip: readSubrip,
  'timed text': readTimedText,
};

/**
 * Reads what a speech recogniser or a person wrote down with times. Findings name the line of
 * whatever was doubtful; words are kept wherever they can be.
 * @throws RefusalError `bad-value` when there is not one time in the file.
 */
export function readSpeech(bytes: Uint8Array, file: string): TimedSpeech {
  const { text, findings } = decoded(bytes, file);
  const lines = text.replace(/\0/g, '\ufffd').split(/\r\n|\r|\n/);
  const format = formatOf(lines);
  if (format === undefined) throw new RefusalError(noTimes(file, lines[0] ?? ''));
  const read = READERS[format](lines, file);
  if (read.cues.length === 0 && read.findings.length === 0)
    throw new RefusalError(noTimes(file, lines[0] ?? ''));
  const header =
    format === 'WebVTT' && !hasSignature(lines[0] ?? '') ? [noHeader(file, lines[0] ?? '')] : [];
  return {
    format,
    cues: read.cues,
    findings: [...findings, ...header, ...read.findings, ...overlaps(read.cues, file)],
  };
}

function decoded(bytes: Uint8Array, file: string): { text: string; findings: Finding[] } {
  const text = new TextDecoder('utf-8').decode(bytes);
  const at = text.indexOf('\ufffd');
  if (at < 0 || isUtf8(bytes)) return { text, findings: [] };
  const row = text.slice(0, at).split(/\r\n|\r|\n/).length;
  const found = text.split('\ufffd').length - 1;
  const what = `${found} place${found === 1 ? ' is' : 's are'} no UTF-8 and shown as \ufffd`;
  return {
    text,
    findings: [
      atLine(
        file,
        row,
        'no-utf-8',
        '\ufffd',
        what,
        'Save the file as UTF-8 if the words there matter.',
      ),
    ],
  };
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function formatOf(lines: readonly string[]): SpeechFormat | undefined {
  if (hasSignature(lines[0] ?? '')) return 'WebVTT';
  if (lines.some(isSubripTiming)) return 'SubRip';
  if (lines.some((line) => line.includes('-->'))) return 'WebVTT';
  return lines.some(isTimedLine) ? 'timed text' : undefined;
}

const noTimes = (file: string, first: string) => ({
  code: 'bad-value' as const,
  place: { file, row: 1 },
  value: first.slice(0, 80),
  why: 'no times are in this file',
  next: 'Hand in WebVTT, SubRip, or text whose lines open with a time like 00:01:12.',
});

const noHeader = (file: string, first: string): Finding =>
  atLine(
    file,
    1,
    'no-webvtt-header',
    first,
    'the first line is not WEBVTT; the cues were read all the same',
    'Look whether the top of the file is missing.',
  );

/** One finding for all cues that begin before an earlier one has ended: two people at once, or wrong times. */
function overlaps(cues: readonly Cue[], file: string): Finding[] {
  let end = Number.NEGATIVE_INFINITY;
  const over: Cue[] = [];
  for (const cue of cues) {
    if (cue.fromS < end) over.push(cue);
    end = Math.max(end, cue.toS);
  }
  const [first] = over;
  if (!first) return [];
  const what = `${over.length} cue${over.length === 1 ? ' begins' : 's begin'} before an earlier one has ended; all are kept in the order of the file`;
  return [
    {
      ...atLine(
        file,
        first.line,
        'cues-overlap',
        first.text,
        what,
        'Nothing needs to be done where two people spoke at once.',
      ),
      level: 'note',
    },
  ];
}
