import type { Fact } from './facts/fact.ts';
import type { LanguagePack } from './language/pack.ts';
import type { Mention } from './parts/mentions.ts';
import { type PartIndex, type SpokenPart, stem } from './parts/part-index.ts';
import { phraseSet } from './words/phrases.ts';
import type { Token } from './words/tokens.ts';

/** Words after which bolts are no longer spoken of, but what they hold. */
const FASTENER_REACH = 25;
const BOLTS = ['bolt', 'screw', 'nut'];
/** What bears a part is spoken of by itself more often than a bolt. */
const BEARING = new Set(['mount', 'bush', 'bushing']);
/** Before a count: what is counted belongs to what was named before. */
const HOLDING = new Set([
  'on',
  'with',
  'has',
  'have',
  'by',
  'in',
  'under',
  'of',
  "it's",
  'got',
  'carries',
  'needs',
  'per',
  'and',
]);

export interface Subject {
  readonly parts: readonly SpokenPart[];
  readonly by: 'name' | 'in hand' | 'nothing';
}

/** Says what a fact is about. */
export class SubjectFinder {
  readonly #tokens: readonly Token[];
  readonly #mentions: readonly Mention[];
  readonly #facts: readonly Fact[];
  readonly #belonging: ReturnType<typeof phraseSet>;
  readonly #index: PartIndex;
  readonly #attaching: ReadonlySet<string>;
  readonly #articles: ReadonlySet<string>;

  constructor(
    tokens: readonly Token[],
    mentions: readonly Mention[],
    facts: readonly Fact[],
    index: PartIndex,
    pack: LanguagePack,
  ) {
    this.#tokens = tokens;
    this.#mentions = mentions;
    this.#facts = facts;
    this.#index = index;
    this.#attaching = new Set(pack.attaching);
    this.#belonging = phraseSet(pack.belonging);
    this.#articles = new Set(pack.articles);
  }

  of(fact: Fact): Subject {
    const inside =
      fact.kind === 'count'
        ? this.#mentions.find((m) => m.from >= fact.from && m.to <= fact.to)
        : undefined;
    const named = inside ?? this.#behind(fact) ?? this.#belongsTo(fact);
    if (named) return { parts: named.parts, by: 'name' };
    const before = this.#before(fact);
    if (!before) return { parts: [], by: 'nothing' };
    const isNear =
      this.#tokens[before.from]?.turn === this.#tokens[fact.from]?.turn &&
      fact.from - before.to < 12;
    return { parts: this.#fastenerOf(fact, before.parts), by: isNear ? 'name' : 'in hand' };
  }

  /** A torque is of the bolts that hold the part in hand, where the record has them. */
  #fastenerOf(fact: Fact, parts: readonly SpokenPart[]): readonly SpokenPart[] {
    if (fact.quantity?.kind !== 'torque') return parts;
    const bolts = BOLTS.flatMap((noun) => this.#index.attachedTo(noun, parts));
    return bolts.length === 1 ? bolts.flatMap((name) => name.parts) : parts;
  }

  /** "a moulded glass polyester lid": the part straight behind what describes it. */
  #behind(fact: Fact): Mention | undefined {
    if (!['material', 'process', 'joint', 'quantity'].includes(fact.kind)) return undefined;
    let at = fact.to;
    for (const next of this.#facts.filter((f) => f.from >= fact.to)) {
      if (next.from !== at || next.quantity) break;
      at = next.to;
    }
    if (this.#tokens[at - 1]?.ends || this.#tokens[at]?.turn !== this.#tokens[fact.from]?.turn)
      return undefined;
    return this.#mentions.find((m) => m.from === at);
  }

  /** "sixty two screws round the lid". */
  #belongsTo(fact: Fact): Mention | undefined {
    if (this.#tokens[fact.to - 1]?.ends) return undefined;
    const gap = [0, 1].find((i) => this.#belonging.at(this.#tokens, fact.to + i));
    const hit = gap === undefined ? undefined : this.#belonging.at(this.#tokens, fact.to + gap);
    if (!hit || fact.kind === 'reason' || fact.kind === 'comparison') return undefined;
    let at = hit.to;
    while (this.#articles.has(this.#tokens[at]?.word ?? '')) at++;
    return this.#mentions.find(
      (m) => m.from === at && this.#tokens[at]?.turn === this.#tokens[fact.from]?.turn,
    );
  }

  #before(fact: Fact): Mention | undefined {
    let last: Mention | undefined;
    for (const mention of this.#mentions) {
      if (mention.from >= fact.from) break;
      if (this.#takesOver(mention, fact)) last = mention;
    }
    return last;
  }

  /** From this mention on, facts are about it. */
  #takesOver(mention: Mention, fact: Fact): boolean {
    if (this.#isMeasuredOut(mention)) return true;
    if (!mention.subject || this.#isGround(mention, fact)) return false;
    if (this.#isFastener(mention) && fact.from - mention.to > FASTENER_REACH) return false;
    const isMadeOf = fact.kind === 'material' || fact.kind === 'process';
    return (isMadeOf && fact.from - mention.to <= 1) || !this.#isCounted(mention);
  }

  /** "a litre and a half of oil". */
  #isMeasuredOut({ from }: Mention): boolean {
    return (
      this.#tokens[from - 1]?.word === 'of' &&
      this.#facts.some((fact) => fact.kind === 'quantity' && fact.to === from - 1)
    );
  }

  #isFastener({ to }: Mention): boolean {
    return this.#attaching.has(stem(this.#tokens[to - 1]?.word ?? ''));
  }

  /** Named in a reason: "to clear the column". */
  #isGround({ from, to }: Mention, fact: Fact): boolean {
    return this.#facts.some(
      (one) => one !== fact && one.kind === 'reason' && one.from <= from && to <= one.to,
    );
  }

  /** "on four bushes", "sixty two screws": what is counted on a part does not take its place. */
  #isCounted(mention: Mention): boolean {
    const count = this.#facts.find(
      (fact) => fact.kind === 'count' && mention.from >= fact.from && mention.to <= fact.to,
    );
    if (!count) return false;
    const isFastener = this.#attaching.has(stem(this.#tokens[mention.to - 1]?.word ?? ''));
    const before = this.#tokens[count.from - 1];
    const isHeld =
      before?.turn === this.#tokens[count.from]?.turn && HOLDING.has(before?.word ?? '');
    return isHeld || (isFastener && !BEARING.has(stem(this.#tokens[mention.to - 1]?.word ?? '')));
  }
}
