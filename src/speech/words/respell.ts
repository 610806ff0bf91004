import { stem } from '../parts/part-index.ts';
import { letterSteps, soundOfWords } from '../parts/sound.ts';
import { phraseWords, type Token } from './tokens.ts';

const LONGEST = 4;
/** Fewer consonants than this sound like too much else. */
const LEAST_SOUNDS = 4;
/** Share of letters that must be the same, where all sounds are, and where one is not. */
const LIKE_ENOUGH = 0.55;
const VERY_LIKE = 0.7;
const NEARLY_SAME = 0.8;

/**
 * Puts phrases of the trade in place of words that sound the same: "silly cone", "drive you knit".
 * The text of the words stays; a word that was joined to the one before is left blank.
 * @param spared words that a recogniser gets right: a run of only these is left alone.
 */
export function respell(
  tokens: readonly Token[],
  phrases: Iterable<string>,
  spared: ReadonlySet<string>,
): Token[] {
  const bySound = soundsOf(phrases);
  const known = new Set([...bySound.values()].flat(2));
  const heard = tokens.map((token) => ({ ...token }));
  for (let i = 0; i < heard.length; i++)
    for (let n = Math.min(LONGEST, heard.length - i); n > 0; n--) {
      const run = heard.slice(i, i + n);
      const meant = isOneBreath(run) ? meantBy(run, bySound, known, spared) : undefined;
      if (!meant) continue;
      run.forEach((token, k) => {
        token.word = meant[k] ?? '';
      });
      i += n - 1;
      break;
    }
  return heard;
}

function soundsOf(phrases: Iterable<string>): Map<string, string[][]> {
  const bySound = new Map<string, string[][]>();
  for (const phrase of phrases) {
    const words = phraseWords(phrase);
    const sound = soundOfWords(words);
    if (sound.length >= LEAST_SOUNDS) bySound.set(sound, [...(bySound.get(sound) ?? []), words]);
  }
  return bySound;
}

const isOneBreath = (run: readonly Token[]): boolean =>
  run.every((token, i) => token.turn === run[0]?.turn && (!token.ends || i === run.length - 1));

const isNear = (a: string, b: string): boolean =>
  a[0] === b[0] && Math.abs(a.length - b.length) <= 1 && letterSteps(a, b) === 1;

function meantBy(
  run: readonly Token[],
  bySound: ReadonlyMap<string, string[][]>,
  known: ReadonlySet<string>,
  spared: ReadonlySet<string>,
): readonly string[] | undefined {
  const words = run.map((token) => token.word);
  if (words.every((word) => spared.has(word) || known.has(word) || known.has(stem(word))))
    return undefined;
  if (words.some((word) => !/^[a-z']+$/.test(word))) return undefined;
  const said = words.join('');
  const like = (phrase: readonly string[]): number => {
    const letters = phrase.join('');
    return 1 - letterSteps(said, letters) / Math.max(said.length, letters.length);
  };
  const best = (phrases: readonly string[][], least: number) =>
    phrases
      .filter((phrase) => phrase.length <= words.length && like(phrase) >= least)
      .sort((a, b) => like(b) - like(a))[0];
  const sound = soundOfWords(words);
  const same = best(bySound.get(sound) ?? [], LIKE_ENOUGH);
  if (same || sound.length < LEAST_SOUNDS || words.some((word) => spared.has(word))) return same;
  const near = [...bySound].filter(([other]) => isNear(sound, other));
  return best(
    near.flatMap(([, phrases]) => phrases),
    words.length > 1 ? VERY_LIKE : NEARLY_SAME,
  );
}
