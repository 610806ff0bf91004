import type { LanguagePack } from '../language/pack.ts';
import { type Phrases, phraseSet } from '../words/phrases.ts';
import type { Token } from '../words/tokens.ts';
import type { Fact } from './fact.ts';

/** Clauses that open afresh: a "not" before them does not reach on. */
const OPENING = new Set([
  "it's",
  'its',
  "that's",
  'but',
  "they're",
  'they',
  'it',
  'this',
  "there's",
  'just',
  'only',
]);
/** Negations that must stand straight before a word. */
const STRAIGHT = new Set(['no', 'without', 'rather', 'instead', 'nor', 'neither']);
const REACH = 4;
const ASKED_WORDS = 5;
const SUPPOSING = new Set(['if', 'whether', 'when', 'unless']);
/** Words, and seconds, between a slip and its correction. */
const WORDS_BETWEEN = 12;
const S_BETWEEN = 9;

/** Says what of the facts was denied, and what was taken back later. */
export class TakenBack {
  readonly #tokens: readonly Token[];
  readonly #negations: Phrases<string>;
  readonly #spared: Phrases<string>;
  readonly #corrections: Phrases<string>;
  readonly #asking: Phrases<string>;
  readonly #struck = phraseSet(['scratch that', 'scrap that', 'strike that', 'forget that']);
  readonly #wrongOne = phraseSet([
    'no sorry that was',
    'sorry that was',
    'no that was',
    "no that's the",
    'that was the other',
  ]);

  constructor(tokens: readonly Token[], pack: LanguagePack) {
    this.#tokens = tokens;
    this.#negations = phraseSet(pack.negations);
    this.#spared = phraseSet(pack.notNegations);
    this.#asking = phraseSet(pack.asking);
    this.#corrections = phraseSet(pack.corrections);
  }

  /** "not three millimetres", "isn't welded", "no rivets". */
  isDenied(fact: Fact, previous: Fact | undefined): boolean {
    if (fact.kind === 'reason' || fact.kind === 'frequency') return false;
    if (this.#isAsked(fact)) return true;
    if (fact.kind === 'comparison' && this.#isSupposed(fact)) return true;
    const turn = this.#tokens[fact.from]?.turn;
    for (let i = fact.from - 1; i >= Math.max(previous?.to ?? 0, fact.from - REACH); i--) {
      const token = this.#tokens[i];
      if (!token || token.turn !== turn || token.ends || OPENING.has(token.word)) return false;
      if (!this.#negations.at(this.#tokens, i) || this.#isSpared(i, fact.from)) continue;
      if (!STRAIGHT.has(token.word)) return true;
      return !(token.word === 'no' && fact.quantity) && fact.from - i <= 2;
    }
    return false;
  }

  /** "could they have stamped it", "why not cast it": asked, not said. */
  #isAsked(fact: Fact): boolean {
    let at = fact.from;
    const turn = this.#tokens[at]?.turn;
    while (
      this.#tokens[at - 1]?.turn === turn &&
      !this.#tokens[at - 1]?.ends &&
      fact.from - at <= ASKED_WORDS
    )
      at--;
    return fact.from - at <= ASKED_WORDS && this.#asking.at(this.#tokens, at) !== undefined;
  }

  /** "if that leaks": supposed, not said. */
  #isSupposed(fact: Fact): boolean {
    const words = this.#tokens.slice(Math.max(0, fact.from - REACH), fact.from);
    return words.some(
      (token) => SUPPOSING.has(token.word) && token.turn === this.#tokens[fact.from]?.turn,
    );
  }

  #isSpared(at: number, to: number): boolean {
    return [at, at - 1].some((i) => (this.#spared.at(this.#tokens, i)?.to ?? 0) > at && i < to);
  }

  /** The facts that later ones correct. */
  correctedBy(
    facts: readonly Fact[],
    denied: ReadonlySet<Fact>,
    bare: readonly number[],
  ): Set<Fact> {
    const gone = new Set<Fact>();
    facts.forEach((fact, i) => {
      const before = facts.slice(Math.max(0, i - 4), i).reverse();
      const slip = before.find((earlier) => like(earlier, fact));
      const isOther =
        slip &&
        bare.some(
          (at) =>
            at >= slip.to &&
            at < fact.from &&
            this.#tokens[at]?.turn === this.#tokens[fact.from]?.turn,
        );
      if (slip && !denied.has(slip) && !isOther && this.#corrects(slip, fact))
        for (const one of [slip, ...sameAgain(slip, before, this.#tokens)]) gone.add(one);
      if (denied.has(fact))
        for (const one of before)
          if (
            one.kind === fact.kind &&
            one.term !== undefined &&
            one.term === fact.term &&
            fact.from - one.to < WORDS_BETWEEN
          )
            gone.add(one);
      const next = facts[i + 1];
      if (this.#wrongOne.within(this.#tokens, fact.to, fact.to + 6) && fact.quantity)
        gone.add(fact);
      const end = Math.min(next?.from ?? this.#tokens.length, fact.to + WORDS_BETWEEN);
      if (this.#struck.within(this.#tokens, fact.to, end)) gone.add(fact);
    });
    return gone;
  }

  #corrects(slip: Fact, fact: Fact): boolean {
    const [a, b] = [this.#tokens[slip.to - 1], this.#tokens[fact.from]];
    if (!a || !b || fact.from - slip.to > WORDS_BETWEEN || b.atS - a.atS > S_BETWEEN) return false;
    for (let i = slip.to; i < fact.from; i++) {
      const hit = this.#corrections.at(this.#tokens, i);
      if (hit && hit.to <= fact.from && !this.#isSpared(i, fact.from)) return true;
    }
    return false;
  }
}

/** Of one kind, so that the one may stand for the other. */
const like = (a: Fact, b: Fact): boolean =>
  a.quantity !== undefined && b.quantity !== undefined
    ? a.quantity.kind === b.quantity.kind &&
      (a.quantity.property === b.quantity.property ||
        a.quantity.property === undefined ||
        b.quantity.property === undefined)
    : a.kind === b.kind && a.term !== b.term;

/** What somebody else had put in its place just before. */
const sameAgain = (slip: Fact, before: readonly Fact[], tokens: readonly Token[]): Fact[] =>
  before.filter((one) => {
    const [a, b] = [tokens[one.to - 1], tokens[slip.from]];
    return (
      one !== slip &&
      one.to <= slip.from &&
      like(one, slip) &&
      slip.quantity !== undefined &&
      a !== undefined &&
      b !== undefined &&
      a.turn !== b.turn &&
      b.atS - a.atS < 4
    );
  });
