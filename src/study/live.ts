import type { FoldState } from './fold-state.ts';
import type { Id } from './ids.ts';

/** Live: neither it nor anything above it has been retired. */
export function isLive(s: FoldState, id: Id): boolean {
  for (let at: Id | null = id; at !== null; at = s.nodes.get(at)?.parent ?? null)
    if (s.retired.has(at) || !s.nodes.has(at)) return false;
  return true;
}

/** The first root that has not been retired. */
export const rootId = (s: FoldState): Id | null =>
  s.roots.find((id) => s.nodes.get(id)?.parent === null && !s.retired.has(id)) ?? null;
