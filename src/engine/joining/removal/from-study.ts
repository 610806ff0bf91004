import type { Id, StudyView } from '../../../study/index.ts';
import { LOST, RemovalGraph } from './removal-graph.ts';

interface Kept {
  readonly changes: number;
  readonly graph: RemovalGraph;
}

/** Graphs by the line of views that they were built from. */
const KEPT = new WeakMap<object, Kept>();

/** The graph of a study as it stands; built anew only where tree, links or what stays changed. */
export function graphOf(view: StudyView): RemovalGraph {
  const { line, changes } = view;
  const held = KEPT.get(line);
  if (held && isGood(held, view)) return held.graph;
  const graph = buildGraph(view);
  KEPT.set(line, { changes, graph });
  return graph;
}

function isGood({ changes }: Kept, view: StudyView): boolean {
  if (changes === view.changes) return true;
  if (changes > view.changes) return false;
  const { subjects, more } = view.touchedSince(changes);
  return !more && ![...subjects].some((id) => view.properties(id).includes('stays'));
}

export function buildGraph(view: StudyView): RemovalGraph {
  const nodes = (['vehicle', 'assembly', 'part', 'step'] as const).flatMap((kind) =>
    view.nodes(kind),
  );
  const ends = endsByJoint(view, new Set(nodes.map((n) => n.id)));
  return new RemovalGraph({
    nodes,
    joints: view.nodes('joint').map(({ id, label }) => ({
      id,
      label,
      from: ends.get(id)?.from ?? [],
      to: ends.get(id)?.to ?? [],
    })),
    blocks: view
      .links('blocks')
      .flatMap(({ from, to, role = '' }) =>
        to === null ? [] : [{ first: from, after: to, group: role }],
      ),
    stays: nodes.map(({ id }) => id).filter((id) => isSaid(view, id)),
  });
}

type Ends = Readonly<Record<'from' | 'to', Id[]>>;

/** Both sides of every joint in one pass over the links; an end that is not live is lost. */
function endsByJoint(view: StudyView, live: ReadonlySet<Id>): ReadonlyMap<Id, Ends> {
  const found = new Map<Id, Ends>();
  for (const { from: joint, to, role } of view.links('joins')) {
    const ends = found.get(joint) ?? { from: [], to: [] };
    found.set(joint, ends);
    const side = role === 'to' ? ends.to : ends.from;
    side.push(to !== null && live.has(to) ? to : LOST);
  }
  return found;
}

function isSaid(view: StudyView, id: Id): boolean {
  if (!view.properties(id).includes('stays')) return false;
  const cell = view.cell(id, 'stays');
  return !('missing' in cell) && cell.value.t === 'text' && cell.value.text !== '';
}
