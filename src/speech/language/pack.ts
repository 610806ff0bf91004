import type { Kind, Way } from '../../quantity/index.ts';

/** What a fact is about, in the words of the drafts. */
export const DRAFT_KINDS = [
  'quantity',
  'count',
  'material',
  'process',
  'joint',
  'direction',
  'comparison',
  'frequency',
  'reason',
] as const;
export type DraftKind = (typeof DRAFT_KINDS)[number];

/** A unit as it is spoken. */
export interface SpokenUnit {
  /** UCUM code. */
  readonly code: string;
  readonly kind: Kind;
  /** Phrases, in small letters, singular and plural. */
  readonly said: readonly string[];
}

/** Words that name a thing of the record: a material, a process, a way to join. */
export interface Term {
  /** As it is written into the draft. */
  readonly term: string;
  readonly said: readonly string[];
}

/** A comparison, and the kind of claim it makes. */
export interface ComparisonTerm extends Term {
  readonly claim: string;
}

/**
 * All that the reader knows of a language. Phrases are in small letters with single blanks; a
 * phrase is found word by word. A word list of a study adds to `aliases`, `units` and `terms`.
 */
export interface LanguagePack {
  readonly code: string;
  readonly numbers: {
    /** Words for 0 to 19 and the tens, by value. */
    readonly small: Readonly<Record<string, number>>;
    readonly tens: Readonly<Record<string, number>>;
    readonly times: Readonly<Record<string, number>>;
    readonly point: readonly string[];
    readonly and: readonly string[];
    readonly one: readonly string[];
    readonly half: string;
    /** Fractions by their words, singular and plural. */
    readonly fractions: Readonly<Record<string, number>>;
    /** Rounded amounts: "a couple", "a dozen". */
    readonly loose: Readonly<Record<string, number>>;
    readonly rangeBetween: readonly string[];
    readonly between: string;
  };
  readonly units: readonly SpokenUnit[];
  /** Words about a size, with the property they mean; a number without a unit beside them is in mm. */
  readonly sizes: Readonly<Record<string, string>>;
  readonly countable: Readonly<Record<string, string>>;
  readonly materials: readonly Term[];
  readonly processes: readonly Term[];
  readonly joints: readonly Term[];
  readonly directions: readonly Term[];
  /** Verbs that a direction needs before it. */
  readonly motions: readonly string[];
  readonly comparisons: readonly ComparisonTerm[];
  readonly frequencies: readonly Term[];
  readonly reasons: readonly Term[];
  readonly ways: Readonly<Record<Exclude<Way, 'seen'>, readonly string[]>>;
  /** Readings of instruments: a number near one of these is measured. */
  readonly negations: readonly string[];
  /** Negations that are none: "not only", "no more than". */
  readonly notNegations: readonly string[];
  /** Words that open a question at the start of a turn. */
  readonly asking: readonly string[];
  readonly corrections: readonly string[];
  /** Before a number: it then counts or names something else. */
  readonly numbering: readonly string[];
  /** After a number or its unit: it is then a tool, a time of day, or the like. */
  readonly notMeasured: readonly string[];
  /** A time is a finding only beside one of these. */
  readonly timeVerbs: readonly string[];
  /** Words of names that can not stand for a part alone. */
  readonly modifiers: readonly string[];
  /** Things that every part has: no mention of a part without another word. */
  readonly weak: readonly string[];
  readonly sides: { readonly left: readonly string[]; readonly right: readonly string[] };
  /** What people say, and what the record calls it. */
  readonly aliases: readonly (readonly [said: string, means: string])[];
  /** A word of the trade, and the words of names that it may stand for. */
  readonly synonyms: readonly (readonly [said: string, means: readonly string[]])[];
  /** Nouns that close a name and say nothing: "set", "weldment". */
  readonly hollow: readonly string[];
  /** What holds or bears another part: alone, it is that of the part in hand. */
  readonly attaching: readonly string[];
  /** Before a noun: what follows is spoken of. */
  readonly pointing: readonly string[];
  /** Places of the vehicle as said, with the word that names have. */
  readonly places: Readonly<Record<string, string>>;
  /** Before a part: it is then not what is spoken of. */
  readonly beside: readonly string[];
  /** Before a part: it is then what is spoken of from here on. */
  readonly turning: readonly string[];
  /** After a fact and before a part that it is about: "on the", "of the". */
  readonly belonging: readonly string[];
  readonly articles: readonly string[];
  /** Words of everyday speech, which are no mangled names of parts. */
  readonly common: readonly string[];
  /** The spoken mark: pins the moment. */
  readonly mark: readonly string[];
}
