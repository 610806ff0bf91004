import type { Value } from '../quantity/index.ts';
import type { Entry, Finding, Id, LinkSpec, NodeKind } from '../study/index.ts';
import {
  type FormReader,
  openCondition,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import { listIn } from './list-in.ts';
import type { Problem } from './problems.ts';
import { RowReadings } from './row-readings.ts';

/** A column that names what a row's node is linked to; several parted by semicolons. */
export interface LinkField {
  readonly field: string;
  readonly link: LinkSpec['kind'];
  readonly role?: string | 'by place';
  readonly to: readonly NodeKind[];
}
/** What the rows of a table make. */
export interface LinkedNodes {
  readonly kind: NodeKind;
  /** Of several, for counts. */
  readonly words: string;
  readonly links: readonly LinkField[];
}

/**
 * A node a row, with readings and with links to nodes that are in the study already. A link that
 * is not named is left open, for the questions to find; one that names nothing known is refused.
 */
export class LinkedNodesForm implements FormReader {
  readonly #setup: Setup;
  readonly #what: LinkedNodes;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #readings: RowReadings;
  readonly #rows = new Map<string, number>();

  constructor(setup: Setup, what: LinkedNodes) {
    this.#setup = setup;
    this.#what = what;
    this.#texts = rowTexts(setup.mapping);
    this.#readings = new RowReadings(setup);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problems = [
      this.#wrongLabel(texts),
      this.#wrongParent(texts),
      ...this.#what.links.map((field) => this.#wrongLink(texts, field)),
    ];
    for (const problem of problems) if (problem) this.#setup.problems.add(problem);
    this.#rows.set(texts.text('number'), row);
    this.#readings.check(cells, row);
  }

  #wrongLabel(texts: RowText): Problem | undefined {
    const label = texts.text('number');
    const earlier = this.#rows.get(label);
    const there = this.#setup.request.view.find(label);
    if (label === '')
      return texts.problem('number', 'the row has no number', 'Give it a number of its own.');
    if (earlier !== undefined)
      return texts.problem(
        'number',
        `the number ${label} stands in row ${earlier} already`,
        'Give one of the two rows another number, or take it out.',
      );
    if (there)
      return texts.problem(
        'number',
        `${label} is in the study already, as the ${there.kind} "${there.name}"`,
        'Give it another number, or take its row out.',
      );
    return undefined;
  }

  #wrongParent(texts: RowText): Problem | undefined {
    const parent = texts.text('parent');
    if (parent === '' || this.#setup.request.view.find(parent)) return undefined;
    return texts.problem(
      'parent',
      `there is no ${parent} in the study`,
      'Correct the number, or import what it belongs to first.',
    );
  }

  #wrongLink(texts: RowText, { field, to }: LinkField): Problem | undefined {
    const { view } = this.#setup.request;
    const wrong = listIn(texts.text(field)).find(
      (label) => !to.includes(view.find(label)?.kind ?? 'vehicle'),
    );
    if (wrong === undefined) return undefined;
    const node = view.find(wrong);
    return texts.problem(
      field,
      node ? `${wrong} is a ${node.kind}` : `there is no ${wrong} in the study`,
      `Name a ${to.join(' or ')} by its number; import those first.`,
    );
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}

  opening(): readonly Entry[] {
    const { condition, request } = this.#setup;
    return [...openCondition(condition, request.view), ...this.#readings.opening()];
  }

  entries = (chunk: RowChunk): readonly Entry[] =>
    chunk.rows.flatMap((cells, i) => this.#row(cells, chunk.firstRow + i));

  #row(cells: readonly string[], row: number): Entry[] {
    const { ids, view } = this.#setup.request;
    const texts = this.#texts(cells, row);
    const [id, label] = [ids(), texts.text('number')];
    const parent = (view.find(texts.text('parent')) ?? view.root())?.id ?? null;
    const name = texts.text('name') || label;
    return [
      { v: 1, e: 'node.add', node: { id, kind: this.#what.kind, parent, label, name } },
      ...this.#what.links.flatMap((field) => this.#links(id, texts, field)),
      ...this.#readings.entries(id, cells, row),
    ];
  }

  #links(from: Id, texts: RowText, { field, link, role }: LinkField): Entry[] {
    const { ids, view } = this.#setup.request;
    return listIn(texts.text(field)).map((label, i): Entry => {
      const as = role === 'by place' ? String(i + 1) : role;
      const to = view.find(label)?.id ?? null;
      const made: LinkSpec = { id: ids(), kind: link, from, to, words: label };
      return { v: 1, e: 'link.add', link: as === undefined ? made : { ...made, role: as } };
    });
  }

  values = (cells: readonly string[], row: number): ReadonlyMap<number, Value> =>
    this.#readings.values(cells, row);

  counts = (): Readonly<Record<string, number>> => ({
    [this.#what.words]: this.#rows.size,
    ...this.#readings.counts,
  });

  notes = (): readonly Finding[] => [];
}
