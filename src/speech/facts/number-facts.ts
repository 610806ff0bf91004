import type { LanguagePack } from '../language/pack.ts';
import type { Mention } from '../parts/mentions.ts';
import { Phrases, phraseSet } from '../words/phrases.ts';
import { NumberReader, type SpokenNumber } from '../words/read-numbers.ts';
import type { Token } from '../words/tokens.ts';
import type { Fact, HeardQuantity } from './fact.ts';
import {
  BEHIND,
  COUNTED_ALONE,
  COUNTING,
  DEMONSTRATIVES,
  FILLERS,
  GIVEN,
  IMPLIED,
  LINKING,
  PARTING,
  READS,
  SPEC,
  type Unit,
} from './number-words.ts';

const MILLIMETRES: Unit = { code: 'mm', kind: 'length' };
/** Words within which a number takes up the unit that was said last. */
const ECHO = 20;

/** Finds quantities and counts, and passes over numbers that are no measurement. */
export class NumberFacts {
  readonly #tokens: readonly Token[];
  readonly #pack: LanguagePack;
  readonly #numbers: NumberReader;
  readonly #units: Phrases<Unit>;
  readonly #numbering: Phrases<string>;
  readonly #notMeasured: Phrases<string>;
  readonly #timeVerbs: Phrases<string>;
  readonly #countedAlone = phraseSet(COUNTED_ALONE);
  readonly #counting = phraseSet(COUNTING);
  /** The unit said last, and where. */
  #last: { at: number; unit: Unit } | undefined;
  readonly #given = phraseSet(GIVEN);

  constructor(tokens: readonly Token[], pack: LanguagePack) {
    this.#tokens = tokens;
    this.#pack = pack;
    this.#numbers = new NumberReader(pack.numbers, tokens);
    this.#units = new Phrases(
      pack.units.flatMap(({ code, kind, said }) => said.map((s) => [s, { code, kind }] as const)),
    );
    this.#numbering = phraseSet(pack.numbering);
    this.#notMeasured = phraseSet(pack.notMeasured);
    this.#timeVerbs = phraseSet(pack.timeVerbs);
  }

  /** The fact that a number at a word states; the place after the number where it states none. */
  at(
    from: number,
    mentionAt: (i: number) => Mention | undefined,
  ): Fact | { readonly passed: number } | undefined {
    const number = this.#numbers.at(from, (i) => this.#unit(i)?.to ?? i) ?? this.#single(from);
    if (!number) return undefined;
    if (this.#isNumbered(number)) return { passed: number.to };
    return (
      this.#measured(number) ??
      this.#sized(number) ??
      this.#counted(number, mentionAt) ??
      this.#shown(number) ?? { passed: number.to }
    );
  }

  /** "a millimetre", "a kilo": one of it. */
  #single(from: number): SpokenNumber | undefined {
    const kind = this.#pack.numbers.one.includes(this.#word(from))
      ? this.#unit(from + 1)?.value.kind
      : undefined;
    const isOne = kind === 'length' || kind === 'mass' || kind === 'volume';
    return isOne ? { from, to: from + 1, low: 1, high: 1, loose: false } : undefined;
  }

  #word(i: number): string {
    return this.#tokens[i]?.word ?? '';
  }

  #unit(at: number): { to: number; value: Unit } | undefined {
    return this.#units.at(this.#tokens, at);
  }

  /** "number three", "M6 by twenty": the number names something. */
  #isNumbered({ from }: SpokenNumber): boolean {
    const before = this.#tokens[from - 1];
    const isSize = before?.word === 'by' && SPEC.test(this.#word(from - 2));
    return (
      before !== undefined &&
      before.turn === this.#tokens[from]?.turn &&
      !before.ends &&
      (isSize || this.#numbering.endsAt(this.#tokens, from, 2))
    );
  }

  #measured(number: SpokenNumber): Fact | { passed: number } | undefined {
    const at =
      FILLERS.has(this.#word(number.to)) && this.#unit(number.to + 1) ? number.to + 1 : number.to;
    const unit = this.#unit(at);
    if (!unit || this.#tokens[number.to - 1]?.ends) return undefined;
    if (
      this.#notMeasured.at(this.#tokens, unit.to) ||
      this.#notMeasured.at(this.#tokens, unit.to + 1)?.value === 'socket'
    )
      return { passed: unit.to };
    if (unit.value.kind === 'time' && !this.#isDuration(number.from, unit.to))
      return { passed: unit.to };
    if (unit.value.kind !== 'time') this.#last = { at: unit.to, unit: unit.value };
    const half = this.#halfBehind(unit.to);
    const { low, high } = number;
    const end = half?.to ?? unit.to;
    const size = this.#sizeNear(number.from, end);
    const to = this.#sizeBehind(end) === undefined ? end : end + 1;
    return this.#fact(number.from, to, {
      low: low + (half ? 0.5 : 0),
      high: high + (half ? 0.5 : 0),
      unit: unit.value.code,
      kind: unit.value.kind,
      loose: number.loose,
      unitAssumed: false,
      ...(unit.value.kind === 'length' && size ? { property: size } : {}),
    });
  }

  /** "two millimetres and a half". */
  #halfBehind(at: number): { to: number } | undefined {
    const { and, one, half } = this.#pack.numbers;
    const isHalf =
      and.includes(this.#word(at)) &&
      one.includes(this.#word(at + 1)) &&
      this.#word(at + 2) === half;
    return isHalf && this.#unit(at + 3) === undefined ? { to: at + 3 } : undefined;
  }

  /** "takes five minutes" is a finding; "give me five minutes" is none. */
  #isDuration(from: number, to: number): boolean {
    const start = this.#turnStart(from, 8);
    if (this.#timeVerbs.within(this.#tokens, start, from)) return true;
    return (
      !this.#given.endsAt(this.#tokens, from, 3) && this.#timeVerbs.within(this.#tokens, to, to + 4)
    );
  }

  #turnStart(at: number, most: number): number {
    let from = at;
    while (
      from > 0 &&
      at - from < most &&
      this.#tokens[from - 1]?.turn === this.#tokens[at]?.turn &&
      !this.#tokens[from - 1]?.ends
    )
      from--;
    return from;
  }

  #sizeNear(from: number, to: number): string | undefined {
    return this.#sizeBehind(to) ?? this.#sizeBefore(from)?.property;
  }

  #sizeBehind(to: number): string | undefined {
    const last = this.#tokens[to - 1];
    const next = this.#tokens[to];
    if (!last || last.ends || next?.turn !== last.turn) return undefined;
    return this.#pack.sizes[next.word];
  }

  #sizeBefore(from: number): { property: string } | undefined {
    for (let i = from - 1; i >= this.#turnStart(from, 5); i--) {
      const property = this.#pack.sizes[this.#word(i)];
      if (property !== undefined) return { property };
      if (!LINKING.has(this.#word(i))) return undefined;
    }
    return undefined;
  }

  /** "two and a half thick", "pitch about eighty nine": millimetres, as lengths are spoken. */
  #sized(number: SpokenNumber): Fact | undefined {
    const after = this.#sizeBehind(number.to);
    const property = after ?? this.#sizeBefore(number.from)?.property;
    if (property === undefined || (after === undefined && this.#countNoun(number.to) !== undefined))
      return undefined;
    return this.#fact(
      number.from,
      after ? number.to + 1 : number.to,
      this.#implied(number, { code: 'mm', kind: 'length' }, property),
    );
  }

  #implied(number: SpokenNumber, { code, kind }: Unit, property?: string): HeardQuantity {
    const { low, high, loose } = number;
    return {
      low,
      high,
      loose,
      unit: code,
      kind,
      unitAssumed: true,
      ...(property ? { property } : {}),
    };
  }

  /** "the gauge says two point six". */
  #shown(number: SpokenNumber): Fact | undefined {
    const before = this.#impliedBy(Math.max(0, number.from - 8), number.from);
    const behind = BEHIND.has(this.#word(number.to))
      ? this.#impliedBy(number.to, number.to + 4)
      : undefined;
    const unit = before ?? behind;
    const isFraction = !Number.isInteger(number.low);
    if (isFraction && !unit) return this.#echoed(number);
    const isRead = behind !== undefined || READS.has(this.#word(number.from - 1));
    return unit && number.high !== 1 && (isFraction || isRead)
      ? this.#fact(number.from, number.to, this.#implied(number, unit))
      : undefined;
  }

  /** "no two point two", "the wire's twelve point two": the unit that was said last, else millimetres. */
  #echoed(number: SpokenNumber): Fact | undefined {
    const isPart =
      ['half', 'quarter', 'a', 'an', 'three'].includes(this.#word(number.from)) && number.low < 1;
    if (isPart || this.#notMeasured.at(this.#tokens, number.to)) return undefined;
    const echo = this.#last && number.from - this.#last.at < ECHO ? this.#last.unit : MILLIMETRES;
    return this.#fact(number.from, number.to, this.#implied(number, echo));
  }

  #impliedBy(from: number, to: number): Unit | undefined {
    const said = this.#tokens.slice(from, to).map((token) => token.word);
    return IMPLIED.find(([words]) => said.some((word) => words.includes(word)))?.[1];
  }

  #counted(number: SpokenNumber, mentionAt: (i: number) => Mention | undefined): Fact | undefined {
    const { from, to, low, high } = number;
    if (!Number.isInteger(low) || !Number.isInteger(high) || low < 1 || this.#tokens[to - 1]?.ends)
      return undefined;
    if (this.#notMeasured.at(this.#tokens, to)) return undefined;
    if (high === 1 && DEMONSTRATIVES.has(this.#word(from - 1))) return undefined;
    const end =
      this.#countEnd(to, high === 1 ? 1 : 3, mentionAt) ??
      (high > 1 ? this.#aloneEnd(from, to) : undefined);
    if (end === undefined) return undefined;
    const noun = this.#pack.countable[this.#word(end - 1)];
    return {
      kind: 'count',
      from,
      to: end,
      quantity: {
        low,
        high,
        loose: number.loose,
        unit: '1',
        kind: 'count',
        unitAssumed: false,
        ...(noun ? { property: `countOf.${noun}` } : {}),
      },
    };
  }

  #countNoun(at: number): number | undefined {
    return this.#countEnd(at, 3, () => undefined);
  }

  /** The word after the noun that is counted. */
  #countEnd(
    to: number,
    gap: number,
    mentionAt: (i: number) => Mention | undefined,
  ): number | undefined {
    for (let i = to; i <= to + gap; i++) {
      const word = this.#word(i);
      if (word === '' || this.#tokens[i]?.turn !== this.#tokens[to - 1]?.turn) return undefined;
      const mention = mentionAt(i);
      if (mention && word !== 'side')
        return mention.to <= to + gap + 3 ? this.#nounBehind(mention) : undefined;
      if (this.#isThread(i)) return i + 2;
      if (this.#pack.countable[word] === word && gap > 1 && i === to && !this.#isPlural(i))
        return undefined;
      if (this.#pack.countable[word] !== undefined) return this.#lastNoun(i);
      if (PARTING.has(word) || (this.#tokens[i]?.ends ?? false)) return undefined;
    }
    return undefined;
  }

  /** "four m fourteens". */
  #isThread(at: number): boolean {
    const size = this.#word(at + 1).replace(/s$/, '');
    const { small } = this.#pack.numbers;
    return (
      this.#word(at) === 'm' &&
      this.#word(at + 1) !== size &&
      (small[size] !== undefined || /^\d+$/.test(size))
    );
  }

  /** A noun of one after a number of several says what kind: "a five link axle"; "rivet nuts" is of several. */
  #isPlural(at: number): boolean {
    const end = this.#lastNoun(at);
    const last = this.#word(end - 1);
    return this.#pack.countable[last] !== last;
  }

  /** "lid screws", "coolant port": a noun straight behind a part belongs to what is counted. */
  #nounBehind(mention: Mention): number {
    const last = this.#tokens[mention.to - 1];
    const isOpen = last !== undefined && !last.ends && this.#tokens[mention.to]?.turn === last.turn;
    return isOpen && this.#pack.countable[this.#word(mention.to)] !== undefined
      ? mention.to + 1
      : mention.to;
  }

  /** "rivet nuts", "spot welds": the last of nouns in a row. */
  #lastNoun(at: number): number {
    let end = at + 1;
    while (this.#pack.countable[this.#word(end)] !== undefined && !this.#tokens[end - 1]?.ends)
      end++;
    return end;
  }

  #aloneEnd(from: number, to: number): number | undefined {
    const alone = this.#countedAlone.at(this.#tokens, to);
    if (alone) return alone.to;
    return this.#counting.endsAt(this.#tokens, from) ? to : undefined;
  }

  #fact(from: number, to: number, quantity: HeardQuantity): Fact {
    return { kind: 'quantity', from, to, quantity };
  }
}
