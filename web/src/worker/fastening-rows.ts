import { FASTENING_FIGURES } from '../../../src/engine/index.ts';
import { type Id, isMissing, type StudyView } from '../../../src/study/index.ts';
import { type ShownCell, shownCell } from './shown-cell.ts';

/** One figure of a fastening: filled, open, or said not to apply. */
export interface FasteningCell {
  readonly property: string;
  readonly cell: ShownCell;
  readonly state: 'filled' | 'open' | 'not applicable';
}

export interface FasteningWay {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  /** In the order of the figures. */
  readonly cells: readonly FasteningCell[];
}

/** Ways to fasten one thing, and what must be known of each before two can be compared. */
export interface FasteningChoice {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  readonly figures: readonly { readonly about: string; readonly meaning: string }[];
  readonly ways: readonly FasteningWay[];
}

export const fasteningChoices = (view: StudyView): FasteningChoice[] =>
  view.nodes('alternative').flatMap(({ id, label, name }) => {
    const ways = view
      .children(id)
      .filter((n) => n.kind === 'alternative' && isFastening(view, n.id))
      .map((n) => ({ id: n.id, label: n.label, name: n.name, cells: cellsOf(view, n.id) }));
    const figures = FASTENING_FIGURES.map(({ about, meaning }) => ({ about, meaning }));
    return ways.length > 0 ? [{ id, label, name, figures, ways }] : [];
  });

const isFastening = (view: StudyView, id: Id): boolean =>
  view.properties(id).some((p) => p.startsWith('fastening.'));

const cellsOf = (view: StudyView, id: Id): FasteningCell[] =>
  FASTENING_FIGURES.map(({ name }) => {
    const property = `fastening.${name}`;
    const cell = view.cell(id, property);
    const state = !isMissing(cell)
      ? 'filled'
      : cell.why === 'not applicable'
        ? 'not applicable'
        : 'open';
    return { property, cell: shownCell(cell), state };
  });
