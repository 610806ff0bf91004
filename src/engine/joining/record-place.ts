import type { Id, Place, PropertyId, StudyView } from '../../study/index.ts';

/**
 * Where something of a node was written: with file, row and column where it came in by a table.
 * A property that was never read has the file and row of what else was read of the node.
 */
export function recordPlace(view: StudyView, id: Id, property: PropertyId, column?: string): Place {
  const node = view.node(id);
  const place: Place = {
    subject: node ? `${node.label} ${node.name}`.trim() : id,
    property,
    ...(column === undefined ? {} : { column }),
  };
  const own = sourceOf(view, id, property);
  if (own) return { ...place, file: own.file, row: own.row, column: own.column };
  const other = view.properties(id).flatMap((p) => sourceOf(view, id, p) ?? [])[0];
  return other ? { ...place, file: other.file, row: other.row } : place;
}

const sourceOf = (view: StudyView, id: Id, property: PropertyId) =>
  view.readings(id, property).flatMap((s) => s.reading.source ?? [])[0];
