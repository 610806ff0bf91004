import { Readable } from 'node:stream';
import type { FastifyReply } from 'fastify';
import type { Library } from '../../app/index.ts';
import { blobAnswer, blobPath } from '../contract.ts';
import { MAGIC_LENGTH, mediaOf } from '../media-type.ts';
import { bodyOf, takeRawBodies } from '../raw-body.ts';
import { type AddRoutes, bytesAnswer, FAILURES, rawBody } from './route.ts';

const BLOB_LIMIT = 50 * 2 ** 20;

export const addBlobs: AddRoutes = (scope, library) => {
  takeRawBodies(scope);
  scope.put(
    '/blobs',
    {
      schema: {
        summary: 'Keeps the bytes of the body; answers their SHA-256 once they are on disk',
        consumes: ['application/octet-stream'],
        body: rawBody,
        response: { 200: blobAnswer, ...FAILURES },
      },
    },
    async (request) => ({
      hash: await library.store.putBlob(bodyOf(request, BLOB_LIMIT, { column: 'body' })),
    }),
  );
  scope.get(
    '/blobs/:hash',
    {
      schema: {
        summary: 'The bytes of a blob',
        params: blobPath,
        response: {
          200: bytesAnswer('application/octet-stream', 'The bytes; PNG and JPEG as themselves'),
          ...FAILURES,
        },
      },
    },
    async ({ params }, reply) => sendBlob(library, params.hash, reply),
  );
};

/** Sends a blob so that no browser runs it: type by its first bytes, no guessing, in a sandbox. */
async function sendBlob(
  library: Library,
  hash: string,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const chunks = library.store.getBlob(hash)[Symbol.asyncIterator]();
  const head = await firstBytes(chunks);
  const { type, inline } = mediaOf(head);
  return reply
    .headers({
      'content-type': type,
      'content-disposition': inline ? 'inline' : `attachment; filename="${hash}"`,
      'content-security-policy': "default-src 'none'; sandbox",
      'x-content-type-options': 'nosniff',
      'cache-control': 'private, max-age=31536000, immutable',
    })
    .send(Readable.from(whole(head, chunks)));
}

/** As many as decide the media type, or all there are. */
async function firstBytes(chunks: AsyncIterator<Uint8Array>): Promise<Uint8Array> {
  let head: Uint8Array = new Uint8Array();
  while (head.length < MAGIC_LENGTH) {
    const next = await chunks.next();
    if (next.done) break;
    head = Buffer.concat([head, next.value]);
  }
  return head;
}

async function* whole(
  head: Uint8Array,
  rest: AsyncIterator<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  yield head;
  yield* { [Symbol.asyncIterator]: () => rest };
}
