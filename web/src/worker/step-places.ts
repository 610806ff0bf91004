import { jointEnd } from '../../../src/engine/index.ts';
import type { Id, NodeKind, NodeSpec, StudyView } from '../../../src/study/index.ts';

/** Where a step of a way stands on the drawing, and what is off once it is done. */
export interface StepPlace {
  /** Parts and assemblies that it touches. */
  readonly touches: readonly Id[];
  /** Parts and assemblies that it takes off, all below them included. */
  readonly takesOff: readonly Id[];
}

const KINDS: readonly NodeKind[] = ['joint', 'step', 'part', 'assembly'];

/** Places of steps by their words, which name a joint, step or part by its label: "J103 bolt", "take off 40 pack". */
export function stepPlaces(view: StudyView, steps: readonly string[]): StepPlace[] {
  const nodes = KINDS.flatMap((kind) => view.nodes(kind));
  const byLabel = new Map(nodes.map((n) => [n.label, n]));
  return steps.map((words) => placeOf(view, nodeIn(byLabel, words)));
}

/** The first node whose label stands in a text, word by word, the longest first. */
function nodeIn(byLabel: ReadonlyMap<string, NodeSpec>, text: string): NodeSpec | undefined {
  const words = text.split(' ');
  for (let from = 0; from < words.length; from += 1)
    for (let to = words.length; to > from; to -= 1) {
      const node = byLabel.get(words.slice(from, to).join(' '));
      if (node) return node;
    }
  return undefined;
}

function placeOf(view: StudyView, node: NodeSpec | undefined): StepPlace {
  if (!node || node.kind === 'step') return { touches: [], takesOff: [] };
  if (node.kind === 'joint') {
    const ends = (['from', 'to'] as const).flatMap((side) => jointEnd(view, node.id, side).nodes);
    return { touches: [...new Set(ends)], takesOff: [] };
  }
  const below = [...view.nodes('part', node.id), ...view.nodes('assembly', node.id)];
  const all = [node.id, ...below.map((n) => n.id)];
  return { touches: [node.id], takesOff: [...new Set(all)] };
}
