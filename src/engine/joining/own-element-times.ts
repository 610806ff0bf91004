import type { Id, StudyView } from '../../study/index.ts';

const PREFIX = 'elementTime.';

/** Element times that a study brings itself: the trial that holds each, its property and its code. */
export const ownElementTimes = (
  view: StudyView,
): readonly { readonly trial: Id; readonly property: string; readonly code: string }[] =>
  view.nodes('trial').flatMap(({ id }) =>
    view
      .properties(id)
      .filter((property) => property.startsWith(PREFIX))
      .map((property) => ({ trial: id, property, code: property.slice(PREFIX.length) })),
  );
