import type { LanguagePack } from '../language/pack.ts';
import { type Phrases, phraseSet } from '../words/phrases.ts';
import type { Token } from '../words/tokens.ts';
import { partAliases } from './aliases.ts';
import { Context } from './context.ts';
import { Hearing } from './hearing.ts';
import { type Named, NameMatcher } from './name-matcher.ts';
import { OtherOne } from './other-one.ts';
import { type PartIndex, type SpokenPart, stem } from './part-index.ts';
import { SideWords } from './side-words.ts';

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

const THAN_REACH = 6;
const BECAUSE_REACH = 5;

/** Finds parts by their names, by what people call them, and by what a recogniser made of both. */
export class MentionFinder {
  readonly #index: PartIndex;
  readonly #names: NameMatcher;
  readonly #others: OtherOne;
  readonly #sides: SideWords;
  readonly #aliases: Phrases<readonly SpokenPart[]>;
  readonly #beside: Phrases<string>;
  readonly #turning: Phrases<string>;
  readonly #articles: ReadonlySet<string>;
  readonly #places: Readonly<Record<string, string>>;

  constructor(index: PartIndex, parts: readonly SpokenPart[], pack: LanguagePack) {
    this.#index = index;
    this.#names = new NameMatcher(index, new Hearing(index, pack), pack);
    this.#others = new OtherOne(index, pack);
    this.#sides = new SideWords(pack);
    this.#aliases = partAliases(parts, index, pack);
    this.#beside = phraseSet(pack.beside);
    this.#turning = phraseSet(pack.turning);
    this.#articles = new Set(pack.articles);
    this.#places = pack.places;
  }

  /** The mentions of a text, left to right, given what is in hand before it. */
  find(tokens: readonly Token[], inHand: readonly SpokenPart[]): Mention[] {
    const mentions: Mention[] = [];
    const context = new Context(this.#index, inHand);
    for (let i = 0; i < tokens.length; i++) {
      this.#sides.follow(tokens, i, context);
      const found = this.#at(tokens, i, context);
      if (!found) continue;
      const owner = tokens[i - 1]?.word === 'of' || tokens[i - 2]?.word === 'of';
      const before = mentions.at(-1);
      const { isAttached, ...plain } = found;
      const mention = owner && before && i - before.to <= 2 ? { ...plain, subject: false } : plain;
      mentions.push(mention);
      if (mention.subject && !isAttached) context.take(mention.parts, i);
      i = mention.to - 1;
    }
    return withoutLists(mentions, tokens);
  }

  #at(
    tokens: readonly Token[],
    from: number,
    context: Context,
  ): (Mention & { isAttached?: boolean }) | undefined {
    if (tokens[from]?.word === '') return undefined;
    const other = this.#others.at(tokens, from, context);
    if (other) return { ...other, from, exact: true, subject: this.#isSubject(tokens, from) };
    const alias = this.#aliases.at(tokens, from);
    const named = this.#names.at(tokens, from, context);
    const best: Named | undefined =
      alias && (!named || alias.to >= named.to)
        ? { to: alias.to, parts: alias.value, exact: true, isAttached: false }
        : named;
    if (!best) return undefined;
    const placed = this.#nearest(this.#placed(best.parts, tokens, from, best.to), context, from);
    const parts = this.#sides.of(placed, tokens, from, best.to, context);
    return {
      from,
      to: best.to,
      parts,
      exact: best.exact,
      isAttached: best.isAttached ?? false,
      subject:
        (best.isAttached === true && RELATIVE.has(tokens[best.to]?.word ?? '')) ||
        this.#isSubject(tokens, from),
    };
  }

  /** Of several that are called so, those of the assembly that is spoken of. */
  #nearest(parts: readonly SpokenPart[], context: Context, at: number): readonly SpokenPart[] {
    const near = (part: SpokenPart): number => {
      const name = this.#index.names.find((one) => one.parts.includes(part));
      return name ? context.nearness(name, at) : 0;
    };
    const most = Math.max(...parts.map(near));
    return parts.filter((part) => near(part) > most - 0.05);
  }

  /** Of several, those whose names have the place that is said beside: "front brake disc". */
  #placed(
    parts: readonly SpokenPart[],
    tokens: readonly Token[],
    from: number,
    to: number,
  ): readonly SpokenPart[] {
    const beside = [tokens[from - 2], tokens[from - 1], ...tokens.slice(from, to), tokens[to]];
    const said = beside.flatMap((t) => {
      const place = t?.turn === tokens[from]?.turn ? this.#places[t?.word ?? ''] : undefined;
      return place === undefined ? [] : [place];
    });
    const own = parts.filter((part) => said.some((at) => part.name.toLowerCase().includes(at)));
    return own.length > 0 ? own : parts;
  }

  /** Named behind "than" or "because": what something else is held against, or a ground. */
  #isAside(tokens: readonly Token[], from: number): boolean {
    for (let i = from - 1; i >= Math.max(0, from - THAN_REACH); i--) {
      const token = tokens[i];
      if (!token || token.ends || token.turn !== tokens[from]?.turn) return false;
      if (token.word === 'and') return false;
      if (token.word === 'than') return true;
      if (ASIDE.has(token.word) && from - i <= BECAUSE_REACH) return true;
    }
    return false;
  }

  /** "the lid": spoken of. "stiffer than the lid", "screwed to the lid": not. "over to the lid": spoken of. */
  #isSubject(tokens: readonly Token[], from: number): boolean {
    let at = from;
    while (at > 0 && this.#isPartOfName(tokens, at)) {
      at--;
      if (!this.#articles.has(tokens[at]?.word ?? '')) continue;
      if (tokens[at - 1]?.word === 'all') at--;
      break;
    }
    if (tokens[at]?.turn !== tokens[at - 1]?.turn) return true;
    if (this.#isAside(tokens, from)) return false;
    if (this.#turning.endsAt(tokens, at)) return true;
    return POINTS.has(tokens[at]?.word ?? '') && at < from
      ? !LINKING.has(tokens[at - 1]?.word ?? '')
      : !this.#beside.endsAt(tokens, at);
  }

  #isPartOfName(tokens: readonly Token[], at: number): boolean {
    const word = tokens[at - 1]?.word ?? '';
    return (
      this.#articles.has(word) ||
      SIDE_WORDS.has(word) ||
      (this.#index.isModifier(stem(word)) && !this.#beside.endsAt(tokens, at, 1))
    );
  }
}

const SIDE_WORDS = new Set(['left', 'right', 'hand', 'other', 'whole', 'same']);
/** "without the bolts that hold it up": spoken of at length. */
const RELATIVE = new Set(['that', 'which']);
const ASIDE = new Set(['because', 'cause', 'like', 'unlike']);
/** "underneath this floor here": pointed at, so spoken of, unless it only takes something up. */
const POINTS = new Set(['this', 'these']);
const LINKING = new Set(['to', 'into', 'onto', 'than', 'not', 'with']);

/** "motor, gears and the inverter": parts told off in a row make up what was named before. */
function withoutLists(mentions: readonly Mention[], tokens: readonly Token[]): Mention[] {
  const follows = (a: Mention | undefined, b: Mention | undefined): boolean =>
    a !== undefined &&
    b !== undefined &&
    tokens[a.from]?.turn === tokens[b.from]?.turn &&
    tokens.slice(a.to, b.from).every(({ word }) => LISTING.has(word));
  return mentions.map((mention, i) => {
    const links = [i - 1, i, i + 1].map((k) => follows(mentions[k - 1], mentions[k]));
    const [back, before, next] = links;
    const beyond = follows(mentions[i + 1], mentions[i + 2]);
    const isListed = (before && (back || next)) || (next && beyond);
    return isListed ? { ...mention, subject: false } : mention;
  });
}

const LISTING = new Set(['and', 'the', 'a', 'an', 'or']);
