import type { Id, StudyView } from '../study/index.ts';

/**
 * Number and name of a node, as places and labels of an answer have it; once where the name begins
 * with the number; its id when it is gone.
 */
export function nodeLabel(view: Pick<StudyView, 'node'>, id: Id): string {
  const node = view.node(id);
  if (!node) return id;
  const { label, name } = node;
  return name === label || name.startsWith(`${label} `) ? name : `${label} ${name}`;
}
