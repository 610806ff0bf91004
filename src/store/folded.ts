import { changesOf, type StudyView } from '../study/index.ts';
import { partRow } from './part-row.ts';
import type { PartRow, StudyHead } from './port.ts';

/** What a store without rows of its own says of a study: straight from a fold of its changes. */
export function headOf(view: StudyView): StudyHead {
  const { study, changes } = view;
  const { title, vehicle, invented } = view.header;
  const parts = view.nodes('part').length;
  const clock = changesOf(view).at(-1)?.clock ?? '';
  return { study, title, vehicle, invented, changes, parts, clock };
}

export const partsOf = (view: StudyView): PartRow[] =>
  view.nodes('part').map((node) => partRow(view, node));
