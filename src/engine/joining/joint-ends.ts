import type { Finding, Id, StudyView } from '../../study/index.ts';
import type { Finder } from '../method.ts';
import { recordPlace } from './record-place.ts';

export type Side = 'from' | 'to';

/** What a joint holds on one side: nodes that are there, and words that name none. */
export interface JointEnd {
  readonly nodes: readonly Id[];
  readonly lost: readonly string[];
}

/** The live nodes on one side of a joint. */
export function jointEnd(view: StudyView, joint: Id, side: Side): JointEnd {
  const links = view.links('joins', joint).filter((l) => l.from === joint && l.role === side);
  const isThere = (id: Id | null): id is Id => id !== null && view.find(id)?.id === id;
  return {
    nodes: links.flatMap((l) => (isThere(l.to) ? [l.to] : [])),
    lost: links.flatMap((l) => (isThere(l.to) ? [] : [l.words ?? l.to ?? ''])),
  };
}

/** Labels of what one side holds, and the words of what the study does not have. */
export function endWords(at: Finder, joint: Id, side: Side): string {
  const { nodes, lost } = jointEnd(at.view, joint, side);
  return [...nodes.map((id) => at.view.node(id)?.label ?? id), ...lost].join(', ');
}

/** A joint to a part that is not there, or with an open side. */
export function endFindings(view: StudyView, joint: Id): Finding[] {
  return (['from', 'to'] as const).flatMap((side) => {
    const { nodes, lost } = jointEnd(view, joint, side);
    const place = recordPlace(view, joint, `words.${side}`, side);
    const open = nodes.length + lost.length === 0;
    return [...lost.map((words) => lostEnd(place, words)), ...(open ? [openEnd(place)] : [])];
  });
}

const lostEnd = (place: Finding['place'], value: string): Finding => ({
  code: 'joint-end-unknown',
  level: 'doubt',
  place,
  value,
  what: 'the joint holds something that is not in the study',
  next: 'Correct the number, or add the part; what the joint holds is not known until then.',
});

const openEnd = (place: Finding['place']): Finding => ({
  code: 'joint-end-open',
  level: 'gap',
  place,
  what: 'the joint names nothing on this side',
  next: 'Say what it holds there.',
});
