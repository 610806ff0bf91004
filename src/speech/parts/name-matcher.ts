import type { LanguagePack } from '../language/pack.ts';
import type { Token } from '../words/tokens.ts';
import type { Context } from './context.ts';
import { ALONE, type Heard, type Hearing } from './hearing.ts';
import { type PartIndex, type PartName, type SpokenPart, stem } from './part-index.ts';

const LONGEST_NAME = 6;
/** Below this, a run of words stands for no part. */
const LEAST_SCORE = 2.2;
const LEAST_LETTERS = 5;
/** A name's words that were not said count against it by this share. */
const UNSAID = 0.22;
const ALL_SAID = 0.8;
const EXTRA_TELLS = 0.55;
/** Scores closer than this are equal: each name may be meant. */
const EQUAL = 0.05;
/** Least nearness of an assembly in which one everyday noun stands for its part. */
const NEAR_ENOUGH = 0.3;

/** Nouns said of everything, which stand for no part by themselves. */
const FASTENING = new Set([
  'screw',
  'bolt',
  'clip',
  'nut',
  'rivet',
  'stud',
  'washer',
  'fastener',
  'fixing',
]);
const NEVER_ALONE = new Set([
  'box',
  'end',
  'tools',
  'set',
  'unit',
  'side',
  'wall',
  'sheet',
  'frame',
]);

interface Scored {
  readonly name: PartName;
  readonly score: number;
  readonly exact: boolean;
}

interface Run {
  readonly heard: readonly Heard[];
  readonly words: readonly string[];
  readonly at: number;
  /** Opened by a word that points: an everyday noun may stand for the part at hand. */
  readonly isPointed: boolean;
  readonly isCounted: boolean;
}

export interface Named {
  readonly to: number;
  readonly parts: readonly SpokenPart[];
  readonly exact: boolean;
  /** Bolts, bushes and the like of the part in hand: that stays in hand. */
  readonly isAttached?: boolean;
}

/** Finds the names that a run of words fits best. */
export class NameMatcher {
  readonly #index: PartIndex;
  readonly #hearing: Hearing;
  readonly #attaching: ReadonlySet<string>;
  readonly #pointing: ReadonlySet<string>;
  readonly #places: Readonly<Record<string, string>>;
  readonly #numbers: ReadonlySet<string>;
  readonly #materials: ReadonlySet<string>;

  constructor(index: PartIndex, hearing: Hearing, pack: LanguagePack) {
    this.#index = index;
    this.#hearing = hearing;
    this.#attaching = new Set(pack.attaching.map(stem));
    this.#pointing = new Set(pack.pointing);
    this.#places = pack.places;
    this.#materials = new Set([...pack.materials, ...pack.processes].flatMap((term) => term.said));
    this.#numbers = new Set(Object.keys({ ...pack.numbers.small, ...pack.numbers.tens }));
  }

  at(tokens: readonly Token[], from: number, context: Context): Named | undefined {
    let best: (Scored & { to: number; all: Scored[] }) | undefined;
    for (let to = from + 1; to <= Math.min(tokens.length, from + LONGEST_NAME); to++) {
      if (tokens[to - 1]?.turn !== tokens[from]?.turn) break;
      const run = this.#run(tokens, from, to);
      if (run.heard.at(-1)?.size === 0) break;
      const all = this.#score(run, context);
      const [top] = all;
      if (top && top.score > (best?.score ?? LEAST_SCORE)) best = { ...top, to, all };
      if (tokens[to - 1]?.ends) break;
    }
    const attached = this.#attached(tokens, from, context);
    if (!best) return attached;
    if (attached && attached.to >= best.to) return attached;
    const { score, to, exact } = best;
    const equal = best.all.filter((one) => one.score > score - EQUAL);
    return { to, exact, parts: equal.flatMap((one) => one.name.parts) };
  }

  /** "the bolts", "four bushes": those of what is in hand. */
  #attached(tokens: readonly Token[], from: number, context: Context): Named | undefined {
    const noun = stem(tokens[from]?.word.replace(/'s$/, '') ?? '');
    const heard = [...this.#hearing.hear(tokens[from]?.word ?? '').keys()];
    const own = [noun, ...heard].find((word) => this.#attaching.has(word));
    if (own === undefined) return undefined;
    const linked = this.#index.attachedTo(own, context.hand);
    const names = linked.length > 0 || FASTENING.has(own) ? linked : this.#onlyNear(own, context);
    return names.length === 1
      ? { to: from + 1, exact: true, isAttached: true, parts: names.flatMap((name) => name.parts) }
      : undefined;
  }

  /** "three mounts": those of the assembly in hand when it has but one name for them. */
  #onlyNear(noun: string, context: Context): readonly PartName[] {
    return this.#index
      .having(noun)
      .filter(
        (name) =>
          this.#index.heads(name).includes(noun) &&
          context.hand.some((part) => part.parent === name.parent || part.id === name.parent),
      );
  }

  #run(tokens: readonly Token[], from: number, to: number): Run {
    const said = tokens.slice(from, to).filter((token) => token.word !== '');
    let at = from - 1;
    while (this.#index.isModifier(tokens[at]?.word ?? '') && !this.#places[tokens[at]?.word ?? ''])
      at--;
    const before = tokens[at];
    const isFirst = before === undefined || before.ends || before.turn !== tokens[from]?.turn;
    return {
      heard: said.map((token) => this.#hearing.hear(token.word)),
      words: said.map((token) => token.word),
      at: from,
      isPointed:
        isFirst || this.#pointing.has(before.word) || this.#places[before.word] !== undefined,
      isCounted: this.#numbers.has(tokens[from - 1]?.word ?? ''),
    };
  }

  /** Names by how well a run of words fits them, best first. */
  #score(run: Run, context: Context): Scored[] {
    const names = new Set(
      run.heard.flatMap((may) => [...may.keys()].flatMap((word) => this.#index.having(word))),
    );
    const all = [...names].flatMap((name) => this.#scoreOf(name, run, context));
    return all.sort((a, b) => b.score - a.score);
  }

  #scoreOf(name: PartName, run: Run, context: Context): Scored[] {
    const fit = this.#fit(name, run);
    if (!fit) return [];
    const near = context.nearness(name, run.at);
    const rest = fit.left.reduce((sum, word) => sum + this.#index.weight(word), 0);
    const score = fit.score - UNSAID * rest + (fit.left.length === 0 ? ALL_SAID : 0) + near;
    if (this.#isNamed(name, run, fit)) return [{ name, exact: fit.exact, score }];
    return this.#isAtHand(name, run, context)
      ? [{ name, exact: fit.exact, score: Math.max(score, LEAST_SCORE + near) }]
      : [];
  }

  /** Each word of the run is one of the name; undefined when one is not. */
  #fit(name: PartName, run: Run) {
    let [score, strong, exact] = [0, 0, true];
    let [surely, unsure] = [false, false];
    const left = new Set(name.main);
    const extra = new Set(name.extra);
    for (const [i, may] of run.heard.entries()) {
      const hits = [...may].filter(([word]) => left.has(word) || extra.has(word));
      const [hit] = hits.sort((a, b) => b[1] - a[1]);
      if (!hit) return undefined;
      const [word, how] = hit;
      const main = left.delete(word);
      extra.delete(word);
      score += this.#index.weight(word) * how * (main ? 1 : EXTRA_TELLS);
      if (how < 1) exact = false;
      else surely = true;
      if (how < ALONE) unsure = true;
      if (main && this.#isStrong(word, run.words[i] ?? '', how, run.words.length)) strong++;
    }
    if (unsure && !surely) return undefined;
    return { score, strong, exact, left: [...left] };
  }

  #isStrong(word: string, said: string, how: number, many: number): boolean {
    const isTelling = !this.#index.isWeak(word) && word.length > 2 && !this.#hearing.isCommon(said);
    const isSure = many > 1 ? how >= 0.65 : how >= 0.76 && said.length >= LEAST_LETTERS;
    return isTelling && (how === 1 || isSure);
  }

  /** The run by itself names the part: several of its words, or one that tells. */
  #isNamed(
    name: PartName,
    run: Run,
    fit: { strong: number; exact: boolean; left: readonly string[] },
  ): boolean {
    const isNoun = run.heard.some((may) =>
      [...may.keys()].some((word) => !this.#index.isModifier(word)),
    );
    const isMain = name.main.length - fit.left.length >= run.heard.length;
    const isAssembly = name.parts.some((part) => part.kind === 'assembly');
    if (isAssembly && !fit.exact && run.words.length === 1) return false;
    if (isAssembly) return fit.left.length === 0 || (fit.strong > 0 && this.#opens(name, run));
    if (run.heard.length > 1 && isNoun && isMain) return true;
    return fit.strong > 0 && this.#standsFor(name, run, fit.strong);
  }

  /** An assembly goes by its first word when that is all that is before "and" or a comma. */
  #opens(name: PartName, run: Run): boolean {
    return (
      name.main.length - run.heard.length <= 1 &&
      run.heard.every((may, i) => may.has(name.main[i] ?? ''))
    );
  }

  /** One word stands for a name when it opens or closes it and says half of what the name tells. */
  #standsFor(name: PartName, run: Run, strong: number): boolean {
    const telling = this.#index.telling(name);
    const isSaid = (word: string | undefined): boolean =>
      word !== undefined && run.heard.some((may) => may.has(word));
    return (
      strong >= telling.length / 2 &&
      (run.heard.length > 1 || isSaid(telling[0]) || isSaid(telling.at(-1)))
    );
  }

  /** "the spring" where one assembly is spoken of and one of its parts is called so. */
  #isAtHand(name: PartName, run: Run, context: Context): boolean {
    if (!run.isPointed || run.isCounted || name.parts.some((part) => part.kind !== 'part'))
      return false;
    if (NEVER_ALONE.has(run.words.at(-1) ?? '') || this.#materials.has(run.words.at(-1) ?? ''))
      return false;
    const isNear = context.zoneOf(name, run.at) >= NEAR_ENOUGH;
    const last = run.heard.at(-1) ?? new Map<string, number>();
    const heads = this.#index.heads(name);
    return isNear && heads.some((head) => last.has(head)) && this.#isOnly(last, context, run.at);
  }

  /** No more than one name near by is called so. */
  #isOnly(last: Heard, context: Context, at: number): boolean {
    const called = [...last.keys()]
      .flatMap((word) =>
        this.#index.having(word).filter((n) => this.#index.heads(n).includes(word)),
      )
      .filter((name) => context.zoneOf(name, at) >= NEAR_ENOUGH);
    const most = Math.max(...called.map((name) => context.nearness(name, at)));
    return new Set(called.filter((n) => context.nearness(n, at) > most - EQUAL)).size === 1;
  }
}
