import type { Value } from '../quantity/index.ts';
import type { Entry, Finding, Id, NodeSpec } from '../study/index.ts';
import {
  type FormReader,
  openCondition,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import type { Problem } from './problems.ts';
import { RowReadings } from './row-readings.ts';

/** Kinds of nodes that can stand in the way, or be stood in the way of. */
const IN_THE_WAY: ReadonlySet<string> = new Set(['joint', 'part', 'assembly', 'step']);

/**
 * What must be undone or taken off before what. A row may make a step that is no joint of the
 * record (unplug, drain), with its time and tool. Circles are let in: they are for the way to a
 * part to find.
 */
export class PrecedenceForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #readings: RowReadings;
  readonly #made = new Map<string, { readonly node: NodeSpec; readonly row: number }>();
  readonly #pairs = new Map<string, number>();

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
    this.#readings = new RowReadings(setup);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problem = this.#wrongFirst(texts) ?? this.#wrongPair(texts);
    if (problem) this.#setup.problems.add(problem);
    this.#readings.check(cells, row);
  }

  #wrongFirst(texts: RowText): Problem | undefined {
    const [first, kind] = [texts.text('first'), texts.text('kind')];
    if (first === '')
      return texts.problem('first', 'the row does not say what comes first', 'Name it.');
    if (kind !== '' && kind !== 'step')
      return texts.problem(
        'kind',
        `a row of precedence makes no ${kind}`,
        'Write step for something that is no joint or part, or leave it empty.',
      );
    const there = this.#setup.request.view.find(first);
    if (there && kind === 'step' && there.kind !== 'step')
      return texts.problem('kind', `${first} is a ${there.kind}`, 'Leave the kind empty.');
    if (there || this.#made.has(first)) return this.#wrongNode(texts, 'first');
    if (kind !== 'step') return this.#unknown(texts, 'first');
    const { request } = this.#setup;
    const name = texts.text('name') || first;
    const parent = request.view.root()?.id ?? null;
    const node = { id: request.ids(), kind: 'step' as const, parent, label: first, name };
    this.#made.set(first, { node, row: texts.row });
    return undefined;
  }

  #wrongPair(texts: RowText): Problem | undefined {
    const [first, then, instead] = [texts.text('first'), texts.text('then'), texts.text('instead')];
    if (then === '')
      return texts.problem('then', 'the row does not say what it is in the way of', 'Name it.');
    if (this.#idOf(then) === undefined) return this.#unknown(texts, 'then');
    if (first === then)
      return texts.problem('then', `${first} is in its own way`, 'Name two different things.');
    const pair = `${first}\n${then}\n${instead}`;
    const earlier = this.#pairs.get(pair);
    if (earlier !== undefined)
      return texts.problem('first', `the same stands in row ${earlier}`, 'Take one row out.');
    this.#pairs.set(pair, texts.row);
    return this.#wrongNode(texts, 'then');
  }

  #wrongNode(texts: RowText, field: 'first' | 'then'): Problem | undefined {
    const node = this.#setup.request.view.find(texts.text(field));
    return !node || IN_THE_WAY.has(node.kind)
      ? undefined
      : texts.problem(
          field,
          `${node.label} is a ${node.kind}`,
          `Name one of: ${[...IN_THE_WAY].join(', ')}.`,
        );
  }

  #unknown = (texts: RowText, field: 'first' | 'then'): Problem =>
    texts.problem(
      field,
      `there is no ${texts.text(field)} in the study or earlier in the table`,
      field === 'first'
        ? 'Correct the number, or write step as its kind so that it is made.'
        : 'Correct the number, or put the row that makes it first.',
    );

  #idOf = (label: string): Id | undefined =>
    this.#setup.request.view.find(label)?.id ?? this.#made.get(label)?.node.id;

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}

  opening(): readonly Entry[] {
    const { condition, request } = this.#setup;
    return [
      ...openCondition(condition, request.view),
      ...this.#readings.opening(),
      ...[...this.#made.values()].map(({ node }): Entry => ({ v: 1, e: 'node.add', node })),
    ];
  }

  entries = (chunk: RowChunk): readonly Entry[] =>
    chunk.rows.flatMap((cells, i) => this.#row(cells, chunk.firstRow + i));

  #row(cells: readonly string[], row: number): Entry[] {
    const texts = this.#texts(cells, row);
    const [from, to] = [this.#idOf(texts.text('first')), this.#idOf(texts.text('then'))];
    const { request } = this.#setup;
    if (from === undefined || to === undefined)
      throw new Error(`row ${row} of ${request.file} passed the check and can not be read`);
    const [instead, words] = [texts.text('instead'), texts.text('words')];
    const link = {
      id: request.ids(),
      kind: 'blocks' as const,
      from,
      to,
      ...(instead === '' ? {} : { role: instead }),
      ...(words === '' ? {} : { words }),
    };
    return [{ v: 1, e: 'link.add', link }, ...this.#readings.entries(from, cells, row)];
  }

  values = (cells: readonly string[], row: number): ReadonlyMap<number, Value> =>
    this.#readings.values(cells, row);

  counts = (): Readonly<Record<string, number>> => ({
    'in the way': this.#pairs.size,
    'steps made': this.#made.size,
    ...this.#readings.counts,
  });

  notes = (): readonly Finding[] => [];
}
