import type { Finding, SpokenCue } from '../../study/index.ts';

/** Words between two times of one recording, as plain text: markup is taken off, never kept. */
export interface Cue extends SpokenCue {
  /** 1-based line of the file with the times. */
  readonly line: number;
}

export type SpeechFormat = 'WebVTT' | 'SubRip' | 'timed text';

export interface TimedSpeech {
  readonly format: SpeechFormat;
  /** In the order of the file. */
  readonly cues: readonly Cue[];
  readonly findings: readonly Finding[];
}

/** A finding at a line of the file. */
export const atLine = (
  file: string,
  row: number,
  code: string,
  value: string,
  what: string,
  next: string,
): Finding => ({
  code,
  level: 'doubt',
  place: { file, row },
  value: value.slice(0, 80),
  what,
  next,
});
