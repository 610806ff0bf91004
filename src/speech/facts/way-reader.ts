import type { Way } from '../../quantity/index.ts';
import type { LanguagePack } from '../language/pack.ts';
import { type Phrases, phraseSet } from '../words/phrases.ts';
import type { Token } from '../words/tokens.ts';
import type { Fact } from './fact.ts';

/** Words of doubt that must stand straight before a number: elsewhere they mean a place or an amount. */
const CLOSE = new Set([
  'about',
  'around',
  'some',
  'say',
  'nearly',
  'almost',
  'just under',
  'just over',
  'a good',
  'a bit under',
  'a bit over',
  'bit under',
  'bit over',
  'getting on for',
  'circa',
  'must be about',
]);
/** Words of doubt that are said behind, too. */
const BEHIND = new Set(
  "or so, ish, i'd say, i would say, i think, i guess, i'd guess, give or take, thereabouts, near enough, or thereabouts, i want to say, i'd imagine, i imagine, i'd have said, i fancy, i should think, at a guess, or something, or something like that, something like that, from memory, by eye, more or less, roughly, maybe, probably, i reckon, approximately, i believe, i suppose, not sure, i'm not sure, guessing, hard to say, if i had to guess".split(
    ', ',
  ),
);
/** Claims that no eye can check. */
const UNSEEN = new Set(['cost', 'mass', 'stiffness', 'strength', 'isolation']);
/** Words that tie a gauge or a drawing to the number before them. */
const CLAIMING = new Set([
  'on',
  'by',
  'with',
  'off',
  'from',
  'says',
  'according',
  'stamped',
  'it',
  'in',
  'we',
  'when',
  'i',
]);
const PARTING = new Set(['but', 'then']);
const SUBJECTS = new Set(
  "the it they it's they're that that's this these he we i you there there's".split(' '),
);
const UNUSED = new Set(["haven't", "didn't", 'not', 'never', "hasn't", "can't", "couldn't"]);
const MADE = new Set(['material', 'process', 'joint']);
const RIGHT_REACH = 8;
const REACH = 7;
const INSTRUMENT_REACH = 9;

/** Reads how a fact is known from the words about it. */
export class WayReader {
  readonly #tokens: readonly Token[];
  readonly #ways: Readonly<Record<Exclude<Way, 'seen' | 'guessed'>, Phrases<string>>>;
  readonly #far: Phrases<string>;
  readonly #close: Phrases<string>;
  readonly #behind: Phrases<string>;

  constructor(tokens: readonly Token[], pack: LanguagePack) {
    this.#tokens = tokens;
    const { measured, supplied, calculated, inferred, guessed } = pack.ways;
    this.#ways = {
      measured: phraseSet(measured),
      supplied: phraseSet(supplied),
      calculated: phraseSet(calculated),
      inferred: phraseSet(inferred),
    };
    this.#far = phraseSet(guessed.filter((g) => !CLOSE.has(g)));
    this.#close = phraseSet(guessed.filter((g) => CLOSE.has(g)));
    this.#behind = phraseSet(guessed.filter((g) => BEHIND.has(g)));
  }

  /** @param previous the fact before, @param next the fact behind: their words speak of themselves. */
  of(fact: Fact, previous: Fact | undefined, next: Fact | undefined): Way {
    const not = this.#claimedBy(previous, fact.from);
    const left = this.#left(fact, REACH, not);
    const right = this.#right(fact, next?.from ?? this.#tokens.length);
    if (fact.quantity && this.#isShown(fact, not, right)) return 'measured';
    if (fact.quantity && this.#isTold(fact) && previous && fact.from - previous.to === 1)
      return 'supplied';
    if (fact.quantity?.loose || this.#isDoubted(fact, left, right, next)) return 'guessed';
    if (this.#says('supplied', left, right, fact)) return 'supplied';
    if (fact.quantity && this.#says('calculated', left, right, fact)) return 'calculated';
    if (MADE.has(fact.kind) && this.#tokens[fact.from - 1]?.word === 'so') return 'inferred';
    if (this.#ways.inferred.within(this.#tokens, left, fact.from)) return 'inferred';
    return flatly(fact);
  }

  /** Where the words about the fact before end: "two millimetres on the gauge, ten screws". */
  #claimedBy(previous: Fact | undefined, from: number): number {
    if (!previous) return 0;
    const { to } = previous;
    if (!previous.quantity || !CLAIMING.has(this.#tokens[to]?.word ?? '')) return to;
    for (let i = to; i < Math.min(from, to + 4); i++)
      for (const phrases of [this.#ways.measured, this.#ways.supplied]) {
        const hit = phrases.at(this.#tokens, i);
        if (hit && hit.to <= from) return hit.to;
      }
    return to;
  }

  #isShown(fact: Fact, not: number, right: number): boolean {
    const left = this.#left(fact, INSTRUMENT_REACH, not, true);
    return this.#isRead(left, fact.from) || this.#isRead(fact.to, right);
  }

  /** An instrument is named, and not as one that was not used. */
  #isRead(from: number, to: number): boolean {
    for (let i = Math.max(0, from); i < to; i++) {
      const hit = this.#ways.measured.at(this.#tokens, i);
      const isUnused = [1, 2].some((n) => UNUSED.has(this.#tokens[i - n]?.word ?? ''));
      if (hit && hit.to <= to && !isUnused) return true;
    }
    return false;
  }

  /** "the card says" straight behind. */
  #isTold(fact: Fact): boolean {
    const hit =
      this.#ways.supplied.at(this.#tokens, fact.to) ??
      this.#ways.supplied.at(this.#tokens, fact.to + 1);
    return hit !== undefined && this.#tokens[hit.to - 1]?.turn === this.#tokens[fact.from]?.turn;
  }

  #isDoubted(fact: Fact, left: number, right: number, next: Fact | undefined): boolean {
    if (this.#far.within(this.#tokens, left, fact.from)) return true;
    if (fact.quantity && this.#close.within(this.#tokens, Math.max(left, fact.from - 3), fact.from))
      return true;
    return this.#isDoubtedBehind(fact, right, next);
  }

  /** "sixty, I'd say": straight behind the fact, and not straight before the next one. */
  #isDoubtedBehind(fact: Fact, right: number, next: Fact | undefined): boolean {
    for (let i = fact.to; i < Math.min(right, fact.to + 2); i++) {
      const hit = this.#behind.at(this.#tokens, i);
      if (
        hit &&
        hit.to <= right &&
        (!next ||
          fact.kind === 'reason' ||
          next.from - hit.to >= 2 ||
          this.#tokens[next.from]?.turn !== this.#tokens[fact.from]?.turn ||
          this.#isTold(next))
      )
        return true;
    }
    return false;
  }

  #says(way: 'supplied' | 'calculated', left: number, right: number, fact: Fact): boolean {
    return (
      this.#ways[way].within(this.#tokens, left, fact.from) ||
      this.#ways[way].within(this.#tokens, fact.to, right)
    );
  }

  /** First word of the clause before a fact. */
  #left(fact: Fact, reach: number, not: number, acrossTurns = false): number {
    let at = fact.from;
    const turn = this.#tokens[fact.from]?.turn;
    while (at > not && fact.from - at < reach) {
      const before = this.#tokens[at - 1];
      if (!acrossTurns && this.#parts(at - 1)) break;
      if (!before || (before.ends && !acrossTurns) || (!acrossTurns && before.turn !== turn)) break;
      at--;
    }
    return at;
  }

  /** "and the", "then", "but": another clause begins. */
  #parts(at: number): boolean {
    const [word, next] = [this.#tokens[at]?.word ?? '', this.#tokens[at + 1]?.word ?? ''];
    return PARTING.has(word) || (word === 'and' && SUBJECTS.has(next));
  }

  #right(fact: Fact, not: number): number {
    let at = fact.to;
    const last = this.#tokens[fact.to - 1];
    if (last?.ends) return at;
    while (at < not && at - fact.to < RIGHT_REACH) {
      const token = this.#tokens[at];
      if (!token || token.turn !== last?.turn || this.#parts(at)) break;
      at++;
      if (token.ends) break;
    }
    return at;
  }
}

const flatly = (fact: Fact): Way =>
  fact.kind === 'reason' || fact.kind === 'frequency' || UNSEEN.has(fact.claim ?? '')
    ? 'inferred'
    : 'seen';
