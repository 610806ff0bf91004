import { type Change, fold } from '../study/index.ts';
import { partRow } from './part-row.ts';
import type { PartRow, StudyHead } from './port.ts';

/** A study's head and parts, straight from a fold of all its changes. */
export function foldedHead(study: string, changes: readonly Change[]): StudyHead {
  const view = fold(study, changes);
  const { title, vehicle, invented } = view.header;
  const clock =
    changes
      .map((c) => c.clock)
      .sort()
      .at(-1) ?? '';
  const parts = view.nodes('part').length;
  return { study, title, vehicle, invented, changes: changes.length, parts, clock };
}

export function foldedParts(study: string, changes: readonly Change[]): PartRow[] {
  const view = fold(study, changes);
  return view.nodes('part').map((node) => partRow(view, node));
}
