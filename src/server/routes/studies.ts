import { createStudy } from '../../app/index.ts';
import { newStudy, newStudyAnswer, studiesAnswer } from '../contract.ts';
import { handOf } from '../door.ts';
import { type AddRoutes, FAILURES } from './route.ts';

export const addStudies: AddRoutes = (scope, library) => {
  scope.get(
    '/studies',
    { schema: { summary: 'All studies', response: { 200: studiesAnswer, ...FAILURES } } },
    async () => ({ studies: await library.studies() }),
  );
  scope.post(
    '/studies',
    {
      schema: {
        summary: 'A new study with its vehicle',
        body: newStudy,
        response: { 200: newStudyAnswer, ...FAILURES },
      },
    },
    async ({ body, author }) => {
      const { title, vehicle, invented = false, by = author } = body;
      const hand = handOf(author, by);
      return { study: await createStudy(library, { title, vehicle, invented, by, hand }) };
    },
  );
};
