import type { Value } from '../quantity/index.ts';
import type { Entry, Finding, Id } from '../study/index.ts';
import {
  type FormReader,
  note,
  openCondition,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import type { Problem } from './problems.ts';
import { RowReadings } from './row-readings.ts';

/**
 * Bags of fasteners, each with the joint that is written on it. A bag without a joint is kept:
 * that it has none is for the census of joints to find.
 */
export class BagsForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #readings: RowReadings;
  readonly #rows = new Map<string, number>();
  /** Bags whose joint is not in the study, by row. */
  readonly #lost: string[] = [];
  readonly #bare: string[] = [];

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
    this.#readings = new RowReadings(setup);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problem = this.#wrong(texts);
    if (problem) this.#setup.problems.add(problem);
    else this.#rows.set(texts.text('number'), row);
    this.#readings.check(cells, row);
    this.#noteJoint(texts);
  }

  #wrong(texts: RowText): Problem | undefined {
    const label = texts.text('number');
    const earlier = this.#rows.get(label);
    if (label === '')
      return texts.problem('number', 'the bag has no number', 'Give it a number of its own.');
    if (earlier !== undefined)
      return texts.problem(
        'number',
        `the bag ${label} stands in row ${earlier} already`,
        'Give one of the two bags another number.',
      );
    if (this.#setup.request.view.find(label))
      return texts.problem(
        'number',
        `${label} is in the study already`,
        'Give the bag another number, or take its row out.',
      );
    return undefined;
  }

  #noteJoint(texts: RowText): void {
    if (texts.text('joint') === '') this.#bare.push(texts.text('number'));
    else if (this.#joint(texts) === null) this.#lost.push(texts.text('number'));
  }

  #joint(texts: RowText): Id | null {
    const node = this.#setup.request.view.find(texts.text('joint'));
    return node?.kind === 'joint' ? node.id : null;
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}

  opening(): readonly Entry[] {
    const { condition, request } = this.#setup;
    return [...openCondition(condition, request.view), ...this.#readings.opening()];
  }

  entries = (chunk: RowChunk): readonly Entry[] =>
    chunk.rows.flatMap((cells, i) => this.#bag(cells, chunk.firstRow + i));

  #bag(cells: readonly string[], row: number): Entry[] {
    const { ids, view } = this.#setup.request;
    const texts = this.#texts(cells, row);
    const [id, label, words] = [ids(), texts.text('number'), texts.text('joint')];
    const name = texts.text('name') || label;
    const parent = view.root()?.id ?? null;
    return [
      { v: 1, e: 'node.add', node: { id, kind: 'bag', parent, label, name } },
      ...(words === ''
        ? []
        : [
            {
              v: 1,
              e: 'link.add',
              link: { id: ids(), kind: 'keeps', from: id, to: this.#joint(texts), words },
            } as const,
          ]),
      ...this.#readings.entries(id, cells, row),
    ];
  }

  values = (cells: readonly string[], row: number): ReadonlyMap<number, Value> =>
    this.#readings.values(cells, row);

  counts = (): Readonly<Record<string, number>> => ({
    bags: this.#rows.size,
    'bags without a joint': this.#bare.length + this.#lost.length,
    ...this.#readings.counts,
  });

  notes(): readonly Finding[] {
    const { file } = this.#setup.request;
    const next = 'They are kept; write the joint on them when it is known.';
    return [
      ...(this.#bare.length === 0
        ? []
        : [note({ file }, 'bags with no joint on them', next, this.#bare.join(', '))]),
      ...(this.#lost.length === 0
        ? []
        : [
            note(
              { file },
              'bags whose joint is not in the study',
              'Import the joints first, or correct the number.',
              this.#lost.join(', '),
            ),
          ]),
    ];
  }
}
