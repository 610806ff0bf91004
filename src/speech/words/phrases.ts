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
    const hit = list?.find(({ words }) =>
      words.every(
        (word, i) => tokens[from + i]?.word === word && tokens[from + i]?.turn === first?.turn,
      ),
    );
    return hit && { to: from + hit.words.length, value: hit.value };
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
    return list.some(
      ({ words }) =>
        from + words.length === end && words.every((word, i) => tokens[from + i]?.word === word),
    );
  }
}

export const phraseSet = (phrases: readonly string[]): Phrases<string> =>
  new Phrases(phrases.map((p) => [p, p] as const));
