import { phraseWords, type Token } from './tokens.ts';

export interface PhraseHit<T> {
  readonly to: number;
  readonly value: T;
}

/** Phrases by their first word, the longest first. */
export class Phrases<T> {
  readonly #byFirst = new Map<string, { readonly words: readonly string[]; readonly value: T }[]>();

  constructor(entries: Iterable<readonly [phrase: string, value: T]>) {
    for (const [phrase, value] of entries) {
      const words = phraseWords(phrase);
      const [first] = words;
      if (first === undefined) continue;
      const list = this.#byFirst.get(first) ?? [];
      list.push({ words, value });
      list.sort((a, b) => b.words.length - a.words.length);
      this.#byFirst.set(first, list);
    }
  }

  /** The longest phrase that begins at a word, within one turn. */
  at(tokens: readonly Token[], from: number): PhraseHit<T> | undefined {
    const first = tokens[from];
    const list = first && this.#byFirst.get(first.word);
    for (const { words, value } of list ?? []) {
      const to = endOf(tokens, words, from);
      if (to !== undefined && tokens[to - 1]?.turn === first?.turn) return { to, value };
    }
    return undefined;
  }

  /** True when a phrase lies wholly between two words. */
  within(tokens: readonly Token[], from: number, to: number): boolean {
    for (let i = Math.max(0, from); i < to; i++)
      if ((this.at(tokens, i)?.to ?? to + 1) <= to) return true;
    return false;
  }

  /** The last word of a phrase is the word before `end`. */
  endsAt(tokens: readonly Token[], end: number, longest = 5): boolean {
    for (let i = Math.max(0, end - longest); i < end; i++)
      if (this.#ends(tokens, i, end)) return true;
    return false;
  }

  #ends(tokens: readonly Token[], from: number, end: number): boolean {
    const list = this.#byFirst.get(tokens[from]?.word ?? '') ?? [];
    return list.some(({ words }) => endOf(tokens, words, from) === end);
  }
}

/** Where words that begin at a place end; a word that was joined to the one before is passed over. */
function endOf(
  tokens: readonly Token[],
  words: readonly string[],
  from: number,
): number | undefined {
  let at = from;
  for (const word of words) {
    if (tokens[at]?.word !== word) return undefined;
    at++;
    while (tokens[at]?.word === '') at++;
  }
  return at;
}

export const phraseSet = (phrases: readonly string[]): Phrases<string> =>
  new Phrases(phrases.map((p) => [p, p] as const));
