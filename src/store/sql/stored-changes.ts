import type { Change, Id } from '../../study/index.ts';
import { inPieces } from './in-pieces.ts';
import type { SqlLibrary } from './tables.ts';

/** Text of the parsed changes that are kept at hand, in characters. */
const KEPT_CHARACTERS = 4_000_000;
/** Changes fetched in one query. */
const PIECE = 10;

interface Kept {
  readonly change: Change;
  readonly characters: number;
}

/** Reads stored changes by their number, keeping the last ones read at hand. */
export class StoredChanges {
  readonly #library: SqlLibrary;
  readonly #kept = new Map<number, Kept>();
  #characters = 0;

  constructor(library: SqlLibrary) {
    this.#library = library;
  }

  /** One after the other, so that a caller never holds more than it needs. */
  async *read(numbers: Iterable<number>): AsyncGenerator<readonly [number, Change]> {
    const all = [...numbers].sort((a, b) => a - b);
    for (const some of inPieces(all, PIECE)) {
      const here = await this.#piece(some);
      for (const number of some) {
        const change = here.get(number);
        if (change) yield [number, change];
      }
    }
  }

  /** Numbers of the changes that reverse any of the gestures. */
  async undoing(study: Id, gestures: readonly string[]): Promise<number[]> {
    return this.#numbers(study, 'undoes', gestures);
  }

  /** Numbers of the changes that make up the gestures. */
  async ofGestures(study: Id, gestures: readonly string[]): Promise<number[]> {
    return this.#numbers(study, 'gesture', gestures);
  }

  async #numbers(study: Id, column: 'undoes' | 'gesture', values: readonly string[]) {
    const found: number[] = [];
    for (const some of inPieces(values)) {
      const rows = await this.#library.db
        .selectFrom('changes')
        .select('number')
        .where('study', '=', study)
        .where(column, 'in', some)
        .execute();
      found.push(...rows.map((r) => r.number));
    }
    return found;
  }

  async #piece(numbers: readonly number[]): Promise<Map<number, Change>> {
    const here = new Map<number, Change>();
    for (const number of numbers) {
      const kept = this.#kept.get(number);
      if (kept) here.set(number, kept.change);
    }
    const absent = numbers.filter((n) => !here.has(n));
    if (absent.length === 0) return here;
    const rows = await this.#library.db
      .selectFrom('changes')
      .select(['number', 'body'])
      .where('number', 'in', absent)
      .execute();
    for (const { number, body } of rows) {
      const change: Change = JSON.parse(body);
      here.set(number, change);
      this.keep(number, change, body.length);
    }
    return here;
  }

  /** Keeps a change at hand that is about to be asked for. */
  keep(number: number, change: Change, characters: number): void {
    this.#kept.set(number, { change, characters });
    this.#characters += characters;
    for (const [oldest, last] of this.#kept) {
      if (this.#characters <= KEPT_CHARACTERS || this.#kept.size === 1) break;
      this.#kept.delete(oldest);
      this.#characters -= last.characters;
    }
  }
}
