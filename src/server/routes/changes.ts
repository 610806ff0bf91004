import type { Library } from '../../app/index.ts';
import {
  ackAnswer,
  type ChangesAnswer,
  changesAnswer,
  changesPost,
  changesQuery,
  studyPath,
} from '../contract.ts';
import { type AddRoutes, FAILURES } from './route.ts';

/** A change may carry a chunk of an imported table. */
const BODY_LIMIT = 16 * 2 ** 20;

export const addChanges: AddRoutes = (scope, library) => {
  scope.get(
    '/studies/:study/changes',
    {
      schema: {
        summary: 'What arrived after a number, in the order of arrival',
        params: studyPath,
        querystring: changesQuery,
        response: { 200: changesAnswer, ...FAILURES },
      },
    },
    ({ params, query }) => changesAfter(library, params.study, query.after, query.limit),
  );
  scope.post(
    '/studies/:study/changes',
    {
      bodyLimit: BODY_LIMIT,
      schema: {
        summary: 'Keeps changes, all or none; answers once they are on disk',
        params: studyPath,
        body: changesPost,
        response: { 200: ackAnswer, ...FAILURES },
      },
    },
    ({ params, body, author }) => library.accept(params.study, body.changes, author),
  );
};

/** @throws RefusalError `not-found` where nothing was ever stored under this id. */
async function changesAfter(
  library: Library,
  study: string,
  after: number,
  limit: number,
): Promise<ChangesAnswer> {
  const page = await library.store.since(study, after, limit);
  if (page.changes.length === 0 && after === 0) await library.findStudy(study);
  return page;
}
