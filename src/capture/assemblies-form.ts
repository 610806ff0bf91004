import type { Value } from '../quantity/index.ts';
import type { Entry, Finding, NodeSpec } from '../study/index.ts';
import {
  type FormReader,
  note,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';

/** Assemblies by number and name. One that the study has under the same name is left as it is. */
export class AssembliesForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #nodes = new Map<string, { readonly node: NodeSpec; readonly row: number }>();
  readonly #there: string[] = [];

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problem = this.#wrong(texts);
    if (problem) this.#setup.problems.add(problem);
    else if (this.#isThere(texts)) this.#there.push(texts.text('number'));
    else this.#make(texts);
  }

  #wrong(texts: RowText) {
    const [label, name, parent] = [texts.text('number'), texts.text('name'), texts.text('parent')];
    const twice = this.#nodes.get(label);
    const node = this.#setup.request.view.find(label);
    if (label === '')
      return texts.problem('number', 'the row has no number', 'Give it a number of its own.');
    if (name === '') return texts.problem('name', 'the assembly has no name', 'Name it.');
    if (parent === label)
      return texts.problem('parent', 'an assembly is its own parent', 'Name what it belongs to.');
    if (twice)
      return texts.problem(
        'number',
        `the number ${label} stands in row ${twice.row} already`,
        'Give one of the two rows another number, or take it out.',
      );
    if (node && (node.kind !== 'assembly' || node.name !== name))
      return texts.problem(
        'number',
        `${label} is in the study already, as the ${node.kind} "${node.name}"`,
        'Give it another number, or rename it in the study.',
      );
    if (parent !== '' && this.#parentOf(parent) === undefined)
      return texts.problem(
        'parent',
        `there is no ${parent} in the study or earlier in the table`,
        'Put its row first, or correct the number.',
      );
    return undefined;
  }

  #isThere = (texts: RowText): boolean =>
    this.#setup.request.view.find(texts.text('number')) !== undefined;

  #parentOf = (label: string): string | undefined =>
    this.#nodes.get(label)?.node.id ?? this.#setup.request.view.find(label)?.id;

  #make(texts: RowText): void {
    const { view, ids } = this.#setup.request;
    const label = texts.text('number');
    const parent =
      texts.text('parent') === '' ? view.root()?.id : this.#parentOf(texts.text('parent'));
    this.#nodes.set(label, {
      row: texts.row,
      node: {
        id: ids(),
        kind: 'assembly',
        parent: parent ?? null,
        label,
        name: texts.text('name'),
      },
    });
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}
  opening = (): readonly Entry[] => [];

  entries(chunk: RowChunk): readonly Entry[] {
    const last = chunk.firstRow + chunk.rows.length;
    return [...this.#nodes.values()]
      .filter(({ row }) => row >= chunk.firstRow && row < last)
      .map(({ node }): Entry => ({ v: 1, e: 'node.add', node }));
  }

  values = (): ReadonlyMap<number, Value> => new Map();
  counts = (): Readonly<Record<string, number>> => ({
    assemblies: this.#nodes.size,
    'there already': this.#there.length,
  });

  notes(): readonly Finding[] {
    if (this.#there.length === 0) return [];
    return [
      note(
        { file: this.#setup.request.file },
        `${this.#there.length} assemblies are in the study already under the same name and stay as they are`,
        'Nothing to do.',
        this.#there.join(', '),
      ),
    ];
  }
}
