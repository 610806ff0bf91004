import { namesFastener, threadsIn } from './fasteners.ts';
import { RATES } from './fault-rates.ts';
import { distanceOf, type JointEnds, type MassRow } from './mass-record.ts';

/** A part is left on what it sits by: how fast that becomes unlikely with distance, m. */
export const NEAR_M = 0.5;
/** Names of small things that are pressed or screwed into another part and come off with it. */
const INSERT = /\b(bush(es)?|bushing|sleeve|insert|ball joint|bearing|grommet|mount)\b/i;
/** Guests less likely than this on their host are not thought of, and only the likeliest are. */
const LEAST_RATE = 2e-6;
const MOST_GUESTS = 40;

/** A part that may have been on another, and how often that happens. */
export interface Guest {
  readonly row: number;
  readonly rate: number;
}

/** Finds what may have been on a part when it was weighed: its fasteners, inserts, neighbours. */
export class GuestFinder {
  readonly #rows: readonly MassRow[];
  readonly #byGroup: ReadonlyMap<string, readonly number[]>;
  readonly #byNumber: ReadonlyMap<string, number>;
  readonly #jointsAt = new Map<string, JointEnds[]>();

  constructor(rows: readonly MassRow[], joints: readonly JointEnds[]) {
    this.#rows = rows;
    this.#byNumber = new Map(rows.map((r, i) => [r.number, i]));
    const byGroup = new Map<string, number[]>();
    for (const [i, { group }] of rows.entries()) push(byGroup, group, i);
    this.#byGroup = byGroup;
    for (const joint of joints) for (const end of joint.ends) push(this.#jointsAt, end, joint);
  }

  /** Likeliest first. */
  of(row: number): Guest[] {
    const host = this.#rows[row];
    if (!host) return [];
    const joints = this.#jointsAt.get(host.number) ?? [];
    const ends = joints.flatMap((j) => j.ends.flatMap((e) => this.#byNumber.get(e) ?? []));
    const joined = new Set(ends);
    const threads = new Set(joints.flatMap((j) => threadsIn(j.spec)));
    const near = new Set([...(this.#byGroup.get(host.group) ?? []), ...joined]);
    near.delete(row);
    return [...near]
      .map((i) => {
        const guest = this.#rows[i] as MassRow;
        return { row: i, rate: rateOn(host, guest, joined.has(i), threads) };
      })
      .filter(({ rate }) => rate > LEAST_RATE)
      .sort((a, b) => b.rate - a.rate || a.row - b.row)
      .slice(0, MOST_GUESTS);
  }
}

function push<T>(to: Map<string, T[]>, key: string, item: T): void {
  const list = to.get(key);
  if (list) list.push(item);
  else to.set(key, [item]);
}

/** How often a guest is weighed with its host and again by itself. */
function rateOn(
  host: MassRow,
  guest: MassRow,
  joined: boolean,
  threads: ReadonlySet<string>,
): number {
  const rates = RATES.weighedWith;
  if (namesFastener(guest.name)) {
    const [isEnd, named] = [threads.size > 0, sharesWord(host, guest)];
    const own = threadsIn(guest.name).some((t) => threads.has(t)) || (isEnd && named);
    return own ? rates.ownFastener : isEnd || named ? rates.anyFastener : 0;
  }
  const nearness = Math.exp(-(distanceOf(host, guest) ?? 1) / NEAR_M);
  const rate = INSERT.test(guest.name) ? rates.insert : joined ? rates.joined : rates.near;
  return rate * nearness;
}

/** "Cradle bolts" are of the cradle. */
function sharesWord(host: MassRow, guest: MassRow): boolean {
  const own = new Set(wordsIn(host.name));
  return wordsIn(guest.name).some((w) => own.has(w) && !COMMON_WORDS.has(w));
}
const wordsIn = (name: string): string[] => name.toLowerCase().match(/\p{L}{4,}/gu) ?? [];
const COMMON_WORDS = new Set(['front', 'rear', 'left', 'right', 'with', 'body']);
