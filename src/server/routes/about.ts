import { VERSION } from '../../app/index.ts';
import { aboutAnswer } from '../contract.ts';
import { type AddRoutes, FAILURES } from './route.ts';

export const addAbout: AddRoutes = (scope, { store }) => {
  scope.get(
    '/about',
    {
      schema: { summary: 'Name and version', response: { 200: aboutAnswer, ...FAILURES } },
    },
    async () => ({
      ...{ name: 'hoistside', version: VERSION, node: process.versions.node },
      ...(store.readOnly === undefined ? {} : { readOnly: store.readOnly }),
    }),
  );
};
