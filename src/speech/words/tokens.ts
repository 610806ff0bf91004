import type { SpokenCue } from '../../study/index.ts';

/** One spoken word with its place. */
export interface Token {
  /** As it stands in the text. */
  readonly text: string;
  /** Small letters, bare of punctuation. */
  readonly word: string;
  readonly cue: number;
  /** Seconds from the start, spread evenly over the words of a cue. */
  readonly atS: number;
  readonly who?: string;
  /** Counts up with every change of speaker and every long silence. */
  readonly turn: number;
  /** True when a full stop, question mark or the like ends a sentence here. */
  readonly ends: boolean;
}

const LONG_SILENCE_S = 3;
/** A breath between two cues ends a sentence where no full stop does. */
const BREATH_S = 0.6;
const ENDS = /[.?!;…]["')\]]*$/;
/** 2.6mm is two words, M6x20 is one; a hyphen parts words, a minus before a digit does not. */
const PIECES = /[-\u2212]?\d[\d.,]*\d|\d|[^\s\d-]+(?:\d[^\s-]*)?|[^\s-]/g;

/** The words of all cues in their order, with hyphens and glued units taken apart. */
export function tokensOf(cues: readonly SpokenCue[]): Token[] {
  const tokens: Token[] = [];
  let turn = 0;
  cues.forEach((cue, i) => {
    const before = cues[i - 1];
    if (before && (before.who !== cue.who || cue.fromS - before.toS > LONG_SILENCE_S)) turn++;
    const pieces = cue.text.split(/\s+/).flatMap((text) => splitWord(text));
    const step = Math.max(0, cue.toS - cue.fromS) / Math.max(1, pieces.length);
    pieces.forEach((text, n) => {
      const word = bareWord(text);
      if (word === '') return;
      tokens.push({
        text,
        word,
        cue: i,
        atS: cue.fromS + n * step,
        ...(cue.who === undefined ? {} : { who: cue.who }),
        turn,
        ends: ENDS.test(text) || (n === pieces.length - 1 && isBreath(cue, cues[i + 1])),
      });
    });
  });
  return tokens;
}

const isBreath = (cue: SpokenCue, next: SpokenCue | undefined): boolean =>
  next !== undefined && next.fromS - cue.toS >= BREATH_S;

const splitWord = (text: string): string[] =>
  /\d/.test(text) || /\p{L}-\p{L}/u.test(text)
    ? text
        .split(/(?<=[\p{L}\d])[-–](?=[\p{L}\d])/u)
        .flatMap((part) => (/^\d/.test(part) ? (part.match(PIECES) ?? [part]) : [part]))
    : [text];

/** Small letters without the punctuation about them. */
export const bareWord = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/^[^\p{L}\d%°]+|[^\p{L}\d%°]+$/gu, '');

/** A phrase as the words it is found by. */
export const phraseWords = (phrase: string): string[] =>
  phrase
    .split(/[\s-]+/)
    .map(bareWord)
    .filter((word) => word !== '');

/** What was said, word for word. */
export const wordsOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map((token) => token.text)
    .join(' ');
