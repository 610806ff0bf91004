import type { Way } from '../quantity/index.ts';
import type { SpokenCue } from '../study/index.ts';
import type { Fact, HeardQuantity } from './facts/fact.ts';
import { findFacts } from './facts/find-facts.ts';
import { TakenBack } from './facts/taken-back.ts';
import { WayReader } from './facts/way-reader.ts';
import type { DraftKind, LanguagePack } from './language/pack.ts';
import { type Mention, MentionFinder } from './parts/mentions.ts';
import { PartIndex, type SpokenPart } from './parts/part-index.ts';
import { type Subject, SubjectFinder } from './subject-finder.ts';
import { phraseSet } from './words/phrases.ts';
import { respell } from './words/respell.ts';
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
  const index = new PartIndex(parts, pack);
  const said = tokensOf(cues);
  const tokens = respell(said, tradePhrases(index, pack), new Set(pack.common));
  const mentions = new MentionFinder(index, parts, pack).find(tokens, []);
  const { facts, bare } = findFacts(tokens, mentions, pack);
  const back = new TakenBack(tokens, pack);
  const denied = new Set(facts.filter((fact, i) => back.isDenied(fact, facts[i - 1])));
  const corrected = back.correctedBy(facts, denied, bare);
  const ways = new WayReader(tokens, pack);
  const subjects = new SubjectFinder(tokens, mentions, facts, index, pack);
  const standing = facts.filter((fact) => !denied.has(fact) && !corrected.has(fact));
  return {
    tokens: said,
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

/** All that people may say of parts and how they are made, to be known by its sound. */
const tradePhrases = (index: PartIndex, pack: LanguagePack): string[] => [
  ...[...pack.materials, ...pack.processes, ...pack.joints].flatMap((term) => term.said),
  ...pack.aliases.map(([said]) => said),
  ...index.names.flatMap(({ main }) => [
    main.join(' '),
    ...main.map((_, i) => main.slice(i, i + 2).join(' ')),
  ]),
];

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
