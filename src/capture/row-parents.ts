import type { Id, NodeSpec } from '../study/index.ts';
import { ownText, type RowText, type Setup } from './form-reader.ts';
import type { Problem } from './problems.ts';

/** Kinds of nodes that a part can belong to. */
const HOLDS_PARTS: ReadonlySet<string> = new Set(['vehicle', 'assembly', 'part']);

/**
 * Finds what the rows of a table name as their parent: a node of the study, an earlier row of
 * the same table, or, where the user says so, an assembly that is made for it.
 */
export class RowParents {
  readonly #setup: Setup;
  readonly #nodes = new Map<string, Id>();
  /** Named as parent and not in the study: where first. */
  readonly #unknown = new Map<string, Problem>();
  /** Rows of this table that others name as parent. */
  readonly #rows = new Map<string, { readonly row: number; readonly id: Id }>();
  readonly made: NodeSpec[] = [];

  constructor(setup: Setup) {
    this.#setup = setup;
  }

  check(texts: RowText): void {
    const parent = texts.text('parent');
    if (parent === '' || this.#nodes.has(parent)) return;
    if (parent === texts.text('number')) {
      this.#setup.problems.add(
        texts.problem(
          'parent',
          'a part is its own parent',
          'Name the assembly that it belongs to.',
        ),
      );
      return;
    }
    if (this.#unknown.has(parent)) return;
    const node = this.#setup.request.view.find(parent);
    const label = ownText(parent);
    if (node === undefined) this.#unknown.set(label, placeOf(texts));
    else if (HOLDS_PARTS.has(node.kind)) this.#nodes.set(label, node.id);
    else
      this.#setup.problems.add(
        texts.problem(
          'parent',
          `${parent} is a ${node.kind}, and a part can not belong to it`,
          'Name an assembly, a part or the vehicle.',
        ),
      );
  }

  /** Some parent is not in the study and may be a row of the table. */
  get open(): boolean {
    return this.#unknown.size > 0;
  }

  look(texts: RowText, id: Id): void {
    const label = texts.text('number');
    if (this.#unknown.has(label) && !this.#rows.has(label))
      this.#rows.set(ownText(label), { row: texts.row, id });
  }

  settle(): void {
    for (const [label, at] of this.#unknown) {
      const found = this.#rows.get(label);
      if (found === undefined) this.#makeOrRefuse(label, at);
      else if (found.row < at.row) this.#nodes.set(label, found.id);
      else
        this.#setup.problems.add({
          ...at,
          why: `its parent ${label} comes later, in row ${found.row}`,
          next: 'Put the row of a parent before the rows that belong to it; two parts can not be the parent of each other.',
        });
    }
  }

  #makeOrRefuse(label: string, at: Problem): void {
    const root = this.#setup.request.view.root();
    if (!this.#setup.overrides.makeAssemblies || !root) {
      this.#setup.problems.add({
        ...at,
        why: `there is no ${label} in the study or in the table to belong to`,
        next: 'Import the table of assemblies first, correct the number, or have it made: --make-assemblies.',
      });
      return;
    }
    const id = this.#setup.request.ids();
    this.made.push({ id, kind: 'assembly', parent: root.id, label, name: label });
    this.#nodes.set(label, id);
  }

  nodeOf = (parent: string): Id | undefined => this.#nodes.get(parent);
}

/** Where a row names its parent; keeps no hold on the row. */
function placeOf(texts: RowText): Problem {
  const at = texts.problem('parent', '', '');
  return { ...at, value: ownText(at.value) };
}
