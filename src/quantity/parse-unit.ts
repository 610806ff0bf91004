import type { Dimension } from './kinds.ts';
import { ATOMS, BASE_ATOMS, MONEY_AT, PREFIXES } from './unit-table.ts';

/**
 * Units by their UCUM codes (Unified Code for Units of Measure, case sensitive).
 *
 * `{u}` standing alone is our unit of account and carries the dimension money. To UCUM itself
 * every text in braces is an annotation, worth unity; all others are that here too, `kg{u}`
 * included.
 */
export interface Unit {
  readonly code: string;
  readonly dim: Dimension;
  /** SI = x · factor + offset. */
  readonly factor: number;
  /** SI value of the unit's zero, for a temperature scale standing alone. */
  readonly offset?: number;
  /** factor = times / over; both are usually whole, so that 1.1 mm is 0.0011 m to the last digit. */
  readonly times: number;
  readonly over: number;
  /** Power of the radian, which has no dimension: 1 for `deg`, 0 for `%`. */
  readonly angle: number;
}

/** A unit while it is being worked out: times / over · 10^exp. */
interface Scale {
  dim: number[];
  times: number;
  over: number;
  exp: number;
  angle: number;
  offset: number;
}

const scale = (part: Partial<Scale> = {}): Scale => ({
  dim: [0, 0, 0, 0, 0, 0, 0, 0],
  times: 1,
  over: 1,
  exp: 0,
  angle: 0,
  offset: 0,
  ...part,
});

/** a · b^power. An offset belongs to a unit standing alone, so a product drops it. */
function product(a: Scale, b: Scale, power: number): Scale {
  const up = (n: number, over: number) => (power < 0 ? over : n) ** Math.abs(power);
  return {
    dim: a.dim.map((n, i) => n + power * (b.dim[i] ?? 0)),
    times: a.times * up(b.times, b.over),
    over: a.over * up(b.over, b.times),
    exp: a.exp + power * b.exp,
    angle: a.angle + power * b.angle,
    offset: 0,
  };
}

const atomScales = new Map<string, Scale | undefined>();

/** A simple unit: an atom, or a metric prefix and a metric atom. */
function simpleUnit(name: string): Scale | undefined {
  const known = atom(name);
  if (known) return known;
  for (const length of [1, 2]) {
    const exp = PREFIXES[name.slice(0, length)];
    const rest = name.slice(length);
    const isMetric = ATOMS[rest]?.metric ?? (rest in BASE_ATOMS || rest === 'rad');
    const base = exp !== undefined && isMetric ? atom(rest) : undefined;
    if (base && exp !== undefined) return { ...base, exp: base.exp + exp };
  }
  return undefined;
}

function atom(name: string): Scale | undefined {
  if (!atomScales.has(name) && Object.hasOwn(ATOMS, name)) atomScales.set(name, definedAtom(name));
  const defined = atomScales.get(name);
  if (defined) return defined;
  if (name === 'rad') return scale({ angle: 1 });
  const base = Object.hasOwn(BASE_ATOMS, name) ? BASE_ATOMS[name] : undefined;
  if (!base) return undefined;
  const one = scale({ exp: base.exp ?? 0 });
  one.dim[base.at] = 1;
  return one;
}

function definedAtom(name: string): Scale | undefined {
  const def = ATOMS[name];
  const of = def && parseTerm(new Cursor(def.is));
  if (!of) return undefined;
  const times = of.times * (def.times ?? 1);
  return { ...of, times, exp: of.exp + (def.exp ?? 0), offset: def.offset ?? 0 };
}

/** Reads a code from left to right. */
class Cursor {
  private at = 0;
  readonly code: string;
  constructor(code: string) {
    this.code = code;
  }
  /** The match of a sticky pattern here, stepped over; undefined when it does not match. */
  take(pattern: RegExp): RegExpExecArray | undefined {
    pattern.lastIndex = this.at;
    const match = pattern.exec(this.code);
    if (match) this.at = pattern.lastIndex;
    return match ?? undefined;
  }
  get ended(): boolean {
    return this.at === this.code.length;
  }
}

/** A term: components joined by `.` and `/`, read from the left; it may open with `/`. */
function parseTerm(c: Cursor): Scale | undefined {
  const inverted = c.take(/\//y) !== undefined;
  const first = parseComponent(c);
  if (!first) return undefined;
  let all = inverted ? product(scale(), first, -1) : first;
  for (let sign = c.take(/[./]/y); sign; sign = c.take(/[./]/y)) {
    const next = parseComponent(c);
    if (!next) return undefined;
    all = product(all, next, sign[0] === '/' ? -1 : 1);
  }
  return all;
}

// Printable ASCII without blanks and braces, as UCUM has it.
const ANNOTATION = /\{([!-z|~]*)\}/y;
const SIMPLE_UNIT = /(?:\[[!-Z\\^-z|~]+\]|[A-Za-z%'])+/y;

function parseComponent(c: Cursor): Scale | undefined {
  if (c.take(/\(/y)) {
    const inner = parseTerm(c);
    return c.take(/\)/y) ? inner : undefined;
  }
  const note = c.take(ANNOTATION);
  if (note) return note[1] === 'u' ? money() : scale();
  const unit = parseTen(c) ?? parseWhole(c) ?? parsePower(c);
  c.take(ANNOTATION);
  return unit;
}

function parseTen(c: Cursor): Scale | undefined {
  const ten = c.take(/10[*^]([+-]?\d+)?/y);
  return ten && scale({ exp: Number(ten[1] ?? 1) });
}

function parseWhole(c: Cursor): Scale | undefined {
  const whole = c.take(/\d+/y);
  return whole && scale({ times: Number(whole[0]) });
}

function money(): Scale {
  const one = scale();
  one.dim[MONEY_AT] = 1;
  return one;
}

function parsePower(c: Cursor): Scale | undefined {
  const name = c.take(SIMPLE_UNIT);
  const base = name && simpleUnit(name[0]);
  const power = c.take(/[+-]?\d+/y);
  return base && (power ? product(scale(), base, Number(power[0])) : base);
}

/** No unit anyone writes is longer; also bounds the depth of parentheses. */
const LONGEST_CODE = 80;
const CACHED_CODES = 2000;
const parsed = new Map<string, Unit | undefined>();

/** The unit of a UCUM code, or undefined when the code is none that the tool knows. */
export function parseUnit(code: string): Unit | undefined {
  if (parsed.has(code)) return parsed.get(code);
  const unit = code.length > LONGEST_CODE ? undefined : readUnit(code);
  if (parsed.size >= CACHED_CODES) parsed.clear();
  if (code.length <= LONGEST_CODE) parsed.set(code, unit);
  return unit;
}

function readUnit(code: string): Unit | undefined {
  const c = new Cursor(code);
  const s = parseTerm(c);
  if (!s || !c.ended) return undefined;
  // Powers of ten from text are correctly rounded.
  const times = s.times * Number(`1e${Math.max(s.exp, 0)}`);
  const over = s.over * Number(`1e${Math.max(-s.exp, 0)}`);
  const factor = times / over;
  if (!Number.isFinite(factor) || factor <= 0) return undefined;
  const dim = s.dim as unknown as Dimension;
  const unit = { code, dim, factor, times, over, angle: s.angle };
  return s.offset === 0 ? unit : { ...unit, offset: s.offset };
}
