import { hereAnswer, herePost, studyPath } from '../contract.ts';
import { handOf } from '../door.ts';
import type { WhoIsHere } from '../here.ts';
import { FAILURES, type Scope } from './route.ts';

export function addHere(scope: Scope, here: WhoIsHere): void {
  scope.post(
    '/studies/:study/here',
    {
      schema: {
        summary:
          'Tells which part is in hand in an open page, and hears of the others; not recorded',
        params: studyPath,
        body: herePost,
        response: { 200: hereAnswer, ...FAILURES },
      },
    },
    async ({ params, body, author }) => ({
      others: here.note(params.study, { ...body, device: handOf(author, 'desk') }),
    }),
  );
}
