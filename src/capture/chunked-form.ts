import type { Value } from '../quantity/index.ts';
import {
  type ColumnUse,
  type Entry,
  type Finding,
  type Id,
  rowId,
  type TableChunk,
} from '../study/index.ts';
import { CellChecker } from './check-cells.ts';
import { columnUses, waysOf } from './column-uses.ts';
import { type CommonSpreads, commonSpreads } from './common-spreads.ts';
import {
  type FormReader,
  note,
  openCondition,
  ownText,
  putInstrument,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import { RowLabels } from './row-labels.ts';
import { RowParents } from './row-parents.ts';

/** Parts and joints: rows are kept as written, in chunks that the fold expands. */
export class ChunkedForm implements FormReader {
  readonly #setup: Setup;
  readonly #nodeKind: 'part' | 'joint';
  readonly #common: CommonSpreads;
  readonly #columns: readonly ColumnUse[];
  readonly #cells: CellChecker;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #labels: RowLabels;
  readonly #parents: RowParents;
  readonly #instrumentColumns: readonly number[];
  readonly #instruments = new Set<string>();
  /** Ends of joints to the node that they name. */
  readonly #ends = new Map<string, Id | null>();
  readonly #chunkIds: string[] = [];
  #rows = 0;
  #readings = 0;

  constructor(setup: Setup, nodeKind: 'part' | 'joint') {
    const { mapping, decimal, frame, overrides, request, problems } = setup;
    this.#setup = setup;
    this.#nodeKind = nodeKind;
    this.#common = commonSpreads(setup);
    this.#columns = columnUses(mapping, overrides, this.#common);
    this.#cells = new CellChecker({
      columns: this.#columns,
      decimal,
      frame,
      headings: mapping.headings,
    });
    this.#texts = rowTexts(mapping);
    this.#labels = new RowLabels(request.view, problems);
    this.#parents = new RowParents(setup);
    this.#instrumentColumns = [
      ...new Set(
        this.#columns.flatMap((c) =>
          c.use === 'property' && c.instrumentColumn !== undefined ? [c.instrumentColumn] : [],
        ),
      ),
    ];
    if (overrides.instrument !== undefined) this.#instruments.add(overrides.instrument);
  }

  check(cells: readonly string[], row: number): void {
    const { problems } = this.#setup;
    const texts = this.#texts(cells, row);
    this.#labels.check(texts);
    if (this.#nodeKind === 'part') this.#parents.check(texts);
    else this.#checkEnds(texts);
    const read = this.#cells.read(cells, row);
    for (const problem of read.problems) problems.add(problem);
    for (const column of this.#instrumentColumns) this.#noteInstrument(cells[column] ?? '');
    this.#rows++;
    this.#readings += read.values.size;
  }

  #noteInstrument(cell: string): void {
    const label = cell.trim();
    if (label !== '' && !this.#instruments.has(label)) this.#instruments.add(ownText(label));
  }

  #checkEnds(texts: RowText): void {
    for (const field of ['from', 'to'] as const) {
      const ends = endsIn(texts.text(field));
      if (ends.length === 0)
        this.#setup.problems.add(
          texts.problem(
            field,
            'a joint has an open end',
            'Name what it joins, by number or in words.',
          ),
        );
      for (const end of ends) this.#endNode(end);
    }
  }

  #endNode(words: string): Id | null {
    const known = this.#ends.get(words);
    if (known !== undefined) return known;
    const node = this.#setup.request.view.find(words);
    const id = node && JOINED.has(node.kind) ? node.id : null;
    this.#ends.set(ownText(words), id);
    return id;
  }

  needsLook = (): boolean => this.#labels.suspects || this.#parents.open;

  look(chunk: RowChunk): void {
    const chunkId = this.#chunkId(chunk.index);
    for (const [i, cells] of chunk.rows.entries()) {
      const row = chunk.firstRow + i;
      const texts = this.#texts(cells, row);
      this.#labels.look(texts);
      this.#parents.look(texts, rowId(chunkId, row));
    }
  }

  settle(): void {
    if (this.#nodeKind === 'part') this.#parents.settle();
  }

  opening(): readonly Entry[] {
    const { view } = this.#setup.request;
    const instruments = [...this.#instruments].filter((label) => !view.instrument(label)).sort();
    return [
      ...openCondition(this.#setup.condition, view),
      ...instruments.map(putInstrument),
      ...this.#common.entries,
      ...this.#parents.made.map((node): Entry => ({ v: 1, e: 'node.add', node })),
    ];
  }

  entries(chunk: RowChunk): readonly Entry[] {
    return [{ v: 1, e: 'table.add', table: this.#table(chunk) }];
  }

  #table(chunk: RowChunk): TableChunk {
    const { request, mapping, decimal, condition, frame, overrides } = this.#setup;
    const ways = waysOf(overrides);
    return {
      id: this.#chunkId(chunk.index),
      parse: 1,
      nodeKind: this.#nodeKind,
      file: request.file,
      headings: mapping.headings,
      columns: this.#columns,
      firstRow: chunk.firstRow,
      rows: chunk.rows,
      decimal,
      resolved: this.#resolved(chunk),
      root: request.view.root()?.id ?? '',
      condition,
      frame,
      howWithInstrument: ways.withInstrument,
      howWithout: ways.without,
      by: request.by,
      takenAt: request.takenAt,
    };
  }

  /** What the rows of a chunk name, to the nodes that they mean. */
  #resolved(chunk: RowChunk): Record<string, Id> {
    const found: [string, Id][] = [];
    for (const [i, cells] of chunk.rows.entries()) {
      const texts = this.#texts(cells, chunk.firstRow + i);
      if (this.#nodeKind === 'part') {
        const parent = this.#parents.nodeOf(texts.text('parent'));
        if (parent !== undefined) found.push([texts.text('parent'), parent]);
        continue;
      }
      for (const end of [...endsIn(texts.text('from')), ...endsIn(texts.text('to'))]) {
        const id = this.#endNode(end);
        if (id !== null) found.push([end, id]);
      }
    }
    return Object.fromEntries(found);
  }

  #chunkId(index: number): string {
    while (this.#chunkIds.length <= index) this.#chunkIds.push(this.#setup.request.ids());
    return this.#chunkIds[index] as string;
  }

  values = (cells: readonly string[], row: number): ReadonlyMap<number, Value> =>
    this.#cells.read(cells, row).values;

  counts(): Readonly<Record<string, number>> {
    return {
      [`${this.#nodeKind}s`]: this.#rows,
      readings: this.#readings,
      instruments: this.#instruments.size,
      ...(this.#nodeKind === 'joint' ? {} : { 'assemblies made': this.#parents.made.length }),
    };
  }

  notes(): readonly Finding[] {
    const open = [...this.#ends].filter(([, id]) => id === null).map(([words]) => words);
    if (open.length === 0) return [];
    return [
      note(
        { file: this.#setup.request.file },
        `${open.length} ends of joints name no part of the study; their words are kept`,
        'Import the parts first, or write part numbers.',
        open.slice(0, 10).join('; '),
      ),
    ];
  }
}

/** Kinds of nodes that a joint can hold. */
const JOINED: ReadonlySet<string> = new Set(['vehicle', 'assembly', 'part']);

const endsIn = (text: string): string[] =>
  text
    .split(';')
    .map((end) => end.trim())
    .filter((end) => end !== '');
