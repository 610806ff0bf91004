import {
  type Gate,
  type GateId,
  type GateItem,
  GLOVE_CLASSES,
  gateOf,
  type Lapse,
} from '../data/index.ts';
import type { Id } from './ids.ts';

export { GATE_IDS, type GateId, LAPSES, type Lapse } from '../data/index.ts';

/** One line of a record as it was written; `x` is its number in SI where it takes one. */
export interface GateAnswer {
  readonly item: string;
  readonly asWritten: string;
  readonly x?: number;
}

/** What was put down for one gate of one step, at a local time. */
export interface GateRecord {
  readonly id: Id;
  readonly step: Id;
  readonly gate: GateId;
  readonly at: string;
  readonly answers: readonly GateAnswer[];
}

/** A named person takes it on without the record; for gates that allow it. */
export interface GateOverride {
  readonly id: Id;
  readonly step: Id;
  readonly gate: GateId;
  readonly at: string;
  readonly who: string;
  readonly why: string;
}

/** Records taken before are not good any more. */
export interface GateLapse {
  readonly id: Id;
  readonly at: string;
  readonly why: Lapse;
}

/** Somebody says that a step was done, or takes that back. */
export interface StepMark {
  readonly id: Id;
  readonly step: Id;
  readonly at: string;
  readonly done: boolean;
}

/** What keeps a record from being complete, a line each; none where it is. */
export function lackingOf(gate: Gate, record: GateRecord | undefined): readonly string[] {
  const answers = new Map(record?.answers.map((a) => [a.item, a]));
  return gate.items.flatMap((item) => {
    const why = wrongAnswer(item, answers, record?.at ?? '', gate);
    return why === undefined ? [] : [`${item.words}: ${why}`];
  });
}

type Answers = ReadonlyMap<string, GateAnswer>;
const NUMBERS: ReadonlySet<GateItem['takes']> = new Set([
  'voltage',
  'temperature',
  'minutes',
  'count',
  'mass',
  'length',
  'pressure',
]);
export const takesNumber = (item: GateItem): boolean => NUMBERS.has(item.takes);

function wrongAnswer(item: GateItem, answers: Answers, at: string, gate: Gate): string | undefined {
  const answer = answers.get(item.id);
  if (!answer || answer.asWritten.trim() === '') return 'not written';
  if (item.takes === 'yes') return isYes(answer) ? undefined : 'not confirmed';
  if (takesNumber(item)) return wrongNumber(item, answer, answers, gate);
  if (item.takes === 'date') return wrongDate(item, answer.asWritten, at);
  if (item.takes === 'glove class') return wrongClass(item, answer.asWritten, answers);
  const other = item.otherThan === undefined ? undefined : answers.get(item.otherThan);
  return other && sameName(other.asWritten, answer.asWritten)
    ? 'must be somebody else than who does the work'
    : undefined;
}

const isYes = (answer: GateAnswer): boolean => answer.asWritten.trim().toLowerCase() === 'yes';
const sameName = (a: string, b: string): boolean =>
  a.trim().toLowerCase() === b.trim().toLowerCase();

function wrongNumber(
  item: GateItem,
  { x }: GateAnswer,
  answers: Answers,
  gate: Gate,
): string | undefined {
  if (x === undefined || !Number.isFinite(x)) return 'no number';
  if (item.below !== undefined && Math.abs(x) >= item.below)
    return `not below ${item.below}${item.takes === 'voltage' ? ' V' : ''}`;
  const other = (id: string | undefined): readonly [number, string] | undefined => {
    const y = id === undefined ? undefined : answers.get(id)?.x;
    return y === undefined ? undefined : [y, gate.items.find((i) => i.id === id)?.words ?? ''];
  };
  const [same, most, least] = [other(item.sameAs), other(item.atMostThat), other(item.atLeastThat)];
  if (same && x !== same[0]) return `not the same as ${same[1]}`;
  if (most && x > most[0]) return `above ${most[1]}`;
  return least && x < least[0] ? `below ${least[1]}` : undefined;
}

const DAY = /^(\d{4})-(\d\d)-(\d\d)$/;

/** Milliseconds of a day, NaN where it is none. */
function dayOf(text: string, months = 0): number {
  const [, y, m, d] = DAY.exec(text.trim().slice(0, 10)) ?? [];
  return Date.UTC(Number(y), Number(m) - 1 + months, Number(d));
}

function wrongDate({ withinMonths }: GateItem, text: string, at: string): string | undefined {
  const [day, now] = [dayOf(text), dayOf(at)];
  if (Number.isNaN(day)) return 'no date: write it as 2026-11-25';
  if (day > now) return 'lies ahead of the record';
  if (withinMonths === undefined || dayOf(text, withinMonths) >= now) return undefined;
  return `more than ${withinMonths} months before the record`;
}

function wrongClass({ covers }: GateItem, text: string, answers: Answers): string | undefined {
  const most = GLOVE_CLASSES[text.trim()];
  if (most === undefined) return `no class: one of ${Object.keys(GLOVE_CLASSES).sort().join(', ')}`;
  const voltage = covers === undefined ? undefined : answers.get(covers)?.x;
  return voltage !== undefined && voltage > most ? `made for ${most} V at most` : undefined;
}

/** Names of gates parted by semicolons; what names none is left aside. */
export const gatesNamed = (text: string): readonly GateId[] =>
  text.split(';').flatMap((word) => gateOf(word.trim().toLowerCase())?.id ?? []);
