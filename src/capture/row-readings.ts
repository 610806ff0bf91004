import type { Value } from '../quantity/index.ts';
import type { ColumnUse, Entry, Id, Reading } from '../study/index.ts';
import { CellChecker } from './check-cells.ts';
import { columnUses, waysOf } from './column-uses.ts';
import { commonSpreads } from './common-spreads.ts';
import { putInstrument, type Setup } from './form-reader.ts';

/** Reads the columns of properties of a row as readings of one node. */
export class RowReadings {
  readonly #setup: Setup;
  readonly #columns: readonly ColumnUse[];
  readonly #cells: CellChecker;
  readonly #instruments = new Set<string>();
  #readings = 0;

  constructor(setup: Setup) {
    const { mapping, decimal, frame, overrides } = setup;
    this.#setup = setup;
    this.#columns = columnUses(mapping, overrides, commonSpreads(setup));
    this.#cells = new CellChecker({
      columns: this.#columns,
      decimal,
      frame,
      headings: mapping.headings,
    });
  }

  /** Notes what is wrong with a row; true when nothing is. */
  check(cells: readonly string[], row: number): boolean {
    const { values, problems } = this.#cells.read(cells, row);
    for (const problem of problems) this.#setup.problems.add(problem);
    for (const column of values.keys()) {
      const instrument = this.#instrument(column, cells);
      if (instrument !== '') this.#instruments.add(instrument);
    }
    this.#readings += values.size;
    return problems.length === 0;
  }

  get counts(): Readonly<Record<string, number>> {
    return { readings: this.#readings, instruments: this.#instruments.size };
  }

  /** Instruments that the rows name and the study lacks. */
  opening(): readonly Entry[] {
    const { view } = this.#setup.request;
    return [...this.#instruments].filter((label) => !view.instrument(label)).map(putInstrument);
  }

  values = (cells: readonly string[], row: number): ReadonlyMap<number, Value> =>
    this.#cells.read(cells, row).values;

  entries(subject: Id, cells: readonly string[], row: number): Entry[] {
    return [...this.values(cells, row)].map(([column, value]) => ({
      v: 1,
      e: 'reading.add',
      reading: this.#reading(subject, cells, row, column, value),
    }));
  }

  #reading(
    subject: Id,
    cells: readonly string[],
    row: number,
    column: number,
    value: Value,
  ): Reading {
    const { request, mapping, condition, overrides } = this.#setup;
    const use = this.#columns[column];
    const instrument = this.#instrument(column, cells);
    const ways = waysOf(overrides);
    const unit = use?.use === 'property' && use.unit !== '1' ? use.unit : undefined;
    return {
      id: request.ids(),
      of: { subject, property: use?.use === 'property' ? use.property : '', condition },
      value,
      asWritten: [cells[column]?.trim(), unit].filter(Boolean).join(' '),
      how: instrument === '' ? ways.without : ways.withInstrument,
      by: request.by,
      takenAt: request.takenAt,
      ...(instrument === '' ? {} : { instrument }),
      evidence: [],
      causes: [],
      source: { file: request.file, row, column: mapping.headings[column] ?? `${column + 1}` },
    };
  }

  #instrument(column: number, cells: readonly string[]): string {
    const use = this.#columns[column];
    if (use?.use !== 'property' || use.kind === undefined) return '';
    const named = use.instrumentColumn === undefined ? '' : cells[use.instrumentColumn];
    return named?.trim() || (use.instrument ?? '');
  }
}
