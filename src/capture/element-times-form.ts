import { parseQuantity, type Value } from '../quantity/index.ts';
import type { Entry, Finding, NodeSpec } from '../study/index.ts';
import { sentence, wrongSign } from './check-cells.ts';
import {
  type FormReader,
  openCondition,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import type { Problem } from './problems.ts';

/** Label of the trial that holds a study's own element times. */
const LABEL = 'ELEMENT-TIMES';

/** A study's own element times, in time units: they go before those that come with the tool. */
export class ElementTimesForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #rows = new Map<string, number>();
  readonly #node: NodeSpec;

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
    const { view, ids, file } = setup.request;
    this.#node = view.find(LABEL) ?? {
      id: ids(),
      kind: 'trial',
      parent: view.root()?.id ?? null,
      label: LABEL,
      name: `element times of ${file}`,
    };
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problem = this.#wrong(texts) ?? wrongValue(this.#read(texts));
    if (problem) this.#setup.problems.add(problem);
    else this.#rows.set(codeIn(texts), row);
  }

  #wrong(texts: RowText): Problem | undefined {
    const code = codeIn(texts);
    const earlier = this.#rows.get(code);
    if (code === '')
      return texts.problem('element', 'the row names no element', 'Write its code, e.g. G1A.');
    if (earlier !== undefined)
      return texts.problem(
        'element',
        `element ${code} stands in row ${earlier} already`,
        'Take one of the two out.',
      );
    if (texts.text('source') === '')
      return texts.problem(
        'source',
        'the value names no source',
        'Say where it comes from: a book with its page, or who measured it and when.',
      );
    return undefined;
  }

  #read(texts: RowText): Value | Problem {
    const { decimal } = this.#setup;
    const text = texts.text('units');
    const wrong = wrongSign(text, decimal);
    if (wrong) return texts.problem('units', wrong.why, wrong.next);
    const read = parseQuantity(text, 'ratio', { unit: '1', decimal });
    if (!read.ok) return texts.problem('units', read.why, sentence(read.next));
    if (read.value.x < 0) return texts.problem('units', 'a time is negative', 'Check the sign.');
    // A table of times is a convention: its numbers have no spread of their own.
    const spread = read.value.spread.s === 'unknown' ? ({ s: 'exact' } as const) : undefined;
    return spread ? { ...read.value, spread } : read.value;
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}

  opening(): readonly Entry[] {
    const { condition, request } = this.#setup;
    const isThere = request.view.find(LABEL) !== undefined;
    return [
      ...openCondition(condition, request.view),
      ...(isThere ? [] : [{ v: 1, e: 'node.add', node: this.#node } as const]),
    ];
  }

  entries = (chunk: RowChunk): readonly Entry[] =>
    chunk.rows.map((cells, i) => this.#entry(this.#texts(cells, chunk.firstRow + i)));

  #entry(texts: RowText): Entry {
    const { request, condition, mapping } = this.#setup;
    const value = this.#read(texts);
    if ('why' in value) throw new Error(`row ${texts.row} passed the check and can not be read`);
    const column = mapping.column('units')?.column ?? 'units';
    return {
      v: 1,
      e: 'reading.add',
      reading: {
        id: request.ids(),
        of: { subject: this.#node.id, property: `elementTime.${codeIn(texts)}`, condition },
        value,
        asWritten: texts.text('units'),
        note: texts.text('source'),
        how: 'supplied',
        by: request.by,
        takenAt: request.takenAt,
        evidence: [],
        causes: [],
        source: { file: request.file, row: texts.row, column },
      },
    };
  }

  values(cells: readonly string[], row: number): ReadonlyMap<number, Value> {
    const value = this.#read(this.#texts(cells, row));
    const column = this.#setup.mapping.column('units');
    return new Map(column && !('why' in value) ? [[column.index, value]] : []);
  }

  counts = (): Readonly<Record<string, number>> => ({ elements: this.#rows.size });
  notes = (): readonly Finding[] => [];
}

const codeIn = (texts: RowText): string => texts.text('element').replace(/\s/g, '').toUpperCase();

const wrongValue = (read: Value | Problem): Problem | undefined =>
  'why' in read && 'row' in read ? read : undefined;
