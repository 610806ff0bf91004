import type { FastifyReply } from 'fastify';
import { importBundle, type Library, writeBundle } from '../../app/index.ts';
import { onDisk } from '../body-on-disk.ts';
import { bundleAnswer, bundleQuery, studyPath } from '../contract.ts';
import { handOf } from '../door.ts';
import { takeRawBodies } from '../raw-body.ts';
import { type AddRoutes, bytesAnswer, FAILURES, rawBody } from './route.ts';

/** Held on disk while it is checked and read; larger ones come in by the command line. */
const BUNDLE_LIMIT = 2 * 2 ** 30;

export const addBundles: AddRoutes = (scope, library) => {
  takeRawBodies(scope);
  scope.get(
    '/studies/:study/bundle',
    {
      schema: {
        summary: 'The whole study in one zip: changes, arrivals and blobs',
        params: studyPath,
        response: {
          200: bytesAnswer('application/zip', 'A bundle, see docs/bundle.schema.json'),
          ...FAILURES,
        },
      },
    },
    async ({ params }, reply) => sendBundle(library, params.study, reply),
  );
  scope.post(
    '/bundles',
    {
      schema: {
        summary: 'Brings a bundle in: a new study, or what it adds to one that is here',
        consumes: ['application/zip'],
        querystring: bundleQuery,
        body: rawBody,
        response: { 200: bundleAnswer, ...FAILURES },
      },
    },
    async (request) => {
      const { file, by } = request.query;
      const hand = handOf(request.author, by);
      return onDisk(request, BUNDLE_LIMIT, file, (path) => importBundle(library, path, hand, file));
    },
  );
};

async function sendBundle(
  library: Library,
  wanted: string,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const head = await library.findStudy(wanted);
  return reply
    .type('application/zip')
    .header('content-disposition', `attachment; filename="${fileName(head.title)}"`)
    .send(writeBundle(library, head));
}

/** Letters and digits of a title, so that any system takes the name. */
const fileName = (title: string): string =>
  `${
    title
      .normalize('NFKD')
      .replace(/[^A-Za-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'study'
  }.hoist.zip`;
