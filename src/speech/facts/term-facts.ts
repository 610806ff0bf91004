import type { DraftKind, LanguagePack, Term } from '../language/pack.ts';
import { Phrases, phraseSet } from '../words/phrases.ts';
import type { Token } from '../words/tokens.ts';
import type { Fact } from './fact.ts';

interface Said {
  readonly kind: DraftKind;
  readonly term: string;
  readonly claim?: string;
}

const SIZES = new Set(['size', 'quality']);
const REASON_WORDS = 9;
const THAN_WORDS = 4;
const UP_DOWN = new Set(['up', 'down']);
/** "up front", "down here", "down into": a place, no way to move. */
const NOWHERE = new Set('front here there to in into under on and at'.split(' '));
/** Words that open another clause. */
const CLOSING = new Set(
  "and but so then because cause that's it's they're there's i i'd i'm probably maybe which uh um with".split(
    ' ',
  ),
);
/** Directions that are also said of much else: a verb of motion stands close before them. */
const FREE_DIRECTION =
  /^(?:from|straight|out|off|over|in|across|along|fore|side)$|(?:ways|wards|wise)$/;
/** Words that make a comparison of size without "than": "way shorter". */
const MUCH = new Set([
  'much',
  'way',
  'far',
  'lot',
  'bit',
  'slightly',
  'even',
  'touch',
  'little',
  'is',
  "it's",
  'are',
  "one's",
  'more',
  'good',
]);

/** Finds materials, processes, joints, directions, comparisons, frequency words and reasons. */
export class TermFacts {
  readonly #tokens: readonly Token[];
  readonly #phrases: Phrases<Said>;
  readonly #motions: ReadonlySet<string>;
  readonly #than = phraseSet(['than']);

  constructor(tokens: readonly Token[], pack: LanguagePack) {
    this.#tokens = tokens;
    this.#motions = new Set(pack.motions);
    const of = (kind: DraftKind, terms: readonly Term[]) =>
      terms.flatMap((t) => t.said.map((said) => [said, { kind, ...t }] as const));
    this.#phrases = new Phrases<Said>([
      ...of('comparison', pack.comparisons),
      ...of('frequency', pack.frequencies),
      ...of('reason', pack.reasons),
      ...of('material', pack.materials),
      ...of('process', pack.processes),
      ...of('joint', pack.joints),
      ...of('direction', pack.directions),
    ]);
  }

  at(from: number): Fact | undefined {
    const hit = this.#phrases.at(this.#tokens, from);
    if (!hit) return undefined;
    const { kind, term, claim } = hit.value;
    if (kind === 'direction' && !this.#moves(from, hit.to)) return undefined;
    const to =
      kind === 'reason'
        ? this.#clauseEnd(hit.to, REASON_WORDS)
        : kind === 'comparison'
          ? this.#thanEnd(hit.to)
          : hit.to;
    if (SIZES.has(claim ?? '') && to === hit.to && !MUCH.has(this.#tokens[from - 1]?.word ?? ''))
      return undefined;
    return { kind, from, to, term, ...(claim === undefined ? {} : { claim }) };
  }

  #moves(from: number, to: number): boolean {
    const first = this.#tokens[from]?.word ?? '';
    if (UP_DOWN.has(first) && to - from === 1 && NOWHERE.has(this.#tokens[to]?.word ?? ''))
      return false;
    if (FREE_DIRECTION.test(first) && (to - from > 1 || first.length > 6)) return true;
    const reach = to - from < 2 ? 3 : 7;
    for (let i = from - 1; i >= Math.max(0, from - reach); i--) {
      if (this.#tokens[i]?.turn !== this.#tokens[from]?.turn) return false;
      if (this.#motions.has(this.#tokens[i]?.word ?? '')) return true;
    }
    return false;
  }

  #thanEnd(at: number): number {
    const than = [at, at + 1, at + 2].find((i) => this.#than.at(this.#tokens, i));
    return than === undefined ? at : this.#clauseEnd(than + 1, THAN_WORDS);
  }

  /** Up to so many words on, within the turn and the sentence. */
  #clauseEnd(at: number, most: number): number {
    let end = at;
    while (
      end < at + most &&
      this.#tokens[end]?.turn === this.#tokens[at - 1]?.turn &&
      !(end > at + 1 && CLOSING.has(this.#tokens[end]?.word ?? '')) &&
      !this.#tokens[end - 1]?.ends
    )
      end++;
    return end;
  }
}
