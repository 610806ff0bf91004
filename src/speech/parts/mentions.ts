import type { LanguagePack } from '../language/pack.ts';
import { Phrases, phraseSet } from '../words/phrases.ts';
import type { Token } from '../words/tokens.ts';
import {
  nameWords,
  type PartIndex,
  type PartName,
  type SpokenPart,
  sideOf,
  stem,
} from './part-index.ts';
import { alike } from './sound.ts';

/** A part named in the speech. */
export interface Mention {
  readonly from: number;
  readonly to: number;
  /** More than one where no side was said. */
  readonly parts: readonly SpokenPart[];
  /** False when a word of the name was only heard alike. */
  readonly exact: boolean;
  /** True when it becomes what is spoken of. */
  readonly subject: boolean;
}

const LONGEST_NAME = 5;
/** Below this, a run of words stands for no part. */
const LEAST_SCORE = 2.2;
const LIKE_ENOUGH = 0.78;
/** Shorter words are taken for another only where they sound the same. */
const LEAST_LETTERS = 5;

interface Heard {
  /** Words of names that this word may be, with how alike. */
  readonly may: ReadonlyMap<string, number>;
}

interface Scored {
  readonly name: PartName;
  readonly score: number;
  readonly exact: boolean;
}

/** Finds parts by their names, by what people call them, and by what a recogniser made of both. */
export class MentionFinder {
  readonly #index: PartIndex;
  readonly #common: ReadonlySet<string>;
  readonly #aliases: Phrases<readonly SpokenPart[]>;
  readonly #left: Phrases<string>;
  readonly #right: Phrases<string>;
  readonly #beside: Phrases<string>;
  readonly #turning: Phrases<string>;
  readonly #articles: ReadonlySet<string>;
  readonly #heard = new Map<string, Heard>();

  constructor(index: PartIndex, parts: readonly SpokenPart[], pack: LanguagePack) {
    this.#index = index;
    const { small, tens, fractions } = pack.numbers;
    this.#common = new Set([...pack.common, ...Object.keys({ ...small, ...tens, ...fractions })]);
    this.#left = phraseSet(pack.sides.left);
    this.#right = phraseSet(pack.sides.right);
    this.#beside = phraseSet(pack.beside);
    this.#turning = phraseSet(pack.turning);
    this.#articles = new Set(pack.articles);
    const byLabel = new Map(parts.map((part) => [part.label, part]));
    this.#aliases = new Phrases(
      pack.aliases.flatMap(([said, means]) => {
        const found = meant(means, byLabel, parts, index);
        return found.length > 0 ? [[said, found] as const, ...plural(said, found)] : [];
      }),
    );
  }

  /** The mentions of a text, left to right, given what is in hand before it. */
  find(tokens: readonly Token[], inHand: readonly SpokenPart[]): Mention[] {
    const mentions: Mention[] = [];
    let hand = inHand;
    for (let i = 0; i < tokens.length; i++) {
      const found = this.#at(tokens, i, hand);
      if (!found) continue;
      const owner = tokens[i - 1]?.word === 'of' || tokens[i - 2]?.word === 'of';
      const before = mentions.at(-1);
      const mention = owner && before && i - before.to <= 2 ? { ...found, subject: false } : found;
      mentions.push(mention);
      if (mention.subject) hand = mention.parts;
      i = mention.to - 1;
    }
    return mentions;
  }

  #at(tokens: readonly Token[], from: number, hand: readonly SpokenPart[]): Mention | undefined {
    const alias = this.#aliases.at(tokens, from);
    const named = this.#named(tokens, from, hand);
    const best =
      alias && (!named || alias.to >= named.to)
        ? { to: alias.to, parts: this.#nearest(alias.value, hand), exact: true }
        : named;
    if (!best) return undefined;
    const parts = this.#sided(
      this.#placed(best.parts, tokens, from, best.to),
      tokens,
      from,
      best.to,
    );
    return { from, to: best.to, parts, exact: best.exact, subject: this.#isSubject(tokens, from) };
  }

  /** Of several that are called so, those below the assembly in hand. */
  #nearest(parts: readonly SpokenPart[], hand: readonly SpokenPart[]): readonly SpokenPart[] {
    const near = parts.filter((part) =>
      hand.some((held) => held.id === part.parent || held.parent === part.parent),
    );
    return near.length > 0 ? near : parts;
  }

  #named(
    tokens: readonly Token[],
    from: number,
    hand: readonly SpokenPart[],
  ): { to: number; parts: readonly SpokenPart[]; exact: boolean } | undefined {
    let best: (Scored & { to: number; all: Scored[] }) | undefined;
    for (let to = from + 1; to <= Math.min(tokens.length, from + LONGEST_NAME); to++) {
      if (tokens[to - 1]?.turn !== tokens[from]?.turn) break;
      const run = tokens.slice(from, to).map((token) => this.#hear(token.word));
      if (run.at(-1)?.may.size === 0) break;
      const all = this.#score(run, tokens.slice(from, to), hand);
      const [top] = all;
      if (top && top.score > (best?.score ?? LEAST_SCORE)) best = { ...top, to, all };
      if (tokens[to - 1]?.ends) break;
    }
    if (!best) return undefined;
    const { score, to, exact } = best;
    const equal = best.all.filter((one) => one.score > score - 0.05);
    return { to, exact, parts: equal.flatMap((one) => one.name.parts) };
  }

  #hear(word: string): Heard {
    const known = this.#heard.get(word);
    if (known) return known;
    const bare = stem(word);
    const may = new Map<string, number>();
    if (this.#index.having(bare).length > 0) may.set(bare, 1);
    else if (/^[a-z']+$/.test(word)) {
      if (!this.#common.has(word))
        for (const name of this.#index.words) {
          const how = name.length < 3 ? 0 : alike(bare, name);
          if (how >= (bare.length < LEAST_LETTERS ? 0.75 : LIKE_ENOUGH)) may.set(name, how * 0.9);
        }
    }
    const heard = { may };
    this.#heard.set(word, heard);
    return heard;
  }

  /** Names by how well a run of words fits them, best first. */
  #score(run: readonly Heard[], words: readonly Token[], hand: readonly SpokenPart[]): Scored[] {
    const names = new Set(
      run.flatMap(({ may }) => [...may.keys()].flatMap((word) => this.#index.having(word))),
    );
    return [...names]
      .flatMap((name) => this.#scoreOf(name, run, words, hand))
      .sort((a, b) => b.score - a.score);
  }

  #scoreOf(
    name: PartName,
    run: readonly Heard[],
    words: readonly Token[],
    hand: readonly SpokenPart[],
  ): Scored[] {
    let [score, strong, exact] = [0, 0, true];
    const left = new Set(name.main);
    const extra = new Set(name.extra);
    for (const [i, { may }] of run.entries()) {
      const hits = [...may]
        .filter(([word]) => left.has(word) || extra.has(word))
        .sort((a, b) => b[1] - a[1]);
      const [hit] = hits;
      if (!hit) return [];
      const [word, how] = hit;
      const main = left.delete(word);
      extra.delete(word);
      score += this.#index.weight(word) * how * (main ? 1 : 0.55);
      if (how < 1) exact = false;
      const said = words[i]?.word ?? '';
      if (!this.#isTelling(word, said)) continue;
      if (
        main &&
        (how === 1 || (run.length > 1 ? how >= 0.65 : how >= 0.76 && said.length >= LEAST_LETTERS))
      )
        strong++;
    }
    const rest = [...left].reduce((sum, word) => sum + this.#index.weight(word), 0);
    const isNoun = run.some(({ may }) =>
      [...may.keys()].some((word) => !this.#index.isModifier(word)),
    );
    const isMain = name.main.length - left.size >= run.length;
    const isAssembly = name.parts.some((part) => part.kind === 'assembly');
    const covered = run.length > 1 && isNoun && isMain && !isAssembly;
    if (!covered && (strong === 0 || !this.#standsFor(name, run, strong))) return [];
    return [
      {
        name,
        exact,
        score: score - 0.22 * rest + (left.size === 0 ? 0.8 : 0) + nearness(name, hand),
      },
    ];
  }

  /** One word stands for a name when it opens or closes it and says half of what the name tells. */
  #standsFor(name: PartName, run: readonly Heard[], strong: number): boolean {
    const telling = this.#index.telling(name);
    const isAssembly = name.parts.some((part) => part.kind === 'assembly');
    const isSaid = (word: string | undefined): boolean =>
      word !== undefined && run.some(({ may }) => may.has(word));
    if (isAssembly) return isSaid(telling[0]);
    return (
      strong >= telling.length / 2 &&
      (run.length > 1 || isSaid(telling[0]) || isSaid(telling.at(-1)))
    );
  }

  /** A word that can stand for a part: no modifier, no everyday word, no single letter. */
  #isTelling(word: string, said: string): boolean {
    return !this.#index.isWeak(word) && word.length > 2 && !this.#common.has(said);
  }

  /** Of several, those whose names have the place that is said beside: "front brake disc". */
  #placed(
    parts: readonly SpokenPart[],
    tokens: readonly Token[],
    from: number,
    to: number,
  ): readonly SpokenPart[] {
    const beside = [tokens[from - 2], tokens[from - 1], ...tokens.slice(from, to), tokens[to]];
    const said = beside.filter((t) => t?.turn === tokens[from]?.turn).map((t) => t?.word ?? '');
    const places = PLACES.filter((place) => said.includes(place));
    const own = parts.filter((part) =>
      places.some((place) => part.name.toLowerCase().includes(place)),
    );
    return own.length > 0 ? own : parts;
  }

  /** One side of a pair where left or right is said in or beside the name. */
  #sided(
    parts: readonly SpokenPart[],
    tokens: readonly Token[],
    from: number,
    to: number,
  ): readonly SpokenPart[] {
    const isSaid = (phrases: Phrases<string>): boolean => phrases.within(tokens, from - 3, to + 3);
    const [left, right] = [isSaid(this.#left), isSaid(this.#right)];
    if (left === right) return parts;
    const own = parts.filter((part) => sideOf(part) === (left ? 'L' : 'R'));
    return own.length > 0 ? own : parts;
  }

  /** Named behind "than": what something else is held against. */
  #isCompared(tokens: readonly Token[], from: number): boolean {
    for (let i = from - 1; i >= Math.max(0, from - THAN_REACH); i--) {
      const token = tokens[i];
      if (!token || token.ends || token.turn !== tokens[from]?.turn) return false;
      if (token.word === 'than') return true;
    }
    return false;
  }

  /** "the lid": spoken of. "stiffer than the lid", "screwed to the lid": not. "over to the lid": spoken of. */
  #isSubject(tokens: readonly Token[], from: number): boolean {
    let at = from;
    while (
      at > 0 &&
      (this.#articles.has(tokens[at - 1]?.word ?? '') ||
        SIDE_WORDS.has(tokens[at - 1]?.word ?? '') ||
        (this.#index.isModifier(stem(tokens[at - 1]?.word ?? '')) &&
          !this.#beside.endsAt(tokens, at, 1)))
    )
      at--;
    if (tokens[at]?.turn !== tokens[at - 1]?.turn) return true;
    if (this.#isCompared(tokens, from)) return false;
    return this.#turning.endsAt(tokens, at) || !this.#beside.endsAt(tokens, at);
  }
}

const THAN_REACH = 6;
const PLACES = ['front', 'rear', 'upper', 'lower', 'inner', 'outer'];
const SIDE_WORDS = new Set(['left', 'right', 'hand', 'other']);

function nearness(name: PartName, hand: readonly SpokenPart[]): number {
  if (hand.some((part) => name.parts.some((own) => own.id === part.id))) return 0.9;
  return hand.some((part) => part.parent === name.parent || part.id === name.parent) ? 0.6 : 0;
}

const plural = (said: string, parts: readonly SpokenPart[]) =>
  said.endsWith('s') ? [] : [[`${said}s`, parts] as const];

/** What an alias means: a number of the record, the vehicle, or a name of it. */
function meant(
  means: string,
  byLabel: ReadonlyMap<string, SpokenPart>,
  parts: readonly SpokenPart[],
  index: PartIndex,
): readonly SpokenPart[] {
  if (means === '*vehicle') return parts.filter((part) => part.kind === 'vehicle');
  const own = byLabel.get(means);
  if (own) return [own];
  const named = parts.filter((part) => part.name.toLowerCase() === means.toLowerCase());
  if (named.length > 0) return named;
  const words = nameWords(means);
  const fits = index.names.filter((name) =>
    words.every((word) => name.main.includes(word) || name.extra.includes(word)),
  );
  const least = Math.min(...fits.map((name) => name.main.length + name.extra.length));
  const whole = fits.filter(
    (name) => name.main.length + name.extra.length === least || words.length === name.main.length,
  );
  return whole.flatMap((name) => name.parts);
}
