import { namesFastener, threadsIn } from './fasteners.ts';
import { RATES } from './fault-rates.ts';
import { distanceOf, type JointEnds, type MassRow, pointOf } from './mass-record.ts';

/** A part is left on what it sits by: how fast that becomes unlikely with distance, m. */
export const NEAR_M = 0.5;
/** Names of small things that are pressed or screwed into another part and come off with it. */
const INSERT = /\b(bush(es)?|bushing|sleeve|insert|ball joint|bearing|grommet|mount)\b/i;
/** Guests less likely than this on their host are not thought of, and only the likeliest are. */
const LEAST_RATE = 2e-6;
const MOST_GUESTS = 16;
/** Rows of the same assembly looked at on each side along X. */
const MOST_LOOKED = 150;

/** A part that may have been on another, and how often that happens. */
export interface Guest {
  readonly row: number;
  readonly rate: number;
}

/** What a row is as a guest, read from its name once. */
interface Card {
  readonly row: MassRow;
  readonly at: readonly [number, number, number] | undefined;
  readonly isFastener: boolean;
  readonly isInsert: boolean;
  readonly threads: readonly string[];
  readonly words: ReadonlySet<string>;
}

/** Finds what may have been on a part when it was weighed: its fasteners, inserts, neighbours. */
export class GuestFinder {
  readonly #cards: readonly Card[];
  /** Rows of each assembly along X, each with its place there; and the fasteners of each. */
  readonly #byGroup = new Map<string, number[]>();
  readonly #places: Int32Array;
  readonly #fasteners = new Map<string, number[]>();
  readonly #byNumber = new Map<string, number>();
  readonly #jointsAt = new Map<string, JointEnds[]>();

  constructor(rows: readonly MassRow[], joints: readonly JointEnds[]) {
    this.#cards = rows.map(cardOf);
    for (const [i, { number, group }] of rows.entries()) {
      this.#byNumber.set(number, i);
      push(this.#byGroup, group, i);
      if (this.#cards[i]?.isFastener) push(this.#fasteners, group, i);
    }
    const x = (i: number) => this.#cards[i]?.at?.[0] ?? Number.POSITIVE_INFINITY;
    this.#places = new Int32Array(rows.length);
    for (const own of this.#byGroup.values()) {
      own.sort((a, b) => x(a) - x(b) || a - b);
      for (const [place, i] of own.entries()) this.#places[i] = place;
    }
    for (const joint of joints) for (const end of joint.ends) push(this.#jointsAt, end, joint);
  }

  /** Likeliest first. */
  of(row: number): Guest[] {
    const host = this.#cards[row];
    if (!host) return [];
    const joints = this.#jointsAt.get(host.row.number) ?? [];
    const ends = joints.flatMap((j) => j.ends.flatMap((e) => this.#byNumber.get(e) ?? []));
    const threads = new Set(joints.flatMap((j) => threadsIn(j.spec)));
    const joined = new Set(ends);
    const near = new Set([...joined, ...this.#beside(row, host.row.group)]);
    near.delete(row);
    return [...near]
      .map((i) => ({ row: i, rate: rateOn(host, this.#cards[i], joined.has(i), threads) }))
      .filter(({ rate }) => rate > LEAST_RATE)
      .sort((a, b) => b.rate - a.rate || a.row - b.row)
      .slice(0, MOST_GUESTS);
  }

  /** Rows of the same assembly that lie along X nearest to a row, and all its fasteners. */
  #beside(row: number, group: string): number[] {
    const place = this.#places[row] ?? 0;
    const own = this.#byGroup.get(group) ?? [];
    const near = own.slice(Math.max(0, place - MOST_LOOKED), place + MOST_LOOKED + 1);
    return near.concat(this.#fasteners.get(group) ?? []);
  }
}

const cardOf = (row: MassRow): Card => ({
  row,
  at: pointOf(row),
  isFastener: namesFastener(row.name),
  isInsert: INSERT.test(row.name),
  threads: threadsIn(row.name),
  words: new Set(wordsIn(row.name)),
});

function push<T>(to: Map<string, T[]>, key: string, item: T): void {
  const list = to.get(key);
  if (list) list.push(item);
  else to.set(key, [item]);
}

/** How often a guest is weighed with its host and again by itself. */
function rateOn(
  host: Card,
  guest: Card | undefined,
  joined: boolean,
  threads: ReadonlySet<string>,
): number {
  const rates = RATES.weighedWith;
  if (!guest) return 0;
  if (guest.isFastener) {
    const [isEnd, named] = [threads.size > 0, sharesWord(host, guest)];
    const own = guest.threads.some((t) => threads.has(t)) || (isEnd && named);
    return own ? rates.ownFastener : isEnd || named ? rates.anyFastener : 0;
  }
  const nearness = Math.exp(-(distanceOf(host.row, guest.row) ?? 1) / NEAR_M);
  return nearness * (guest.isInsert ? rates.insert : joined ? rates.joined : rates.near);
}

/** "Cradle bolts" are of the cradle. */
function sharesWord(host: Card, guest: Card): boolean {
  for (const word of guest.words) if (host.words.has(word)) return true;
  return false;
}
const wordsIn = (name: string): string[] =>
  (name.toLowerCase().match(/\p{L}{4,}/gu) ?? []).filter((w) => !COMMON_WORDS.has(w));
const COMMON_WORDS = new Set(['front', 'rear', 'left', 'right', 'with', 'body']);
