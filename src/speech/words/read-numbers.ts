import type { LanguagePack } from '../language/pack.ts';
import type { Token } from './tokens.ts';

/** A number as spoken: one, or both ends of a range. */
export interface SpokenNumber {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** Said in a rounded way: "a couple of hundred", a range. */
  readonly loose: boolean;
}

type Numbers = LanguagePack['numbers'];

interface One {
  readonly to: number;
  readonly x: number;
  readonly loose?: boolean;
}

/** Two numbers in a row are a range when the second is no more than this much larger. */
const CLOSE_BY = 1.25;
const DIGITS = /^[-\u2212]?(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?$/;

/** Reads numbers in digits and words at places of a text. */
export class NumberReader {
  readonly #n: Numbers;
  readonly #tokens: readonly Token[];

  constructor(numbers: Numbers, tokens: readonly Token[]) {
    this.#n = numbers;
    this.#tokens = tokens;
  }

  #word(i: number): string {
    return this.#tokens[i]?.word ?? '';
  }

  /** A number or a range of numbers that begins at a word. */
  at(from: number, unitAfter: (i: number) => number): SpokenNumber | undefined {
    const between = this.#word(from) === this.#n.between ? 1 : 0;
    const first = this.#one(from + between);
    if (!first) return undefined;
    const second = this.#rangeEnd(first, between === 1, unitAfter);
    if (!second)
      return between === 1
        ? undefined
        : { from, to: first.to, low: first.x, high: first.x, loose: first.loose ?? false };
    return { from, to: second.to, low: first.x, high: second.x, loose: true };
  }

  /** "or ten", "to ten", "and ten" after "between"; "nine ten" is nine or ten. */
  #rangeEnd(first: One, isBetween: boolean, unitAfter: (i: number) => number): One | undefined {
    const after = Math.max(first.to, unitAfter(first.to));
    const joined = this.#word(after);
    const joins =
      this.#n.rangeBetween.includes(joined) || (isBetween && this.#n.and.includes(joined));
    if (joins) {
      const skip = MAY_STAND_BETWEEN.has(this.#word(after + 1)) ? 2 : 1;
      const second = this.#one(after + skip);
      return second && second.x > first.x ? second : undefined;
    }
    if (isBetween || after !== first.to || this.#tokens[first.to - 1]?.ends) return undefined;
    const next = this.#one(first.to);
    return next && next.x > first.x && next.x <= first.x * CLOSE_BY && first.x <= 20
      ? next
      : undefined;
  }

  #one(from: number): One | undefined {
    return (
      this.#loose(from) ??
      this.#fraction(from) ??
      this.#pair(from) ??
      this.#withFraction(this.#cardinal(from))
    );
  }

  /** "a couple of hundred", "half a dozen", "a dozen". */
  #loose(from: number): One | undefined {
    let at = this.#n.one.includes(this.#word(from)) ? from + 1 : from;
    const half = this.#word(from) === this.#n.half && this.#n.one.includes(this.#word(from + 1));
    if (half) at = from + 2;
    const x = this.#n.loose[this.#word(at)];
    if (x === undefined) return undefined;
    const of = this.#word(at + 1) === 'of' ? at + 2 : at + 1;
    const times = this.#n.times[this.#word(of)];
    const base = half ? x / 2 : x;
    return times === undefined
      ? { to: at + 1, x: base, loose: x < 12 }
      : { to: of + 1, x: base * times, loose: true };
  }

  /** "half an", "a quarter", "three quarters of an", "an eighth". */
  #fraction(from: number): One | undefined {
    const word = this.#word(from);
    if (word === this.#n.half) return this.#ofOne(from + 1, 0.5);
    const top = this.#n.one.includes(word) ? 1 : this.#n.small[word];
    const bottom = this.#n.fractions[this.#word(from + 1)];
    return top === undefined || bottom === undefined
      ? undefined
      : this.#ofOne(from + 2, top * bottom);
  }

  #ofOne(to: number, x: number): One {
    const of = this.#word(to) === 'of' ? to + 1 : to;
    return { to: this.#n.one.includes(this.#word(of)) ? of + 1 : to, x };
  }

  /** "fifteen twenty" for 1,520, as lengths are read out. */
  #pair(from: number): One | undefined {
    const [head, tail] = [
      this.#twoDigits(from),
      this.#twoDigits(from + (this.#twoDigits(from)?.n ?? 1)),
    ];
    if (!head || !tail || head.x < 11) return undefined;
    const isRange = tail.x > head.x && tail.x <= head.x * CLOSE_BY;
    if (isRange) return undefined;
    return { to: from + head.n + tail.n, x: head.x * 100 + tail.x };
  }

  #twoDigits(from: number): { x: number; n: number } | undefined {
    const tens = this.#n.tens[this.#word(from)];
    const unit = this.#n.small[this.#word(from + 1)];
    if (tens !== undefined)
      return unit !== undefined && unit > 0 && unit < 10
        ? { x: tens + unit, n: 2 }
        : { x: tens, n: 1 };
    const small = this.#n.small[this.#word(from)];
    return small !== undefined && small >= 10 ? { x: small, n: 1 } : undefined;
  }

  /** "two and a half", "one and three quarters". */
  #withFraction(one: One | undefined): One | undefined {
    if (!one || !this.#n.and.includes(this.#word(one.to))) return one;
    const part = this.#halfOrPart(one.to + 1);
    return part ? { to: part.to, x: one.x + part.x } : one;
  }

  #halfOrPart(from: number): One | undefined {
    const isOne = this.#n.one.includes(this.#word(from));
    if (isOne && this.#word(from + 1) === this.#n.half) return { to: from + 2, x: 0.5 };
    if (this.#word(from) === this.#n.half) return { to: from + 1, x: 0.5 };
    const top = isOne ? 1 : this.#n.small[this.#word(from)];
    const bottom = this.#n.fractions[this.#word(from + 1)];
    return top === undefined || bottom === undefined
      ? undefined
      : { to: from + 2, x: top * bottom };
  }

  #cardinal(from: number): One | undefined {
    const digits = DIGITS.test(this.#word(from));
    const whole = digits ? { to: from + 1, x: numberOf(this.#word(from)) } : this.#spoken(from);
    const scaled = whole && digits ? this.#scaled(whole) : whole;
    const at = scaled?.to ?? from;
    if (!this.#n.point.includes(this.#word(at))) return scaled;
    const decimals = this.#decimals(at + 1);
    return decimals
      ? { to: decimals.to, x: Number(`${scaled?.x ?? 0}.${decimals.digits}`) }
      : scaled;
  }

  #scaled(one: One): One {
    const times = this.#n.times[this.#word(one.to)];
    return times === undefined ? one : { to: one.to + 1, x: one.x * times };
  }

  /** Digits after the point: words of one digit each, or a number in digits or tens. */
  #decimals(from: number): { to: number; digits: string } | undefined {
    let at = from;
    let digits = '';
    for (let word = this.#word(at); ; word = this.#word(at)) {
      const small = SAID_ZERO.has(word) ? 0 : this.#n.small[word];
      if (small !== undefined && small < 10) digits += String(small);
      else if (digits === '' && /^\d+$/.test(word)) digits = word;
      else if (digits === '' && this.#twoDigits(at)) {
        const two = this.#twoDigits(at);
        return two && { to: at + two.n, digits: String(two.x) };
      } else break;
      at++;
    }
    return digits === '' ? undefined : { to: at, digits };
  }

  /** "a hundred and twenty five", "two thousand", "sixty two". */
  #spoken(from: number): One | undefined {
    let [at, total, current, last] = [from, 0, 0, Number.POSITIVE_INFINITY];
    if (this.#n.times[this.#word(at)] === 100) current = 1;
    if (this.#n.one.includes(this.#word(at)) && this.#n.times[this.#word(at + 1)] !== undefined)
      [at, current] = [at + 1, 1];
    for (; ; at++) {
      const word = this.#word(at);
      const step = this.#step(word, at, from);
      if (step === undefined) break;
      if (step === 'and') continue;
      if ('times' in step) {
        if (current === 0) break;
        current *= step.times;
        if (step.times >= 1000) [total, current] = [total + current, 0];
        last = step.times;
      } else {
        if (step.add >= last || (step.add === 0 && at > from)) break;
        current += step.add;
        last = step.add >= 20 ? 10 : step.add >= 1 || step.add === 0 ? 1 : last;
        if (step.add === 0) return { to: at + 1, x: 0 };
      }
      if (this.#tokens[at]?.ends) {
        at++;
        break;
      }
    }
    return at === from ? undefined : { to: at, x: total + current };
  }

  #step(
    word: string,
    at: number,
    from: number,
  ): { add: number } | { times: number } | 'and' | undefined {
    const add = this.#n.small[word] ?? this.#n.tens[word];
    if (add !== undefined) return { add };
    const times = this.#n.times[word];
    if (times !== undefined && (at > from || times === 100)) return { times };
    const follows = this.#n.small[this.#word(at + 1)] ?? this.#n.tens[this.#word(at + 1)];
    const isAfterTimes = this.#n.times[this.#word(at - 1)] !== undefined;
    return at > from && isAfterTimes && this.#n.and.includes(word) && follows !== undefined
      ? 'and'
      : undefined;
  }
}

const SAID_ZERO = new Set(['oh', 'o', 'nought', 'naught']);
const MAY_STAND_BETWEEN = new Set(['maybe', 'perhaps', 'even', 'about']);
const numberOf = (text: string): number => Number(text.replace(/,/g, '').replace('\u2212', '-'));
