import { randomInt } from 'node:crypto';
import { sameToken } from '../guard.ts';

const LIFE_MS = 10 * 60_000;
/** Wrong codes before the right one is void too: 8 digits are then guessed once in ten million tries. */
const MOST_WRONG = 10;

export interface PairingCode {
  /** Eight digits in two groups: "4829 1362". */
  readonly code: string;
  /** ISO 8601, UTC. */
  readonly expires: string;
}

/** The code that lets the next device in: one at a time, for ten minutes, once. */
export class PairingCodes {
  readonly #now: () => number;
  #digits: string | undefined;
  #until = 0;
  #wrong = 0;

  constructor(now: () => number = Date.now) {
    this.#now = now;
  }

  /** A fresh code; the one before is good no more. */
  issue(): PairingCode {
    this.#digits = String(randomInt(100_000_000)).padStart(8, '0');
    this.#until = this.#now() + LIFE_MS;
    this.#wrong = 0;
    const code = `${this.#digits.slice(0, 4)} ${this.#digits.slice(4)}`;
    return { code, expires: new Date(this.#until).toISOString() };
  }

  /** Whether this is the code; it is used up by that, and void after too many wrong ones. */
  take(given: string): boolean {
    const digits = this.#digits;
    if (digits === undefined || this.#now() >= this.#until) return false;
    const isRight = sameToken(given.replace(/\D/g, ''), digits);
    this.#wrong += isRight ? 0 : 1;
    if (isRight || this.#wrong >= MOST_WRONG) this.#digits = undefined;
    return isRight;
  }
}
