import type { Finding, Id, StudyView } from '../../../src/study/index.ts';
import { nodeWords } from './node-words.ts';

/** What was found in the record itself, of one node or of all, nodes called by their names. */
export const namedFindings = (view: StudyView, of?: Id): Finding[] =>
  view.findings
    .filter(({ place }) => of === undefined || place.subject === of)
    .map((finding) => {
      const { study: _, subject, ...place } = finding.place;
      const node = subject === undefined ? undefined : view.node(subject);
      const named = node ? nodeWords(node) : subject;
      return {
        ...finding,
        place: { ...place, ...(named === undefined ? {} : { subject: named }) },
      };
    });
