import { Readable } from 'node:stream';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { type Place, RefusalError } from '../study/index.ts';

/** In `scope` bodies of any kind, JSON too, are handed on as a stream of bytes. */
export function takeRawBodies(scope: FastifyInstance): void {
  scope.removeAllContentTypeParsers();
  scope.addContentTypeParser('*', (_request, payload, done) => done(null, payload));
}

/**
 * The body, chunk by chunk, for as long as it stays within `limit` bytes.
 * @throws RefusalError `too-large`, `bad-call` when there is none.
 */
export async function* bodyOf(
  request: FastifyRequest,
  limit: number,
  place: Place,
): AsyncGenerator<Uint8Array> {
  const stated = Number(request.headers['content-length'] ?? 0);
  if (stated > limit) throw tooLarge(limit, place, stated);
  let length = 0;
  for await (const chunk of chunksOf(request.body)) {
    length += chunk.length;
    if (length > limit) throw tooLarge(limit, place, length);
    yield chunk;
  }
  if (length === 0) throw noBody(place);
}

/** Left open when its reader stops: the refusal has to go out on the same connection. */
const chunksOf = (body: unknown): AsyncIterable<Uint8Array> | readonly Uint8Array[] =>
  body instanceof Readable ? body.iterator({ destroyOnReturn: false }) : [];

const tooLarge = (limit: number, place: Place, found: number): RefusalError =>
  new RefusalError({
    code: 'too-large',
    place,
    value: `${found} bytes or more`,
    why: `a file of more than ${limit / 2 ** 20} MB is not taken here`,
    next: 'Nothing was kept. Make the file smaller, or bring it in by the command line.',
  });

const noBody = (place: Place): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place,
    value: '0 bytes',
    why: 'the request has no body',
    next: 'Send the bytes of the file as the body.',
  });
