import type { LinkSpec } from './entries.ts';
import type { Id } from './ids.ts';
import type { StudyView } from './view.ts';

type Ends = readonly (Id | null)[];

/** Parts that are these nodes or below them, less those below the others, each once. */
export function partsOfAll(view: StudyView, inside: Ends, out: Ends = []): readonly Id[] {
  const below = (ids: Ends) =>
    ids.flatMap((id) => (id === null ? [] : view.nodes('part', id).map((n) => n.id)));
  const left = new Set(below(out));
  return [...new Set(below(inside))].filter((id) => !left.has(id));
}

/** What the links of a kind that start at a node list, and what of it they take out. */
export function listedBy(
  view: StudyView,
  kind: LinkSpec['kind'],
  from: Id,
): { readonly inside: Ends; readonly out: Ends } {
  const links = view.links(kind, from).filter((l) => l.from === from);
  const ends = (without: boolean) =>
    links.filter((l) => (l.role === 'without') === without).map((l) => l.to);
  return { inside: ends(false), out: ends(true) };
}
