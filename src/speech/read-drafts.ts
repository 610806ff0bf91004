import type { Way } from '../quantity/index.ts';
import type { SpokenCue } from '../study/index.ts';
import type { Fact, HeardQuantity } from './facts/fact.ts';
import { findFacts } from './facts/find-facts.ts';
import { TakenBack } from './facts/taken-back.ts';
import { WayReader } from './facts/way-reader.ts';
import type { DraftKind, LanguagePack } from './language/pack.ts';
import { type Mention, MentionFinder } from './parts/mentions.ts';
import { PartIndex, type SpokenPart } from './parts/part-index.ts';
import { phraseSet } from './words/phrases.ts';
import { type Token, tokensOf, wordsOf } from './words/tokens.ts';

/** Something that may go into the record once a person has accepted it. */
export interface Draft {
  readonly kind: DraftKind;
  /** Words from..to (to exclusive) of the text. */
  readonly from: number;
  readonly to: number;
  readonly fromS: number;
  readonly toS: number;
  readonly who?: string;
  /** The words of the fact, and some before and behind it. */
  readonly words: string;
  readonly around: string;
  /** What it is about; several of which one is meant where no side was said; none where nothing is in hand. */
  readonly parts: readonly SpokenPart[];
  /** By its name in the same breath, or as the part last spoken of. */
  readonly partBy: 'name' | 'in hand' | 'nothing';
  readonly quantity?: HeardQuantity;
  readonly term?: string;
  readonly claim?: string;
  readonly how: Way;
}

export interface SpeechReading {
  readonly tokens: readonly Token[];
  readonly mentions: readonly Mention[];
  readonly drafts: readonly Draft[];
  /** Facts that were denied or taken back, with their words: shown, not drafted. */
  readonly leftOut: readonly {
    readonly words: string;
    readonly atS: number;
    readonly why: 'denied' | 'taken back';
  }[];
  /** Seconds at which a mark was spoken. */
  readonly marks: readonly number[];
}

const AROUND = 8;

/** Reads drafts out of speech by the rules of a language pack and the names of a parts tree. */
export function readDrafts(
  cues: readonly SpokenCue[],
  parts: readonly SpokenPart[],
  pack: LanguagePack,
): SpeechReading {
  const tokens = tokensOf(cues);
  const mentions = new MentionFinder(new PartIndex(parts, pack), parts, pack).find(tokens, []);
  const { facts, bare } = findFacts(tokens, mentions, pack);
  const back = new TakenBack(tokens, pack);
  const denied = new Set(facts.filter((fact, i) => back.isDenied(fact, facts[i - 1])));
  const corrected = back.correctedBy(facts, denied, bare);
  const ways = new WayReader(tokens, pack);
  const subjects = new SubjectFinder(tokens, mentions, facts, pack);
  const standing = facts.filter((fact) => !denied.has(fact) && !corrected.has(fact));
  return {
    tokens,
    mentions,
    drafts: standing.map((fact) => {
      const i = facts.indexOf(fact);
      return draftOf(tokens, fact, subjects.of(fact), wayOf(ways, facts, i));
    }),
    leftOut: facts
      .filter((fact) => denied.has(fact) || corrected.has(fact))
      .map((fact) => ({
        words: wordsOf(tokens, fact.from, fact.to),
        atS: tokens[fact.from]?.atS ?? 0,
        why: denied.has(fact) ? 'denied' : 'taken back',
      })),
    marks: marksOf(tokens, pack),
  };
}

/** A term straight behind another shares its word of doubt: "probably stamped steel". */
function wayOf(ways: WayReader, facts: readonly Fact[], i: number): Way {
  const [before, fact] = [facts[i - 1], facts[i]];
  if (!fact) return 'seen';
  const own = ways.of(fact, before, facts[i + 1]);
  const shares =
    before && own === 'seen' && !fact.quantity && !before.quantity && fact.from - before.to <= 1;
  return shares ? wayOf(ways, facts, i - 1) : own;
}

function marksOf(tokens: readonly Token[], pack: LanguagePack): number[] {
  const marks = phraseSet(pack.mark);
  return tokens.flatMap((token, i) => (marks.at(tokens, i) ? [token.atS] : []));
}

function draftOf(tokens: readonly Token[], fact: Fact, subject: Subject, how: Way): Draft {
  const { kind, from, to, quantity, term, claim } = fact;
  const first = tokens[from];
  return {
    kind,
    from,
    to,
    fromS: first?.atS ?? 0,
    toS: tokens[to - 1]?.atS ?? 0,
    ...(first?.who === undefined ? {} : { who: first.who }),
    words: wordsOf(tokens, from, to),
    around: wordsOf(tokens, Math.max(0, from - AROUND), Math.min(tokens.length, to + AROUND)),
    parts: subject.parts,
    partBy: subject.by,
    ...(quantity ? { quantity } : {}),
    ...(term === undefined ? {} : { term }),
    ...(claim === undefined ? {} : { claim }),
    how,
  };
}

interface Subject {
  readonly parts: readonly SpokenPart[];
  readonly by: Draft['partBy'];
}

/** Says what a fact is about. */
class SubjectFinder {
  readonly #tokens: readonly Token[];
  readonly #mentions: readonly Mention[];
  readonly #facts: readonly Fact[];
  readonly #belonging: ReturnType<typeof phraseSet>;
  readonly #articles: ReadonlySet<string>;

  constructor(
    tokens: readonly Token[],
    mentions: readonly Mention[],
    facts: readonly Fact[],
    pack: LanguagePack,
  ) {
    this.#tokens = tokens;
    this.#mentions = mentions;
    this.#facts = facts;
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
    return { parts: before.parts, by: isNear ? 'name' : 'in hand' };
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
      if (mention.subject && !this.#isCounted(mention)) last = mention;
    }
    return last;
  }

  /** "on four bushes": what is counted on a part does not take its place. */
  #isCounted(mention: Mention): boolean {
    return this.#facts.some(
      (fact) => fact.kind === 'count' && mention.from >= fact.from && mention.to <= fact.to,
    );
  }
}
