import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import rateLimit from '@fastify/rate-limit';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { type Refusal, RefusalError } from '../study/index.ts';
import { type Door, LOCAL } from './door.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** Who the door knows the sender to be; empty where no sign-in is needed. */
    author: string;
  }
}

/** Wrong tokens a minute before no more are looked at. The right one is never kept waiting. */
const WRONG_TOKENS = 30;

/** 32 random bytes in base64url: not to be guessed. */
export const freshToken = (): string => randomBytes(32).toString('base64url');

/** The door for this machine alone, with a token for one run of the server. */
export const localDoor = (token: string): Door => ({
  scheme: 'http',
  names: ['127.0.0.1', 'localhost'],
  holder: async (given) => (sameToken(given, token) ? LOCAL : undefined),
  signIn: 'Open the address that the server printed when it started: the token is behind its #.',
});

/**
 * Turns away what does not come from a page of this server: a Host of another name (a foreign
 * name that was made to point here) and an Origin other than our own (a foreign page).
 * @throws RefusalError `not-allowed`.
 */
export function checkCaller(request: FastifyRequest, { scheme, names }: Door): void {
  const { host = '', origin } = request.headers;
  const port = request.socket.localPort;
  const ours = names.map((name) => `${name}:${port}`);
  if (!ours.includes(host.toLowerCase()))
    throw new RefusalError(foreign('Host', host, `${scheme}://${ours[0]}`));
  if (origin !== undefined && origin.toLowerCase() !== `${scheme}://${host.toLowerCase()}`)
    throw new RefusalError(foreign('Origin', origin, `${scheme}://${ours[0]}`));
}

const foreign = (header: string, found: string, address: string): Refusal => ({
  code: 'not-allowed',
  place: { column: header },
  value: found,
  why: `the ${header} of the request is not of this server`,
  next: `Open ${address}, and call the server by that name.`,
});

/** Lets nothing through in `scope` without a token of the door; wrong ones are counted. */
export async function requireToken(scope: FastifyInstance, door: Door): Promise<void> {
  await scope.register(rateLimit, { global: false, max: WRONG_TOKENS, timeWindow: 60_000 });
  const countWrong = scope.createRateLimit();
  scope.addHook('onRequest', async (request, reply) => {
    const given = /^Bearer (\S+)$/.exec(request.headers.authorization ?? '')?.[1];
    if (given === undefined)
      throw new RefusalError(notSignedIn('no token came with the request', door));
    const author = await door.holder(given);
    if (author !== undefined) {
      request.author = author;
      return;
    }
    const count = await countWrong(request);
    if (count.isAllowed || !count.isExceeded)
      throw new RefusalError(notSignedIn('the token is none that is good here', door));
    reply.header('retry-after', count.ttlInSeconds);
    throw new RefusalError(tooManyWrong(count.ttlInSeconds, door));
  });
}

/** Takes the same time whatever differs: digests are compared, which have one length. */
export function sameToken(given: string, token: string): boolean {
  const digestOf = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digestOf(given), digestOf(token));
}

const notSignedIn = (why: string, { signIn }: Door): Refusal => ({
  code: 'not-signed-in',
  place: { column: 'Authorization' },
  why,
  next: signIn,
});

const tooManyWrong = (seconds: number, { signIn }: Door): Refusal => ({
  code: 'busy',
  place: { column: 'Authorization' },
  why: 'too many wrong tokens came in the last minute',
  next: `Wait ${seconds} s. ${signIn}`,
});
