import { readFileSync } from 'node:fs';
import { aboutAnswer } from '../contract.ts';
import { type AddRoutes, FAILURES } from './route.ts';

const PACKAGE = new URL('../../../package.json', import.meta.url);

export const addAbout: AddRoutes = (scope) => {
  const { name, version } = JSON.parse(readFileSync(PACKAGE, 'utf8'));
  scope.get(
    '/about',
    {
      schema: { summary: 'Name and version', response: { 200: aboutAnswer, ...FAILURES } },
    },
    async () => ({ name, version, node: process.versions.node }),
  );
};
