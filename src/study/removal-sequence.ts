import type { Id } from './ids.ts';
import { listedBy, partsOfAll } from './parts-listed.ts';
import type { StudyView } from './view.ts';

/** One step of the removal plan in its place. */
export interface PlannedRemoval {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  /** Nodes that it names as coming off. */
  readonly nodes: readonly Id[];
  /** Parts that come off with it: those that an earlier step took are gone already. */
  readonly parts: readonly Id[];
}

/** The removal plan in order: by the place recorded, those without one last, as they were added. */
export function removalSequence(view: StudyView): readonly PlannedRemoval[] {
  const gone = new Set<Id>();
  return inPlace(view).map(({ id, label, name }) => {
    const { inside, out } = listedBy(view, 'takes', id);
    const parts = partsOfAll(view, inside, out).filter((part) => !gone.has(part));
    for (const part of parts) gone.add(part);
    return { id, label, name, nodes: inside.flatMap((end) => end ?? []), parts };
  });
}

function inPlace(view: StudyView) {
  const placed = view.nodes('removal').map((node) => ({ node, place: placeOf(view, node.id) }));
  return placed.sort((a, b) => a.place - b.place).map(({ node }) => node);
}

function placeOf(view: StudyView, id: Id): number {
  const cell = view.cell(id, 'removal.order');
  if ('missing' in cell) return Number.MAX_VALUE;
  const { value } = cell;
  return value.t === 'count' ? value.n : value.t === 'scalar' ? value.x : Number.MAX_VALUE;
}
