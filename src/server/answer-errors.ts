import { randomUUID } from 'node:crypto';
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import { REFUSALS, type Refusal, RefusalError } from '../study/index.ts';
import type { DefectAnswer, RefusalsAnswer } from './contract.ts';

export type Log = (line: string) => void;

/** Answers what was thrown: refusals with their status, anything else as a defect under an id. */
export const answerErrors =
  (log: Log) =>
  (error: unknown, request: FastifyRequest, reply: FastifyReply): FastifyReply => {
    const refusals = refusalsIn(error, request);
    if (!refusals) return reply.code(500).send(defect(error, request, log));
    const body: RefusalsAnswer = { refusals };
    return reply.code(REFUSALS[refusals[0].code].status).send(body);
  };

function refusalsIn(
  error: unknown,
  request: FastifyRequest,
): readonly [Refusal, ...Refusal[]] | undefined {
  if (error instanceof RefusalError) return error.refusals;
  return isFromHttp(error) ? [refusalOf(error, request)] : undefined;
}

/** What Fastify and Node find wrong with a request before it comes to a route. */
const isFromHttp = (error: unknown): error is FastifyError =>
  error instanceof Error &&
  'statusCode' in error &&
  typeof error.statusCode === 'number' &&
  error.statusCode >= 400 &&
  error.statusCode < 500;

function refusalOf(error: FastifyError, request: FastifyRequest): Refusal {
  const place = { column: 'body' };
  if (error.statusCode === 413)
    return {
      code: 'too-large',
      place,
      value: `${request.headers['content-length'] ?? 'unknown'} bytes`,
      why: 'the body of the request is larger than this route takes',
      next: 'Send it in smaller pieces.',
    };
  if (error.statusCode === 415)
    return {
      code: 'bad-call',
      place: { column: 'Content-Type' },
      value: request.headers['content-type'] ?? '',
      why: 'the body is of a kind that this route does not take',
      next: 'Send JSON with Content-Type: application/json.',
    };
  return {
    code: 'bad-call',
    place,
    why: `the request can not be read: ${error.message}`,
    next: 'See /api/openapi.json for what this route takes.',
  };
}

/** Our own fault: the whole of it into the log, its id only to the caller. */
function defect(error: unknown, request: FastifyRequest, log: Log): DefectAnswer {
  const id = randomUUID();
  const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
  log(`defect ${id} in ${request.method} ${request.url.split('?')[0]}: ${what}`);
  return { defect: id };
}

export const noSuchRoute = (request: FastifyRequest): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: {},
    value: `${request.method} ${request.url.split('?')[0]}`,
    why: 'there is no such route',
    next: 'The routes are listed in /api/openapi.json.',
  });
