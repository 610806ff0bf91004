import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import rateLimit from '@fastify/rate-limit';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { type Refusal, RefusalError } from '../study/index.ts';

/** Wrong tokens a minute before no more are looked at. The right one is never kept waiting. */
const WRONG_TOKENS = 30;

/** 32 random bytes in base64url: good for one run of the server. */
export const freshToken = (): string => randomBytes(32).toString('base64url');

/**
 * Turns away what does not come from a page of this server: a Host of another name (a foreign
 * name that was made to point here) and an Origin other than our own (a foreign page).
 * @throws RefusalError `not-allowed`.
 */
export function checkCaller(request: FastifyRequest): void {
  const { host, origin } = request.headers;
  const port = request.socket.localPort;
  if (host !== `127.0.0.1:${port}` && host !== `localhost:${port}`)
    throw new RefusalError(foreign('Host', host ?? '', port));
  if (origin !== undefined && origin !== `http://${host}`)
    throw new RefusalError(foreign('Origin', origin, port));
}

const foreign = (header: string, found: string, port: number | undefined): Refusal => ({
  code: 'not-allowed',
  place: { column: header },
  value: found,
  why: `the ${header} of the request is not of this server`,
  next: `Open http://127.0.0.1:${port} on this machine, and call it by that name.`,
});

/** Lets nothing through in `scope` without the token; wrong ones are counted. */
export async function requireToken(scope: FastifyInstance, token: string): Promise<void> {
  await scope.register(rateLimit, { global: false, max: WRONG_TOKENS, timeWindow: 60_000 });
  const countWrong = scope.createRateLimit();
  scope.addHook('onRequest', async (request, reply) => {
    const given = /^Bearer (\S+)$/.exec(request.headers.authorization ?? '')?.[1];
    if (given === undefined) throw new RefusalError(notSignedIn('no token came with the request'));
    if (sameToken(given, token)) return;
    const count = await countWrong(request);
    if (count.isAllowed || !count.isExceeded)
      throw new RefusalError(notSignedIn('the token is not the one of this run'));
    reply.header('retry-after', count.ttlInSeconds);
    throw new RefusalError(tooManyWrong(count.ttlInSeconds));
  });
}

/** Takes the same time whatever differs: digests are compared, which have one length. */
function sameToken(given: string, token: string): boolean {
  const digestOf = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digestOf(given), digestOf(token));
}

const notSignedIn = (why: string): Refusal => ({
  code: 'not-signed-in',
  place: { column: 'Authorization' },
  why,
  next: 'Open the address that the server printed when it started: the token is behind its #.',
});

const tooManyWrong = (seconds: number): Refusal => ({
  code: 'busy',
  place: { column: 'Authorization' },
  why: 'too many wrong tokens came in the last minute',
  next: `Wait ${seconds} s, then use the address that the server printed when it started.`,
});
