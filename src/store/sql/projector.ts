import type { Change, Id, TableChunk } from '../../study/index.ts';
import type { Fresh } from './change-log.ts';
import { chunkRows } from './chunk-projector.ts';
import { allBelow, dirtOf } from './dirt.ts';
import { inPieces } from './in-pieces.ts';
import { rowsOf } from './narrow.ts';
import { addRows, dropChunk, dropRows, refoldedRow } from './node-rows.ts';
import { isUndone, refold, rootIds } from './refold.ts';
import { StoredChanges } from './stored-changes.ts';
import { emptyHead, headRow, putHead, withHeader } from './study-heads.ts';
import type { SqlLibrary, StudiesTable } from './tables.ts';
import { changesTouching, noteTouches, touchedRows } from './touches.ts';

/** Nodes folded together: many share what stands above them, few keep memory small. */
const TOGETHER = 2000;

/**
 * Keeps a study's rows as the fold of its changes has them, making again only what new changes
 * have to do with. One for each transaction, on the connection that is in it.
 */
export class Projector {
  readonly #library: SqlLibrary;
  readonly #study: Id;
  readonly #stored: StoredChanges;
  #head: StudiesTable;

  private constructor(library: SqlLibrary, study: Id, head: StudiesTable) {
    this.#library = library;
    this.#study = study;
    this.#stored = new StoredChanges(library);
    this.#head = head;
  }

  static async of(library: SqlLibrary, study: Id): Promise<Projector> {
    return new Projector(library, study, (await headRow(library, study)) ?? emptyHead(study));
  }

  /** Brings the rows up to changes that have just been stored. */
  async project(fresh: readonly Fresh[]): Promise<void> {
    if (fresh.length === 0) return;
    for (const { number, change, characters } of fresh) {
      await noteTouches(this.#library, change, number);
      this.#stored.keep(number, change, characters);
    }
    await this.#clean(fresh.map(({ number, change }) => [number, change] as const));
    const clocks = [this.#head.clock, ...fresh.map((f) => f.change.clock)].sort();
    const changes = this.#head.changes + fresh.length;
    this.#head = { ...this.#head, changes, clock: clocks.at(-1) ?? '' };
    await putHead(this.#library, this.#head);
  }

  async #clean(fresh: readonly (readonly [number, Change])[]): Promise<void> {
    const dirt = await dirtOf(this.#stored, this.#study, fresh);
    if ((await this.#headerMoved(dirt.header)) || (await this.#rootMoved(dirt.trees)))
      await this.#everything();
    const below = await this.#below(dirt.trees, dirt.chunks);
    await this.#again(new Set([...dirt.nodes, ...dirt.trees, ...below]));
    await this.#chunksAgain(dirt.chunks);
  }

  #below(tops: Iterable<Id>, leaveOut: ReadonlySet<number>): Promise<Set<Id>> {
    return allBelow(this.#library, this.#stored, this.#study, tops, leaveOut);
  }

  /** Whether the values in force now stand in another condition. */
  async #headerMoved(dirty: boolean): Promise<boolean> {
    if (!dirty && this.#head.changes > 0) return false;
    const before = this.#head.condition;
    const { view } = await refold(this.#library, this.#stored, this.#study, []);
    this.#head = withHeader(this.#head, view.header);
    return this.#head.condition !== before;
  }

  /** Whether nodes without a known parent may now stand elsewhere. */
  async #rootMoved(trees: ReadonlySet<Id>): Promise<boolean> {
    if (trees.size === 0) return false;
    const roots = await rootIds(this.#library, this.#stored, this.#study);
    return [...roots].some((id) => trees.has(id));
  }

  async #everything(): Promise<void> {
    for (let last = ''; ; ) {
      const rows = await this.#library.db
        .selectFrom('nodes')
        .select('id')
        .where('study', '=', this.#study)
        .where('id', '>', last)
        .orderBy('id')
        .limit(TOGETHER)
        .execute();
      if (rows.length === 0) return;
      last = rows.at(-1)?.id ?? last;
      await this.#again(new Set(rows.map((r) => r.id)));
    }
  }

  /** Makes the rows of these nodes again from a fold. */
  async #again(ids: ReadonlySet<Id>): Promise<void> {
    for (const some of inPieces([...ids], TOGETHER)) {
      const folded = await refold(this.#library, this.#stored, this.#study, some);
      this.#count(-(await dropRows(this.#library, this.#study, some)));
      const rows = some.flatMap((id) => refoldedRow(folded, id));
      this.#count(await addRows(this.#library, rows));
    }
  }

  /** All rows go before the first come, for rows of one chunk may stand below those of another. */
  async #chunksAgain(numbers: ReadonlySet<number>): Promise<void> {
    const unclear = new Set<Id>();
    for await (const [, change] of this.#stored.read(numbers))
      for (const table of tablesOf(change))
        this.#count(-(await dropChunk(this.#library, this.#study, table.id)));
    for await (const [, change] of this.#stored.read(numbers)) {
      const undone = await isUndone(this.#stored, this.#study, change);
      for (const table of tablesOf(change))
        for (const id of await this.#chunk(change, table, undone, numbers)) unclear.add(id);
    }
    await this.#again(unclear);
  }

  /** Makes the rows of a chunk; returns the nodes that must be folded instead. */
  async #chunk(
    change: Change,
    table: TableChunk,
    undone: boolean,
    pending: ReadonlySet<number>,
  ): Promise<Id[]> {
    const [library, study] = [this.#library, this.#study];
    const parents = await touchedRows(library, study, 'parent', table.id);
    const others = await this.#below(parents, pending);
    const adding = await changesTouching(library, study, 'node', [table.id]);
    if (adding.size > 1) return [...others, ...(await this.#rowsAdded(adding, table.id))];
    if (undone) return [...others];
    const touched = new Set(await touchedRows(library, study, 'node', table.id));
    const { condition } = this.#head;
    const { rows, unclear } = await chunkRows(library, change, table, condition, touched);
    this.#count(await addRows(library, rows));
    return [...others, ...unclear];
  }

  /** Rows of a chunk that more than one change adds, as a device restored from a copy may send it. */
  async #rowsAdded(numbers: ReadonlySet<number>, chunk: Id): Promise<Id[]> {
    const ids: Id[] = [];
    for await (const [, change] of this.#stored.read(numbers))
      for (const table of tablesOf(change))
        if (table.id === chunk) ids.push(...rowsOf(table).map((row) => row.id));
    return ids;
  }

  #count(shown: number): void {
    this.#head = { ...this.#head, parts: this.#head.parts + shown };
  }
}

const tablesOf = (change: Change): TableChunk[] =>
  change.entries.flatMap((entry) => (entry.e === 'table.add' ? [entry.table] : []));
