import type { LanguagePack } from '../language/pack.ts';
import { phraseWords } from '../words/tokens.ts';
import { type PartIndex, stem } from './part-index.ts';
import { alike } from './sound.ts';

/** What a word may be in the names of the record, with how sure: 1 the word itself. */
export type Heard = ReadonlyMap<string, number>;

/** Alike enough to stand alone; beside a word of the same name that was heard right, less will do. */
export const ALONE = 0.7;
const BESIDE = 0.62;
/** Shorter words are taken for another only where they sound the same. */
const LEAST_LETTERS = 5;
const SHORT_ALIKE = 0.75;
/** A word heard alike, and a word of the trade that means the same, tell less than the word itself. */
const ALIKE_TELLS = 0.9;
const SYNONYM_TELLS = 0.85;

/** Hears words of the names: by themselves, by a word of the trade that means the same, by sound. */
export class Hearing {
  readonly #index: PartIndex;
  readonly #common: ReadonlySet<string>;
  /** Words of materials and ways of making: no mangled names. */
  readonly #ofTrade: ReadonlySet<string>;
  readonly #synonyms: ReadonlyMap<string, readonly string[]>;
  readonly #known = new Map<string, Heard>();

  constructor(index: PartIndex, pack: LanguagePack) {
    this.#index = index;
    const { small, tens, fractions } = pack.numbers;
    const made = [...pack.materials, ...pack.processes, ...pack.joints].flatMap((t) => t.said);
    this.#common = new Set([...pack.common, ...Object.keys({ ...small, ...tens, ...fractions })]);
    this.#ofTrade = new Set(made.flatMap(phraseWords));
    this.#synonyms = new Map(pack.synonyms.map(([said, means]) => [stem(said), means.map(stem)]));
  }

  hear(word: string): Heard {
    const known = this.#known.get(word);
    if (known) return known;
    const heard = this.#listen(word);
    this.#known.set(word, heard);
    return heard;
  }

  isCommon(word: string): boolean {
    return this.#common.has(word);
  }

  #listen(word: string): Heard {
    const bare = stem(word.replace(/'s$/, ''));
    const may = new Map<string, number>();
    for (const means of this.#synonyms.get(bare) ?? [])
      if (this.#index.having(means).length > 0) may.set(means, SYNONYM_TELLS);
    if (this.#index.having(bare).length > 0) may.set(bare, 1);
    if (
      may.size > 0 ||
      this.#common.has(word) ||
      this.#ofTrade.has(word) ||
      !/^[a-z']+$/.test(word)
    )
      return may;
    for (const name of this.#index.words) {
      const how = name.length < 3 ? 0 : alike(bare, name);
      if (how >= (bare.length < LEAST_LETTERS ? SHORT_ALIKE : BESIDE))
        may.set(name, how * ALIKE_TELLS);
    }
    return may;
  }
}
