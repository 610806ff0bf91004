import { kindDef } from './kinds.ts';
import {
  type Amount,
  type Context,
  chooseUnit,
  exampleOf,
  inSi,
  needUnit,
  Refused,
  readAmount,
  writtenUnit,
} from './read-amount.ts';
import { readNumber } from './read-number.ts';
import { readRepeats } from './repeats-shape.ts';
import { fromSi, kindWords, spreadToSi } from './units.ts';
import type { Spread } from './value.ts';

/** A value in SI, its spread, and the UCUM code of its unit. */
export interface Shape {
  readonly x: number;
  readonly spread: Spread;
  readonly unit: string;
}

/** The shapes of a quantity, each tried in turn; undefined when the text has none of them. */
export const readShape = (core: string, c: Context): Shape | undefined =>
  readRepeats(core, c) ??
  readSpread(core, c) ??
  readTriangle(core, c) ??
  readSingle(core, c) ??
  readRange(core, c);

/** `12.5 ± 0.2 kg`, `(12.5 ± 0.2) kg`, `12.5 kg ± 2 %`. */
function readSpread(core: string, c: Context): Shape | undefined {
  const inner = /^\(([^()]*±[^()]*)\)(.*)$/.exec(core);
  const [left = '', right, ...more] = (inner ? `${inner[1]}${inner[2]}` : core).split('±');
  if (right === undefined || more.length > 0) return undefined;
  const value = readAmount(left, c);
  const half = readAmount(right, c);
  if (!value || !half || value.number.u !== undefined || half.number.u !== undefined)
    return undefined;
  const isShare = half.unit === '%' && c.kind !== 'ratio';
  if (c.kind === 'ratio' && !inner) needClearPercent(value, half, c);
  const unit = chooseUnit([value.unit, isShare ? undefined : half.unit], c);
  const x = inSi(value.number.x, unit, c.kind);
  const u = isShare ? shareOf(x, half.number.x, c) : spreadOf(half, unit, c);
  return { x, spread: normal(u), unit };
}

/** 1.18 ± 2 % of a ratio may be a share of it or a difference: neither is guessed. */
function needClearPercent(value: Amount, half: Amount, c: Context): void {
  if (half.unit !== '%' || value.unit !== undefined || c.options.unit === '%') return;
  const [x, u] = [value.number.x, half.number.x];
  throw new Refused(
    `${x} ± ${u} % may be a percentage, or a number whose spread is a share of it`,
    `Write (${x} ± ${u}) %, or the spread as a plain number: ${x} ± ${Math.abs(x * u) / 100}.`,
  );
}

function spreadOf(half: Amount, unit: string, c: Context): number {
  const code = half.unit ?? unit;
  needUnit(code, c);
  return spreadToSi(half.number.x, code, c.kind);
}

function shareOf(x: number, percent: number, c: Context): number {
  if (kindDef(c.kind).affine)
    throw new Refused(
      `a share of a ${kindWords(c.kind)} depends on where its scale begins`,
      `Write the spread in a unit: ${exampleOf(c.kind)}.`,
    );
  return (Math.abs(x) * percent) / 100;
}

function normal(u: number): Spread {
  if (!Number.isFinite(u) || u <= 0)
    throw new Refused(
      'a spread of zero or less says nothing',
      'Write "exactly" before a number without error, or leave the spread out when it is not known.',
    );
  return { s: 'normal', u };
}

/** `30 / 36 / 44 u/h`. */
function readTriangle(core: string, c: Context): Shape | undefined {
  const parts = /^([^/]+)\/([^/]+)\/(.+)$/.exec(core);
  if (!parts) return undefined;
  const low = readNumber(parts[1] ?? '', c.decimal);
  const mode = readNumber(parts[2] ?? '', c.decimal);
  const high = readAmount(parts[3] ?? '', c);
  if (!low || !mode || !high || low.rest.trim() !== '' || mode.rest.trim() !== '') return undefined;
  const unit = chooseUnit([high.unit], c);
  if (!(low.x <= mode.x && mode.x <= high.number.x && low.x < high.number.x))
    throw new Refused(
      `${low.x} / ${mode.x} / ${high.number.x} do not rise`,
      'Write the low, the most likely and the high value in that order.',
    );
  const si = (x: number) => inSi(x, unit, c.kind);
  return {
    x: si(mode.x),
    spread: { s: 'triangular', low: si(low.x), high: si(high.number.x) },
    unit,
  };
}

/** `35 lb`, `3/8 in`, `12.50(2) kg`. */
function readSingle(core: string, c: Context): Shape | undefined {
  const amount = readAmount(core, c);
  if (!amount) return undefined;
  const unit = chooseUnit([amount.unit], c);
  const x = inSi(amount.number.x, unit, c.kind);
  const { u } = amount.number;
  const spread =
    u === undefined ? ({ s: 'unknown' } as const) : normal(spreadToSi(u, unit, c.kind));
  return { x, spread, unit };
}

const BETWEEN = /\u2013|\u2014|…|\.{2,3}|\bto\b|-/g;

/** `9–10 mm`, `9 mm to 10 mm`. */
function readRange(core: string, c: Context): Shape | undefined {
  const low = readNumber(core, c.decimal);
  if (!low) return undefined;
  for (const sign of low.rest.matchAll(BETWEEN)) {
    const left = writtenUnit(low.rest.slice(0, sign.index), c);
    const high = readAmount(low.rest.slice(sign.index + sign[0].length), c);
    if (left && high) return rangeOf({ number: low, unit: left.code }, high, c);
  }
  return undefined;
}

function rangeOf(low: Amount, high: Amount, c: Context): Shape | undefined {
  if (low.number.u !== undefined || high.number.u !== undefined) return undefined;
  const unit = chooseUnit([low.unit, high.unit], c);
  const end = { x: high.number.x, unit: high.unit ?? unit };
  needUnit(end.unit, c);
  const a = low.number.x;
  const b = end.unit === unit ? end.x : fromSi(inSi(end.x, end.unit, c.kind), unit, c.kind);
  if (!(a < b))
    throw new Refused(`the range from ${a} to ${b} does not rise`, 'Write the lower end first.');
  const half = spreadToSi((b - a) / 2, unit, c.kind);
  return { x: inSi((a + b) / 2, unit, c.kind), spread: { s: 'rectangular', half }, unit };
}
