import type { Id, StudyView } from '../../study/index.ts';
import type { Finder, Found } from '../method.ts';

/** Bags that keep the fasteners of a joint. */
export const bagsOf = (view: StudyView, joint: Id): readonly Id[] =>
  view.links('keeps', joint).flatMap((l) => (l.to === joint ? [l.from] : []));

/** Bags on which no joint is written, or one that the study does not have. */
export const strayBags = (view: StudyView): readonly Id[] =>
  view
    .nodes('bag')
    .map((bag) => bag.id)
    .filter((bag) => !view.links('keeps', bag).some((l) => isLiveJoint(view, l.to)));

const isLiveJoint = (view: StudyView, id: Id | null): boolean =>
  id !== null && view.find(id)?.kind === 'joint';

/** The joint written on a bag, as written; empty when there is none. */
export const writtenJoint = (view: StudyView, bag: Id): string =>
  view.links('keeps', bag).flatMap((l) => (l.from === bag ? [l.words ?? ''] : []))[0] ?? '';

/** Fasteners of a joint by its bags together; by the joint's own count where it has no bag. */
export function countByBag(at: Finder, joint: Id): Found {
  const bags = bagsOf(at.view, joint);
  const counts = bags.map((bag) => at.number(bag, 'count.bag'));
  const [only] = counts;
  if (only === undefined) return at.number(joint, 'count.bag');
  return counts.length === 1 ? only : at.sum(`bags of ${at.view.node(joint)?.label}`, counts);
}
