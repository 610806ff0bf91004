import type { LanguagePack } from '../language/pack.ts';
import type { Token } from '../words/tokens.ts';
import type { Context } from './context.ts';
import { type PartIndex, type PartName, type SpokenPart, sideOf } from './part-index.ts';

/** A longer name than need be is less likely meant. */
const UNSHARED = 0.3;
const ONE = new Set(['one', 'ones', "one's"]);
const PAIR = new Set(['pair', "pair's"]);

/** "the left one", "the rear one", "the pair": named by what it is beside the part in hand. */
export class OtherOne {
  readonly #index: PartIndex;
  readonly #places: Readonly<Record<string, string>>;

  constructor(index: PartIndex, pack: LanguagePack) {
    this.#index = index;
    this.#places = pack.places;
  }

  at(
    tokens: readonly Token[],
    from: number,
    context: Context,
  ): { to: number; parts: readonly SpokenPart[] } | undefined {
    const [word, next] = [tokens[from]?.word ?? '', tokens[from + 1]];
    const held = this.#index.names.filter((name) =>
      context.hand.some((part) => name.parts.includes(part)),
    );
    if (held.length === 0) return undefined;
    if (PAIR.has(word)) return { to: from + 1, parts: held.flatMap((name) => name.parts) };
    if (!next || !ONE.has(next.word) || next.turn !== tokens[from]?.turn) return undefined;
    if (word === 'left' || word === 'right')
      return this.#side(held, word === 'left' ? 'L' : 'R', from);
    const place = this.#places[word];
    if (place === undefined) return undefined;
    const parts = held.flatMap((name) => this.#counterpart(name, place));
    return parts.length > 0 ? { to: from + 2, parts: context.sided(parts) } : undefined;
  }

  #side(held: readonly PartName[], side: 'L' | 'R', from: number) {
    const parts = held.flatMap((name) => name.parts).filter((part) => sideOf(part) === side);
    return parts.length > 0 ? { to: from + 2, parts } : undefined;
  }

  /** The name that has the place and shares most words with the one in hand. */
  #counterpart(held: PartName, place: string): readonly SpokenPart[] {
    if (held.main.includes(place)) return held.parts;
    const rated = this.#index
      .having(place)
      .map((name) => ({
        name,
        shared: name.main.filter((word) => held.main.includes(word)).length,
        near: (name.parent === held.parent ? 0.5 : 0) - UNSHARED * name.main.length,
      }))
      .filter(({ shared }) => shared > 0)
      .sort((a, b) => b.shared + b.near - a.shared - a.near);
    return rated[0]?.name.parts ?? [];
  }
}
