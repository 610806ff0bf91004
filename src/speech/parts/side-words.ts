import type { LanguagePack } from '../language/pack.ts';
import { type Phrases, phraseSet } from '../words/phrases.ts';
import type { Token } from '../words/tokens.ts';
import type { Context } from './context.ts';
import { type SpokenPart, sideOf } from './part-index.ts';

/** Words by which "right" is a side and not "all right". */
const OF_A_SIDE = new Set([
  'hand',
  'side',
  'one',
  "one's",
  'ones',
  'rear',
  'front',
  'lower',
  'upper',
]);
const BOTH = new Set(['sides', 'pair', 'pairs', "pair's"]);

/** Reads left and right beside a part, and follows where the talk has gone. */
export class SideWords {
  readonly #left: Phrases<string>;
  readonly #right: Phrases<string>;
  readonly #places: Readonly<Record<string, string>>;

  constructor(pack: LanguagePack) {
    this.#left = phraseSet(pack.sides.left);
    this.#right = phraseSet(pack.sides.right);
    this.#places = pack.places;
  }

  /** One side of a pair where left or right is said in or beside the name. */
  of(
    parts: readonly SpokenPart[],
    tokens: readonly Token[],
    from: number,
    to: number,
    context: Context,
  ): readonly SpokenPart[] {
    const near = (phrases: Phrases<string>): boolean => phrases.within(tokens, from - 5, to + 4);
    const [left, right] = [near(this.#left), near(this.#right)];
    if (left && right) return parts;
    const side = left ? 'L' : right && this.#isRight(tokens, from, to) ? 'R' : undefined;
    if (side === undefined || !this.#isClose(tokens, from, to)) return context.sided(parts);
    const own = parts.filter((part) => sideOf(part) === side);
    return own.length > 0 ? own : parts;
  }

  /** In the name, straight before or straight behind it. */
  #isClose(tokens: readonly Token[], from: number, to: number): boolean {
    return [this.#left, this.#right].some((side) => side.within(tokens, from - 3, to + 3));
  }

  #isRight(tokens: readonly Token[], from: number, to: number): boolean {
    for (let i = Math.max(0, from - 3); i < to + 3; i++) {
      if (tokens[i]?.word !== 'right') continue;
      if (i === from - 1 || i === to || OF_A_SIDE.has(tokens[i + 1]?.word ?? '')) return true;
      if (i > to && tokens[i - 1]?.word === 'the') return true;
    }
    return this.#right.within(tokens, from, to);
  }

  /** "we start at the front left": place and side for what comes. */
  follow(tokens: readonly Token[], at: number, context: Context): void {
    const word = tokens[at]?.word ?? '';
    if (BOTH.has(word)) context.side = undefined;
    const next = tokens[at + 1]?.word;
    const place = this.#places[word];
    if (place === undefined) return;
    if (next === 'left' || next === 'right') {
      context.place = place;
      context.side = next === 'left' ? 'L' : 'R';
    } else if (WHERE.has(tokens[at - 2]?.word ?? '') && tokens[at - 1]?.word === 'the') {
      if (context.place !== place) context.side = undefined;
      context.place = place;
    }
  }
}

const WHERE = new Set(['at', 'to', 'from']);
