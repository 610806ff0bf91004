import { type Id, propertyWords, type StudyView } from '../../../src/study/index.ts';
import { nodeWords } from './node-words.ts';
import { PART_PROPERTIES } from './part-rows.ts';
import { type ShownCell, shownCell } from './shown-cell.ts';

/** A node in hand: what it is called, and every property that it has or should have. */
export interface NodeStory {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  readonly kind: string;
  /** What it belongs to; empty at the root. */
  readonly above: string;
  readonly cells: readonly {
    readonly property: string;
    readonly words: string;
    readonly cell: ShownCell;
  }[];
}

export function nodeStory(view: StudyView, id: Id): NodeStory | undefined {
  const node = view.node(id);
  if (!node) return undefined;
  const above = node.parent === null ? undefined : view.node(node.parent);
  const usual: readonly string[] = node.kind === 'part' ? PART_PROPERTIES : [];
  const others = view.properties(id).filter((p) => !usual.includes(p));
  return {
    ...{ id, label: node.label, name: node.name === node.label ? '' : node.name, kind: node.kind },
    above: above ? nodeWords(above) : '',
    cells: [...usual, ...others].map((property) => ({
      property,
      words: propertyWords(property),
      cell: shownCell(view.cell(id, property)),
    })),
  };
}
