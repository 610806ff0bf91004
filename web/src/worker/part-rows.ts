import type { Id, StudyView } from '../../../src/study/index.ts';
import { nodeWords } from './node-words.ts';
import { type ShownCell, shownCell } from './shown-cell.ts';

/** Properties that the table of parts shows, in the order of its columns. */
export const PART_PROPERTIES = [
  'mass',
  'position',
  'count',
  'material',
  'process',
  'thickness',
] as const;
export type PartProperty = (typeof PART_PROPERTIES)[number];

/** A part as the table shows it. */
export interface PartRow {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  /** Number and name of what it belongs to. */
  readonly assembly: string;
  readonly cells: Readonly<Record<PartProperty, ShownCell>>;
}

export const partRows = (view: StudyView): PartRow[] =>
  view.nodes('part').map(({ id, label, name, parent }) => {
    const above = parent === null ? undefined : view.node(parent);
    const cell = (property: PartProperty) => shownCell(view.cell(id, property));
    return {
      id,
      label,
      name,
      assembly: above && above.kind !== 'vehicle' ? nodeWords(above) : '',
      cells: {
        count: cell('count'),
        material: cell('material'),
        process: cell('process'),
        thickness: cell('thickness'),
        mass: cell('mass'),
        position: cell('position'),
      },
    };
  });
